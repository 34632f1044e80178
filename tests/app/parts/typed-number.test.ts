import { expect, test } from "vitest";
import { typedNumber } from "../../../app/parts/typed-number.ts";

const PERCENT = { low: 0, high: 100, units: ["%"] };

test.each([
  ["42", 42],
  ["42 %", 42],
  ["42%", 42],
  ["12,5", 12.5],
  [" 12.5 ", 12.5],
  ["½", 0.5],
  ["1 1/2", 1.5],
  ["0", 0],
  ["100", 100],
])("%s reads as %s", (text, value) => {
  expect(typedNumber(text, PERCENT)).toBe(value);
});

test.each(["", " ", "abc", "12abc", "12 %%", "140", "-5", "−5", "1.2.3", "1/0", "Infinity", "1e3"])(
  "%j is no figure from 0 to 100 %%",
  (text) => {
    expect(typedNumber(text, PERCENT)).toBeUndefined();
  },
);

test("a whole number has no part left over", () => {
  const filters = { low: 1, high: 50, whole: true };
  expect(typedNumber("3", filters)).toBe(3);
  expect(typedNumber("2.5", filters)).toBeUndefined();
});
