import fc from "fast-check";
import { expect, test } from "vitest";
import { narrow } from "../../../../core/board/schedule/narrow.ts";

test("finds the least whole number that fits", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5000 }), fc.nat(5000), (least, more) => {
      const probe = (most: number) => (Math.floor(most) < least ? undefined : Math.floor(most));
      expect(narrow(least + more, () => 1, probe)).toBe(least);
    }),
  );
});

test("goes down from what a probe really takes, where there is no most", () => {
  const sums = [3.5, 8, 19];
  const probe = (most: number) => sums.findLast((sum) => sum <= most);
  expect(narrow(Number.POSITIVE_INFINITY, () => 1e-3, probe)).toBe(3.5);
});

test("is as rough as it may be, and never too little", () => {
  let looks = 0;
  const probe = (most: number) => {
    looks += 1;
    return most < 100 ? undefined : Math.floor(most);
  };
  const rough = narrow(10_000, (fits) => 0.1 * fits, probe) ?? 0;
  expect(rough).toBeGreaterThanOrEqual(100);
  expect(rough).toBeLessThanOrEqual(112);
  expect(looks).toBeLessThan(12);
});

test("says when even the most does not fit", () => {
  expect(
    narrow(
      50,
      () => 1,
      () => undefined,
    ),
  ).toBeUndefined();
});
