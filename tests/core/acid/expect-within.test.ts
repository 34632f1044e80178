import { expect, test } from "vitest";
import { expectWithin } from "../../../core/acid/expect-within.ts";

test("the ends of the range are inside it", () => {
  expect(() => expectWithin(0, 0, 1, "a strength")).not.toThrow();
  expect(() => expectWithin(1, 0, 1, "a strength")).not.toThrow();
});

test.each([-0.001, 1.4, Number.NaN, Number.POSITIVE_INFINITY])(
  "%s is refused in a sentence",
  (v) => {
    expect(() => expectWithin(v, 0, 1, "a strength")).toThrow(
      new RangeError(`a strength must lie between 0 and 1, got ${v}`),
    );
  },
);
