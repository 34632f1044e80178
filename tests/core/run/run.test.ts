import { expect, test } from "vitest";
import { foldRun } from "../../../core/run/fold.ts";
import { mergeEvents } from "../../../core/run/order.ts";
import {
  bottledOf,
  endingOf,
  measuredYield,
  openVisit,
  type Run,
  roundOf,
  stepOfVisit,
  topUpOf,
} from "../../../core/run/run.ts";
import { planOf, TestBench } from "../../support/world/run-events.ts";
import { finishOpenStep, USUAL, type WashAnswers } from "../../support/world/wash-walk.ts";

const plan = planOf();

/** Walks on until the work stands at a step, or to the end. */
function walkTo(bench: TestBench, step: string | undefined, by: WashAnswers = USUAL): TestBench {
  for (let turn = 0; turn < 40; turn += 1) {
    const { run } = bench;
    if (run === undefined || openVisit(run)?.step === step) return bench;
    const order = finishOpenStep(run, by);
    if (order === undefined) return bench;
    bench.now += 60_000;
    expect(bench.order(order)).toBeUndefined();
  }
  throw new RangeError(`the wash never came to ${step}`);
}

function begun(device = "phone-a"): TestBench {
  const bench = new TestBench(1_000_000_000_000, device);
  bench.start(plan);
  return bench;
}

/** What is folded must be a run. */
function certain(run: Run | undefined): Run {
  if (run === undefined) throw new RangeError("the log must have a start");
  return run;
}

test("a run stands at its first step, and at none once it has ended", () => {
  const bench = begun();
  const first = certain(bench.run);
  expect(openVisit(first)).toEqual({ key: "build#1", step: "build", startedAt: bench.now });
  expect(endingOf(first)).toBeUndefined();
  const last = certain(walkTo(bench, undefined).run);
  expect(openVisit(last)).toBeUndefined();
  expect(endingOf(last)).toEqual({ how: "finished", at: bench.now });
});

test("an abandoned run has ended, though a step stands open", () => {
  const bench = walkTo(begun(), "slow-drip");
  bench.now += 1000;
  bench.order({ type: "abandon", reason: "dropped" });
  expect(endingOf(certain(bench.run))).toEqual({ how: "abandoned", at: bench.now });
  bench.order({ type: "undo", act: bench.lastAct });
  expect(endingOf(certain(bench.run))).toBeUndefined();
  expect(openVisit(certain(bench.run))?.key).toBe("slow-drip#1");
});

test("the step of a visit is that of the run's own procedure", () => {
  const run = certain(begun().run);
  expect(stepOfVisit(run, { key: "x#1", step: "curdle", startedAt: 0 }).work).toBe("rest");
  expect(() => stepOfVisit(run, { key: "x#1", step: "x", startedAt: 0 })).toThrow(RangeError);
});

test("the latest answer counts", () => {
  const run = certain(walkTo(begun(), undefined).run);
  expect([measuredYield(run), topUpOf(run)?.ml, bottledOf(run)?.useBy]).toEqual([
    USUAL.yield,
    USUAL.topUp,
    USUAL.useBy,
  ]);
  const open = certain(begun().run);
  expect([measuredYield(open), topUpOf(open), bottledOf(open)]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test("a start whose first step is still on its way has not ended", () => {
  const [start] = begun().events;
  const alone = certain(foldRun(start === undefined ? [] : [start]));
  expect(openVisit(alone)).toBeUndefined();
  expect(endingOf(alone)).toBeUndefined();
});

/** Two phones look at the same glass: a sees it clear, b a moment later hazy. */
function forked(): { a: TestBench; b: TestBench } {
  const a = walkTo(begun(), "check-clear");
  const b = new TestBench(a.now + 1000, "phone-b");
  b.events = a.events;
  b.order({ type: "finish-step", visit: "check-clear#1", look: "hazy" });
  a.order({ type: "finish-step", visit: "check-clear#1", look: "clear" });
  return { a, b };
}

test("phones that saw different things: both are kept, the later one is worked on", () => {
  const { a, b } = forked();
  const run = certain(foldRun(mergeEvents(a.events, b.events)));
  expect(run.looks.map((seen) => seen.look)).toEqual(["clear", "hazy"]);
  expect(openVisit(run)?.key).toBe("re-pour#2");
});

test("the way that was left is not gone back to once the other was walked past it", () => {
  const { a, b } = forked();
  b.events = mergeEvents(a.events, b.events);
  const run = certain(walkTo(b, undefined).run);
  expect(
    run.visits.filter((visit) => visit.finishedAt === undefined).map((one) => one.key),
  ).toEqual(["slow-drip#1"]);
  expect(endingOf(run)).toEqual({ how: "finished", at: b.now });
});

test("the way that was left still stands while the other has not come as far", () => {
  const { a, b } = forked();
  b.now += 1000;
  b.order({ type: "finish-step", visit: "re-pour#2", answer: { of: "cloudy-run", ml: 200 } });
  // Of b's last act only the finishing has arrived: the drip that a began is what is left to do.
  const partly = b.events.filter(
    (one) => one.type !== "step.started" || one.visit !== "check-clear#2",
  );
  expect(openVisit(certain(foldRun(mergeEvents(a.events, partly))))?.key).toBe("slow-drip#1");
  expect(openVisit(certain(foldRun(mergeEvents(a.events, b.events))))?.key).toBe("check-clear#2");
});

test("a visit's round is read from its key", () => {
  expect(roundOf({ key: "pour#1" })).toBe(1);
  expect(roundOf({ key: "re-pour#12" })).toBe(12);
});

const FRIDAY = 1_764_345_600_000;
const HOUR = 3_600_000;

function promised(readyBy?: number): TestBench {
  const bench = new TestBench();
  bench.start(planOf(), readyBy);
  return bench;
}

test("a run that was planned for a moment knows it; another does not", () => {
  expect(promised(FRIDAY).run?.readyBy).toBe(FRIDAY);
  expect(promised().run?.readyBy).toBeUndefined();
});

test("it can be set anew, and that taken back", () => {
  const bench = promised(FRIDAY);
  expect(bench.order({ type: "set-ready", by: FRIDAY + HOUR })).toBeUndefined();
  expect(bench.run?.readyBy).toBe(FRIDAY + HOUR);
  expect(bench.order({ type: "undo", act: bench.lastAct })).toBeUndefined();
  expect(bench.run?.readyBy).toBe(FRIDAY);
  expect(foldRun(bench.events.toReversed())?.readyBy).toBe(FRIDAY);
});

test.each([Number.NaN, -1, 0.5])("a moment of %s is refused", (by) => {
  const bench = promised(FRIDAY);
  expect(bench.order({ type: "set-ready", by })).toBe("order-does-not-fit");
  expect(bench.run?.readyBy).toBe(FRIDAY);
});
