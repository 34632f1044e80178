import fc from "fast-check";
import { expect, test } from "vitest";
import { normalBelow } from "../../../../core/method/drip/normal-below.ts";
import published from "../../../published/filtration.json";

test(`the normal distribution: ${published.normal.source}`, () => {
  const { rows, tolerance } = published.normal;
  for (const [z = 0, below = 0] of rows) {
    expect(Math.abs(normalBelow(z) - below)).toBeLessThan(tolerance);
  }
});

test("what lies below and what lies above are all, and more lies below a higher mark", () => {
  const marks = fc.double({ min: -8, max: 8, noNaN: true });
  fc.assert(
    fc.property(marks, (z) => {
      expect(normalBelow(z) + normalBelow(-z)).toBeCloseTo(1, 6);
      expect(normalBelow(z + 0.1)).toBeGreaterThanOrEqual(normalBelow(z));
    }),
  );
});
