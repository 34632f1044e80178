import { expect, test } from "vitest";
import { requireWithin } from "../../../core/quantity/require-within.ts";

test("lets the ends and what lies between pass", () => {
  for (const value of [0, 0.5, 1]) {
    expect(() => requireWithin(value, 0, 1, "a share")).not.toThrow();
  }
});

test.each([-1e-12, -0.001, 1.0001, 1.4, Number.NaN, Number.POSITIVE_INFINITY])(
  "stops %d, in a sentence",
  (value) => {
    expect(() => requireWithin(value, 0, 1, "a share")).toThrow(
      new RangeError(`a share must lie between 0 and 1, got ${value}`),
    );
  },
);
