import { type Stand, WARM_AT_MOST } from "../method/procedure.ts";
import { HOUR } from "../quantity/time-units-table.ts";
import { bottledOf, endingOf, type Run } from "../run/run.ts";
import { type Standing, standingsOf } from "../run/standings.ts";

/** How long something perishable has stood above 5 degrees C, and what that calls for. */
export interface SafetyClock {
  /** ms on the counter since something perishable went in. */
  readonly warmFor: number;
  /** Where it stands now. */
  readonly stands: Stand;
  /** "near" from three hours, "past" from four. */
  readonly level: "within" | "near" | "past";
  /** When four hours will be full if it stays on the counter, epoch ms; nothing while it is cold. */
  readonly fullAt?: number;
}

/** A caution while there is still time to act. Judgement. */
const NEAR = 3 * HOUR;

/** From when to when something perishable was in the vessel. */
function perishableSpan(run: Run, now: number): { from: number; to: number } | undefined {
  const { perishableFrom } = run.procedure;
  const first = run.visits.find((visit) => visit.step === perishableFrom);
  if (first === undefined) return undefined;
  // Bottled and labelled it goes into the fridge, where the use-by date takes over.
  const to = bottledOf(run)?.at ?? endingOf(run)?.at ?? now;
  return { from: first.startedAt, to: Math.max(first.startedAt, to) };
}

/**
 * Time that a run's perishables have spent above 5 degrees C, summed over its steps from where the
 * vessel stands.
 *
 * @param run - as its log tells it
 * @param now - epoch ms
 * @returns nothing where nothing perishable has gone in
 * @source sum of the time on the counter between the perishable step and bottling; four hours: see `WARM_AT_MOST`
 * @limits counts a counter as warm and a fridge as cold: what a thermometer says comes first. It says
 *   nothing of whether a drink is safe
 */
export function safetyClockOf(run: Run, now: number): SafetyClock | undefined {
  const span = perishableSpan(run, now);
  if (span === undefined) return undefined;
  const all: readonly Standing[] = [
    { from: Number.NEGATIVE_INFINITY, at: "counter" },
    ...standingsOf(run),
  ];
  const warmFor = all.reduce((sum, { from, at }, index) => {
    if (at !== "counter") return sum;
    const until = all[index + 1]?.from ?? Number.POSITIVE_INFINITY;
    return sum + Math.max(0, Math.min(until, span.to) - Math.max(from, span.from));
  }, 0);
  const stands = all.findLast(({ from }) => from <= now)?.at ?? "counter";
  const level = warmFor >= WARM_AT_MOST ? "past" : warmFor >= NEAR ? "near" : "within";
  const runs = stands === "counter" && span.to >= now && warmFor < WARM_AT_MOST;
  return { warmFor, stands, level, ...(runs ? { fullAt: now + WARM_AT_MOST - warmFor } : {}) };
}
