import { expect, test } from "vitest";
import { massOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { mix } from "../../../core/liquid/mixing.ts";
import { pouredTogether, writtenAmounts } from "../../../core/spec/batch-amounts.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import { portionOf } from "../../../core/spec/ingredient-liquid.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import {
  cupboardWith,
  dryOf,
  fromCupboard,
  lineOf,
  must,
  PUNCH,
  unwashed,
} from "../../support/world/punch-spec.ts";

const written = (spec: Spec, ...own: readonly Ingredient[]) =>
  must(writtenAmounts(spec, cupboardWith(...own), "bar"));

// By hand: of 40 ml of brandy a quarter is held back: 10 ml, as strong as before.
test("what is held back is kept apart, and nothing is lost between the two", () => {
  const { before, after, afterMl, lines } = written(PUNCH);
  expect(afterMl).toBeCloseTo(10, 12);
  expect(volumeOf(after)).toBeCloseTo(10, 6);
  const all = mix(lines.map((line) => line.portion.liquid));
  expect(massOf(mix([before, after]))).toBeCloseTo(massOf(all), 9);
  expect(after.ethanol * 3).toBeCloseTo(before.ethanol, 9);
});

test("milk is measured by the punch as it stands, contraction and all", () => {
  const { before, milk, dairy } = written(PUNCH);
  expect(milk).toBeCloseTo(0.25 * volumeOf(before), 9);
  expect(volumeOf(before)).toBeLessThan(100);
  expect(dairy?.id).toBe("milk-whole");
});

test("a spec that is not washed holds nothing back and needs no milk", () => {
  const { after, afterMl, milk, dairy, before } = written(unwashed());
  expect([massOf(after), afterMl, milk, dairy]).toEqual([0, 0, 0, undefined]);
  expect(massOf(before)).toBeCloseTo(massOf(mix([written(PUNCH).before, written(PUNCH).after])), 9);
});

// NIST Handbook 44, appendix C: a US fluid ounce is 29.5735 ml; the bar's is 30 ml, common practice.
test("the house's ounce counts", () => {
  const spec = unwashed({ ...PUNCH, lines: [lineOf("water", 1, "oz")] });
  const ounce = (kind: "bar" | "exact") =>
    must(writtenAmounts(spec, cupboardWith(), kind)).lines[0]?.portion.ml;
  expect(ounce("bar")).toBe(30);
  expect(ounce("exact")).toBeCloseTo(29.5735, 4);
});

test("held-back sugar alone has weight and no measure", () => {
  const sugar = written({
    ...PUNCH,
    lines: [...PUNCH.lines.slice(1), lineOf("white-sugar", 8, "g", 0.5)],
  });
  expect(sugar.afterMl).toBe(0);
  expect(sugar.after.sugar).toBe(4);
});

test("leaves keep liquid back on their own side of the wash", () => {
  const leaves = dryOf("leaves", { absorbs: 3 });
  const spec = { ...PUNCH, lines: [...PUNCH.lines, lineOf("leaves", 2, "g")] };
  const lossy = written(spec, leaves);
  expect(volumeOf(lossy.before)).toBeCloseTo(volumeOf(written(PUNCH).before) - 6, 9);
  expect(lossy.afterMl).toBeCloseTo(10, 12);
  const after = must(
    pouredTogether([
      { ingredient: leaves, ...must(portionOf(leaves, { kind: "mass", g: 1 })) },
      {
        ingredient: fromCupboard("water"),
        ...must(portionOf(fromCupboard("water"), { kind: "volume", ml: 10 })),
      },
    ]),
  );
  expect(after.ml).toBeCloseTo(7, 9);
  expect(volumeOf(after.liquid)).toBeCloseTo(7, 6);
});

test("a cream liqueur is no milk to wash with", () => {
  const liqueur = fromCupboard("milk-whole", {
    id: "cream-17",
    name: "Cream 17 %",
    strength: 0.17,
  });
  const wash = PUNCH.wash && { ...PUNCH.wash, dairyId: "cream-17" };
  expect(writtenAmounts({ ...PUNCH, ...(wash && { wash }) }, cupboardWith(liqueur), "bar")).toEqual(
    { ok: false, refusal: "wash-dairy-not-dairy", about: { name: "Cream 17 %" } },
  );
});

test("the first thing that is wrong is said, and by which line", () => {
  const bad = { ...PUNCH, lines: [lineOf("white-sugar", 5, "ml"), lineOf("gone", 1)] };
  expect(writtenAmounts(bad, cupboardWith(), "bar")).toEqual({
    ok: false,
    refusal: "dry-needs-weight",
    about: { name: "White sugar" },
  });
});
