// How well simulated drips are forecast: shared by the test (few trials) and the bench (many).
import { forecastDrip } from "../../../../core/method/drip/drip-forecast.ts";
import type { VesselShape } from "../../../../core/method/drip/vessel-shape.ts";
import {
  type BlindingKind,
  type DripKind,
  type Plot,
  seeded,
  simulateDrip,
} from "./simulated-drip.ts";

/** When a drip is read, as shares of its total; the first three as in filtration_eta_accuracy.json. */
export const SCHEDULES = {
  two: [0.15, 0.4],
  three: [0.15, 0.3, 0.5],
  four: [0.1, 0.25, 0.45, 0.65],
  early: [0.08, 0.16, 0.25],
  six: [0.1, 0.2, 0.35, 0.5, 0.65, 0.78],
} as const;
const OFTEN = [0.08, 0.16, 0.24, 0.32, 0.4, 0.48, 0.56, 0.64, 0.7, 0.76, 0.82, 0.88];

export interface Score {
  /** Error of the time to 90 %, %. */
  readonly median: number;
  readonly ninth: number;
  readonly bias: number;
  /** Share of drips whose true time lies in the 80 % range, and what lies before and after it. */
  readonly inside: number;
  readonly before: number;
  readonly after: number;
  /** Median width of the range, share of its middle. */
  readonly width: number;
}

const rank = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.floor(share * values.length)] ?? Number.NaN;
const share = (values: readonly boolean[]): number =>
  values.filter(Boolean).length / Math.max(1, values.length);

/** Errors and coverage of the forecast of the time to 90 %. */
export function scoreForecasts(
  kind: DripKind,
  shape: VesselShape,
  shares: readonly number[],
  trials: number,
  seed: number,
): Score {
  const chance = seeded(seed);
  const runs = Array.from({ length: trials }, () => {
    const { readings, total, trueMs } = simulateDrip({ kind, shares }, chance);
    const forecast = forecastDrip({ readings, total, shape });
    if (forecast.type === "none") throw new RangeError("a simulated drip must give a forecast");
    const { p10, p50, p90 } = forecast.throughAt;
    const truth = trueMs(0.9);
    const width = (p90 - p10) / p50;
    return { error: 100 * (p50 / truth - 1), before: truth < p10, after: truth > p90, width };
  });
  const errors = runs.map(({ error }) => Math.abs(error));
  const before = share(runs.map((run) => run.before));
  const after = share(runs.map((run) => run.after));
  return {
    median: rank(errors, 0.5),
    ninth: rank(errors, 0.9),
    bias: rank(
      runs.map(({ error }) => error),
      0.5,
    ),
    inside: 1 - before - after,
    before,
    after,
    width: rank(
      runs.map(({ width }) => width),
      0.5,
    ),
  };
}

export interface BlindingScore {
  readonly readings: number;
  readonly noticed: number;
  readonly sure: number;
}

/** How often blinding is flagged, reading by reading, by how many times slower the filter is. */
export function scoreBlinding(
  plot: { readonly kind: DripKind; readonly blinding?: BlindingKind; readonly planned?: number },
  shape: VesselShape,
  [least, most]: readonly [number, number],
  trials: number,
  seed: number,
): BlindingScore {
  const chance = seeded(seed);
  const verdicts: string[] = [];
  const often: Plot = { ...plot, shares: OFTEN, jitter: 0.1 };
  for (let trial = 0; trial < trials; trial += 1) {
    const { readings, total, slower } = simulateDrip(often, chance);
    for (const [i, times] of slower.entries()) {
      if (i < 2 || times < least || times >= most) continue;
      const forecast = forecastDrip({ readings: readings.slice(0, i + 1), total, shape });
      if (forecast.type === "forecast") verdicts.push(forecast.blinding.verdict);
    }
  }
  return {
    readings: verdicts.length,
    noticed: share(verdicts.map((verdict) => verdict !== "no")),
    sure: share(verdicts.map((verdict) => verdict === "yes")),
  };
}
