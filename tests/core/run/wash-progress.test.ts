import { expect, test } from "vitest";
import { volumeOf } from "../../../core/liquid/liquid.ts";
import type { Run } from "../../../core/run/run.ts";
import {
  collectedSoFar,
  milkPoured,
  mostInVessel,
  passesOf,
  pouredIn,
} from "../../../core/run/wash-progress.ts";
import { planOf, TestBench, WASHED_SPEC } from "../../support/world/run-events.ts";
import { finishOpenStep } from "../../support/world/wash-walk.ts";

const plan = planOf();

function started(steps: number, of = plan): Run {
  const bench = new TestBench();
  bench.start(of);
  for (let turn = 0; turn < steps; turn += 1) {
    const order = bench.run && finishOpenStep(bench.run);
    if (order !== undefined) expect(bench.order(order)).toBeUndefined();
  }
  if (bench.run === undefined) throw new RangeError("the bench must have a run");
  return bench.run;
}

const said = { id: "e", act: "a", device: "phone-a", at: 0, visit: "slow-drip#1" };
const reading = (what: "milk" | "collected", value: number, unit: "ml" | "g") =>
  ({ ...said, what, value, unit }) as const;
const withReadings = (...readings: Run["readings"]): Run => ({ ...started(1), readings });

test("the milk is the plan's until it is measured", () => {
  expect(milkPoured(started(1))).toBe(plan.milk?.ml);
  expect(milkPoured(started(2))).toBe(1000);
});

test("of several readings the latest counts, and what was weighed is no volume", () => {
  const run = withReadings(
    reading("milk", 900, "ml"),
    reading("milk", 950, "ml"),
    reading("milk", 977, "g"),
    reading("collected", 2000, "ml"),
    reading("collected", 1800, "ml"),
    reading("collected", 2100, "g"),
  );
  expect(milkPoured(run)).toBe(950);
  expect(collectedSoFar(run)).toBe(1800);
  expect(collectedSoFar(started(1))).toBeUndefined();
});

// By hand: 40 ml brandy less a quarter, 20 lemon, 30 tea, 20 syrup make 100 ml; milk 1 to 4.
test("what was poured in is the sum as measured out", () => {
  const run = started(1);
  expect(pouredIn(run)).toBeCloseTo(100 * plan.scale + (plan.milk?.ml ?? 0), 9);
  expect(pouredIn(started(2))).toBeCloseTo(100 * plan.scale + 1000, 9);
});

test("dry sugar takes room in the vessel that nobody measured out", () => {
  const sugar = { id: "dry", ingredientId: "white-sugar", heldBack: 0 };
  const sweet = planOf({
    ...WASHED_SPEC,
    lines: [...WASHED_SPEC.lines, { ...sugar, amount: { value: 60, unit: "g" } }],
  });
  const run = started(1, sweet);
  expect(mostInVessel(run)).toBeCloseTo(volumeOf(sweet.mixed) + (sweet.milk?.ml ?? 0), 9);
  // 60 g of sugar at about 0.62 ml per g (ICUMSA SPS-4), on 100 ml.
  const room = (mostInVessel(run) - pouredIn(run)) / sweet.scale;
  expect(room).toBeGreaterThan(35);
  expect(room).toBeLessThan(38);
});

test("without dry goods the vessel holds no more than was measured out", () => {
  expect(mostInVessel(started(1))).toBe(pouredIn(started(1)));
});

test("a pour that two phones both noted is one pour", () => {
  const pour = (id: string, visit: string) => ({ ...said, id, visit, ml: 300 });
  const run = { ...started(1), rePours: [] };
  expect(passesOf(run)).toBe(0);
  const rePours = [pour("1", "re-pour#1"), pour("2", "re-pour#1"), pour("3", "re-pour#2")];
  expect(passesOf({ ...run, rePours })).toBe(2);
});
