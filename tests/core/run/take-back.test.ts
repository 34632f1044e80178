import fc from "fast-check";
import { expect, test } from "vitest";
import { foldRun } from "../../../core/run/fold.ts";
import { mergeEvents } from "../../../core/run/order.ts";
import { openVisit } from "../../../core/run/run.ts";
import { barToTakingBack, lastMove } from "../../../core/run/take-back.ts";
import { anyTurns, play } from "../../support/world/any-order.ts";
import { planOf, TestBench } from "../../support/world/run-events.ts";

const plan = planOf();

function begun(): TestBench {
  const bench = new TestBench();
  bench.start(plan);
  return bench;
}

/** Carries out an order that must be accepted, and says by which act. */
function did(bench: TestBench, order: Parameters<TestBench["order"]>[0]): string {
  expect(bench.order(order)).toBeUndefined();
  return bench.lastAct;
}

const build = (bench: TestBench) => did(bench, { type: "finish-step", visit: "build#1" });
const milk = (bench: TestBench, ml = 1000) =>
  did(bench, { type: "finish-step", visit: "milk#1", answer: { of: "milk", ml } });
const undo = (bench: TestBench, act: string) => did(bench, { type: "undo", act });

const standsAt = (bench: TestBench) => bench.run && openVisit(bench.run)?.key;

test("an act that nobody did, or that is taken back already, cannot be taken back", () => {
  const bench = begun();
  expect(barToTakingBack([], "act")).toBe("nothing-to-undo");
  expect(barToTakingBack(bench.events, "none")).toBe("nothing-to-undo");
  const act = build(bench);
  undo(bench, act);
  expect(barToTakingBack(bench.events, act)).toBe("nothing-to-undo");
});

test("what moved the work on last is what stands: what was taken back gives way to the one before", () => {
  const bench = begun();
  expect(lastMove(bench.events)).toBeUndefined();
  const [first, second] = [build(bench), milk(bench)];
  expect(lastMove(bench.events)).toBe(second);
  did(bench, { type: "add-note", text: "moves nothing" });
  expect(lastMove(bench.events)).toBe(second);
  undo(bench, second);
  expect(lastMove(bench.events)).toBe(first);
});

test("the start of a run is not taken back", () => {
  const bench = begun();
  expect(barToTakingBack(bench.events, bench.lastAct)).toBe("nothing-to-undo");
});

test("the later step first", () => {
  const bench = begun();
  const [first, second] = [build(bench), milk(bench)];
  expect(barToTakingBack(bench.events, first)).toBe("undo-later-first");
  undo(bench, second);
  undo(bench, first);
  expect(standsAt(bench)).toBe("build#1");
  expect(bench.run?.readings).toEqual([]);
});

test("what moved nothing can be taken back at any time", () => {
  const bench = begun();
  const poured = did(bench, { type: "pour-line", visit: "build#1", line: "lemon" });
  build(bench);
  milk(bench);
  undo(bench, poured);
  expect(bench.run?.poured).toEqual([]);
  expect(standsAt(bench)).toBe("pour#1");
});

test("an undo can be undone while the work did not go another way", () => {
  const bench = begun();
  build(bench);
  const measured = milk(bench);
  const before = bench.run;
  const back = undo(bench, measured);
  did(bench, { type: "add-note", text: "measured twice" });
  undo(bench, back);
  expect({ ...bench.run, notes: [] }).toEqual(before);
});

test("an undo stays once the step was done again, or an earlier one was taken back too", () => {
  const again = begun();
  build(again);
  const back = undo(again, milk(again, 900));
  milk(again, 1000);
  expect(barToTakingBack(again.events, back)).toBe("undo-later-first");
  expect(again.run?.readings.map((one) => one.value)).toEqual([1000]);

  const earlier = begun();
  const first = build(earlier);
  const second = undo(earlier, milk(earlier));
  undo(earlier, first);
  expect(barToTakingBack(earlier.events, second)).toBe("undo-later-first");
  expect(standsAt(earlier)).toBe("build#1");
});

test("giving a run up can be taken back, and only after that the step before it", () => {
  const bench = begun();
  const built = build(bench);
  const given = did(bench, { type: "abandon", reason: "dropped" });
  expect(barToTakingBack(bench.events, built)).toBe("undo-later-first");
  undo(bench, given);
  undo(bench, built);
  expect(standsAt(bench)).toBe("build#1");
});

test("two undos that name each other end the question all the same", () => {
  const bench = begun();
  const [stamp] = bench.events;
  if (stamp === undefined) throw new RangeError("a run has a start");
  const { runId, device, at, hlc, v } = stamp;
  const knot = (["a", "b"] as const).map((name, n) => ({
    id: `z${name}`,
    runId,
    device,
    act: name,
    at,
    hlc: { ms: hlc.ms + 1, n },
    v,
    type: "event.undone" as const,
    undoes: name === "a" ? "b" : "a",
  }));
  expect(barToTakingBack(mergeEvents(bench.events, knot), "b")).toBeUndefined();
});

test("property: every step that was finished can be taken back, the latest first, to the start", () => {
  fc.assert(
    fc.property(anyTurns(14), (turns) => {
      const bench = begun();
      play(bench, turns);
      for (let left = bench.events.length; left > 0; left -= 1) {
        const standing = bench.events.filter(
          (event) => event.type === "step.finished" || event.type === "run.abandoned",
        );
        const act = standing.findLast((one) => !barToTakingBack(bench.events, one.act))?.act;
        if (act === undefined) break;
        undo(bench, act);
      }
      expect(standsAt(bench)).toBe("build#1");
      expect(foldRun(bench.events)?.visits).toHaveLength(1);
    }),
    { numRuns: 30 },
  );
});
