import { expect, test } from "vitest";
import { dripOutlook, drippingVisit, nextDripLook } from "../../../core/run/drip-outlook.ts";
import { openVisit, type Run } from "../../../core/run/run.ts";
import { planOf, TestBench } from "../../support/run-events.ts";
import { finishOpenStep } from "../../support/wash-walk.ts";

const MINUTE = 60_000;
const plan = planOf();

function atDrip(): TestBench {
  const bench = new TestBench();
  bench.start(plan);
  while (runOf(bench).visits.at(-1)?.step !== "slow-drip") {
    const command = finishOpenStep(runOf(bench));
    if (command === undefined) throw new RangeError("the wash must come to its drip");
    bench.order(command);
  }
  return bench;
}

function runOf(bench: TestBench): Run {
  const { run } = bench;
  if (run === undefined) throw new RangeError("the bench must have a run");
  return run;
}

function read(bench: TestBench, minutes: number, ml: number): void {
  bench.now += minutes * MINUTE;
  const visit = openVisit(runOf(bench))?.key ?? "";
  bench.order({ type: "log-reading", visit, what: "collected", value: ml, unit: "ml" });
}

test("nothing drips at any other step", () => {
  const bench = new TestBench();
  bench.start(plan);
  expect(drippingVisit(runOf(bench))).toBeUndefined();
  expect(dripOutlook(runOf(bench))).toBeUndefined();
  expect(nextDripLook(runOf(bench), 100, bench.now)).toBeUndefined();
});

test("no reading and one reading make no forecast; two do, and it lies ahead", () => {
  const bench = atDrip();
  expect(dripOutlook(runOf(bench))).toMatchObject({ type: "none", why: "no-reading" });
  read(bench, 30, 900);
  expect(dripOutlook(runOf(bench))).toMatchObject({ type: "none", why: "one-reading" });
  read(bench, 60, 1900);
  const outlook = dripOutlook(runOf(bench));
  if (outlook?.type !== "forecast") throw new Error("two readings must make a forecast");
  expect(outlook.throughAt.p50).toBeGreaterThan(90 * MINUTE);
  expect(outlook.throughAt.p10).toBeLessThanOrEqual(outlook.throughAt.p50);
  expect(outlook.throughAt.p90).toBeGreaterThanOrEqual(outlook.throughAt.p50);
});

test("a reading moves the wait, in the log, to a moment that is still to come", () => {
  const bench = atDrip();
  const before = openVisit(runOf(bench))?.dueAt;
  read(bench, 30, 900);
  read(bench, 60, 1900);
  const moved = bench.events.findLast((event) => event.type === "due.moved");
  expect(moved).toMatchObject({ type: "due.moved", visit: "slow-drip#1" });
  const due = openVisit(runOf(bench))?.dueAt ?? 0;
  expect(due).not.toBe(before);
  expect(due).toBeGreaterThanOrEqual(bench.now + 5 * MINUTE);
});

test("taking a reading back takes its deadline back with it", () => {
  const bench = atDrip();
  read(bench, 30, 900);
  const before = openVisit(runOf(bench))?.dueAt;
  read(bench, 60, 1900);
  bench.order({ type: "undo", act: bench.lastAct });
  expect(openVisit(runOf(bench))?.dueAt).toBe(before);
});

test("a slower drip is through later", () => {
  const through = (second: number): number => {
    const bench = atDrip();
    read(bench, 30, 900);
    read(bench, 60, second);
    const outlook = dripOutlook(runOf(bench));
    if (outlook?.type !== "forecast") throw new Error("two readings must make a forecast");
    return outlook.throughAt.p50;
  };
  expect(through(1500)).toBeGreaterThan(through(2200));
});
