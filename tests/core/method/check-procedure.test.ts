import { expect, test } from "vitest";
import { checkProcedure, type ProcedureFault } from "../../../core/method/check-procedure.ts";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import {
  changeStep,
  copyProcedure,
  moveStep,
  removeStep,
} from "../../../core/method/edit-procedure.ts";
import { FAT_WASH, LONG_INFUSION } from "../../../core/method/infusions.ts";
import type { Procedure } from "../../../core/method/procedure.ts";
import { PROCEDURES } from "../../../core/method/procedures.ts";

const HOUR = 3_600_000;
const without = (procedure: Procedure, ...ids: readonly string[]): Procedure =>
  ids.reduce((so, id) => {
    const removed = removeStep(so, id);
    if (!removed.ok) throw new RangeError(removed.refusal);
    return removed.value;
  }, procedure);
const titled = (): boolean => true;
const own = (procedure: Procedure): Procedure => copyProcedure(procedure, "own", "Own");
const faultsOf = (procedure: Procedure): readonly ProcedureFault[] =>
  checkProcedure(procedure, titled).faults;

test.each(PROCEDURES.map((one) => [one.id, one] as const))(
  "%s, as shipped and given a name, has no fault",
  (_, procedure) => {
    expect(faultsOf(own(procedure))).toEqual([]);
  },
);

const infusion = own(LONG_INFUSION);
const wash = own(DAIRY_WASH);

test.each<[string, Procedure, readonly ProcedureFault[]]>([
  ["no name", { ...infusion, name: "  " }, [{ fault: "no-name" }]],
  [
    "a wait without a time",
    changeStep(infusion, "steep", { waitFor: undefined }),
    [{ fault: "wait-without-time", step: "steep" }],
  ],
  [
    "asks that do not rise",
    changeStep(infusion, "steep", { askAt: [30 * HOUR, 24 * HOUR] }),
    [{ fault: "asks-out-of-order", step: "steep" }],
  ],
  [
    "an ask before the first",
    changeStep(infusion, "steep", { askAt: [12 * HOUR] }),
    [{ fault: "asks-out-of-order", step: "steep" }],
  ],
  [
    "a hard stop before the last ask",
    changeStep(infusion, "steep", { longestFor: 30 * HOUR }),
    [{ fault: "stop-before-ask", step: "steep" }],
  ],
  [
    "a reading of nothing",
    changeStep(infusion, "yield", { needs: undefined }),
    [{ fault: "reading-without-figure", step: "yield" }],
  ],
  [
    "one answer that leads two ways",
    changeStep(infusion, "steep", {
      branches: [
        { on: "too-far", to: "strain-mesh" },
        { on: "too-far", to: "strain-mesh", fromRound: 1 },
      ],
    }),
    [{ fault: "two-ways", step: "steep" }],
  ],
  [
    "a way into nowhere",
    changeStep(infusion, "steep", { branches: [{ on: "right", to: "gone" }] }),
    [{ fault: "leads-nowhere", step: "steep", to: "gone" }],
  ],
  [
    "a step named twice",
    { ...infusion, steps: [...infusion.steps, ...infusion.steps.slice(0, 1)] },
    [{ fault: "same-id", step: "build" }],
  ],
  [
    "the top-up before the yield",
    moveStep(wash, "top-up", -1),
    [{ fault: "top-up-before-yield", step: "top-up" }],
  ],
  [
    "a top-up and no yield at all",
    without(wash, "yield"),
    [{ fault: "top-up-before-yield", step: "top-up" }],
  ],
])("%s is told, and where", (_, procedure, faults) => {
  expect(faultsOf(procedure)).toEqual(faults);
});

test("two steps that lead to each other have no end, nor has what leads to them", () => {
  const loop = changeStep(infusion, "strain-paper", { next: "strain-mesh" });
  expect(faultsOf(loop)).toEqual([
    { fault: "endless", step: "build" },
    { fault: "endless", step: "steep" },
    { fault: "endless", step: "strain-mesh" },
    { fault: "endless", step: "strain-paper" },
    { fault: "unreachable", step: "yield" },
    { fault: "unreachable", step: "bottle" },
    { fault: "unreachable", step: "label" },
  ]);
});

test("a loop that an answer leaves is none: pouring back until it is clear", () => {
  expect(wash.steps.find(({ id }) => id === "check-clear")?.branches.length).toBeGreaterThan(2);
  expect(faultsOf(wash)).toEqual([]);
  const never = changeStep(wash, "check-clear", {
    branches: [
      { on: "clear", to: "re-pour" },
      { on: "hazy", to: "re-pour" },
      { on: "cloudy", to: "re-pour" },
    ],
  });
  expect(faultsOf(never)).toContainEqual({ fault: "endless", step: "check-clear" });
});

