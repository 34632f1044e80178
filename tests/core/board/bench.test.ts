import fc from "fast-check";
import { expect, test } from "vitest";
import { benchRows, waitsEnd } from "../../../core/board/bench.ts";
import { openVisit, type Run } from "../../../core/run/run.ts";
import { anyTurns, play } from "../../support/world/any-order.ts";
import { planOf, TestBench } from "../../support/world/run-events.ts";
import { finishOpenStep } from "../../support/world/wash-walk.ts";

const MINUTE = 60_000;
const NOON = 1_000_000_000_000;
const plan = planOf();

/** A run whose open step was begun at a moment. */
function standing(id: string, step: string, begun: number): Run {
  const bench = new TestBench(begun, "phone-a", id);
  bench.start(plan);
  for (let turn = 0; turn < 20 && bench.run && openVisit(bench.run)?.step !== step; turn += 1) {
    const order = finishOpenStep(bench.run);
    if (order !== undefined) expect(bench.order(order)).toBeUndefined();
  }
  if (bench.run === undefined) throw new RangeError("the bench must have a run");
  return bench.run;
}

const ids = (runs: readonly Run[], now: number) => benchRows(runs, now).map((row) => row.run.id);

test("overdue first, then who waits for hands, then whose wait ends soonest", () => {
  const runs = [
    standing("drips", "slow-drip", NOON - 10 * MINUTE),
    standing("hands-late", "bottle", NOON - MINUTE),
    standing("rests-out", "curdle", NOON - 61 * MINUTE),
    standing("rests", "curdle", NOON - 50 * MINUTE),
    standing("hands-early", "milk", NOON - 90 * MINUTE),
    standing("drips-out", "slow-drip", NOON - 45 * MINUTE),
  ];
  expect(ids(runs, NOON)).toEqual([
    "drips-out",
    "rests-out",
    "hands-early",
    "hands-late",
    "rests",
    "drips",
  ]);
});

test("a row says what is wanted, since when, and how late it is", () => {
  const [overdue] = benchRows([standing("a", "curdle", NOON - 62 * MINUTE)], NOON);
  expect(overdue).toMatchObject({ lateBy: 2 * MINUTE, visit: { key: "curdle#1" } });
  expect(overdue?.alarm?.dueAt).toBe(NOON - 2 * MINUTE);
  const [due] = benchRows([standing("a", "curdle", NOON - 60 * MINUTE)], NOON);
  expect(due?.lateBy).toBe(0);
  const [hands] = benchRows([standing("a", "bottle", NOON)], NOON);
  expect(hands).toMatchObject({ lateBy: 0 });
  expect(hands?.alarm).toBeUndefined();
});

test("due this moment already comes before hands", () => {
  const runs = [
    standing("a", "bottle", NOON - 90 * MINUTE),
    standing("b", "curdle", NOON - 60 * MINUTE),
  ];
  expect(ids(runs, NOON - 1)).toEqual(["a", "b"]);
  expect(ids(runs, NOON)).toEqual(["b", "a"]);
});

test("runs that are wanted alike come by their ids, and one that has ended does not come", () => {
  const twins = ["c", "a", "b"].map((id) => standing(id, "curdle", NOON));
  expect(ids(twins, NOON)).toEqual(["a", "b", "c"]);
  expect(ids([standing("done", "none", NOON)], NOON)).toEqual([]);
  expect(ids([], NOON)).toEqual([]);
});

test("property: the order is the same whatever order the runs come in", () => {
  const anyRun = fc.tuple(fc.uuid(), anyTurns(8)).map(([id, turns]) => {
    const bench = new TestBench(NOON, "phone-a", id);
    bench.start(plan);
    play(bench, turns);
    return bench.run;
  });
  fc.assert(
    fc.property(fc.array(anyRun, { maxLength: 4 }), fc.nat({ max: 10_000 }), (runs, minutes) => {
      const known = runs.flatMap((run) => run ?? []);
      const now = NOON + minutes * MINUTE;
      const rows = benchRows(known, now);
      expect(benchRows([...known].reverse(), now)).toEqual(rows);
      const late = rows.map((row) => row.lateBy > 0);
      expect(late).toEqual([...late].sort((a, b) => Number(b) - Number(a)));
    }),
    { numRuns: 20 },
  );
});

test("the Bench stays as it is until a wait ends", () => {
  const rests = standing("rests", "curdle", NOON - 50 * MINUTE);
  const again = standing("again", "curdle", NOON - 50 * MINUTE);
  const late = standing("late", "curdle", NOON - 61 * MINUTE);
  const due = standing("due", "curdle", NOON - 60 * MINUTE);
  const later = standing("later", "curdle", NOON - 20 * MINUTE);
  const hands = standing("hands", "bottle", NOON);
  expect(waitsEnd([later, rests, late, again, due], NOON)).toEqual([
    NOON + 10 * MINUTE,
    NOON + 40 * MINUTE,
  ]);
  expect(waitsEnd([late, due, hands], NOON)).toEqual([]);
});
