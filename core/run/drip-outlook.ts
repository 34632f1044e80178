import { type DripForecast, forecastDrip, type NoForecast } from "../method/drip/drip-forecast.ts";
import type { VesselShape } from "../method/drip/vessel-shape.ts";
import { MINUTE } from "../quantity/time-units-table.ts";
import { openVisit, type Reading, type Run, stepOfVisit, type Visit } from "./run.ts";

/** What had dripped, and when, epoch ms. */
export interface Collected {
  readonly at: number;
  readonly ml: number;
}

/** The visit that drips now; nothing at any other step. */
export function drippingVisit(run: Run): Visit | undefined {
  const visit = openVisit(run);
  return visit !== undefined && stepOfVisit(run, visit).work === "drip" ? visit : undefined;
}

/** The visit that drips now or dripped last; nothing in a batch that has not come to it. */
export const lastDrip = (run: Run): Visit | undefined =>
  run.visits.findLast((visit) => stepOfVisit(run, visit).work === "drip");

const isCollected = ({ what, unit }: Pick<Reading, "what" | "unit">): boolean =>
  what === "collected" && unit === "ml";

/** The readings of a drip, in the order they were noted. */
export const collectedIn = (run: Run, visit: Visit): readonly Collected[] =>
  run.readings
    .filter((one) => one.visit === visit.key && isCollected(one))
    .map(({ at, value }) => ({ at, ml: value }));

/** What stands above the filter: as somebody said at the drip, or else as the spec says. */
export const shapeOf = (run: Run): VesselShape =>
  run.shapes.at(-1)?.shape ?? run.plan.spec.wash?.filterShape ?? "unknown";

/** Whether to ask what stands above the filter: neither the spec nor anybody has said. */
export const asksShape = (run: Run): boolean =>
  run.shapes.length === 0 &&
  run.plan.yield !== undefined &&
  drippingVisit(run) !== undefined &&
  shapeOf(run) === "unknown";

type Outlook = DripForecast | NoForecast;

// A memo of a pure function: the reading that asks when to look again is drawn with its forecast a
// moment later, and the Bench's day is planned anew each minute from the same readings.
const made = new Map<string, Outlook>();
/** More drips than that at once no cellar has. */
const KEPT = 16;

function forecastOnce(asked: Parameters<typeof forecastDrip>[0]): Outlook {
  const key = JSON.stringify(asked);
  const known = made.get(key);
  if (known !== undefined) return known;
  const outlook = forecastDrip(asked);
  const [oldest] = made.keys();
  if (made.size >= KEPT && oldest !== undefined) made.delete(oldest);
  made.set(key, outlook);
  return outlook;
}

/**
 * When a slow drip will be through, from the readings of what has come so far.
 *
 * @param run - with a plan that expects a yield
 * @param more - a reading just taken that the log does not hold yet
 * @param visit - the drip; the one going on unless told
 * @returns the forecast, or why there is none yet; nothing where nothing drips. Times in it count
 *   from the start of the step
 * @source as `forecastDrip`
 * @limits readings are what stands in the vessel under the filter since the slow drip began
 */
export function dripOutlook(
  run: Run,
  more: readonly Collected[] = [],
  visit = drippingVisit(run),
): Outlook | undefined {
  const expected = run.plan.yield;
  if (visit === undefined || expected === undefined || !(expected.expected > 0)) return undefined;
  const readings = [...collectedIn(run, visit), ...more];
  return forecastOnce({
    readings: readings.map(({ at, ml }) => ({ atMs: at - visit.startedAt, ml })),
    total: expected,
    shape: shapeOf(run),
  });
}

/** A look sooner than this after a reading tells nothing new, ms. Judgement. */
const SOONEST = 5 * MINUTE;

/**
 * When to look at a drip again: at the reading that would tell most, or when it should be through,
 * whichever comes first.
 *
 * @param visit - the drip
 * @param outlook - from its readings
 * @param last - when it was last read, epoch ms
 * @returns epoch ms, at least five minutes after the last reading; nothing before the first
 */
export function nextLookAt(visit: Visit, outlook: Outlook, last: number): number | undefined {
  if (outlook.type === "none" && outlook.why === "no-reading") return undefined;
  const through = outlook.type === "forecast" ? outlook.throughAt.p50 : Number.POSITIVE_INFINITY;
  const at = visit.startedAt + Math.min(outlook.nextReading.atMs, through);
  return Math.round(Math.max(at, last + SOONEST));
}

/**
 * When somebody should look at the drip again once a reading is noted; never in the past.
 *
 * @param reading - just taken, ml
 * @param now - epoch ms
 * @returns epoch ms; nothing while there is no forecast
 */
export function nextDripLook(run: Run, reading: number, now: number): number | undefined {
  const visit = drippingVisit(run);
  const outlook = dripOutlook(run, [{ at: now, ml: reading }]);
  return visit && outlook && nextLookAt(visit, outlook, now);
}
