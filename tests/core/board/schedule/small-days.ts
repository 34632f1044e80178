import type { Hold, Job, JobStep, Limits, Use } from "../../../../core/board/schedule/job.ts";
import { SLOT } from "./brute-force.ts";

/** The moment that is `minutes` after nought. */
export const at = (minutes: number): number => minutes * SLOT;

type Rest = Partial<Omit<JobStep, "id" | "kind" | "forMs">>;

/** Hands-on work of some minutes. */
export const hands = (id: string, minutes: number, rest: Rest = {}): JobStep => ({
  id,
  kind: "hands-on",
  forMs: at(minutes),
  uses: [],
  ...rest,
});

/** A wait of some minutes. */
export const wait = (id: string, minutes: number, rest: Rest = {}): JobStep => ({
  id,
  kind: "wait",
  forMs: at(minutes),
  uses: [],
  ...rest,
});

export const use = (resource: string, amount: number): Use => ({ resource, amount });

/** A job ready by some minute. */
export const job = (
  id: string,
  readyBy: number,
  steps: readonly JobStep[],
  holds: readonly Hold[] = [],
): Job => ({ id, name: id, readyBy: at(readyBy), steps, holds });

/** One person, and whatever else. */
export const limits = (capacity: Limits["capacity"] = {}): Limits => ({
  capacity: { person: 1, ...capacity },
});
