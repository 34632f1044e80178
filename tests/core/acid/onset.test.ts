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
