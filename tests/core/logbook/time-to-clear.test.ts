import fc from "fast-check";
import { expect, test } from "vitest";
import { recordOf } from "../../../core/logbook/record.ts";
import { timeToClear as ofBatches } from "../../../core/logbook/time-to-clear.ts";
import type { Run } from "../../../core/run/run.ts";
import { demoSpec, type Played, planned, started } from "../../support/world/play-run.ts";

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const PLAN = planned(demoSpec("Pear Beacon"));

/** A batch of a day at its first pass. */
const passing = (day: number): Played =>
  started(`run-${day}`, `PB-${day}`, day * DAY, PLAN)
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: PLAN.milk?.ml ?? 0 } }, 2)
    .finish({}, 1)
    .finish({}, 60)
    .finish({}, 4);

/** A batch of a day: how long its first pass took, then each look, minutes. */
function cleared(day: number, first: number, looks: readonly number[]): Run {
  let run = passing(day).finish({}, first);
  for (const [at, minutes] of looks.entries()) {
    run = run.finish({ answer: { of: "cloudy-run", ml: 300 } }, 1);
    run = run.finish({ look: at === looks.length - 1 ? "clear" : "cloudy" }, minutes);
  }
  return run.run;
}

const USUAL = [
  cleared(1, 2, [1]),
  cleared(2, 1.5, [1.5]),
  cleared(3, 2.5, [2]),
  cleared(4, 2, [1, 1.5]),
  cleared(5, 1, [1]),
];

const timeToClear = (runs: readonly Run[], procedure: string, except?: string) =>
  ofBatches(runs.map(recordOf), procedure, except);

// By hand: 2 + 1 + 1 = 4, 4, 5.5, 6.5 and 3 min from the start of the first pass to "clear".
test("how long each pass was waited for, and how long it took in all", () => {
  const took = USUAL.map((run) => recordOf(run).cleared?.took ?? 0);
  expect(took).toEqual([4, 4, 5.5, 6.5, 3].map((minutes) => minutes * MINUTE));
  expect(USUAL.map((run) => recordOf(run).cleared?.passes)).toEqual([1, 1, 1, 2, 1]);
  const learnt = timeToClear(USUAL, "dairy-wash");
  expect(learnt?.batches).toBe(5);
  expect(learnt?.waits).toEqual({ "first-pass": 2 * MINUTE, "check-clear": 1.5 * MINUTE });
});

test("below three batches nothing is said; the batch that asks does not count", () => {
  expect(timeToClear([], "dairy-wash")).toBeUndefined();
  expect(timeToClear(USUAL.slice(0, 2), "dairy-wash")).toBeUndefined();
  expect(timeToClear(USUAL.slice(0, 3), "dairy-wash", "run-2")).toBeUndefined();
  expect(timeToClear(USUAL.slice(0, 3), "dairy-wash", "run-9")?.batches).toBe(3);
});

test("another procedure teaches nothing, nor a batch that nobody saw run clear", () => {
  expect(timeToClear(USUAL, "house-wash")).toBeUndefined();
  const waiting = passing(8).run;
  const taken = passing(9)
    .finish({}, 2)
    .finish({ answer: { of: "cloudy-run", ml: 300 } })
    .finish({ look: "clear" });
  const back = taken.then({ type: "undo", act: taken.events.at(-1)?.act ?? "" }).run;
  const runs = [...USUAL.slice(0, 2), waiting, back];
  expect(timeToClear(runs, "dairy-wash")).toBeUndefined();
});

test("only the latest twenty count: a bar changes its filter", () => {
  const old = Array.from({ length: 20 }, (_, at) => cleared(at, 9, [9]));
  const since = Array.from({ length: 20 }, (_, at) => cleared(100 + at, 1, [1]));
  const learnt = timeToClear([...since, ...old], "dairy-wash");
  expect(learnt?.batches).toBe(20);
  expect(learnt?.waits).toEqual({ "first-pass": MINUTE, "check-clear": MINUTE });
});

test("property: one odd batch, however odd, leaves the middle among the others", () => {
  const odd = fc.integer({ min: 0, max: 60 * 40 });
  fc.assert(
    fc.property(odd, odd, (first, look) => {
      const learnt = timeToClear([...USUAL, cleared(6, first, [look])], "dairy-wash");
      expect(learnt?.waits["first-pass"]).toBeGreaterThanOrEqual(1.5 * MINUTE);
      expect(learnt?.waits["first-pass"]).toBeLessThanOrEqual(2 * MINUTE);
      expect(learnt?.waits["check-clear"]).toBeLessThanOrEqual(1.5 * MINUTE);
    }),
    { numRuns: 25 },
  );
});
