import { expect, test } from "vitest";
import { onsetPh } from "../../../core/acid/onset.ts";
import published from "../../published/milk.json";

const { onset } = published;
const plain = { dairy: "whole", temperature: 25, strength: 0, heated: false } as const;

test.each(onset.rows)(`$temperature degrees, heated $heated: $pH (${onset.source})`, (row) => {
  const { temperature, heated, pH } = row;
  const found = onsetPh({ ...plain, temperature, heated });
  expect(Math.abs((found ?? 0) - pH)).toBeLessThan(0.11);
});

// Bringe & Kinsella, Food Hydrocolloids 7 (1993) 113, abstract: 5.1 at 25, 5.8 at 47 degrees C, 0.4
// higher in milk heated to 70 to 95 degrees C.
test("the published ends come back to a hundredth", () => {
  expect(onsetPh(plain)).toBe(5.1);
  expect(Math.abs((onsetPh({ ...plain, temperature: 47 }) ?? 0) - 5.8)).toBeLessThan(0.01);
  expect(onsetPh({ ...plain, temperature: 60 })).toBe(onsetPh({ ...plain, temperature: 47 }));
  expect(onsetPh({ ...plain, heated: true })).toBeCloseTo(5.5, 9);
});

test("milk at 4 degrees takes acid to pH 4.5 without clotting (the patent)", () => {
  expect(onsetPh({ ...plain, temperature: 4 })).toBeLessThan(onset.coldHolds);
  expect(onsetPh({ ...plain, temperature: -10 })).toBe(onsetPh({ ...plain, temperature: 4 }));
});

test("alcohol raises it by the assumed 0.02 per % vol and stops at 25 % vol", () => {
  const at = (strength: number) => onsetPh({ ...plain, strength }) ?? 0;
  expect(at(0.1) - at(0)).toBeCloseTo(0.2, 9);
  expect(at(0.4)).toBe(at(0.25));
});

test("hot, strong and heated milk stops short of milk's own pH", () => {
  expect(onsetPh({ dairy: "whole", temperature: 60, strength: 0.4, heated: true })).toBe(6.2);
});

test("plants without protein to curdle have none; soy has only its isoelectric point", () => {
  for (const dairy of ["oat", "almond", "coconut"] as const) {
    expect(onsetPh({ ...plain, dairy })).toBeNull();
  }
  expect(onsetPh({ dairy: "soy", temperature: 40, strength: 0.2, heated: true })).toBe(4.5);
});

test("what cannot be is refused in a sentence", () => {
  expect(() => onsetPh({ ...plain, temperature: 101 })).toThrow("a temperature of the mix");
  expect(() => onsetPh({ ...plain, dairy: "oat", temperature: Number.NaN })).toThrow(RangeError);
  expect(() => onsetPh({ ...plain, strength: 1.4 })).toThrow("a strength of the mix (0 to 1)");
});
