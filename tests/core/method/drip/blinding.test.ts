import { expect, test } from "vitest";
import { blindingOf } from "../../../../core/method/drip/blinding.ts";
import { dripCases } from "../../../../core/method/drip/drip-cases.ts";
import { filtrationLaw } from "../../../../core/method/drip/filtration-law.ts";
import { scoreBlinding } from "./drip-score.ts";
import { timeBy } from "./simulated-drip.ts";

const HOUR = 3_600_000;
const TOTAL = { expected: 1000, low: 970, high: 1030 };

function verdict(slowness: (f: number) => number, shares: readonly number[]) {
  const time = timeBy(slowness);
  const readings = shares.map((f) => ({ atMs: time(f) * HOUR, ml: 1000 * f }));
  return blindingOf(dripCases(readings, TOTAL, "topped-up"), readings);
}

test("a bed that thickens is no blinding, and drips as promised", () => {
  const { verdict: said, mlPerHour, promisedMlPerHour } = verdict((f) => 0.5 + f, [0.1, 0.3, 0.6]);
  expect(said).toBe("no");
  // dt/df = 0.5 + f: from 0.3 to 0.6 it takes 0.3 (0.5 + 0.45) h.
  expect(mlPerHour).toBeCloseTo(1000 / 0.95, 0);
  expect(promisedMlPerHour / mlPerHour).toBeCloseTo(1, 1);
});

test("a filter that blinds is told, with what it promised and what it gives", () => {
  const slower = (f: number) => (0.5 + f) * Math.exp(10 * Math.max(0, f - 0.3));
  const {
    verdict: said,
    chance,
    mlPerHour,
    promisedMlPerHour,
  } = verdict(slower, [0.1, 0.2, 0.3, 0.5, 0.6]);
  expect(said).toBe("yes");
  expect(chance).toBeGreaterThan(0.9);
  expect(promisedMlPerHour).toBeGreaterThan(5 * mlPerHour);
  // Unclogged at 0.55 it would give 1000 / (0.5 + 0.55) ml per hour.
  expect(Math.abs(promisedMlPerHour / (1000 / 1.05) - 1)).toBeLessThan(0.15);
});

test.each([
  [0.4, "no"],
  [0.6, "suspected"],
  [0.89, "suspected"],
  [0.91, "yes"],
])("a chance of %d that it clogs: %s", (chance, said) => {
  const law = filtrationLaw(0, 1);
  const resistance = { medium: 1, cake: 1 };
  const even = { law, resistance, total: 1000, lnScale: 15, sd: 0.1 };
  const readings = [1, 2, 3].map((step) => ({ atMs: step * HOUR, ml: 100 * step }));
  const cases = [
    { ...even, clogs: true, weight: chance },
    { ...even, clogs: false, weight: 1 - chance },
  ];
  expect(blindingOf(cases, readings)).toMatchObject({ verdict: said, chance });
});

test("two readings cannot tell", () => {
  const slower = (f: number) => Math.exp(14 * f);
  expect(verdict(slower, [0.1, 0.9])).toMatchObject({ verdict: "no", mlPerHour: 0 });
  expect(verdict(slower, [0.1, 0.4, 0.9]).verdict).toBe("yes");
});

test("a drip that stands still is blinding", () => {
  const readings = [100, 200, 300, 310, 310].map((ml, i) => ({ atMs: HOUR * 3 ** i, ml }));
  const { verdict: said, mlPerHour } = blindingOf(dripCases(readings, TOTAL, "straight"), readings);
  expect(said).toBe("yes");
  expect(mlPerHour).toBe(0);
});

// Two ways to blind, one of them not the model's own. The bench: 0.99 and 0.89 for a cone.
test.each([
  ["grows", 0.95],
  ["closes", 0.75],
] as const)("simulated: six times slower is noticed where the filter %s", (blinding, least) => {
  const { readings, noticed } = scoreBlinding({ kind: "cone", blinding }, "cone", [6, 30], 30, 11);
  expect(readings).toBeGreaterThan(15);
  expect(noticed).toBeGreaterThan(least);
});

// The bench finds 0.5 and 0.9 %.
test.each([1, 1.07])("simulated: few false alarms, the plan %d of the truth", (planned) => {
  const plot = { kind: "packing", planned } as const;
  const { readings, noticed } = scoreBlinding(plot, "unknown", [1, 2], 15, 5);
  expect(readings).toBeGreaterThan(100);
  expect(noticed).toBeLessThan(0.04);
});
