import { expect, test } from "vitest";
import { field } from "../../../core/quantity/field.ts";

test.each([
  ["its own", { a: 1 }, "a", 1],
  ["its own that hides what is inherited", { toString: 2 }, "toString", 2],
  ["what is inherited", {}, "toString", undefined],
  ["the maker of all objects", {}, "constructor", undefined],
  ["what it has not", { a: 1 }, "b", undefined],
  ["a list's place", ["x"], "0", "x"],
  ["a text's length", "text", "length", undefined],
  ["nothing's", null, "a", undefined],
  ["nothing's at all", undefined, "a", undefined],
])("%s", (_, value, key, found) => {
  expect(field(value, key)).toBe(found);
});
