import { HOUR } from "../../quantity/time-units-table.ts";
import { type DripCase, FULL_SHARE } from "./drip-cases.ts";
import type { DripReading } from "./drip-readings.ts";
import { filtrationLaw } from "./filtration-law.ts";
import { fitResistance } from "./ruth-fit.ts";

/** Whether the filter is blinding: its pores fill, and it drips slower than a bed explains. */
export interface Blinding {
  readonly verdict: "no" | "suspected" | "yes";
  /** How likely a clogging filter explains the readings, 0 to 1. */
  readonly chance: number;
  /** Drip between the last two readings, ml per hour; 0 below three readings. */
  readonly mlPerHour: number;
  /** What the first readings promised for that stretch, ml per hour; 0 below three readings. */
  readonly promisedMlPerHour: number;
}

/** Fewer readings cannot tell a slow filter from one that slows down. */
const FEWEST = 3;
const SUSPECTED = 0.5;
const SURE = 0.9;

const chanceOf = (cases: readonly DripCase[]): number =>
  cases.reduce((sum, { clogs, weight }) => (clogs ? sum + weight : sum), 0);

const likeliest = (cases: readonly DripCase[]): DripCase | undefined =>
  cases.reduce<DripCase | undefined>(
    (best, one) => (best === undefined || one.weight > best.weight ? one : best),
    undefined,
  );

/** The rate that the earlier half of the readings promised at a volume, ml per ms. */
function promisedRate(readings: readonly DripReading[], ml: number, drip: DripCase): number {
  const share = (volume: number): number => Math.min(volume / drip.total, FULL_SHARE);
  const law = filtrationLaw(drip.law.head, 1);
  const first = readings.slice(0, Math.max(2, Math.floor(readings.length / 2)));
  const points = first.map((reading) => ({ time: reading.atMs, share: share(reading.ml) }));
  const { medium, cake } = fitResistance(points, law);
  const f = share(ml);
  return (drip.total * (1 - f) ** law.head) / (medium + cake * f);
}

/**
 * Whether the drip slows down more than a thickening bed and a falling head explain.
 *
 * @param cases - ways it may be going, their weights adding up to 1
 * @param readings - that they explain, in order
 * @returns suspected above a chance of 0.5, sure above 0.9; always no below three readings
 * @source posterior weight of the clogging laws (`drip-cases.ts`); thresholds by judgement
 * @limits a total much smaller than planned looks the same; how often it is right:
 * `forecastDrip`
 */
export function blindingOf(cases: readonly DripCase[], readings: readonly DripReading[]): Blinding {
  const chance = chanceOf(cases);
  const drip = likeliest(cases);
  const [before, last] = readings.slice(-2);
  if (readings.length < FEWEST || !drip || !before || !last) {
    return { verdict: "no", chance, mlPerHour: 0, promisedMlPerHour: 0 };
  }
  const rate = (last.ml - before.ml) / (last.atMs - before.atMs);
  const promised = promisedRate(readings, (last.ml + before.ml) / 2, drip);
  return {
    verdict: chance > SURE ? "yes" : chance > SUSPECTED ? "suspected" : "no",
    chance,
    mlPerHour: rate * HOUR,
    promisedMlPerHour: promised * HOUR,
  };
}
