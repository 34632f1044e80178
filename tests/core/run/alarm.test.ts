import fc from "fast-check";
import { expect, test } from "vitest";
import { LONG_INFUSION } from "../../../core/method/infusions.ts";
import { alarmsOf } from "../../../core/run/alarm.ts";
import { foldRun } from "../../../core/run/fold.ts";
import { openVisit } from "../../../core/run/run.ts";
import { anyTurns, play } from "../../support/world/any-order.ts";
import { planOf, runOf, TestBench } from "../../support/world/run-events.ts";
import { finishOpenStep } from "../../support/world/wash-walk.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const plan = planOf();

/** A bench whose work has come to a step. */
function at(step: string, runId = "run-1"): TestBench {
  const bench = new TestBench(1_000_000_000_000, "phone-a", runId);
  bench.start(plan);
  while (openVisit(runOf(bench))?.step !== step) {
    const order = finishOpenStep(runOf(bench));
    if (order === undefined) throw new RangeError(`the wash has no step ${step}`);
    expect(bench.order(order)).toBeUndefined();
    bench.now += MINUTE;
  }
  bench.now -= MINUTE;
  return bench;
}

const due = (bench: TestBench): number | undefined => alarmsOf(runOf(bench))[0]?.dueAt;

function hear(bench: TestBench, visit = openVisit(runOf(bench))?.key ?? ""): void {
  expect(bench.order({ type: "hear-alarm", visit, dueAt: due(bench) ?? 0 })).toBeUndefined();
}

// Waits and how often they ask again: core/method/dairy-wash.ts, common practice.
test.each([
  ["curdle", "do", HOUR, 15 * MINUTE],
  ["first-pass", "look", MINUTE, MINUTE],
  ["check-clear", "look", MINUTE, MINUTE],
  ["slow-drip", "look", 30 * MINUTE, HOUR],
] as const)(
  "%s asks to %s when it is due, and again after each answer",
  (step, kind, wait, again) => {
    const bench = at(step);
    const begun = bench.now;
    const visit = `${step}#1`;
    expect(alarmsOf(runOf(bench))).toEqual([{ runId: "run-1", visit, kind, dueAt: begun + wait }]);
    bench.now = begun + wait + 7 * MINUTE;
    hear(bench);
    expect(due(bench)).toBe(bench.now + again);
    bench.now += 3 * again;
    hear(bench);
    expect(due(bench)).toBe(bench.now + again);
  },
);

test.each(["build", "milk", "pour", "wet-filter", "yield", "top-up", "bottle", "label"])(
  "nobody is called to %s: it waits for hands",
  (step) => {
    expect(alarmsOf(runOf(at(step)))).toEqual([]);
  },
);

// What stands cold keeps, so its alarm only says that it is over; a hard stop asks for hands.
test.each([
  ["on the counter", { stands: "counter" }, "do"],
  ["anywhere", {}, "do"],
  ["in the fridge", { stands: "fridge" }, "done"],
  ["in the freezer", { stands: "freezer" }, "done"],
  ["in the fridge past its hard stop", { stands: "fridge", longestFor: HOUR }, "do"],
] as const)("a timed wait %s asks as it must", (_, where, kind) => {
  const bench = at("curdle");
  bench.events = bench.events.map((event) =>
    event.type === "run.started"
      ? {
          ...event,
          procedure: {
            ...event.procedure,
            steps: event.procedure.steps.map(({ stands: _stands, ...step }) =>
              step.id === "curdle" ? { ...step, ...where } : step,
            ),
          },
        }
      : event,
  );
  expect(alarmsOf(runOf(bench))).toMatchObject([{ kind, dueAt: bench.now + HOUR }]);
});

test("an answer before it is due does not silence it", () => {
  const bench = at("curdle");
  const before = due(bench);
  bench.now += MINUTE;
  hear(bench);
  expect(due(bench)).toBe(before);
  bench.now += HOUR - MINUTE - 1;
  hear(bench);
  expect(due(bench)).toBe(before);
  bench.now += 1;
  hear(bench);
  expect(due(bench)).toBe((before ?? 0) + 15 * MINUTE);
});

test("a wait that asks only once is silent after the answer", () => {
  const bench = at("curdle");
  const { events } = bench;
  bench.events = events.map((event) =>
    event.type === "run.started"
      ? {
          ...event,
          procedure: {
            ...event.procedure,
            steps: event.procedure.steps.map(({ askEvery: _, ...step }) => step),
          },
        }
      : event,
  );
  bench.now += HOUR;
  hear(bench);
  expect(alarmsOf(runOf(bench))).toEqual([]);
});

