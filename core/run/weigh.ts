import { densityOf } from "../liquid/liquid.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import { serumOf } from "../spec/wash.ts";
import type { Vessel, Weighed } from "./event.ts";
import type { Run } from "./run.ts";
import { milkPoured } from "./wash-progress.ts";

/** Volumes that may be read off a scale, with the vessel they stand in. */
export type Weighable = "cloudy-run" | "collected" | "yield";

/** Why a weight says nothing about a volume. */
export type WeightRefusal = "reading-not-a-number" | "tare-missing" | "weight-below-tare";

const VESSEL_OF: Readonly<Record<Weighable, Vessel>> = {
  "cloudy-run": "cloudy-run",
  // What drips slowly is measured in the vessel it dripped into.
  collected: "clear-run",
  yield: "clear-run",
};

/** The vessel a volume stands in. */
export const vesselOf = (what: Weighable): Vessel => VESSEL_OF[what];

/** What a vessel of this batch weighs empty, g; nothing until somebody weighed it. */
export const tareOf = (run: Run, vessel: Vessel): number | undefined =>
  run.tares.findLast((one) => one.vessel === vessel)?.grams;

/**
 * What a ml of the clear liquid weighs: punch and whey mixed by mass, the milk as measured; of a
 * batch that is not washed, the drink itself.
 *
 * @returns g per ml at 20 degrees C
 * @source as `densityOf` and `serumOf`
 * @limits the punch counts as planned; what drips first and last is not told apart. A cloudy run
 *   holds a little curd, which is hardly heavier
 */
export function clearDensity(run: Run): number {
  const { mixed, milk, final } = run.plan;
  const clear =
    milk === undefined
      ? final
      : serumOf({ punch: mixed, dairy: milk.dairy, milk: milkPoured(run) });
  return densityOf(clear) / 1000;
}

/**
 * The volume that a weight means.
 *
 * @param run - with the tare of the vessel noted
 * @param what - was weighed
 * @param gross - with its vessel, g
 * @returns ml at 20 degrees C, as the plan counts, however cold it was weighed; or why it is none
 * @source volume = (gross - tare) / density
 * @limits as `clearDensity`: a reading's error is the scale's and the tare's
 */
export function weigh(
  run: Run,
  what: Weighable,
  gross: number,
): Result<{ readonly ml: number; readonly weighed: Weighed }, WeightRefusal> {
  if (!Number.isFinite(gross) || gross < 0) return refused("reading-not-a-number");
  const tare = tareOf(run, vesselOf(what));
  if (tare === undefined) return refused("tare-missing");
  if (gross < tare) return refused("weight-below-tare", { gross, tare });
  return accepted({ ml: (gross - tare) / clearDensity(run), weighed: { gross, tare } });
}
