import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import type { Procedure } from "../../../core/method/procedure.ts";
import { PROCEDURES } from "../../../core/method/procedures.ts";
import { usualPath } from "../../../core/method/usual-path.ts";

const ids = (procedure: Procedure, from?: string) => usualPath(procedure, from).map(({ id }) => id);

// The phases of a wash in DESIGN.md, section 2.
test("a wash that runs clear at the first look is not rescued", () => {
  expect(ids(DAIRY_WASH).slice(0, 9)).toEqual([
    "build",
    "milk",
    "pour",
    "curdle",
    "wet-filter",
    "first-pass",
    "re-pour",
    "check-clear",
    "slow-drip",
  ]);
  expect(ids(DAIRY_WASH)).not.toContain("rescue");
  expect(ids(DAIRY_WASH, "slow-drip").slice(0, 2)).toEqual(["slow-drip", "yield"]);
});

test("a procedure that leads back into itself ends where it would repeat", () => {
  expect(ids(DAIRY_WASH, "finer").slice(0, 4)).toEqual([
    "finer",
    "re-pour",
    "check-clear",
    "slow-drip",
  ]);
  const step = { kind: "hands-on" as const, work: "other" as const, branches: [] };
  const round: Procedure = {
    id: "round",
    version: 1,
    steps: [
      { ...step, id: "a" },
      { ...step, id: "b", next: "a" },
    ],
  };
  expect(ids(round)).toEqual(["a", "b"]);
});

test("every procedure there is ends with its last step", () => {
  for (const procedure of PROCEDURES) {
    expect(usualPath(procedure).at(-1)).toBe(procedure.steps.at(-1));
  }
});

test("a step that is not there is a mistake of ours", () => {
  expect(() => usualPath(DAIRY_WASH, "nothing")).toThrow(RangeError);
});
