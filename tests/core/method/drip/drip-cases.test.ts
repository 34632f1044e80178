import { expect, test } from "vitest";
import { dripCases, lnTimeOf, totalScatter } from "../../../../core/method/drip/drip-cases.ts";
import { timeBy } from "./simulated-drip.ts";

const TOTAL = { expected: 1000, low: 970, high: 1030 };
const exact = (slowness: (f: number) => number, shares: readonly number[]) => {
  const time = timeBy(slowness);
  return { readings: shares.map((f) => ({ atMs: time(f) * 1e6, ml: 1000 * f })), time };
};
const SHARES = [0.08, 0.15, 0.25, 0.35, 0.45, 0.55, 0.65, 0.75, 0.82];

test("weights add up to 1, and none is negligible", () => {
  const { readings } = exact((f) => 0.4 + f, [0.2, 0.4]);
  const cases = dripCases(readings, TOTAL, "unknown");
  expect(cases.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  expect(cases.length).toBeGreaterThan(50);
  expect(Math.min(...cases.map(({ weight }) => weight))).toBeGreaterThan(1e-9);
});

test.each([
  ["topped up", 0],
  ["straight", 1],
])("exact readings find the law: %s", (_, head) => {
  const { readings, time } = exact((f) => (0.3 + f) / (1 - f) ** head, SHARES);
  const sound = dripCases(readings, TOTAL, "unknown").filter(({ clogs }) => !clogs);
  const sum = sound.reduce((so, { weight }) => so + weight, 0);
  const meanHead = sound.reduce((so, { law, weight }) => so + law.head * weight, 0) / sum;
  expect(Math.abs(meanHead - head)).toBeLessThan(0.25);
  const mean = sound.reduce((so, drip) => so + drip.weight * lnTimeOf(drip, 0.9), 0) / sum;
  expect(Math.abs(mean - Math.log(time(0.9) * 1e6))).toBeLessThan(0.1);
});

test("one reading fits every case: then the width of its scale decides, as chances ask", () => {
  const cases = dripCases([{ atMs: 1e6, ml: 300 }], TOTAL, "topped-up");
  const alike = cases.filter(({ law, total, clogs, resistance }) => {
    const bed = law.head === 0 && law.packing === 1 && !clogs && resistance.cake === 1;
    return bed && Math.abs(total - 1000) < 1;
  });
  expect(alike.length).toBe(13);
  const [first] = alike;
  for (const { weight, sd } of alike) {
    expect(weight / sd / ((first?.weight ?? 0) / (first?.sd ?? 1))).toBeCloseTo(1, 9);
  }
  // From a bare bed to a bare filter a slip in volume counts from double to single.
  expect(Math.max(...alike.map(({ sd }) => sd))).toBeGreaterThan(
    1.5 * Math.min(...alike.map(({ sd }) => sd)),
  );
});

test("a filter that clogs is found as one", () => {
  const { readings } = exact((f) => (0.3 + f) * Math.exp(10 * Math.max(0, f - 0.3)), SHARES);
  const cases = dripCases(readings, TOTAL, "topped-up");
  const clogs = cases.filter((drip) => drip.clogs);
  expect(clogs.reduce((sum, { weight }) => sum + weight, 0)).toBeGreaterThan(0.99);
});

test("the plan decides the total until the jug knows better", () => {
  const { readings } = exact((f) => 0.4 + f, [0.2, 0.4]);
  const totals = dripCases(readings, TOTAL, "straight").map(({ total }) => total);
  expect(Math.min(...totals)).toBeGreaterThan(900);
  expect(Math.max(...totals)).toBeLessThan(1100);
  const more = readings.map(({ atMs, ml }) => ({ atMs, ml: 4 * ml }));
  const corrected = dripCases(more, TOTAL, "straight").map(({ total }) => total);
  expect(Math.min(...corrected)).toBeGreaterThan(1500);
});

test("readings that no law explains leave it less sure", () => {
  const sure = dripCases(exact((f) => 0.4 + f, SHARES).readings, TOTAL, "topped-up");
  const wild = dripCases(
    [1e5, 9e5, 1e6, 5e6, 5.1e6].map((atMs, i) => ({ atMs, ml: 150 * (i + 1) })),
    TOTAL,
    "topped-up",
  );
  const spread = (cases: typeof sure) => Math.min(...cases.map(({ sd }) => sd));
  expect(spread(wild)).toBeGreaterThan(3 * spread(sure));
});

test("scatter of the total: its 80 % range over 2.563, within 0.5 to 30 %", () => {
  expect(totalScatter({ expected: 1000, low: 900, high: 1100 })).toBeCloseTo(0.078, 3);
  expect(totalScatter({ expected: 1000, low: 1000, high: 1000 })).toBe(0.005);
  expect(totalScatter({ expected: 1000, low: 0, high: 3000 })).toBe(0.3);
});
