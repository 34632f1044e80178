import fc from "fast-check";
import { expect, test } from "vitest";
import type { RunEvent } from "../../../core/run/event.ts";
import { applyEvent, foldRun } from "../../../core/run/fold.ts";
import { mergeEvents } from "../../../core/run/order.ts";
import { openVisit } from "../../../core/run/run.ts";
import { TestBench } from "../../support/world/run-events.ts";
import { WASH_PLAN, walked } from "../../support/world/wash-bench.ts";
import { finishOpenStep } from "../../support/world/wash-walk.ts";

const log = walked().events;

test("property: order of arrival and repeats change nothing", () => {
  fc.assert(
    fc.property(
      fc.shuffledSubarray([...log], { minLength: log.length }),
      fc.array(fc.integer({ min: 0, max: log.length - 1 })),
      (shuffled, repeats) => {
        const again = repeats.flatMap((at) => log[at] ?? []);
        expect(foldRun([...shuffled, ...again])).toEqual(foldRun(log));
      },
    ),
    { numRuns: 30 },
  );
});

test("property: merging is commutative, associative and idempotent", () => {
  const part = fc.shuffledSubarray([...log]);
  fc.assert(
    fc.property(part, part, part, (a, b, c) => {
      expect(mergeEvents(a, b)).toEqual(mergeEvents(b, a));
      expect(mergeEvents(mergeEvents(a, b), c)).toEqual(mergeEvents(a, mergeEvents(b, c)));
      expect(mergeEvents(a, a)).toEqual(mergeEvents(a, []));
    }),
    { numRuns: 30 },
  );
});

test("property: replaying a prefix and then the rest equals replaying all", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: log.length }), (at) => {
      const step = (run: ReturnType<typeof foldRun>, event: RunEvent) => applyEvent(run, event);
      const prefix = log.slice(0, at).reduce(step, undefined);
      expect(log.slice(at).reduce(step, prefix)).toEqual(foldRun(log));
    }),
  );
});

test("property: undoing the last act gives back the run as it was before it", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 11 }), (steps) => {
      const bench = new TestBench();
      bench.start(WASH_PLAN);
      for (let turn = 0; turn < steps; turn += 1) {
        const command = bench.run && finishOpenStep(bench.run);
        if (command !== undefined) bench.order(command);
      }
      const before = bench.run;
      const command = before && finishOpenStep(before);
      if (command === undefined) throw new Error("the wash has more than eleven steps");
      bench.order(command);
      expect(bench.run).not.toEqual(before);
      expect(bench.order({ type: "undo", act: bench.lastAct })).toBeUndefined();
      expect(bench.run).toEqual(before);
    }),
    { numRuns: 30 },
  );
});

test("an undo that is itself undone counts no more", () => {
  const bench = new TestBench();
  bench.start(WASH_PLAN);
  bench.order({ type: "finish-step", visit: "build#1" });
  const done = bench.run;
  bench.order({ type: "undo", act: bench.lastAct });
  bench.order({ type: "undo", act: bench.lastAct });
  expect(bench.run).toEqual(done);
});

test("two phones that finish the same step agree on one run, and both readings are kept", () => {
  const a = new TestBench();
  a.start(WASH_PLAN);
  a.order({ type: "finish-step", visit: "build#1" });
  const b = new TestBench(a.now + 5000, "phone-b");
  b.events = a.events;
  a.now += 3000;
  a.order({ type: "finish-step", visit: "milk#1", answer: { of: "milk", ml: 1000 } });
  b.order({ type: "finish-step", visit: "milk#1", answer: { of: "milk", ml: 1010 } });
  const both = foldRun(mergeEvents(a.events, b.events));
  expect(both).toEqual(foldRun(mergeEvents(b.events, a.events)));
  expect(both && openVisit(both)?.key).toBe("pour#1");
  expect(both?.readings.map((one) => one.value).sort()).toEqual([1000, 1010]);
  expect(both?.visits.filter((visit) => visit.step === "pour")).toHaveLength(1);
});

test("of two answers to an alarm the later moment counts, and of two pauses the first", () => {
  const bench = new TestBench();
  bench.start(WASH_PLAN);
  const visit = "build#1";
  bench.now += 60_000;
  const pausedAt = bench.now;
  bench.order({ type: "hear-alarm", visit, dueAt: bench.now });
  bench.order({ type: "pause" });
  bench.now += 60_000;
  bench.order({ type: "pause" });
  const heardAt = (bench.run?.visits[0]?.heardAt ?? 0) + 0;
  expect(bench.run?.pausedAt).toBe(pausedAt);
  // Another phone's clock is behind: its answer comes later in the log and says an earlier moment.
  const late = bench.events.find(({ type }) => type === "alarm.heard");
  if (late === undefined) throw new RangeError("it was heard");
  const hlc = { ms: late.hlc.ms + 9e6, n: 0 };
  const behind = { ...late, id: "other", act: "other", device: "phone-b", at: late.at - 5000, hlc };
  expect(foldRun([...bench.events, behind])?.visits[0]?.heardAt).toBe(heardAt);
});

test("a step that two phones finished was finished when the first of them said so", () => {
  const a = new TestBench();
  a.start(WASH_PLAN);
  const b = new TestBench(a.now, "phone-b");
  b.events = a.events;
  a.now += 5000;
  b.now += 9000;
  a.order({ type: "finish-step", visit: "build#1" });
  b.order({ type: "finish-step", visit: "build#1" });
  const run = foldRun(mergeEvents(b.events, a.events));
  expect(run?.visits[0]?.finishedAt).toBe(a.now);
  expect(run?.visits[1]?.startedAt).toBe(a.now);
});
