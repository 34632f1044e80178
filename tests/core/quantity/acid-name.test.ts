import fc from "fast-check";
import { expect, test } from "vitest";
import { DISSOCIATION } from "../../../core/acid/dissociation-table.ts";
import { ACID_NAMES, totalAcid } from "../../../core/quantity/acid-name.ts";

test("every acid has its dissociation constants, and no constants lack a name", () => {
  expect(Object.keys(DISSOCIATION).sort()).toEqual([...ACID_NAMES].sort());
});

test("no acid weighs nothing", () => {
  expect(totalAcid({})).toBe(0);
  expect(totalAcid({ citric: undefined, lactic: 0 })).toBe(0);
});

test("each acid counts once", () => {
  for (const name of ACID_NAMES) expect(totalAcid({ [name]: 7 })).toBe(7);
});

const mass = fc.double({ min: 0, max: 1000, noNaN: true });
const acids = fc.record(Object.fromEntries(ACID_NAMES.map((name) => [name, mass])), {
  requiredKeys: [],
});

test("two sets weigh together what they weigh apart", () => {
  fc.assert(
    fc.property(acids, acids, (one, other) => {
      const both = Object.fromEntries(
        ACID_NAMES.map((name) => [name, (one[name] ?? 0) + (other[name] ?? 0)]),
      );
      expect(totalAcid(both)).toBeCloseTo(totalAcid(one) + totalAcid(other), 8);
    }),
  );
});