test("a moved deadline rings when it was moved to, also after it had been heard", () => {
  const bench = at("slow-drip");
  bench.now += HOUR;
  hear(bench);
  const dueAt = bench.now + 20 * MINUTE;
  bench.order({ type: "move-due", visit: "slow-drip#1", dueAt });
  expect(due(bench)).toBe(dueAt);
});

test("an alarm handed to the phone's own clock rings here all the same, and is known", () => {
  const bench = at("curdle");
  const dueAt = due(bench) ?? 0;
  bench.order({ type: "hand-alarm", visit: "curdle#1", dueAt, to: "phone-clock" });
  expect(openVisit(runOf(bench))?.handed).toEqual([{ to: "phone-clock", dueAt }]);
  expect(due(bench)).toBe(dueAt);
});

test("finishing the step, early or late, ends its alarm; so does the end of the run", () => {
  for (const wait of [1, 5 * HOUR]) {
    const bench = at("curdle");
    bench.now += wait;
    expect(bench.order({ type: "finish-step", visit: "curdle#1" })).toBeUndefined();
    expect(alarmsOf(runOf(bench))).toEqual([]);
  }
  const dropped = at("curdle");
  dropped.order({ type: "abandon", reason: "dropped" });
  expect(alarmsOf(runOf(dropped))).toEqual([]);
  dropped.order({ type: "undo", act: dropped.lastAct });
  expect(alarmsOf(runOf(dropped))).toHaveLength(1);
});

test("a run that nobody works on for now is silent, and asks again once somebody does", () => {
  const bench = at("curdle");
  const before = due(bench);
  bench.order({ type: "pause" });
  expect(alarmsOf(runOf(bench))).toEqual([]);
  bench.order({ type: "resume" });
  expect(due(bench)).toBe(before);
});

test.each([HOUR, -HOUR])("a clock moved by %s ms keeps the wait as long, heard or not", (byMs) => {
  const bench = at("curdle");
  const before = due(bench) ?? 0;
  bench.now += byMs + MINUTE;
  bench.order({ type: "shift-clock", byMs, keepElapsed: true });
  expect(due(bench)).toBe(before + byMs);
  bench.now = before + byMs + MINUTE;
  hear(bench);
  const next = due(bench) ?? 0;
  expect(next).toBe(bench.now + 15 * MINUTE);
  bench.now += byMs;
  bench.order({ type: "shift-clock", byMs, keepElapsed: true });
  expect(due(bench)).toBe(next + byMs);
});

test("a clock that was put back does not delay the waits begun after it", () => {
  const bench = at("pour");
  bench.now -= 24 * HOUR;
  bench.order({ type: "shift-clock", byMs: -24 * HOUR, keepElapsed: true });
  bench.order({ type: "finish-step", visit: "pour#1" });
  expect(due(bench)).toBe(bench.now + HOUR);
});

test("property: never before its step is due, whatever else happens", () => {
  fc.assert(
    fc.property(anyTurns(12), (turns) => {
      const bench = new TestBench();
      bench.start(plan);
      play(bench, turns, () => {
        const run = runOf(bench);
        const visit = openVisit(run);
        for (const alarm of alarmsOf(run)) {
          expect(alarm.visit).toBe(visit?.key);
          expect(alarm.dueAt).toBeGreaterThanOrEqual(visit?.dueAt ?? 0);
        }
      });
    }),
    { numRuns: 40 },
  );
});

test("property: after a reload the same alarms are due at the same moments", () => {
  fc.assert(
    fc.property(anyTurns(12), (turns) => {
      const bench = new TestBench();
      bench.start(plan);
      play(bench, turns);
      const stored = JSON.parse(JSON.stringify(bench.events));
      const again = foldRun(stored);
      expect(again && alarmsOf(again)).toEqual(alarmsOf(runOf(bench)));
    }),
    { numRuns: 40 },
  );
});

// Taste at 12, 24 and 30 hours, stop at 36: core/method/infusions.ts, common practice.
test("a long infusion asks at its own moments however late somebody came, then at its hard stop", () => {
  const bench = new TestBench();
  bench.order({
    type: "start-run",
    batch: "SB-1",
    plan,
    procedure: LONG_INFUSION,
    appVersion: "0",
  });
  bench.now += MINUTE;
  bench.order({ type: "finish-step", visit: "build#1" });
  const begun = bench.now;
  for (const [hours, late] of [
    [12, 90],
    [24, 0],
    [30, 30],
  ] as const) {
    expect(due(bench)).toBe(begun + hours * HOUR);
    bench.now = begun + hours * HOUR + late * MINUTE;
    hear(bench);
    bench.order({ type: "note-look", visit: "steep#1", look: "not-yet" });
  }
  expect(alarmsOf(runOf(bench))).toEqual([
    { runId: "run-1", visit: "steep#1", kind: "do", dueAt: begun + 36 * HOUR },
  ]);
});
