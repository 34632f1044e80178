import { UNKNOWN_PACK, USUAL_PACK } from "./pack-table.ts";
import type { Plan } from "./plan.ts";
import { type PlanUse, usesOf } from "./plan-use.ts";

/** What to fetch of one ingredient: whole packs. */
export interface PullLine {
  readonly id: string;
  readonly name: string;
  /** In g rather than ml. */
  readonly weighed: boolean;
  /** ml, or g where it is weighed. */
  readonly needed: number;
  readonly pack: number;
  /** Whether the pack's size is the house's own or common practice. */
  readonly packFrom: "price" | "common-practice";
  readonly packs: number;
  /** What stays in the last pack. */
  readonly left: number;
}

/** Share of a pack that is not worth opening another for: far below what can be poured. */
const PACK_SLIP = 1e-6;

function merged(plans: readonly Plan[]): readonly PlanUse[] {
  const all = new Map<string, PlanUse>();
  for (const use of plans.flatMap(usesOf)) {
    const before = all.get(use.id);
    const ingredient = use.ingredient?.price === undefined ? before?.ingredient : undefined;
    all.set(use.id, {
      ...use,
      ...(ingredient === undefined ? {} : { ingredient }),
      ml: use.ml + (before?.ml ?? 0),
      g: use.g + (before?.g ?? 0),
    });
  }
  return [...all.values()];
}

function pullLine({ id, name, weighed, ml, g, ingredient }: PlanUse): PullLine {
  const needed = weighed ? g : ml;
  const own = ingredient?.price?.pack;
  const usual = ingredient === undefined ? UNKNOWN_PACK : USUAL_PACK[ingredient.kind];
  const pack = own ?? usual;
  const packs = Math.max(0, Math.ceil(needed / pack - PACK_SLIP));
  return {
    id,
    name,
    weighed,
    needed,
    pack,
    packFrom: own === undefined ? "common-practice" : "price",
    packs,
    left: Math.max(0, packs * pack - needed),
  };
}

/**
 * Whole bottles and packs to fetch for one plan or several made together, and what stays in the last
 * one of each.
 *
 * @param plans - what is to be made
 * @returns one line per ingredient in order of first use; ml, or g for what is weighed. The pack is
 * what the house buys (the latest plan that knows it), otherwise what is usual for its kind
 * @source sums; usual packs as in `pack-table.ts`
 * @limits what is opened already, spilt or kept for tasting is not known
 */
export const pullList = (plans: readonly Plan[]): readonly PullLine[] =>
  merged(plans)
    .map(pullLine)
    .filter(({ needed }) => needed > 0);
