import fc from "fast-check";
import { expect, test } from "vitest";
import { densityOf, volumeOf } from "../../../core/liquid/liquid.ts";
import type { Run } from "../../../core/run/run.ts";
import { clearDensity, tareOf, vesselOf, weigh } from "../../../core/run/weigh.ts";
import { serumOf, wheyOf } from "../../../core/spec/wash.ts";
import ethanolWater from "../../published/ethanol-water.json";
import { lineOf, PUNCH, planFor, unwashed } from "../../support/world/punch-spec.ts";
import { planOf, TestBench } from "../../support/world/run-events.ts";

function runWith(
  tares: readonly (readonly ["cloudy-run" | "clear-run", number])[],
  plan = planOf(),
): Run {
  const bench = new TestBench();
  bench.start(plan);
  for (const [vessel, grams] of tares) bench.order({ type: "note-tare", vessel, grams });
  if (bench.run === undefined) throw new RangeError("a run was started");
  return bench.run;
}

/** A drink of one thing, poured and left as it is. */
const neat = (id: string) =>
  planFor({ ...unwashed(PUNCH), lines: [lineOf(id, 100)] }, { by: "volume", volume: 1000 });

// OIML R 22 / Ph. Eur., density against % vol at 20 degrees C: 948.05 kg/m3 at 40 %.
test("a ml of spirit weighs what the table says", () => {
  const { rows, tolerance } = ethanolWater.oimlTableIVa;
  const printed = rows.find(([abv]) => abv === 40)?.[1] ?? Number.NaN;
  const density = 1000 * clearDensity(runWith([], neat("brandy-40")));
  expect(Math.abs(density - printed)).toBeLessThanOrEqual(tolerance);
});

test("of a washed batch it is punch and whey by mass, with the milk as it was measured", () => {
  const run = runWith([]);
  const { mixed, milk } = run.plan;
  if (milk === undefined) throw new RangeError("the test spec is washed");
  const serum = serumOf({ punch: mixed, dairy: milk.dairy, milk: milk.ml });
  const mass =
    serum.ethanol +
    serum.water +
    serum.sugar +
    serum.solids +
    Object.values(serum.acids).reduce((sum: number, g) => sum + (g ?? 0), 0);
  expect(clearDensity(run)).toBeCloseTo(mass / volumeOf(serum), 12);
  const reading = { id: "e", act: "a", device: "d", at: 0, visit: "milk#1" } as const;
  const twice = { ...reading, what: "milk", value: 2 * milk.ml, unit: "ml" } as const;
  const more = { ...run, readings: [twice] };
  // Punch alone, then with ever more whey: each step lies nearer to whey alone.
  const punch = densityOf(mixed) / 1000;
  const whey = densityOf(wheyOf(milk.dairy, 1000)) / 1000;
  const nearer = (density: number): number => (density - punch) / (whey - punch);
  expect(nearer(clearDensity(run))).toBeGreaterThan(0);
  expect(nearer(clearDensity(more))).toBeGreaterThan(nearer(clearDensity(run)));
  expect(nearer(clearDensity(more))).toBeLessThan(1);
});

// By hand: 3412 - 812 = 2600 g of a spirit of 0.94805 g/ml are 2742.5 ml.
test("gross less tare, over the density", () => {
  const run = runWith([["clear-run", 812]], neat("brandy-40"));
  const weight = weigh(run, "collected", 3412);
  if (!weight.ok) throw new RangeError(weight.refusal);
  expect(weight.value.ml).toBeCloseTo(2742.5, 0);
  expect(weight.value.weighed).toEqual({ gross: 3412, tare: 812 });
});

test("the latest tare of a vessel counts; the cloudy run stands in another", () => {
  const run = runWith([
    ["clear-run", 812],
    ["cloudy-run", 405],
    ["clear-run", 1204],
  ]);
  expect(tareOf(run, "clear-run")).toBe(1204);
  expect(tareOf(run, "cloudy-run")).toBe(405);
  expect(vesselOf("collected")).toBe(vesselOf("yield"));
  expect(vesselOf("cloudy-run")).not.toBe(vesselOf("yield"));
  expect(tareOf(runWith([]), "clear-run")).toBeUndefined();
});

test("no tare, less than the tare, and no figure are refused; the vessel alone is nothing", () => {
  const run = runWith([["clear-run", 812]]);
  expect(weigh(run, "cloudy-run", 900)).toMatchObject({ refusal: "tare-missing" });
  expect(weigh(run, "yield", 811.9)).toEqual({
    ok: false,
    refusal: "weight-below-tare",
    about: { gross: 811.9, tare: 812 },
  });
  for (const wrong of [Number.NaN, -1, Number.POSITIVE_INFINITY]) {
    expect(weigh(run, "yield", wrong)).toMatchObject({ refusal: "reading-not-a-number" });
  }
  expect(weigh(run, "yield", 812)).toMatchObject({ ok: true, value: { ml: 0 } });
});

test("property: from volume to weight and back, whatever the vessel weighs", () => {
  const figure = fc.double({ min: 0, max: 20_000, noNaN: true });
  fc.assert(
    fc.property(figure, figure, (ml, tare) => {
      const run = runWith([["clear-run", tare]]);
      const weight = weigh(run, "collected", tare + ml * clearDensity(run));
      expect(weight.ok).toBe(true);
      if (weight.ok) expect(weight.value.ml).toBeCloseTo(ml, 6);
    }),
    { numRuns: 50 },
  );
});
