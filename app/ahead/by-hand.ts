import type { PlacedStep } from "../../core/board/schedule/day-plan.ts";
import type { PrepDay } from "../../core/board/schedule/prep-day.ts";
import { dayOf } from "./prep.ts";

/** All work by hand of a plan, batch by batch. */
export function workByHand(found: PrepDay): readonly PlacedStep[] {
  const byHand = new Map(
    found.jobs.map(({ id, steps }) => [
      id,
      new Set(steps.flatMap((step) => (step.kind === "hands-on" ? [step.id] : []))),
    ]),
  );
  return dayOf(found).placed.filter(({ job, step }) => byHand.get(job)?.has(step) === true);
}

/** Steps of one batch that follow one another without a break stand together. */
export function windowsOf(work: readonly PlacedStep[]): readonly (readonly PlacedStep[])[] {
  const windows: PlacedStep[][] = [];
  for (const one of work) {
    const last = windows.at(-1);
    const before = last?.at(-1);
    const follows = before?.job === one.job && before.endAt === one.startAt;
    if (last !== undefined && follows) last.push(one);
    else windows.push([one]);
  }
  return windows;
}
