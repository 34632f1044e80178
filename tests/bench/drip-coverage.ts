// How true the drip forecast is, on many simulated drips:
// node tests/support/tool/run.mjs tests/bench/drip-coverage.ts [trials a row, 1000 unless told]
import { forecastDrip } from "../../core/method/drip/drip-forecast.ts";
import { SCHEDULES, scoreBlinding, scoreForecasts } from "../core/method/drip/drip-score.ts";
import { seeded, simulateDrip } from "../core/method/drip/simulated-drip.ts";

const trials = Number(process.argv[2] ?? 1000);
const KINDS = [
  ["topped-up", "topped-up"],
  ["straight", "straight"],
  ["cone", "cone"],
  ["packing", "unknown"],
  ["cone", "unknown"],
  ["straight", "unknown"],
  ["topped-up", "unknown"],
] as const;
const round = (value: number): number => Math.round(value * 1000) / 1000;

console.log(`Time to 90 %: error in %, and where the truth lies; ${trials} drips a row`);
console.table(
  KINDS.flatMap(([kind, shape]) =>
    Object.entries(SCHEDULES).map(([schedule, shares]) => {
      const score = scoreForecasts(kind, shape, shares, trials, 7);
      const rounded = Object.entries(score).map(([name, value]) => [name, round(value)]);
      return { kind, shape, schedule, ...Object.fromEntries(rounded) };
    }),
  ),
);

console.log("Blinding: share of readings at which it is noticed, by how many times slower it is");
const SLOWER = [
  [1, 1.5],
  [1.5, 3],
  [3, 6],
  [6, 15],
  [15, 1000],
] as const;
const runs = Math.ceil(trials / 5);
console.table(
  KINDS.slice(0, 5).flatMap(([kind, shape]) =>
    (["grows", "closes"] as const).flatMap((blinding) =>
      SLOWER.map((range) => {
        const { readings, noticed, sure } = scoreBlinding(
          { kind, blinding },
          shape,
          range,
          runs,
          11,
        );
        const slower = range.join(" to ");
        return {
          kind,
          shape,
          blinding,
          slower,
          readings,
          noticed: round(noticed),
          sure: round(sure),
        };
      }),
    ),
  ),
);

console.log(
  "False alarms: the filter never blinds; planned is the planned total over the true one",
);
console.table(
  KINDS.flatMap(([kind, shape]) =>
    [1, 1.07].map((planned) => {
      const { readings, noticed, sure } = scoreBlinding({ kind, planned }, shape, [1, 2], runs, 5);
      return { kind, shape, planned, readings, noticed: round(noticed), sure: round(sure) };
    }),
  ),
);

const chance = seeded(3);
const drips = Array.from({ length: 100 }, () =>
  simulateDrip({ kind: "cone", shares: SCHEDULES.six }, chance),
);
for (const shape of ["topped-up", "straight", "cone", "unknown"] as const) {
  const first = performance.now();
  for (const { readings, total } of drips.slice(0, 1)) forecastDrip({ readings, total, shape });
  const from = performance.now();
  for (const { readings, total } of drips) forecastDrip({ readings, total, shape });
  const each = (performance.now() - from) / drips.length;
  console.log(`${shape}: first ${round(from - first)} ms, then ${round(each)} ms a forecast`);
}
