import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { withLearntTimes } from "../../../core/method/learnt-times.ts";
import { procedureSchema, stepOf } from "../../../core/method/procedure.ts";

const MINUTE = 60_000;
const learnt = { batches: 5, waits: { "first-pass": 141_000, "check-clear": 95_000 } };

test("the passes ask when this bar's batches were usually ready, and say from how many", () => {
  const taught = withLearntTimes(DAIRY_WASH, learnt);
  expect(stepOf(taught, "first-pass")).toMatchObject({ waitFor: 140_000, learntFrom: 5 });
  expect(stepOf(taught, "check-clear")).toMatchObject({ waitFor: 95_000, learntFrom: 5 });
  expect(procedureSchema.parse(taught)).toEqual(taught);
  const changed = taught.steps.filter((step, at) => step !== DAIRY_WASH.steps[at]);
  expect(changed.map(({ id }) => id)).toEqual(["first-pass", "check-clear"]);
});

test.each([
  [1000, 20_000],
  [0, 20_000],
  [-5000, 20_000],
  [62_400, 60_000],
  [40 * MINUTE, 15 * MINUTE],
])("%d ms learnt is a wait of %d ms", (wait, waitFor) => {
  const taught = withLearntTimes(DAIRY_WASH, { batches: 3, waits: { "check-clear": wait } });
  expect(stepOf(taught, "check-clear").waitFor).toBe(waitFor);
  expect(stepOf(taught, "first-pass")).toBe(stepOf(DAIRY_WASH, "first-pass"));
});

test("a time that the spec sets itself stands, and no other wait is touched", () => {
  const waits = { ...learnt.waits, curdle: MINUTE, "slow-drip": MINUTE, build: MINUTE };
  const taught = withLearntTimes(DAIRY_WASH, { batches: 5, waits }, { "check-clear": 2 * MINUTE });
  for (const id of ["check-clear", "curdle", "slow-drip", "build"]) {
    expect(stepOf(taught, id)).toBe(stepOf(DAIRY_WASH, id));
  }
  expect(stepOf(taught, "first-pass").learntFrom).toBe(5);
});
