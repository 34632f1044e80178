import { expect, test } from "vitest";
import { ounceInMl } from "../../../core/quantity/ounce.ts";
import published from "../../published/measures.json";

test("the exact ounce is the US fluid ounce, to the last digit (NIST)", () => {
  const row = published.us.rows.find(({ typed }) => typed === "1 oz");
  expect(ounceInMl("exact")).toBe(row?.ml);
});

test("the bar's ounce is the 30 ml jigger (common practice, no source)", () => {
  expect(ounceInMl("bar")).toBe(30);
});
