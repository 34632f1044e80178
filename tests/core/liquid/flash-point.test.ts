import { expect, test } from "vitest";
import { flashPoint } from "../../../core/liquid/flash-point.ts";
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
});
