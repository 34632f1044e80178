import type { Stand } from "../method/procedure.ts";
import type { Run } from "./run.ts";

/** Where the vessel stood from a moment on, epoch ms. */
export interface Standing {
  readonly from: number;
  readonly at: Stand;
}

/**
 * Where the vessel stood, by its steps and by what somebody said, earliest first.
 *
 * @param run - as its log tells it
 * @returns nothing before the first that is known; until then it stands on the counter
 */
export function standingsOf(run: Run): readonly Standing[] {
  const bySteps = run.visits.flatMap((visit): Standing[] => {
    const stands = run.procedure.steps.find((step) => step.id === visit.step)?.stands;
    return stands === undefined ? [] : [{ from: visit.startedAt, at: stands }];
  });
  const said = run.stands.map(({ at, to }) => ({ from: at, at: to }));
  return [...bySteps, ...said].sort((a, b) => a.from - b.from);
}

/** Where the vessel was put last; on the counter until told. */
export const standsNow = (run: Run): Stand => standingsOf(run).at(-1)?.at ?? "counter";
