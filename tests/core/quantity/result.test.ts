import { expect, test } from "vitest";
import { accepted, type Result, refused } from "../../../core/quantity/result.ts";

test("what was accepted carries its value, nothing included", () => {
  expect(accepted(3)).toEqual({ ok: true, value: 3 });
  expect(accepted(undefined)).toEqual({ ok: true, value: undefined });
});

test("a refusal carries its code and what the sentence needs", () => {
  expect(refused("too-much", { most: 5, unit: "ml" })).toEqual({
    ok: false,
    refusal: "too-much",
    about: { most: 5, unit: "ml" },
  });
  expect(refused("too-much").about).toEqual({});
});

test("the two are told apart by one field", () => {
  const half = (value: number): Result<number, "odd"> =>
    value % 2 === 0 ? accepted(value / 2) : refused("odd", { value });
  const told = [2, 3].map(half).map((one) => (one.ok ? one.value : one.refusal));
  expect(told).toEqual([1, "odd"]);
});
