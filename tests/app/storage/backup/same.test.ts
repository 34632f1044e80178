import fc from "fast-check";
import { expect, test } from "vitest";
import { isSame } from "../../../../app/storage/backup/same.ts";

const bytes = (...some: number[]) => Uint8Array.from(some).buffer;

test.each<[string, unknown, unknown]>([
  ["the order of keys does not count", { a: 1, b: [2, { c: 3 }] }, { b: [2, { c: 3 }], a: 1 }],
  ["a key without a value is no key", { a: 1, b: undefined }, { a: 1 }],
  ["bytes by what they hold", { at: bytes(1, 2) }, { at: bytes(1, 2) }],
])("%s", (_, a, b) => {
  expect(isSame(a, b)).toBe(true);
  expect(isSame(b, a)).toBe(true);
});

test.each<[string, unknown, unknown]>([
  ["a key more", { a: 1 }, { a: 1, b: 2 }],
  ["another key", { a: 1 }, { b: 1 }],
  ["a figure and its text", { a: 1 }, { a: "1" }],
  ["nothing and null", { a: null }, {}],
  ["a list and an object", [1], { 0: 1 }],
  ["another order in a list", [1, 2], [2, 1]],
  ["a value deep inside", { a: [{ b: 1 }] }, { a: [{ b: 2 }] }],
  ["other bytes", bytes(1, 2), bytes(1, 3)],
  ["fewer bytes", bytes(1, 2), bytes(1)],
  ["bytes and none", bytes(), {}],
])("not the same: %s", (_, a, b) => {
  expect(isSame(a, b)).toBe(false);
  expect(isSame(b, a)).toBe(false);
});

test("whatever JSON holds is the same as what is read back of it", () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(isSame(value, JSON.parse(JSON.stringify(value)))).toBe(true);
    }),
    { seed: 2511, numRuns: 300 },
  );
});
