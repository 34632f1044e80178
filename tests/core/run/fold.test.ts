import fc from "fast-check";
import { expect, test } from "vitest";
import type { Command } from "../../../core/run/command.ts";
import { LAST_MOMENT, type RunEvent } from "../../../core/run/event.ts";
import { applyEvent, foldRun } from "../../../core/run/fold.ts";
import { undoneActs } from "../../../core/run/order.ts";
import { endingOf, openVisit } from "../../../core/run/run.ts";
import { anyTurns, play } from "../../support/world/any-order.ts";
import { TestBench } from "../../support/world/run-events.ts";
import { WASH_PLAN, walked } from "../../support/world/wash-bench.ts";
import { finishOpenStep } from "../../support/world/wash-walk.ts";

test("a wash walked from end to end is finished, with every answer kept", () => {
  const { run } = walked();
  expect(run && endingOf(run)?.how).toBe("finished");
  expect(run?.readings.map((one) => [one.what, one.value])).toEqual([["milk", 1000]]);
  expect(run?.rePours.map((one) => one.ml)).toEqual([300]);
  expect(run?.yields.map((one) => one.ml)).toEqual([4400]);
  expect(run?.topUps.map((one) => one.ml)).toEqual([400]);
  expect(run?.bottlings[0]?.bottles).toEqual([{ count: 7, size: 700 }]);
  expect(run?.visits.map((visit) => visit.step)).toEqual([
    "build",
    "milk",
    "pour",
    "curdle",
    "wet-filter",
    "first-pass",
    "re-pour",
    "check-clear",
    "slow-drip",
    "yield",
    "top-up",
    "bottle",
    "label",
  ]);
});

test("an event for a visit or step nobody knows changes nothing", () => {
  const bench = walked();
  const before = bench.run;
  const [first] = bench.events;
  if (first === undefined || before === undefined) throw new Error("a walked run has events");
  const { id, runId, device, at, hlc, v } = first;
  const stray = {
    id: `${id}-x`,
    runId,
    device,
    act: "stray",
    at,
    hlc: { ms: hlc.ms + 1e9, n: 0 },
    v,
  };
  expect(applyEvent(before, { ...stray, type: "step.finished", visit: "none#1" })).toEqual(before);
  expect(
    applyEvent(before, { ...stray, type: "step.started", visit: "none#1", step: "none" }),
  ).toEqual(before);
  expect(foldRun([{ ...stray, type: "note.added", text: "without a start" }])).toBeUndefined();
});

test("a clock put forward moves open waits along when the elapsed time is kept", () => {
  const bench = new TestBench();
  bench.start(WASH_PLAN);
  bench.order({ type: "finish-step", visit: "build#1" });
  bench.order({ type: "finish-step", visit: "milk#1", answer: { of: "milk", ml: 1000 } });
  bench.order({ type: "finish-step", visit: "pour#1" });
  const due = (run = bench.run) => run && openVisit(run)?.dueAt;
  const before = due();
  expect(before).toBe(bench.now + 3_600_000);
  bench.order({ type: "shift-clock", byMs: 600_000, keepElapsed: true });
  expect(due()).toBe((before ?? 0) + 600_000);
  bench.order({ type: "shift-clock", byMs: -600_000, keepElapsed: false });
  expect(due()).toBe((before ?? 0) + 600_000);
});

test("a clock that was set takes all that came before along, but not what was promised or told", () => {
  const bench = new TestBench();
  bench.start(WASH_PLAN, bench.now + 9e7);
  bench.order({ type: "finish-step", visit: "build#1" });
  bench.order({ type: "move-vessel", to: "fridge" });
  bench.order({ type: "add-note", text: "one" });
  const visit = "milk#1";
  const dueAt = bench.now + 1000;
  bench.order({ type: "hear-alarm", visit, dueAt });
  bench.order({ type: "hand-alarm", visit, dueAt, to: "phone-clock" });
  const { run: before } = bench;
  const byMs = -3_600_000;
  bench.now += byMs;
  bench.order({ type: "shift-clock", byMs, keepElapsed: true });
  const { run } = bench;
  const moved = (at: number | undefined) => (at ?? 0) + byMs;
  expect(run?.startedAt).toBe(moved(before?.startedAt));
  expect(run?.visits.map(({ startedAt }) => startedAt)).toEqual(
    before?.visits.map(({ startedAt }) => moved(startedAt)),
  );
  expect(run?.visits[0]?.finishedAt).toBe(moved(before?.visits[0]?.finishedAt));
  expect(run?.stands[0]?.at).toBe(moved(before?.stands[0]?.at));
  expect(run?.notes[0]?.at).toBe(moved(before?.notes[0]?.at));
  expect(run?.visits[1]?.heardAt).toBe(moved(before?.visits[1]?.heardAt));
  expect(run?.visits[0]?.heardAt).toBeUndefined();
  expect(run?.readyBy).toBe(before?.readyBy);
  expect(run?.visits[1]?.handed).toEqual([{ to: "phone-clock", dueAt }]);
});

