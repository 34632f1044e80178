import { expect, test } from "vitest";
import { clearanceOf, isHotAndStrong, onsetOf } from "../../../core/acid/clearance.ts";
import { mixPh } from "../../../core/acid/mix-ph.ts";

const meeting = (citric: number, strength: number, temperature = 20) =>
  ({
    punch: { volume: 800, acids: { citric }, cation: 0, strength },
    dairy: "whole",
    dairyVolume: 200,
    temperature,
    heated: false,
  }) as const;

test.each([0, 0.5, 0.9, 1, 1.1, 1.5, 2, 4])(
  "with %s g citric acid its sign agrees with the pH band",
  (g) => {
    const here = meeting(g, 0.2);
    const onset = onsetOf(here) ?? 0;
    expect(clearanceOf(here, onset) >= 0).toBe(mixPh(here).high <= onset);
  },
);

test("hot and strong means above 30 degrees and 35 % vol in the mix", () => {
  expect(isHotAndStrong(meeting(4, 0.45, 31))).toBe(true);
  expect(isHotAndStrong(meeting(4, 0.45, 30))).toBe(false);
  expect(isHotAndStrong(meeting(4, 0.43, 31))).toBe(false);
});

test("no amount of acid clears a hot and strong mix", () => {
  const here = meeting(40, 0.6, 40);
  expect(clearanceOf(here, onsetOf(here) ?? 0)).toBeLessThan(0);
  expect(clearanceOf({ ...here, temperature: 20 }, onsetOf(here) ?? 0)).toBeGreaterThan(0);
});

test("at 30 degrees exactly strong alcohol does not yet dissolve the curd", () => {
  const here = meeting(40, 0.6, 30);
  expect(clearanceOf(here, onsetOf(here) ?? 0)).toBeGreaterThan(0);
});
