import type { DripForecast } from "../method/drip/drip-forecast.ts";
import { mayNeverBeThrough } from "../method/drip/never-through.ts";
import type { Collected } from "../run/drip-outlook.ts";
import type { Visit } from "../run/run.ts";
import { amountTicks, clockTicks } from "./axis-ticks.ts";

/** A place on the way that is still ahead: its volume, and when it is reached. Epoch ms. */
export interface AheadPoint {
  readonly ml: number;
  readonly early: number;
  readonly middle: number;
  readonly late: number;
}

/** A slow drip to draw: volume against the clock. Times in epoch ms, volumes in ml. */
export interface DripChart {
  readonly from: number;
  readonly to: number;
  readonly mostMl: number;
  /** In order of time. */
  readonly readings: readonly Collected[];
  /** Readings that the forecast leaves out. */
  readonly keptOut: readonly Collected[];
  /** The likeliest course of what was read. */
  readonly fitted: readonly Collected[];
  /** 8 in 10 times it goes on between early and late; it may reach beyond `to`. */
  readonly ahead: readonly AheadPoint[];
  /** Where the share that counts as through lies. */
  readonly targetMl: number;
  readonly target: number;
  /** No end is in sight: a time for it would be a guess. */
  readonly unending: boolean;
  readonly timeTicks: readonly number[];
  readonly mlTicks: readonly number[];
}

/** What a drawing is made for. */
export interface ChartAxes {
  /** The latest moment that must be on it, epoch ms: now, or the end of the drip. */
  readonly until: number;
  /** What the clock on the wall is ahead of UTC, ms. */
  readonly zoneMs: number;
  /** The unit that volumes are shown in, ml. */
  readonly unitMl: number;
}

const MOST_TIMES = 4;
const MOST_AMOUNTS = 4;
/** Room past the last thing drawn. */
const MARGIN = 1.05;
const HEADROOM = 1.08;
/** A late end further off than this many times the middle would squeeze all else. */
const LONGEST_DRAWN = 2;
/** Where no end is in sight, so many times what has gone by. */
const UNENDING_DRAWN = 3;

/** Where the drawing ends, ms since the drip began. */
function drawnUntil({ throughAt, curve }: DripForecast, lastMs: number): number {
  if (curve.ahead.length === 0) return lastMs;
  const drawn = Math.min(throughAt.p90, LONGEST_DRAWN * throughAt.p50);
  return mayNeverBeThrough(throughAt) ? Math.min(drawn, UNENDING_DRAWN * lastMs) : drawn;
}

/**
 * The drawing of a slow drip: what was read, how it fits, and where it goes.
 *
 * @param visit - the drip
 * @param collected - what was read in it
 * @param forecast - from those readings
 * @param axes - what the drawing must hold and how it is marked
 * @source the curve as in `dripCurve`
 */
export function dripChartOf(
  visit: Visit,
  collected: readonly Collected[],
  forecast: DripForecast,
  { until, zoneMs, unitMl }: ChartAxes,
): DripChart {
  const from = visit.startedAt;
  const left = new Set(forecast.keptOut.map(({ atMs, ml }) => `${atMs} ${ml}`));
  const isLeft = ({ at, ml }: Collected): boolean => left.has(`${at - from} ${ml}`);
  const inOrder = collected.toSorted((a, b) => a.at - b.at);
  const readings = inOrder.filter((one) => !isLeft(one));
  const lastMs = (readings.at(-1)?.at ?? from) - from;
  const targetMl = forecast.target * forecast.totalMl.p50;
  const { fitted, ahead } = forecast.curve;
  const most = Math.max(targetMl, fitted.at(-1)?.ml ?? 0, ...inOrder.map(({ ml }) => ml));
  const end = Math.max(until - from, lastMs, drawnUntil(forecast, lastMs));
  const to = from + Math.round(MARGIN * end);
  const mostMl = HEADROOM * most;
  return {
    from,
    to,
    mostMl,
    readings,
    // A reading from before the drip has no place on it.
    keptOut: inOrder.filter((one) => isLeft(one) && one.at >= from),
    fitted: fitted.map(({ ml, atMs }) => ({ ml, at: from + atMs })),
    ahead: ahead.map(({ ml, atMs }) => ({
      ml,
      early: from + atMs.p10,
      middle: from + atMs.p50,
      late: from + atMs.p90,
    })),
    targetMl,
    target: forecast.target,
    unending: ahead.length > 0 && mayNeverBeThrough(forecast.throughAt),
    timeTicks: clockTicks(from, to, MOST_TIMES, zoneMs),
    mlTicks: amountTicks(mostMl, MOST_AMOUNTS, unitMl),
  };
}
