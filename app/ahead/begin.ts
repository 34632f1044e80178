import type { Planned } from "../../core/board/planned.ts";
import { timeToClear } from "../../core/logbook/time-to-clear.ts";
import { withLearntTimes } from "../../core/method/learnt-times.ts";
import type { Procedure } from "../../core/method/procedure.ts";
import { refused } from "../../core/quantity/result.ts";
import type { Plan } from "../../core/spec/plan.ts";
import { dropPlanned, perform } from "../commands.ts";
import { why } from "../desk.ts";
import { everyRecord } from "../reading.ts";
import { routes } from "../routes.ts";
import { records } from "../state.ts";
import { inOneLine } from "../words/joined.ts";
import { sayLater, sentence } from "../words/say-later.ts";
import { batchName } from "./batch-name.ts";

/** A batch about to be begun. */
export type Beginning = Omit<Planned, "readyBy" | "madeFor"> & { readonly readyBy?: number };

/** The version of the app that a run is pinned to. */
const appVersion = (): string => document.documentElement.dataset.version ?? "";

/** The procedure with the waits that this bar's own batches have taught. */
function asLearnt(procedure: Procedure, { spec }: Plan): Procedure {
  const learnt = timeToClear(records.value, procedure.id);
  return learnt === undefined
    ? procedure
    : withLearntTimes(procedure, learnt, spec.procedure?.times);
}

/**
 * Starts a run and opens it; its log then says what it does otherwise than its spec.
 *
 * @returns why it was refused, as a sentence; nothing once it runs
 */
export async function begin(batch: Beginning): Promise<string | undefined> {
  const { id, plan, procedure, changes, readyBy } = batch;
  // Its name and its waits depend on every batch before it.
  try {
    await everyRecord();
  } catch (error) {
    return sentence(refused("not-saved", { why: why(error) }));
  }
  const started = await perform(id, {
    type: "start-run",
    batch: batchName(plan.spec.name),
    plan,
    procedure: asLearnt(procedure, plan),
    appVersion: appVersion(),
    ...(readyBy === undefined ? {} : { readyBy }),
  });
  if (!started.ok) return sentence(started);
  if (changes.length > 0) {
    const text = sayLater.plan.whatIf.note(inOneLine(changes), String(plan.spec.version));
    // The plan itself holds every figure: a note that could not be stored loses nothing.
    await perform(id, { type: "add-note", text });
  }
  location.hash = routes.run(id);
  return undefined;
}

/** Starts a planned batch and takes it off the list. */
export async function startPlanned(one: Planned): Promise<string | undefined> {
  const refused = await begin(one);
  // Left on the list it does no harm: a run of the same id takes its place.
  if (refused === undefined) await dropPlanned(one.id);
  return refused;
}
