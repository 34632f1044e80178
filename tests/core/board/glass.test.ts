import fc from "fast-check";
import { expect, test } from "vitest";
import { type BandLook, glassOf } from "../../../core/board/glass.ts";
import { openVisit } from "../../../core/run/run.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { anyTurns, play } from "../../support/world/any-order.ts";
import { unwashed } from "../../support/world/punch-spec.ts";
import { planOf, runOf, TestBench, WASHED_SPEC } from "../../support/world/run-events.ts";
import { finishOpenStep, USUAL, type WashAnswers } from "../../support/world/wash-walk.ts";

const plan = planOf();
const HEADROOM = 1.08;

function at(step: string | undefined, by: Partial<WashAnswers> = {}, of: Plan = plan): TestBench {
  const bench = new TestBench();
  bench.start(of);
  for (let turn = 0; turn < 20 && bench.run && openVisit(bench.run)?.step !== step; turn += 1) {
    const order = finishOpenStep(bench.run, { ...USUAL, ...by });
    if (order !== undefined) expect(bench.order(order)).toBeUndefined();
  }
  return bench;
}

const bands = (bench: TestBench) => glassOf(runOf(bench)).bands;
const share = (bench: TestBench, look: BandLook) =>
  bands(bench).find((band) => band.look === look)?.share ?? 0;

// What stands in the vessel at each step of the work (DESIGN.md, sections 2 and 7).
test.each<[string | undefined, BandLook[]]>([
  ["build", []],
  ["milk", ["punch"]],
  ["pour", ["milk"]],
  ["curdle", ["curd", "cloudy"]],
  ["wet-filter", ["curd", "cloudy"]],
  ["first-pass", ["cloudy"]],
  ["re-pour", ["cloudy"]],
  ["check-clear", ["curd"]],
  ["slow-drip", ["curd"]],
  ["yield", ["curd"]],
  ["top-up", ["clear"]],
  ["bottle", ["clear", "spirit"]],
  ["label", ["clear", "spirit"]],
  [undefined, ["clear", "spirit"]],
])("at %s the glass holds %j", (step, looks) => {
  expect(bands(at(step)).map((band) => band.look)).toEqual(looks);
});

// By hand: 100 of 125 parts are punch, 25 milk; the brim stands 8 % above.
test("bands are as tall as what was poured", () => {
  const milk = plan.milk?.ml ?? 0;
  const curdling = at("curdle", { milk });
  expect(share(curdling, "curd")).toBeCloseTo(milk / (100 * plan.scale + milk) / HEADROOM, 9);
  expect(share(curdling, "curd") + share(curdling, "cloudy")).toBeCloseTo(1 / HEADROOM, 9);
});

test("the punch rises with each line that goes in, by its volume, and each line counts once", () => {
  const bench = at("build");
  const heights = WASHED_SPEC.lines.map(({ id }) => {
    bench.order({ type: "pour-line", visit: "build#1", line: id });
    return share(bench, "punch");
  });
  expect(heights).toEqual([...heights].sort((a, b) => a - b));
  const [brandy = 0, lemon = 0] = heights;
  // By hand: 30 ml of brandy, then 20 of lemon.
  expect(brandy / lemon).toBeCloseTo(30 / 50, 9);
  bench.order({ type: "pour-line", visit: "build#1", line: "lemon" });
  expect(share(bench, "punch")).toBe(heights.at(-1));
  expect(heights.at(-1)).toBeCloseTo(share(at("milk"), "punch"), 9);
});

test("clear rises with each reading while the curd drains, to where the line is", () => {
  const bench = at("slow-drip");
  let before = 0;
  for (const value of [500, 1500, 3000, 4000]) {
    bench.order({
      type: "log-reading",
      visit: "slow-drip#1",
      what: "collected",
      value,
      unit: "ml",
    });
    const clear = share(bench, "clear");
    expect(clear).toBeGreaterThan(before);
    expect(clear + share(bench, "curd")).toBeCloseTo(1 / HEADROOM, 9);
    before = clear;
  }
  const { line } = glassOf(runOf(bench));
  expect(line?.low).toBeLessThan(line?.share ?? 0);
  expect(line?.share).toBeLessThan(line?.high ?? 0);
  const expected = plan.yield?.expected ?? 0;
  bench.order({
    type: "log-reading",
    visit: "slow-drip#1",
    what: "collected",
    value: expected,
    unit: "ml",
  });
  expect(share(bench, "clear")).toBeCloseTo(line?.share ?? 0, 9);
});

test("after a second look what drips is hazy, not clear", () => {
  const bench = at("check-clear");
  const reading = { visit: "check-clear#1", what: "collected", value: 900, unit: "ml" } as const;
  bench.order({ type: "log-reading", ...reading });
  expect(share(bench, "hazy")).toBeGreaterThan(0);
});

test("what was measured stands in the glass, spirit on top of it", () => {
  const bench = at("label", { yield: 4000, topUp: 200 });
  expect(share(bench, "spirit") / share(bench, "clear")).toBeCloseTo(200 / 4000, 9);
});

test("a batch that is not washed has no line to reach", () => {
  const bare = planOf(unwashed());
  expect(glassOf(runOf(at("build", {}, bare))).line).toBeUndefined();
});

test("a slip in a reading that was stored all the same does not overflow the glass", () => {
  const run = runOf(at("slow-drip"));
  const wild = {
    id: "e",
    act: "a",
    device: "d",
    at: 0,
    visit: "slow-drip#1",
    what: "collected",
    unit: "ml",
  } as const;
  const [band, ...rest] = glassOf({ ...run, readings: [{ ...wild, value: 9_000_000 }] }).bands;
  expect(band?.share).toBeCloseTo(1 / HEADROOM, 9);
  expect(rest).toEqual([]);
});

test("property: whatever happens, no band is more than the glass, nor all of them together", () => {
  fc.assert(
    fc.property(anyTurns(24), (turns) => {
      const bench = new TestBench();
      bench.start(plan);
      play(bench, turns, () => {
        const { bands: shown, line } = glassOf(runOf(bench));
        for (const band of shown) {
          expect(band.share).toBeGreaterThan(0);
          expect(band.share).toBeLessThanOrEqual(1);
        }
        expect(shown.reduce((sum, band) => sum + band.share, 0)).toBeLessThanOrEqual(1);
        expect(line?.high).toBeLessThanOrEqual(1);
        expect(line?.low).toBeGreaterThanOrEqual(0);
      });
    }),
    { numRuns: 50 },
  );
});
