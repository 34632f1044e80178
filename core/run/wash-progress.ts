import type { ReadingKey } from "../method/procedure.ts";
import { punchMeasuredOut } from "../spec/plan-use.ts";
import type { Run } from "./run.ts";

/** The latest reading of a volume; what was weighed or counted is none. */
const latestMl = (run: Run, what: ReadingKey): number | undefined =>
  run.readings.findLast((reading) => reading.what === what && reading.unit === "ml")?.value;

/** The milk that was measured into the vessel, ml; nothing until it is. */
export const milkMeasured = (run: Run): number | undefined => latestMl(run, "milk");

/** The milk that was measured into the vessel, or the plan's until it is. ml */
export const milkPoured = (run: Run): number => milkMeasured(run) ?? run.plan.milk?.ml ?? 0;

/**
 * What went into the vessel before filtering: the punch as planned and the milk as measured.
 *
 * @returns ml, each measured before they met; dry goods have none
 */
export const pouredIn = (run: Run): number => punchMeasuredOut(run.plan) + milkPoured(run);

/** The punch by the plan, the room that dissolved sugar takes included. ml */
function plannedPunch({ plan }: Run): number {
  if (plan.yield === undefined || plan.milk === undefined) return plan.finalMl;
  return plan.yield.poured - plan.milk.ml;
}

/**
 * The most that the vessel can hold: dissolved sugar takes room that nobody measured out.
 *
 * @returns ml
 * @source the plan's volume at 20 degrees C, or the sum as measured out where that is more
 */
export const mostInVessel = (run: Run): number =>
  Math.max(pouredIn(run), plannedPunch(run) + milkPoured(run));

/** The latest reading of what has come through the filter, ml; nothing before the first. */
export const collectedSoFar = (run: Run): number | undefined => latestMl(run, "collected");

/** How often the cloudy run has been poured back; two phones that both say so mean one pour. */
export const passesOf = (run: Run): number => new Set(run.rePours.map((one) => one.visit)).size;
