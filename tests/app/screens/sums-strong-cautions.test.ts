import { expect, test } from "vitest";
import { flashPoint } from "../../../app/screens/sums/flash-point.ts";
import { spiritCautions, strongCautions } from "../../../app/screens/sums/strong-cautions.ts";
import published from "../../published/flash-point.json";

test.each(published.rows)(
  `%d % vol can be lit from %d °C (${published.source})`,
  (abv, degrees) => {
    expect(flashPoint(abv / 100)).toBe(degrees);
  },
);

test("between the rows it errs to the safe side, and the stronger the sooner", () => {
  for (let percent = 6; percent <= 100; percent += 1) {
    const here = flashPoint(percent / 100) ?? Number.NaN;
    const [low, high] = [
      flashPoint(Math.floor(percent / 10) / 10),
      flashPoint((percent - 1) / 100),
    ];
    expect(Number.isInteger(here)).toBe(true);
    expect(here).toBeLessThanOrEqual(low ?? 62);
    expect(here).toBeLessThanOrEqual(high ?? 62);
  }
  expect(flashPoint(0.43)).toBe(25);
});

test("what has no spirit to speak of has no flash point", () => {
  expect(flashPoint(0)).toBeUndefined();
  expect(flashPoint(0.049)).toBeUndefined();
  expect(spiritCautions(0)).toEqual([]);
});

test("overproof is said from 50 % on, heat and flame from 30 % on where a spirit is handled", () => {
  const overproof = spiritCautions(0.57);
  expect(overproof).toHaveLength(3);
  expect(overproof[0]).toMatch(/^50 % vol or more/u);
  expect(overproof[1]).toContain("from about 22 °C");
  expect(overproof[2]).toContain("Never heat spirit");
  expect(spiritCautions(0.4)).toHaveLength(2);
  expect(spiritCautions(0.4)[0]).toContain("from about 26 °C");
  expect(spiritCautions(0.29)).toEqual([]);
  expect(strongCautions(0.49)).toEqual([]);
  expect(strongCautions(0.5)).toHaveLength(3);
});
