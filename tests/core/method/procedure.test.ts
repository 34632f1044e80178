import { expect, test } from "vitest";
import {
  isWait,
  LOOKS,
  type Procedure,
  procedureSchema,
  type Step,
  stepAfter,
  stepOf,
  TASTES,
} from "../../../core/method/procedure.ts";

const step = (id: string, rest: Partial<Step> = {}): Step => ({
  id,
  kind: "hands-on",
  work: "other",
  branches: [],
  ...rest,
});

test.each([
  ["hands-on", false],
  ["reading", false],
  ["timed-wait", true],
  ["watched-wait", true],
] as const)("a %s goes on without hands: %s", (kind, without) => {
  expect(isWait(step("one", { kind }))).toBe(without);
});

const LOOP: Procedure = {
  id: "loop",
  version: 1,
  steps: [
    step("pour"),
    step("look", { asks: "look", branches: [{ on: "cloudy", to: "pour" }] }),
    step("label"),
  ],
};

test("a step is found by its id", () => {
  expect(stepOf(LOOP, "look")).toBe(LOOP.steps[1]);
  expect(() => stepOf(LOOP, "none")).toThrow(new RangeError("procedure loop has no step none"));
});

test.each([
  ["pour", undefined, "look"],
  ["look", "cloudy", "pour"],
  ["look", "hazy", "label"],
  ["look", "clear", "label"],
  ["look", undefined, "label"],
  ["pour", "cloudy", "look"],
  ["label", undefined, undefined],
] as const)("after %s, seen %s, comes %s", (from, look, next) => {
  expect(stepAfter(LOOP, from, look)?.id).toBe(next);
});

test("a step nobody knows has nothing after it: it is our mistake, not the first step", () => {
  expect(() => stepAfter(LOOP, "none")).toThrow(RangeError);
  const broken = { ...LOOP, steps: [step("a", { branches: [{ on: "hazy", to: "gone" }] })] };
  expect(() => stepAfter(broken, "a", "hazy")).toThrow("procedure loop has no step gone");
});

const ROUNDS: Procedure = {
  id: "rounds",
  version: 1,
  steps: [
    step("pour"),
    step("look", {
      asks: "look",
      branches: [
        { on: "hazy", to: "pour" },
        { on: "hazy", to: "label", fromRound: 3 },
        { on: "hazy", to: "fresh", fromRound: 2 },
      ],
    }),
    step("fresh"),
    step("label"),
  ],
};

test.each([
  [1, "pour"],
  [2, "fresh"],
  [3, "label"],
  [9, "label"],
])("seen hazy for the %sth time: %s", (round, next) => {
  expect(stepAfter(ROUNDS, "look", "hazy", round)?.id).toBe(next);
});

test("a step may name what comes next, out of the order of the list", () => {
  const [pour, look, label] = [step("pour", { next: "label" }), step("look"), step("label")];
  const jump = { ...LOOP, steps: [pour, look, label] };
  expect(stepAfter(jump, "pour")).toBe(label);
  expect(accepts(jump)).toBe(true);
  expect(accepts({ ...jump, steps: [pour, look] })).toBe(false);
});

const accepts = (value: unknown): boolean => procedureSchema.safeParse(value).success;

test("a procedure that hangs together is accepted as it is", () => {
  expect(procedureSchema.parse(LOOP)).toEqual(LOOP);
});

test.each<[string, unknown]>([
  ["no steps", { ...LOOP, steps: [] }],
  ["too many steps", { ...LOOP, steps: Array.from({ length: 61 }, (_, at) => step(`s${at}`)) }],
  ["two steps by one name", { ...LOOP, steps: [step("a"), step("a")] }],
  [
    "a branch into nowhere",
    { ...LOOP, steps: [step("a", { branches: [{ on: "hazy", to: "b" }] })] },
  ],
  ["a look nobody knows", { ...LOOP, steps: [{ ...step("a"), branches: [{ on: "x", to: "a" }] }] }],
  ["a wait of no length", { ...LOOP, steps: [step("a", { waitFor: 0 })] }],
  ["a wait of half a millisecond", { ...LOOP, steps: [step("a", { waitFor: 1000.5 })] }],
  ["a wait beyond 90 days", { ...LOOP, steps: [step("a", { waitFor: 91 * 86_400_000 })] }],
  ["a wait that is no number", { ...LOOP, steps: [step("a", { askEvery: Number.NaN })] }],
  ["a step without a name", { ...LOOP, steps: [step("")] }],
  ["a huge title", { ...LOOP, steps: [step("a", { title: "x".repeat(81) })] }],
  ["version 0", { ...LOOP, version: 0 }],
  ["nothing at all", null],
])("a procedure with %s is refused", (_, value) => {
  expect(accepts(value)).toBe(false);
});

test("what is not part of a step is left out", () => {
  const stray = JSON.parse('{"__proto__": {"look": true}, "stray": 1}');
  const parsed = procedureSchema.parse({ ...LOOP, steps: [{ ...step("a"), ...stray }] });
  expect(parsed.steps).toEqual([step("a")]);
});

test("looks run from the worst to the best; tastes ask whether it was long enough", () => {
  expect(LOOKS).toEqual(["cloudy", "hazy", "clear"]);
  expect(TASTES).toEqual(["not-yet", "right", "too-far"]);
});
