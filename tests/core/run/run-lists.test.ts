import { expect, test } from "vitest";
import type { Draft, RunEvent } from "../../../core/run/event.ts";
import { foldRun } from "../../../core/run/fold.ts";
import { keep, listsOf, noLists } from "../../../core/run/run-lists.ts";
import { TestBench } from "../../support/world/run-events.ts";

const stamp = {
  id: "e",
  runId: "r",
  device: "phone-a",
  act: "a",
  at: 1000,
  hlc: { ms: 1000, n: 0 },
  v: 1,
} as const;
const visit = "slow-drip#1";
const event = (draft: Draft): RunEvent => ({ ...stamp, ...draft });
const kept = (draft: Draft) => {
  const lists = noLists();
  return { said: keep(lists, event(draft)), lists };
};

test("a weight is kept beside the volume it means, and a volume without one has none", () => {
  const weighed = { gross: 3412, tare: 812 };
  const reading = { visit, what: "collected", value: 2540, unit: "ml" } as const;
  const with_ = kept({ type: "reading.logged", ...reading, weighed }).lists.readings[0];
  expect(with_).toEqual({ id: "e", act: "a", device: "phone-a", at: 1000, ...reading, weighed });
  const without = kept({ type: "reading.logged", ...reading }).lists.readings[0];
  expect(without && Object.keys(without)).not.toContain("weighed");
  const pour = { type: "run.repoured", visit: "re-pour#1", ml: 300, weighed } as const;
  expect(kept(pour).lists.rePours[0]?.weighed).toEqual(weighed);
  const through = { type: "yield.logged", visit: "yield#1", ml: 4400, weighed } as const;
  expect(kept(through).lists.yields[0]?.weighed).toEqual(weighed);
});

test("what a vessel weighs and what stands above the filter are kept", () => {
  const happened = { act: "a", device: "phone-a", at: 1000 };
  const tare = { vessel: "clear-run", grams: 812 } as const;
  expect(kept({ type: "tare.noted", ...tare }).lists.tares).toEqual([{ ...happened, ...tare }]);
  expect(kept({ type: "shape.noted", visit, shape: "cone" }).lists.shapes).toEqual([
    { ...happened, id: "e", visit, shape: "cone" },
  ]);
});

test("what is said of the finished drink is kept as it was said", () => {
  const it = { act: "a", device: "phone-a", at: 1000 };
  const taste = { scores: { acid: 4 }, words: ["bright"], by: "AB" };
  expect(kept({ type: "taste.noted", ...taste }).lists.tastings).toEqual([{ ...it, ...taste }]);
  const verdict = { verdict: "poor", repeat: "no", text: "curdled late" } as const;
  expect(kept({ type: "verdict.given", ...verdict }).lists.verdicts).toEqual([
    { ...it, ...verdict },
  ]);
  expect(kept({ type: "tag.added", tag: "x" }).lists.tagged).toEqual([
    { ...it, tag: "x", on: true },
  ]);
  expect(kept({ type: "tag.removed", tag: "x" }).lists.tagged).toEqual([
    { ...it, tag: "x", on: false },
  ]);
  const photo = { photo: "p", media: "image/jpeg", bytes: 9, width: 4, height: 3 };
  expect(kept({ type: "photo.added", ...photo }).lists.photos).toEqual([{ ...it, ...photo }]);
  expect(kept({ type: "photo.removed", photo: "p" }).lists.unpictured).toEqual([
    { ...it, photo: "p" },
  ]);
  const pour = { ml: 270, count: 3, unit: "serves" } as const;
  expect(kept({ type: "stock.poured", ...pour }).lists.stockPoured).toEqual([{ ...it, ...pour }]);
  const end = { how: "spent", reason: "" } as const;
  expect(kept({ type: "stock.ended", ...end }).lists.stockEnded).toEqual([{ ...it, ...end }]);
  const settled = { visit, ml: 10, settles: true } as const;
  expect(kept({ type: "yield.logged", ...settled }).lists.yields).toEqual([
    { ...it, id: "e", ...settled },
  ]);
});

test.each<Draft>([
  { type: "step.finished", visit },
  { type: "due.moved", visit, dueAt: 5 },
  { type: "run.paused" },
  { type: "event.undone", undoes: "x" },
])("$type says nothing that is kept in a list", (draft) => {
  expect(kept(draft)).toEqual({ said: false, lists: noLists() });
});

test("copies of a run's lists are added to without changing the run", () => {
  const bench = new TestBench();
  bench.start();
  bench.order({ type: "add-note", text: "one" });
  const run = foldRun(bench.events);
  if (run === undefined) throw new RangeError("a run was started");
  const lists = listsOf(run);
  expect(keep(lists, event({ type: "note.added", text: "two" }))).toBe(true);
  expect(lists.notes.map(({ text }) => text)).toEqual(["one", "two"]);
  expect(run.notes.map(({ text }) => text)).toEqual(["one"]);
});
