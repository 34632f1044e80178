import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import {
  LOOKS,
  OUTCOMES,
  procedureSchema,
  RESCUES,
  stepAfter,
  stepOf,
} from "../../../core/method/procedure.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

test("the procedure is one that a run may be pinned to", () => {
  expect(procedureSchema.parse(DAIRY_WASH)).toEqual(DAIRY_WASH);
});

// The phases of a wash in DESIGN.md, section 2: curdle, rest, first pass, re-pour, slow drip.
test("the steps come in the order of the work", () => {
  expect(DAIRY_WASH.steps.map((step) => step.id)).toEqual([
    "build",
    "milk",
    "pour",
    "curdle",
    "wet-filter",
    "first-pass",
    "re-pour",
    "check-clear",
    "rescue",
    "finer",
    "cold-rest",
    "rack",
    "slow-drip",
    "yield",
    "top-up",
    "bottle",
    "label",
  ]);
});

// dairy_wash_practice.json, rows 'rest' (30 min to 24 h) and 'drip_time'; the rest common practice, no source.
test("the waits are those of the trade", () => {
  const waits = DAIRY_WASH.steps.flatMap(({ id, waitFor, askEvery }) =>
    waitFor === undefined ? [] : [[id, waitFor, askEvery]],
  );
  expect(waits).toEqual([
    ["curdle", HOUR, 15 * MINUTE],
    ["first-pass", MINUTE, MINUTE],
    ["check-clear", MINUTE, MINUTE],
    ["cold-rest", 24 * HOUR, 15 * MINUTE],
    ["slow-drip", 30 * MINUTE, HOUR],
  ]);
});

test("every wait asks again until somebody comes, and nothing else does", () => {
  for (const { kind, waitFor, askEvery } of DAIRY_WASH.steps) {
    const waits = kind === "timed-wait" || kind === "watched-wait";
    expect([waitFor !== undefined, askEvery !== undefined]).toEqual([waits, waits]);
  }
});

test("the curd bed is used again until the drip runs clear", () => {
  const nexts = LOOKS.map((look) => stepAfter(DAIRY_WASH, "check-clear", look)?.id);
  expect(nexts).toEqual(["re-pour", "re-pour", "slow-drip"]);
  expect(stepAfter(DAIRY_WASH, "re-pour")?.id).toBe("check-clear");
});

// Rescue order of the notes (DAIRY.md): re-pour, fresh paper, a day in the cold and rack.
test("what will not clear is rescued, in the order of the trade", () => {
  for (const look of ["cloudy", "hazy"] as const) {
    expect(stepAfter(DAIRY_WASH, "check-clear", look, 2)?.id).toBe("re-pour");
    expect(stepAfter(DAIRY_WASH, "check-clear", look, 3)?.id).toBe("rescue");
  }
  expect(stepAfter(DAIRY_WASH, "check-clear", "clear", 3)?.id).toBe("slow-drip");
  const after = RESCUES.map((how) => stepAfter(DAIRY_WASH, "rescue", how)?.id);
  expect(after).toEqual(["finer", "cold-rest", "slow-drip"]);
  expect(stepAfter(DAIRY_WASH, "finer")?.id).toBe("re-pour");
  expect(stepAfter(DAIRY_WASH, "cold-rest")?.id).toBe("rack");
  expect(stepAfter(DAIRY_WASH, "rack")?.id).toBe("yield");
});

test("the wash cannot go on without its five measures and its look", () => {
  const needs = DAIRY_WASH.steps.flatMap(({ id, needs }) =>
    needs === undefined ? [] : [[id, needs]],
  );
  expect(needs).toEqual([
    ["milk", "milk"],
    ["re-pour", "cloudy-run"],
    ["yield", "yield"],
    ["top-up", "top-up"],
    ["bottle", "bottled"],
  ]);
  expect(DAIRY_WASH.steps.filter((step) => step.asks === "look")).toEqual([
    stepOf(DAIRY_WASH, "check-clear"),
  ]);
});

test("whatever is answered, the end is in reach of every step", () => {
  const reach = (from: string, seen: ReadonlySet<string>): boolean =>
    [undefined, ...OUTCOMES].some((outcome) => {
      const next = stepAfter(DAIRY_WASH, from, outcome, 9)?.id;
      if (next === undefined) return true;
      return !seen.has(next) && reach(next, new Set([...seen, next]));
    });
  for (const { id } of DAIRY_WASH.steps) expect(reach(id, new Set([id])), id).toBe(true);
});
