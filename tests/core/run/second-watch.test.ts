import { expect, test } from "vitest";
import type { Procedure, Step } from "../../../core/method/procedure.ts";
import type { Command } from "../../../core/run/command.ts";
import { openVisit } from "../../../core/run/run.ts";
import { secondWatchOf } from "../../../core/run/second-watch.ts";
import { planOf, runOf, TestBench } from "../../support/world/run-events.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const plan = planOf();

/** A bench that waits so long, and asks again so often. */
function waiting(waitFor: number, rest: Partial<Step> = {}): TestBench {
  const step: Step = { id: "stand", kind: "watched-wait", work: "steep", branches: [], waitFor };
  const procedure: Procedure = { id: "own", version: 1, steps: [{ ...step, ...rest }] };
  const bench = new TestBench();
  bench.order({ type: "start-run", batch: "TW-1", plan, procedure, appVersion: "0" });
  return bench;
}

type Hand = Omit<Extract<Command, { type: "hand-alarm" }>, "type" | "visit" | "dueAt">;

function hand(bench: TestBench, to: Hand, dueAt = secondWatchOf(runOf(bench))?.dueAt ?? 0) {
  const visit = openVisit(runOf(bench))?.key ?? "";
  expect(bench.order({ type: "hand-alarm", visit, dueAt, ...to })).toBeUndefined();
}

// Half an hour and four hours: judgement.
test.each([
  [29 * MINUTE, "none"],
  [30 * MINUTE, "offered"],
  [4 * HOUR - 1000, "offered"],
  [4 * HOUR, "asked"],
  [36 * HOUR, "asked"],
] as const)("a wait of %d ms: another watch is %s", (wait, need) => {
  const bench = waiting(wait);
  expect(secondWatchOf(runOf(bench))).toEqual({
    visit: "stand#1",
    dueAt: bench.now + wait,
    told: [],
    need,
  });
});

test.each([[{ to: "phone-clock" }], [{ to: "person", who: "AB" }], [{ to: "vessel" }]] as const)(
  "a long wait that %j watches no longer asks, and may have more",
  (to) => {
    const bench = waiting(12 * HOUR);
    hand(bench, to);
    expect(secondWatchOf(runOf(bench))).toMatchObject({ need: "offered", told: [to] });
  },
);

test("each watch counts once, each person too, in the order they were named", () => {
  const bench = waiting(12 * HOUR);
  for (const to of [
    { to: "person", who: "AB" },
    { to: "phone-clock" },
    { to: "person", who: "CD" },
    { to: "person", who: " AB " },
    { to: "phone-clock" },
  ] as const) {
    hand(bench, to);
  }
  const told = secondWatchOf(runOf(bench))?.told.map(({ to, who }) => [to, who]);
  expect(told).toEqual([
    ["person", "AB"],
    ["phone-clock", undefined],
    ["person", "CD"],
  ]);
});

test("initials of nothing are none", () => {
  const bench = waiting(12 * HOUR);
  hand(bench, { to: "person", who: "  " });
  expect(secondWatchOf(runOf(bench))?.told).toEqual([
    { to: "person", dueAt: bench.now + 12 * HOUR },
  ]);
});

test("a due time that moved is known to nobody else", () => {
  const bench = waiting(12 * HOUR);
  hand(bench, { to: "phone-clock" });
  const dueAt = bench.now + 13 * HOUR;
  bench.order({ type: "move-due", visit: "stand#1", dueAt });
  expect(secondWatchOf(runOf(bench))).toMatchObject({ dueAt, told: [], need: "asked" });
});

test("once answered, the time until it asks again is what counts", () => {
  const bench = waiting(12 * HOUR, { askEvery: 20 * MINUTE });
  hand(bench, { to: "phone-clock" });
  bench.now += 12 * HOUR;
  bench.order({ type: "hear-alarm", visit: "stand#1", dueAt: bench.now });
  expect(secondWatchOf(runOf(bench))).toMatchObject({
    dueAt: bench.now + 20 * MINUTE,
    told: [],
    need: "none",
  });
});

test("taken back, it was never said", () => {
  const bench = waiting(12 * HOUR);
  hand(bench, { to: "vessel" });
  bench.order({ type: "undo", act: bench.lastAct });
  expect(secondWatchOf(runOf(bench))).toMatchObject({ told: [], need: "asked" });
});

test("nothing to hand over where nothing is waited for, or nobody works on it", () => {
  const bench = new TestBench();
  bench.start(plan);
  expect(secondWatchOf(runOf(bench))).toBeUndefined();
  const paused = waiting(12 * HOUR);
  paused.order({ type: "pause" });
  expect(secondWatchOf(runOf(paused))).toBeUndefined();
});