test("work that only a bad answer gets out of goes round", () => {
  const round = changeStep(wash, "check-clear", {
    branches: [
      { on: "clear", to: "re-pour" },
      { on: "hazy", to: "rescue" },
      { on: "cloudy", to: "slow-drip" },
    ],
  });
  expect(faultsOf(round)).toEqual([{ fault: "goes-round", step: "check-clear" }]);
});

test("a step that every answer leads past is told", () => {
  const skipped = changeStep(infusion, "steep", {
    branches: [
      { on: "right", to: "strain-paper" },
      { on: "too-far", to: "strain-paper" },
    ],
  });
  expect(faultsOf(skipped)).toEqual([{ fault: "unreachable", step: "strain-mesh" }]);
});

test("a step needs a title where the catalogue has no word for it", () => {
  const nameless = checkProcedure(infusion, (id) => id !== "steep").faults;
  expect(nameless).toEqual([{ fault: "no-title", step: "steep" }]);
  const named = changeStep(infusion, "steep", { title: "Cold steep" });
  expect(checkProcedure(named, () => false).faults).not.toContainEqual({
    fault: "no-title",
    step: "steep",
  });
});

test("a way round the yield is told, however far down the list the yield stands", () => {
  const round = changeStep(wash, "rack", { next: "top-up" });
  expect(faultsOf(round)).toEqual([{ fault: "top-up-before-yield", step: "top-up" }]);
});

test("an empty procedure is told, and nothing is asked of steps it has not", () => {
  expect(checkProcedure({ ...infusion, steps: [] }, titled)).toEqual({
    faults: [{ fault: "no-steps" }],
    warnings: [],
  });
});

const warningsOf = (procedure: Procedure) => checkProcedure(procedure, titled).warnings;

test.each([
  ["Add cream", true],
  ["Fold in the coconut milk", true],
  ["2 eggs", true],
  ["Add cream of tartar", false],
  ["Buttercup", false],
  ["Añadir la leche", true],
  ["Nata bien fría", true],
  ["Dos claras de huevo", true],
  ["Cremor tártaro", false],
  ["Crema de cacao", false],
  ["Crema de leche", true],
  ["Verser le lait", true],
  ["Crème fraîche", true],
  ["Un œuf entier", true],
  ["Crème de mûre", false],
  ["Laitue", false],
])("a step called %j speaks of what spoils: %s", (title, spoils) => {
  const named = changeStep(infusion, "strain-mesh", { title });
  const told = [{ warning: "milk-not-perishable", step: "strain-mesh" }];
  expect(warningsOf(named)).toEqual(spoils ? told : []);
  expect(warningsOf({ ...named, perishableFrom: "strain-mesh" })).toEqual([]);
});

test("a vessel stays where it was put until a step moves it", () => {
  const overnight = changeStep(wash, "curdle", { waitFor: 12 * HOUR, stands: undefined });
  expect(warningsOf(overnight)).toEqual([{ warning: "warm-for-long", step: "curdle" }]);
  // Four hours, as the safety clock counts them.
  expect(warningsOf(changeStep(overnight, "curdle", { waitFor: 4 * HOUR }))).toHaveLength(1);
  expect(warningsOf(changeStep(overnight, "curdle", { waitFor: 4 * HOUR - 1000 }))).toEqual([]);
  const cold = changeStep(overnight, "pour", { stands: "fridge" });
  expect(warningsOf(cold)).toEqual([]);
});

test("what is perishable from its very first step on is watched from there", () => {
  const first = { ...wash, perishableFrom: "curdle", steps: wash.steps.slice(3) };
  const long = changeStep(first, "curdle", { waitFor: 12 * HOUR });
  expect(warningsOf(long)).toContainEqual({ warning: "warm-for-long", step: "curdle" });
});

test("bottles that only a run in trouble counts are none", () => {
  const skipped = changeStep(infusion, "yield", { next: "label" });
  expect(checkProcedure(skipped, titled)).toEqual({
    faults: [{ fault: "unreachable", step: "bottle" }],
    warnings: [{ warning: "never-bottled" }],
  });
});

test("what is odd is said, and stops nobody", () => {
  expect(warningsOf(wash)).toEqual([]);
  const { perishableFrom: _, ...unmarked } = wash;
  expect(warningsOf(unmarked)).toEqual([{ warning: "milk-not-perishable", step: "milk" }]);
  expect(warningsOf(changeStep(wash, "curdle", { waitFor: 12 * HOUR }))).toEqual([
    { warning: "warm-for-long", step: "curdle" },
  ]);
  expect(warningsOf(changeStep(own(FAT_WASH), "freeze", { stands: "counter" }))).toEqual([
    { warning: "warm-for-long", step: "freeze" },
  ]);
  expect(warningsOf(without(infusion, "label", "bottle"))).toEqual([{ warning: "never-bottled" }]);
});
