import fc from "fast-check";
import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import type { Procedure, Step } from "../../../core/method/procedure.ts";
import type { Command } from "../../../core/run/command.ts";
import { decide } from "../../../core/run/decide.ts";
import { eventSchema } from "../../../core/run/event.ts";
import { endingOf, openVisit } from "../../../core/run/run.ts";
import { anyTurns, play } from "../../support/world/any-order.ts";
import { runOf, TestBench } from "../../support/world/run-events.ts";
import { benchAt, finishOrder, startOrder, WASH_PLAN } from "../../support/world/wash-bench.ts";
import { finishOpenStep, USUAL } from "../../support/world/wash-walk.ts";

const HOUR = 3_600_000;
test("a run starts with its plan, its procedure and its first step", () => {
  const decision = decide([], undefined, startOrder(), 0);
  const [started, step, ...rest] = decision.ok ? decision.value : [];
  expect(started).toMatchObject({ type: "run.started", batch: "TW-0101", plan: WASH_PLAN });
  expect(step).toEqual({ type: "step.started", visit: "build#1", step: "build" });
  expect(rest).toEqual([]);
  expect(() =>
    decide([], undefined, startOrder({ procedure: { ...DAIRY_WASH, steps: [] } }), 0),
  ).toThrow(new RangeError("a procedure must have a step"));
});

test("one act says all: what was measured, that the step is done, what comes next", () => {
  const bench = benchAt("check-clear");
  const decision = decide(
    bench.events,
    bench.run,
    finishOrder("check-clear#1", { look: "hazy" }),
    bench.now,
  );
  expect(decision.ok && decision.value).toEqual([
    { type: "look.noted", visit: "check-clear#1", look: "hazy" },
    { type: "step.finished", visit: "check-clear#1" },
    { type: "step.started", visit: "re-pour#2", step: "re-pour" },
  ]);
});

test("cloudy, then hazy: poured back over the curd each time, until it runs clear", () => {
  const bench = benchAt("check-clear");
  for (const look of ["cloudy", "hazy", "clear"] as const) {
    for (const _ of look === "clear" ? [1] : [1, 2]) {
      const order = finishOpenStep(runOf(bench), { ...USUAL, look });
      expect(order && bench.order(order)).toBeUndefined();
    }
  }
  const run = runOf(bench);
  expect(run.visits.slice(6).map((visit) => visit.key)).toEqual([
    "re-pour#1",
    "check-clear#1",
    "re-pour#2",
    "check-clear#2",
    "re-pour#3",
    "check-clear#3",
    "slow-drip#1",
  ]);
  expect(run.looks.map((seen) => seen.look)).toEqual(["cloudy", "hazy", "clear"]);
  expect(run.rePours).toHaveLength(3);
});

test.each([
  ["a minute into it", 60_000],
  ["when it is due", HOUR],
  ["a day late", 24 * HOUR],
])("a rest may be ended %s", (_, wait) => {
  const bench = benchAt("curdle");
  const begun = bench.now - 60_000;
  bench.now = begun + wait;
  expect(bench.order(finishOrder("curdle#1"))).toBeUndefined();
  const [visit] = runOf(bench).visits.filter((one) => one.step === "curdle");
  expect(visit).toMatchObject({ startedAt: begun, finishedAt: begun + wait });
});

test("what came of a batch is said after its end, and taken back", () => {
  const bench = benchAt();
  const before = bench.run;
  const after: readonly Command[] = [
    { type: "note-taste", scores: { acid: 5 }, words: ["bright"], by: "AB" },
    { type: "give-verdict", verdict: "fair", repeat: "with-changes", text: " less milk " },
    { type: "add-tag", tag: "summer" },
    {
      type: "add-photo",
      photo: "p",
      media: "image/jpeg",
      bytes: 9,
      width: 4,
      height: 3,
    },
    { type: "pour-stock", count: 3, unit: "serves" },
    { type: "end-stock", how: "discarded", reason: " broke " },
  ];
  for (const order of after) {
    const earlier = bench.run;
    expect(bench.order(order), order.type).toBeUndefined();
    expect(bench.run).not.toEqual(earlier);
    expect(bench.order({ type: "undo", act: bench.lastAct })).toBeUndefined();
    expect(bench.run).toEqual(before);
  }
});

test("notes and undoing go on after the end", () => {
  const bench = benchAt();
  expect(bench.order({ type: "add-note", text: "  best yet  " })).toBeUndefined();
  expect(runOf(bench).notes.map((note) => note.text)).toEqual(["best yet"]);
  const label = bench.events.findLast((event) => event.type === "step.finished")?.act ?? "";
  expect(bench.order({ type: "undo", act: label })).toBeUndefined();
  expect(openVisit(runOf(bench))?.key).toBe("label#1");
});

test("initials are kept in capitals, so that one person goes by one name", () => {
  const { events, run, now } = benchAt("curdle");
  const hands = decide(events, run, { type: "change-hands", initials: " ab" }, now);
  expect(hands).toMatchObject({ ok: true, value: [{ type: "hands.changed", initials: "AB" }] });
  const dueAt = now + HOUR;
  const watch = { type: "hand-alarm", visit: "curdle#1", dueAt, to: "person", who: "ab " } as const;
  expect(decide(events, run, watch, now)).toMatchObject({ ok: true, value: [{ who: "AB" }] });
});

test("a reading that was under way when its step ended is still kept", () => {
  const bench = benchAt("yield");
  const late = { visit: "slow-drip#1", what: "collected", value: 4300, unit: "ml" } as const;
  expect(bench.order({ type: "log-reading", ...late })).toBeUndefined();
  expect(runOf(bench).readings.at(-1)).toMatchObject(late);
});

const OWN_STEP: Step = {
  id: "chill",
  kind: "reading",
  work: "other",
  needs: "temperature",
  branches: [],
};
const OWN: Procedure = { id: "own", version: 1, steps: [OWN_STEP] };

test("a house's own step that needs a temperature is finished once one was read", () => {
  const bench = new TestBench();
  expect(bench.order(startOrder({ procedure: OWN }))).toBeUndefined();
  expect(bench.order(finishOrder("chill#1"))).toBe("reading-missing");
  const reading = { visit: "chill#1", what: "temperature", value: 4, unit: "degC" } as const;
  bench.order({ type: "log-reading", ...reading });
  expect(bench.order(finishOrder("chill#1"))).toBeUndefined();
  expect(endingOf(runOf(bench))?.how).toBe("finished");
});

test("property: no order throws; a refused one changes nothing; an accepted one is read back", () => {
  fc.assert(
    fc.property(anyTurns(20), (turns) => {
      const bench = new TestBench();
      let before = bench.events;
      play(bench, turns, (refusal) => {
        if (refusal !== undefined) expect(bench.events).toBe(before);
        for (const event of bench.events.slice(before.length)) {
          expect(eventSchema.parse(event)).toEqual(event);
        }
        before = bench.events;
      });
      bench.start(WASH_PLAN);
      expect(bench.run).toBeDefined();
    }),
    { numRuns: 40 },
  );
});

test("property: there is always a way on, until the run has ended", () => {
  fc.assert(
    fc.property(anyTurns(20), (turns) => {
      const bench = new TestBench();
      bench.start(WASH_PLAN);
      play(bench, turns, () => {
        const run = runOf(bench);
        if (endingOf(run) !== undefined) return;
        const on = finishOpenStep(run, { ...USUAL, cloudy: 10, yield: 100 });
        expect(on && decide(bench.events, run, on, bench.now)).toMatchObject({ ok: true });
      });
    }),
    { numRuns: 40 },
  );
});
