import { expect, test } from "vitest";
import {
  kindOf,
  LESSONS,
  learntRules,
  lessonOf,
  toldBy,
} from "../../../../core/logbook/learn/house-learning.ts";
import type { BatchRecord } from "../../../../core/logbook/record.ts";
import { usualDrip } from "../../../../core/method/drip/usual-drip.ts";
import { CUPBOARD } from "../../../../core/spec/cupboard-table.ts";
import { NEW_HOUSE, RETENTION_PRIOR } from "../../../../core/spec/house-rules.ts";
import { planBatch } from "../../../../core/spec/plan-batch.ts";
import { keptRecord, PEAR_PLAN } from "../../../support/world/learnt-batches.ts";
import { demoSpec } from "../../../support/world/play-run.ts";
import { must } from "../../../support/world/punch-spec.ts";

const KEPT = [0.43, 0.41, 0.44, 0.4, 0.42, 0.43, 0.41];
const SEVEN = KEPT.map((curd, day) => keptRecord(day + 1, curd));
const KIND = "own|dairy-wash|unknown|whole";

test("a batch is of the kind of its procedure, filter and dairy, in its own world", () => {
  expect(kindOf(keptRecord(1, 0.4))).toBe(KIND);
  expect(kindOf(keptRecord(1, 0.4, true))).toBe("demo|dairy-wash|unknown|whole");
});

test("seven batches that keep more move what is expected towards them and narrow it", () => {
  const learnt = lessonOf(SEVEN, "curd", KIND);
  expect(learnt.batches).toBe(7);
  expect(learnt.mean).toBeGreaterThan(0.405);
  expect(learnt.mean).toBeLessThan(0.425);
  expect(learnt.high - learnt.low).toBeLessThan(0.6 * (RETENTION_PRIOR.high - RETENTION_PRIOR.low));
});

// By hand, 4 l of punch on 1 l of milk and one filter: 4 + 1 - 0.055 - k - 0.02 of 5 l comes through,
// 0.895 to 0.935 for k from 0.45 to 0.25; a third wider either way, 0.888 to 0.942.
test("before any batch nine tenths of what goes in comes out", () => {
  const { low, high } = lessonOf([], "share", KIND);
  expect(Math.abs(low - 0.888)).toBeLessThan(0.003);
  expect(Math.abs(high - 0.942)).toBeLessThan(0.003);
});

test("before any batch every lesson is its stated belief", () => {
  for (const name of LESSONS) {
    const { low, mean, high, batches } = lessonOf([], name, KIND);
    expect(batches).toBe(0);
    expect(low).toBeLessThanOrEqual(mean);
    expect(high).toBeGreaterThan(mean);
  }
  expect(lessonOf([], "curd", KIND).mean).toBeCloseTo(RETENTION_PRIOR.mean, 12);
  expect(lessonOf([], "drip", KIND).mean).toBeCloseTo(1, 12);
  expect(lessonOf([], "drip", KIND).high).toBeCloseTo(3, 6);
  expect(lessonOf([], "passes", KIND).low).toBe(0);
});

test("time to clear and the drip are learnt as factors, passes as they were counted", () => {
  // The helper's batches: 2 + 3 + 3 min from the first pass to clear, one pass, 340 min of drip.
  expect(lessonOf(SEVEN, "clear", KIND).mean / 60_000).toBeGreaterThan(6.5);
  expect(lessonOf(SEVEN, "clear", KIND).mean / 60_000).toBeLessThan(8.5);
  expect(lessonOf(SEVEN, "passes", KIND).mean).toBeCloseTo(1, 0);
  const usual = usualDrip(SEVEN[0]?.yielded?.ml ?? 0, 2);
  const { mean } = lessonOf(SEVEN, "drip", KIND);
  expect(Math.abs(Math.log(mean / ((340 * 60_000) / usual)))).toBeLessThan(0.1);
});

test("only the latest twenty of a kind count, and none that is not over", () => {
  const old = Array.from({ length: 20 }, (_, day) => keptRecord(day + 1, 0.8));
  const late = Array.from({ length: 20 }, (_, day) => keptRecord(day + 101, 0.3));
  expect(lessonOf([...old, ...late], "curd", KIND).mean).toBeLessThan(0.32);
  const open: readonly BatchRecord[] = SEVEN.map(({ ending: _, ...rest }) => rest);
  expect(lessonOf(open, "curd", KIND).batches).toBe(0);
});

test("below three batches of the house nothing is learnt; from three on plans use it", () => {
  expect(learntRules([])).toEqual({});
  expect(learntRules(SEVEN.slice(0, 2))).toEqual({});
  const three = learntRules(SEVEN.slice(0, 3));
  expect(three[KIND]?.retention).toMatchObject({ from: "own-batches", batches: 3 });
  expect(Object.keys(three).sort()).toEqual(["own", KIND]);
});

test("a kind with too few of its own is told by the house", () => {
  const oat = { ...keptRecord(30, 0.1), procedureId: "house-wash" };
  const learnt = lessonOf([...SEVEN, oat], "curd", "own|house-wash|unknown|whole");
  expect(learnt).toMatchObject({ batches: 1, house: 8 });
  expect(toldBy(learnt)).toBe(8);
});

const cupboard = new Map(CUPBOARD.map((one) => [one.id, one]));
const pear = demoSpec("Pear Beacon");
const planWith = (batches: readonly BatchRecord[], demo: boolean) => {
  const { demo: _, ...own } = pear;
  const house = { ...NEW_HOUSE, learnt: learntRules(batches) };
  return must(planBatch(demo ? pear : own, cupboard, PEAR_PLAN.size, house));
};

test("a new plan uses what was learnt and says from how many batches", () => {
  const plan = planWith(SEVEN, false);
  expect(plan.yield).toMatchObject({ from: "own-batches", batches: 7 });
  expect(plan.yield?.curdKeeps).toBeCloseTo(lessonOf(SEVEN, "curd", KIND).mean, 12);
  expect(plan.yield?.drip?.batches).toBe(7);
  // More stays in the curd than was believed, so more has to be poured for the same bottles.
  expect(plan.yield?.poured).toBeGreaterThan(PEAR_PLAN.yield?.poured ?? 0);
});

test("invented batches never teach the bar's own plans, nor the other way round", () => {
  const invented = KEPT.map((curd, day) => keptRecord(day + 1, curd, true));
  expect(planWith(invented, false).yield).toMatchObject({ from: "common-practice", batches: 0 });
  expect(planWith(invented, true).yield).toMatchObject({ from: "own-batches", batches: 7 });
  expect(planWith(SEVEN, true).yield).toMatchObject({ from: "common-practice", batches: 0 });
});

test("one batch that failed does not swing the plan", () => {
  const failed = keptRecord(40, 1.9);
  const with_ = planWith([...SEVEN, failed], false).yield?.curdKeeps ?? 0;
  const without = planWith(SEVEN, false).yield?.curdKeeps ?? 0;
  expect(Math.abs(with_ - without)).toBeLessThan(0.006);
});
