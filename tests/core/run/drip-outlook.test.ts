import { expect, test } from "vitest";
import {
  asksShape,
  collectedIn,
  dripOutlook,
  drippingVisit,
  lastDrip,
  nextDripLook,
  nextLookAt,
  shapeOf,
} from "../../../core/run/drip-outlook.ts";
import { openVisit } from "../../../core/run/run.ts";
import { planOf, runOf, TestBench } from "../../support/world/run-events.ts";
import { finishOpenStep } from "../../support/world/wash-walk.ts";

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

test.each([90, -90])("a clock set by %i minutes leaves the forecast as it was", (minutes) => {
  const bench = atDrip();
  read(bench, 30, 900);
  read(bench, 60, 1900);
  const before = dripOutlook(runOf(bench));
  bench.now += minutes * MINUTE;
  bench.order({ type: "shift-clock", byMs: minutes * MINUTE, keepElapsed: true });
  expect(dripOutlook(runOf(bench))).toEqual(before);
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

test("nobody is called to a drip after it should be through", () => {
  const bench = atDrip();
  read(bench, 30, 900);
  read(bench, 60, 1900);
  const visit = openVisit(runOf(bench));
  const outlook = dripOutlook(runOf(bench));
  if (visit === undefined || outlook?.type !== "forecast") throw new Error("two were read");
  const { p50 } = outlook.throughAt;
  const late = { ...outlook, nextReading: { ...outlook.nextReading, atMs: 3 * p50 } };
  expect(nextLookAt(visit, late, bench.now)).toBe(Math.round(visit.startedAt + p50));
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

test("what stands above the filter is asked once where the spec does not say, and then counts", () => {
  const bench = atDrip();
  expect(asksShape(runOf(bench))).toBe(true);
  expect(shapeOf(runOf(bench))).toBe("unknown");
  read(bench, 30, 900);
  read(bench, 60, 1900);
  const before = dripOutlook(runOf(bench));
  bench.order({ type: "note-shape", visit: "slow-drip#1", shape: "topped-up" });
  expect(asksShape(runOf(bench))).toBe(false);
  expect(shapeOf(runOf(bench))).toBe("topped-up");
  const after = dripOutlook(runOf(bench));
  if (before?.type !== "forecast" || after?.type !== "forecast") throw new Error("two were read");
  expect(after.shape).toBe("topped-up");
  // A vessel that is kept topped up does not slow down as it empties.
  expect(after.throughAt.p50).toBeLessThan(before.throughAt.p50);
  bench.order({ type: "undo", act: bench.lastAct });
  expect(asksShape(runOf(bench))).toBe(true);
  expect(dripOutlook(runOf(bench))).toEqual(before);
});

test("nobody is asked again who does not know, nor where the spec says, nor at another step", () => {
  const bench = atDrip();
  bench.order({ type: "note-shape", visit: "slow-drip#1", shape: "unknown" });
  expect(asksShape(runOf(bench))).toBe(false);
  const { run } = atDrip();
  const { wash } = plan.spec;
  if (run === undefined || wash === undefined) throw new RangeError("the test spec is washed");
  const spec = { ...plan.spec, wash: { ...wash, filterShape: "cone" as const } };
  const said = { ...run, plan: { ...plan, spec } };
  expect(asksShape(said)).toBe(false);
  expect(shapeOf(said)).toBe("cone");
  const early = new TestBench();
  early.start(plan);
  expect(asksShape(runOf(early))).toBe(false);
});

test("a drip that is over keeps its readings and can still be looked at", () => {
  const bench = atDrip();
  read(bench, 30, 900);
  read(bench, 60, 1900);
  const going = dripOutlook(runOf(bench));
  bench.order({ type: "finish-step", visit: "slow-drip#1" });
  const over = runOf(bench);
  const visit = lastDrip(over);
  expect(visit?.key).toBe("slow-drip#1");
  expect(dripOutlook(over)).toBeUndefined();
  expect(dripOutlook(over, [], visit)).toEqual(going);
  expect(visit && collectedIn(over, visit).map(({ ml }) => ml)).toEqual([900, 1900]);
  const early = new TestBench();
  early.start(plan);
  expect(lastDrip(runOf(early))).toBeUndefined();
});

test("what was only weighed, without the volume it means, is no reading of the drip", () => {
  const bench = atDrip();
  const visit = openVisit(runOf(bench));
  if (visit === undefined) throw new RangeError("the drip goes on");
  bench.order({ type: "log-reading", visit: visit.key, what: "collected", value: 900, unit: "g" });
  expect(collectedIn(runOf(bench), visit)).toEqual([]);
});

test("the next look is the one the log holds, and never within five minutes of a reading", () => {
  const bench = atDrip();
  read(bench, 30, 900);
  const run = runOf(bench);
  const visit = openVisit(run);
  const outlook = dripOutlook(run);
  if (visit === undefined || outlook === undefined) throw new RangeError("the drip goes on");
  expect(nextLookAt(visit, outlook, bench.now)).toBe(visit.dueAt);
  const late = visit.startedAt + 1000 * 60 * MINUTE;
  expect(nextLookAt(visit, outlook, late)).toBe(late + 5 * MINUTE);
  expect(nextLookAt(visit, { type: "none", why: "no-reading", keptOut: [] }, 0)).toBeUndefined();
});
