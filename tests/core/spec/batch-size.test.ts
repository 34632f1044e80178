import fc from "fast-check";
import { expect, test } from "vitest";
import { volumeOf } from "../../../core/liquid/liquid.ts";
import { writtenAmounts } from "../../../core/spec/batch-amounts.ts";
import { scaleFor } from "../../../core/spec/batch-size.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import {
  cupboardWith,
  dryOf,
  lineOf,
  must,
  PUNCH,
  unwashed,
} from "../../support/world/punch-spec.ts";

const sized = (size: BatchSize, spec: Spec = PUNCH, house = NEW_HOUSE) =>
  scaleFor(spec, must(writtenAmounts(spec, cupboardWith(), house.ounce)), size, house);
const stock = (ingredientId: string, value: number, unit: "ml" | "g" | "oz"): BatchSize => ({
  by: "stock",
  ingredientId,
  amount: { value, unit },
});

// By hand. A 10 L vessel at 1 part milk to 4 holds 8 L of punch and 2 L of milk.
test("a vessel is filled by punch and milk", () => {
  const { trial } = must(sized({ by: "vessel", vessel: 10_000 }));
  expect(volumeOf(trial.mixed)).toBeCloseTo(8000, 4);
  expect(trial.wash?.milk).toBeCloseTo(2000, 4);
});

test("a vessel without a wash is filled by the drink", () => {
  const { trial } = must(sized({ by: "vessel", vessel: 10_000 }, unwashed()));
  expect(volumeOf(trial.final)).toBeCloseTo(10_000, 4);
});

// By hand: 700 ml of brandy at 40 ml a drink, 1 L of lemon at 20 ml, 30 oz of 30 ml at 40 ml.
test.each([
  [stock("brandy-40", 700, "ml"), 17.5],
  [stock("lemon-juice", 1000, "ml"), 50],
  [stock("brandy-40", 30, "oz"), 22.5],
])("%j makes %d drinks as written", (size, scale) => {
  expect(must(sized(size)).scale).toBeCloseTo(scale, 6);
});

test("milk may be what is scarce", () => {
  const { trial } = must(sized(stock("milk-whole", 1000, "ml")));
  expect(trial.wash?.milk).toBeCloseTo(1000, 5);
  // Whole milk weighs 1.030 kg/L (project's reference notes).
  const weighed = must(sized(stock("milk-whole", 1030, "g"))).trial;
  expect(weighed.wash?.milk).toBeCloseTo(1000, 5);
});

test("an ingredient in two lines and in the milk counts wherever it is used", () => {
  const spec = { ...PUNCH, lines: [...PUNCH.lines, lineOf("brandy-40", 10)] };
  expect(must(sized(stock("brandy-40", 700, "ml"), spec)).scale).toBeCloseTo(14, 6);
  const milky = { ...PUNCH, lines: [...PUNCH.lines, lineOf("milk-whole", 5)] };
  const { scale, trial } = must(sized(stock("milk-whole", 1000, "ml"), milky));
  expect(5 * scale + (trial.wash?.milk ?? 0)).toBeCloseTo(1000, 5);
});

test("all of a spirit is used where a target strength decides the top-up", () => {
  const spec: Spec = { ...PUNCH, topUp: { rule: "strength", target: 0.2 } };
  const { scale, trial } = must(sized(stock("brandy-40", 700, "ml"), spec));
  expect(30 * scale + trial.heldBackMl).toBeCloseTo(700, 5);
  expect(trial.heldBackMl / (10 * scale)).not.toBeCloseTo(1, 1);
});

test("sizes of what comes out are met for any retention and any number of filters", () => {
  const ml = fc.double({ min: 500, max: 50_000, noNaN: true });
  const filters = fc.integer({ min: 1, max: 6 });
  const keeps = fc.double({ min: 0.1, max: 0.6, noNaN: true });
  fc.assert(
    fc.property(ml, filters, keeps, (volume, count, mean) => {
      const wash = { dairyId: "milk-whole", ratio: 0.25, order: "punch-into-milk", filters: count };
      const house = { ...NEW_HOUSE, retention: { ...NEW_HOUSE.retention, mean } };
      const spec: Spec = { ...PUNCH, wash: { ...wash, order: "punch-into-milk" } };
      const { trial } = must(sized({ by: "volume", volume }, spec, house));
      expect(volumeOf(trial.final)).toBeCloseTo(volume, 3);
      const bottles = must(sized({ by: "bottles", bottles: 2, size: volume / 2 }, spec, house));
      expect(volumeOf(bottles.trial.final)).toBeCloseTo(volume, 3);
      const serves = must(sized({ by: "serves", serves: volume / 90 }, spec, house));
      expect(volumeOf(serves.trial.final)).toBeCloseTo(volume, 3);
    }),
    { numRuns: 40 },
  );
});

test("a vessel and a stock come back from the batch they make", () => {
  fc.assert(
    fc.property(fc.double({ min: 300, max: 50_000, noNaN: true }), (vessel) => {
      const { scale, trial } = must(sized({ by: "vessel", vessel }));
      expect(volumeOf(trial.mixed) + (trial.wash?.milk ?? 0)).toBeCloseTo(vessel, 4);
      const again = must(sized(stock("lemon-juice", 20 * scale, "ml")));
      expect(again.scale / scale).toBeCloseTo(1, 8);
    }),
    { numRuns: 40 },
  );
});

test.each([
  ["a stock that the spec does not use", stock("gin-43", 700, "ml"), "stock-unused"],
  ["nothing of it", { by: "volume", volume: 0 }, "size-too-small"],
  ["a vessel that the filters drink up", { by: "vessel", vessel: 30 }, "size-too-small"],
] as const)("%s is refused", (_, size, refusal) => {
  expect(sized(size)).toMatchObject({ ok: false, refusal });
});

test("dry goods on hand are weighed", () => {
  const tea = dryOf("leaf", { absorbs: 3 });
  const spec = { ...PUNCH, lines: [...PUNCH.lines, lineOf("leaf", 1, "g")] };
  const written = must(writtenAmounts(spec, cupboardWith(tea), "bar"));
  const by = (size: BatchSize) => scaleFor(spec, written, size, NEW_HOUSE);
  expect(by(stock("leaf", 10, "ml"))).toMatchObject({ ok: false, refusal: "dry-needs-weight" });
  expect(must(by(stock("leaf", 10, "g"))).scale).toBeCloseTo(10, 6);
});

test("a spec of sugar alone holds something; one of nothing does not", () => {
  const leaf = dryOf("leaf");
  const spec = unwashed({ ...PUNCH, lines: [lineOf("leaf", 10, "g")] });
  const written = must(writtenAmounts(spec, cupboardWith(leaf), "bar"));
  expect(scaleFor(spec, written, { by: "volume", volume: 1000 }, NEW_HOUSE)).toMatchObject({
    ok: false,
    refusal: "spec-holds-nothing",
  });
});
