import { expect, test } from "vitest";
import { controlSheetOf } from "../../../core/logbook/control-sheet.ts";
import { planOf, TestBench } from "../../support/world/run-events.ts";

const plan = planOf();

function sheetOf(bench: TestBench) {
  const { run } = bench;
  if (run === undefined) throw new RangeError("the bench must have a run");
  return controlSheetOf(run);
}

test("a new batch has one open step and nothing else", () => {
  const bench = new TestBench();
  bench.start(plan);
  expect(sheetOf(bench)).toEqual({
    steps: [{ step: "build", round: 1, from: bench.now }],
    temperatures: [],
    lots: [],
    hands: [],
  });
});

test("each step names whoever had the batch in hand when it began", () => {
  const bench = new TestBench();
  bench.start(plan);
  const began = bench.now;
  bench.now += 1000;
  bench.order({ type: "change-hands", initials: " AB " });
  bench.now += 1000;
  bench.order({ type: "finish-step", visit: "build#1" });
  bench.now += 1000;
  bench.order({ type: "change-hands", initials: "CD" });
  bench.now += 1000;
  bench.order({ type: "finish-step", visit: "milk#1", answer: { of: "milk", ml: 1000 } });
  expect(sheetOf(bench).steps).toEqual([
    { step: "build", round: 1, from: began, to: began + 2000 },
    { step: "milk", round: 1, from: began + 2000, to: began + 4000, by: "AB" },
    { step: "pour", round: 1, from: began + 4000, by: "CD" },
  ]);
  expect(sheetOf(bench).hands.map((one) => one.initials)).toEqual(["AB", "CD"]);
});

test("temperatures and lots are listed; the earliest lot rules", () => {
  const bench = new TestBench();
  bench.start(plan);
  const visit = "build#1";
  bench.order({ type: "log-reading", visit, what: "temperature", value: 4.5, unit: "degC" });
  bench.order({ type: "note-lot", ingredient: "milk-whole", lot: "L12", useBy: 2_000 });
  bench.order({ type: "note-lot", ingredient: "lemon-juice", lot: "J3", useBy: 1_000 });
  bench.order({ type: "note-lot", ingredient: "black-tea", lot: "T1" });
  const sheet = sheetOf(bench);
  expect(sheet.temperatures).toEqual([{ at: bench.now, celsius: 4.5 }]);
  expect(sheet.lots).toHaveLength(3);
  expect(sheet.earliestLot).toBe(1_000);
});

test("what was taken back is not on the sheet", () => {
  const bench = new TestBench();
  bench.start(plan);
  bench.order({ type: "note-lot", ingredient: "milk-whole", lot: "L12" });
  bench.order({ type: "undo", act: bench.lastAct });
  expect(sheetOf(bench).lots).toEqual([]);
});

test("an abandoned batch says when it ended", () => {
  const bench = new TestBench();
  bench.start(plan);
  bench.now += 5000;
  bench.order({ type: "abandon", reason: "Spilt" });
  expect(sheetOf(bench).endedAt).toBe(bench.now);
});
