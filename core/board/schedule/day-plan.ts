import { MINUTE } from "../../quantity/time-units-table.ts";
import type { Job } from "./job.ts";
import { endIn, type Network, startIn } from "./network.ts";

/** A step as it stands in the plan. Epoch ms. */
export interface PlacedStep {
  readonly job: string;
  readonly step: string;
  readonly startAt: number;
  readonly endAt: number;
}

/** A stretch of time, epoch ms. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** A stretch of time in which nobody is needed; without an end where nothing comes after it. */
export interface QuietSpan {
  readonly from: number;
  readonly to?: number;
}

/** A day that works out. Times in epoch ms. */
export interface DayPlan {
  readonly ok: true;
  /** By job, its steps in order. */
  readonly placed: readonly PlacedStep[];
  /**
   * The latest start of what is next to do, by job; none where all has begun. No job can start
   * later than this unless another starts earlier; in a day planned anew, unless work that was
   * announced is moved.
   */
  readonly latestStart: readonly { readonly job: string; readonly startAt: number }[];
  /** When somebody must be there, from now on. */
  readonly handsOnWindows: readonly Span[];
  /** Until when nobody is needed; absent while somebody is, or where nobody will be. */
  readonly quietUntil?: number;
  /** The next stretch of 20 min or more in which nobody is needed. */
  readonly nextQuiet: QuietSpan;
  /** Proved: no plan starts later in all. Otherwise the best of many that were tried. */
  readonly proved: boolean;
  /** Jobs that end after their ready-by. None but in a plan that makes the least of a bad day. */
  readonly late: readonly { readonly job: string; readonly byMs: number }[];
  /** Steps that stand longer before them than they may; none otherwise. */
  readonly stood: readonly { readonly job: string; readonly step: string; readonly byMs: number }[];
}

/** @source judgement: shorter than this, nothing worth a walk gets done */
const QUIET = 20 * MINUTE;

/** The job of which something is longest, if any. */
export const longestOf = <One extends { readonly byMs: number }>(
  of: readonly One[],
): One | undefined => of.toSorted((a, b) => b.byMs - a.byMs)[0];

/** Spans that touch or overlap become one. */
function merged(spans: readonly Span[]): readonly Span[] {
  const out: Span[] = [];
  for (const span of spans.toSorted((a, b) => a.from - b.from)) {
    const last = out.at(-1);
    if (last === undefined || span.from > last.to) out.push(span);
    else out[out.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
  }
  return out;
}

/** The first gap that is long enough, before, between or after the windows. */
function quietAfter(windows: readonly Span[], now: number): QuietSpan {
  let from = now;
  for (const window of windows) {
    if (window.from - from >= QUIET) return { from, to: window.from };
    from = Math.max(from, window.to);
  }
  return { from };
}

function lateJobs(
  jobs: readonly Job[],
  placed: readonly PlacedStep[],
  now: number,
): DayPlan["late"] {
  return jobs.flatMap(({ id, readyBy }) => {
    const endAt = placed.findLast((one) => one.job === id)?.endAt ?? readyBy;
    return endAt > Math.max(now, readyBy) ? [{ job: id, byMs: endAt - readyBy }] : [];
  });
}

function stoodSteps(jobs: readonly Job[], placed: readonly PlacedStep[]): DayPlan["stood"] {
  return jobs.flatMap(({ id, steps }) => {
    const mine = placed.filter((one) => one.job === id);
    return steps.flatMap(({ id: step, mayWaitBefore, fixedStart }, i) => {
      const [before, here] = [mine[i - 1], mine[i]];
      if (before === undefined || here === undefined || fixedStart !== undefined) return [];
      const byMs = here.startAt - before.endAt - (mayWaitBefore ?? Number.POSITIVE_INFINITY);
      return byMs > 0 ? [{ job: id, step, byMs }] : [];
    });
  });
}

/** The steps of the jobs where the search has put them. */
export function placedSteps(network: Network, starts: Float64Array): readonly PlacedStep[] {
  return network.chains.flatMap(({ job, tasks }) =>
    job === undefined
      ? []
      : tasks.map((task) => ({
          job: job.id,
          step: task.step,
          startAt: startIn(starts, task),
          endAt: endIn(starts, task),
        })),
  );
}

/** When somebody must be there, from now on. */
function handsOnFrom(jobs: readonly Job[], placed: readonly PlacedStep[], now: number) {
  const kinds = jobs.flatMap(({ steps }) => steps.map(({ kind }) => kind));
  return merged(
    placed
      .filter(({ startAt, endAt }, i) => kinds[i] === "hands-on" && endAt > Math.max(now, startAt))
      .map(({ startAt, endAt }) => ({ from: Math.max(now, startAt), to: endAt })),
  );
}

/**
 * What a day's placing means for the people in it.
 *
 * @param jobs - as they were asked for: what is late is measured against them
 * @param placed - all their steps, in the same order
 * @param now - epoch ms
 */
export function dayPlanOf(
  jobs: readonly Job[],
  placed: readonly PlacedStep[],
  proved: boolean,
  now: number,
): DayPlan {
  const handsOnWindows = handsOnFrom(jobs, placed, now);
  const [next] = handsOnWindows;
  const quiet = next !== undefined && next.from > now ? { quietUntil: next.from } : {};
  return {
    ok: true,
    placed,
    latestStart: jobs.flatMap(({ id, steps }) => {
      const todo = steps.find((step) => step.fixedStart === undefined)?.id;
      const found = placed.find((one) => one.job === id && one.step === todo);
      return found === undefined ? [] : [{ job: id, startAt: found.startAt }];
    }),
    handsOnWindows,
    ...quiet,
    nextQuiet: quietAfter(handsOnWindows, now),
    proved,
    late: lateJobs(jobs, placed, now),
    stood: stoodSteps(jobs, placed),
  };
}
