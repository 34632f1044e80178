import { PRACTICE_WASH } from "../../../core/method/practice-wash.ts";
import { refused } from "../../../core/quantity/result.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { begin } from "../../ahead/begin.ts";
import { freshId } from "../../desk.ts";
import { genericCupboard } from "../../pantry.ts";
import { PRACTICE_RUN } from "../../practice.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { demoSpecs } from "../specs.ts";
import { demoWords } from "../words.ts";
import type { DemoWords } from "../written.ts";

const SIZE = { by: "bottles", bottles: 1, size: 750 } as const;

/** A washed spec of the invented bar, of which nothing has to be asked any more. */
function practiceSpec(told: DemoWords): Spec {
  const spec = demoSpecs(told).find(({ wash }) => wash !== undefined);
  if (spec?.wash === undefined) throw new RangeError("no demo spec is washed");
  const { name } = sayLater.first;
  return { ...spec, id: "practice", name, wash: { ...spec.wash, filterShape: "straight" } };
}

/** An id for a practice that may be begun. */
export const practiceId = (): string => PRACTICE_RUN + freshId();

/**
 * Begins the practice and opens it.
 *
 * @param id - of its run: begun twice, it is one practice
 * @returns why it was refused, as a sentence; nothing once it runs
 */
export async function startPractice(id: string): Promise<string | undefined> {
  const told = await demoWords();
  if (told === undefined) return sentence(refused("part-missing"));
  const plan = planBatch(practiceSpec(told), genericCupboard.value, SIZE, NEW_HOUSE);
  if (!plan.ok) return sentence(plan);
  return begin({ id, plan: plan.value, procedure: PRACTICE_WASH, changes: [] });
}
