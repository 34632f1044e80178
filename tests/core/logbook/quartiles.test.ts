import { expect, test } from "vitest";
import { quartilesOf } from "../../../core/logbook/quartiles.ts";

// Wikipedia, "Quantile" (estimating from a sample, R-7): quartiles of 3, 6, 7, 8, 8, 10, 13, 15, 16,
// 20 are 7.25, 9 and 14.5 (worked through by hand from memory of its example).
test("median and quartiles of the textbook's sample", () => {
  expect(quartilesOf([3, 6, 7, 8, 8, 10, 13, 15, 16, 20])).toEqual({
    median: 9,
    low: 7.25,
    high: 14.5,
  });
  expect(quartilesOf([5])).toEqual({ median: 5, low: 5, high: 5 });
});
