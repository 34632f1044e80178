import { type DripForecast, forecastDrip, type NoForecast } from "../method/drip/drip-forecast.ts";
import { openVisit, type Reading, type Run, stepOfVisit, type Visit } from "./run.ts";

/** The visit that drips now; nothing at any other step. */
export function drippingVisit(run: Run): Visit | undefined {
  const visit = openVisit(run);
  return visit !== undefined && stepOfVisit(run, visit).work === "drip" ? visit : undefined;
}

const isCollected = ({ what, unit }: Pick<Reading, "what" | "unit">): boolean =>
  what === "collected" && unit === "ml";

/**
 * When the slow drip will be through, from the readings of what has come so far.
 *
 * @param run - at its slow drip, with a plan that expects a yield
 * @param more - a reading just taken that the log does not hold yet; ml, epoch ms
 * @returns the forecast, or why there is none yet; nothing where nothing drips. Times in it count
 *   from the start of the step
 * @source as `forecastDrip`
 * @limits readings are what stands in the vessel under the filter since the slow drip began
 */
export function dripOutlook(
  run: Run,
  more: readonly { readonly at: number; readonly ml: number }[] = [],
): DripForecast | NoForecast | undefined {
  const visit = drippingVisit(run);
  const expected = run.plan.yield;
  if (visit === undefined || expected === undefined || !(expected.expected > 0)) return undefined;
  const logged = run.readings
    .filter((one) => one.visit === visit.key && isCollected(one))
    .map(({ at, value }) => ({ at, ml: value }));
  return forecastDrip({
    readings: [...logged, ...more].map(({ at, ml }) => ({ atMs: at - visit.startedAt, ml })),
    total: expected,
    shape: run.plan.spec.wash?.filterShape ?? "unknown",
  });
}

/**
 * When somebody should look at the drip again: at the reading that would tell most, or when it
 * should be through, whichever comes first; never in the past.
 *
 * @param now - epoch ms
 * @returns epoch ms; nothing while there is no forecast
 */
export function nextDripLook(run: Run, reading: number, now: number): number | undefined {
  const visit = drippingVisit(run);
  const outlook = dripOutlook(run, [{ at: now, ml: reading }]);
  if (visit === undefined || outlook === undefined) return undefined;
  if (outlook.type === "none" && outlook.why === "no-reading") return undefined;
  const through = outlook.type === "forecast" ? outlook.throughAt.p50 : Number.POSITIVE_INFINITY;
  const at = visit.startedAt + Math.min(outlook.nextReading.atMs, through);
  return Math.round(Math.max(at, now + SOONEST));
}

/** A look sooner than this after a reading tells nothing new, ms. Judgement. */
const SOONEST = 5 * 60_000;