test("property: folding at once is folding event by event, without what was taken back", () => {
  fc.assert(
    fc.property(anyTurns(20), (turns) => {
      const bench = new TestBench();
      bench.start(WASH_PLAN);
      play(bench, turns);
      const undone = undoneActs(bench.events);
      const standing = bench.events.filter((event) => !undone.has(event.act));
      const step = (run: ReturnType<typeof foldRun>, event: RunEvent) => applyEvent(run, event);
      expect(standing.reduce(step, undefined)).toEqual(bench.run);
    }),
    { numRuns: 30 },
  );
});

test("property: a run that was handed out is never changed by what comes after", () => {
  fc.assert(
    fc.property(anyTurns(12), (turns) => {
      const bench = new TestBench();
      bench.start(WASH_PLAN);
      const first = bench.run;
      const kept = JSON.stringify(first);
      play(bench, turns);
      bench.events.slice(2).reduce((run, event) => applyEvent(run, event), first);
      expect(JSON.stringify(first)).toBe(kept);
    }),
    { numRuns: 25 },
  );
});

test("a clock that was put back leaves no wait of negative length", () => {
  const bench = new TestBench();
  bench.start(WASH_PLAN);
  bench.now -= 3_600_000;
  bench.order({ type: "shift-clock", byMs: -3_600_000, keepElapsed: false });
  bench.order({ type: "finish-step", visit: "build#1" });
  const visit = bench.run?.visits[0];
  expect(visit?.finishedAt).toBe(visit?.startedAt);
});

test("everything that is said is kept in the order it was said", () => {
  const bench = new TestBench();
  bench.start(WASH_PLAN);
  for (const text of ["one", "two", "three"]) bench.order({ type: "add-note", text });
  for (const line of ["tea", "lemon"]) bench.order({ type: "pour-line", visit: "build#1", line });
  expect(bench.run?.notes.map((note) => note.text)).toEqual(["one", "two", "three"]);
  expect(bench.run?.poured.map((one) => one.line)).toEqual(["tea", "lemon"]);
});

test("what was weighed and what was said of the filter, and how each is taken back", () => {
  const bench = new TestBench();
  bench.start(WASH_PLAN);
  while (bench.run?.visits.at(-1)?.step !== "slow-drip") {
    const order = bench.run && finishOpenStep(bench.run);
    if (order !== undefined) bench.order(order);
  }
  const visit = "slow-drip#1";
  const orders: readonly Command[] = [
    { type: "note-tare", vessel: "clear-run", grams: 812 },
    { type: "note-tare", vessel: "clear-run", grams: 815 },
    { type: "note-shape", visit, shape: "cone" },
    { type: "log-weight", visit, gross: 1815 },
  ];
  const states = orders.map((order) => {
    const before = bench.run;
    expect(bench.order(order)).toBeUndefined();
    return { before, act: bench.lastAct };
  });
  expect(bench.run?.tares.map(({ vessel, grams }) => [vessel, grams])).toEqual([
    ["clear-run", 812],
    ["clear-run", 815],
  ]);
  expect(bench.run?.shapes.map(({ shape }) => shape)).toEqual(["cone"]);
  expect(bench.run?.readings.at(-1)?.weighed).toEqual({ gross: 1815, tare: 815 });
  for (const { before, act } of states.reverse()) {
    expect(bench.order({ type: "undo", act })).toBeUndefined();
    expect(bench.run).toEqual(before);
  }
});

test("a clock set by more than there is time leaves every moment one that a date can hold", () => {
  for (const byMs of [Number.MAX_SAFE_INTEGER, Number.MIN_SAFE_INTEGER]) {
    const bench = new TestBench();
    bench.start(WASH_PLAN);
    bench.order({ type: "add-note", text: "Stirred" });
    bench.order({ type: "shift-clock", byMs, keepElapsed: true });
    const end = byMs > 0 ? LAST_MOMENT : 0;
    expect(bench.run?.startedAt).toBe(end);
    expect(bench.run?.visits.map(({ startedAt }) => startedAt)).toEqual([end]);
    expect(bench.run?.notes.map(({ at }) => at)).toEqual([end]);
  }
});
