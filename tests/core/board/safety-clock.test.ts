import fc from "fast-check";
import { expect, test } from "vitest";
import { safetyClockOf } from "../../../core/board/safety-clock.ts";
import { planOf, runOf, TestBench } from "../../support/world/run-events.ts";
import { finishOpenStep } from "../../support/world/wash-walk.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const plan = planOf();

/** A wash with its milk just poured. */
function atMilk(): TestBench {
  const bench = new TestBench();
  bench.start(plan);
  bench.now += 90 * MINUTE;
  bench.order({ type: "finish-step", visit: "build#1" });
  return bench;
}

function step(bench: TestBench, after: number): void {
  bench.now += after;
  const command = finishOpenStep(runOf(bench));
  if (command === undefined) throw new RangeError("the wash must go on");
  bench.order(command);
}

test("nothing perishable, no clock: building the punch does not count", () => {
  const bench = new TestBench();
  bench.start(plan);
  expect(safetyClockOf(runOf(bench), bench.now + HOUR)).toBeUndefined();
  expect(safetyClockOf(runOf(atMilk()), atMilk().now)?.warmFor).toBe(0);
});

// Four hours without control, a caution an hour before: US Food Code 3-501.19 as quoted in state rules.
test.each([
  [HOUR, "within"],
  [3 * HOUR - 1, "within"],
  [3 * HOUR, "near"],
  [4 * HOUR - 1, "near"],
  [4 * HOUR, "past"],
  [9 * HOUR, "past"],
] as const)("%i ms on the counter: %s", (after, level) => {
  const bench = atMilk();
  const clock = safetyClockOf(runOf(bench), bench.now + after);
  expect(clock).toMatchObject({ warmFor: after, level, stands: "counter" });
  expect(clock?.fullAt).toBe(level === "past" ? undefined : bench.now + 4 * HOUR);
});

test("a wash by the book: one hour of rest and the passes count, the cold drip does not", () => {
  const bench = atMilk();
  step(bench, 5 * MINUTE); // milk in
  step(bench, 5 * MINUTE); // poured
  step(bench, HOUR); // rested
  step(bench, 5 * MINUTE); // filter wet
  step(bench, 5 * MINUTE); // first pass
  step(bench, 5 * MINUTE); // poured back
  step(bench, 5 * MINUTE); // clear: the slow drip begins, cold
  const clock = safetyClockOf(runOf(bench), bench.now + 8 * HOUR);
  expect(clock).toEqual({ warmFor: 90 * MINUTE, level: "within", stands: "fridge" });
});

test("what somebody says of where it stands counts before the step's usual place", () => {
  const bench = atMilk();
  bench.now += HOUR;
  bench.order({ type: "move-vessel", to: "fridge" });
  expect(safetyClockOf(runOf(bench), bench.now)?.stands).toBe("fridge");
  bench.now += 5 * HOUR;
  bench.order({ type: "move-vessel", to: "counter" });
  bench.now += 30 * MINUTE;
  const clock = safetyClockOf(runOf(bench), bench.now);
  expect(clock).toMatchObject({ warmFor: 90 * MINUTE, stands: "counter" });
});

test.each([HOUR, -HOUR, 30 * HOUR, -30 * HOUR])(
  "a clock that was set by %i ms hides no warm time and adds none",
  (byMs) => {
    const bench = atMilk();
    bench.now += MINUTE;
    bench.order({ type: "move-vessel", to: "fridge" });
    bench.now += MINUTE;
    bench.order({ type: "move-vessel", to: "counter" });
    step(bench, MINUTE); // milk in
    bench.now += byMs;
    bench.order({ type: "shift-clock", byMs, keepElapsed: true });
    bench.now += 2 * HOUR;
    const clock = safetyClockOf(runOf(bench), bench.now);
    expect(clock?.warmFor).toBe(2 * MINUTE + 2 * HOUR);
    // Nobody set it: time really went by, warm.
    const gone = atMilk();
    gone.now += Math.abs(byMs);
    gone.order({ type: "shift-clock", byMs: Math.abs(byMs), keepElapsed: false });
    expect(safetyClockOf(runOf(gone), gone.now)?.warmFor).toBe(Math.abs(byMs));
  },
);

test("bottling stops the clock", () => {
  const bench = atMilk();
  for (let turn = 0; turn < 11; turn += 1) step(bench, MINUTE);
  const bottled = runOf(bench);
  expect(bottled.bottlings).toHaveLength(1);
  const soon = safetyClockOf(bottled, bench.now)?.warmFor;
  expect(safetyClockOf(bottled, bench.now + 9 * HOUR)?.warmFor).toBe(soon);
});

test("what is bottled and not yet labelled is no longer counted, nor promised a moment", () => {
  const bench = atMilk();
  while (runOf(bench).bottlings.length === 0) step(bench, MINUTE);
  const bottled = runOf(bench);
  expect(bottled.visits.at(-1)?.step).toBe("label");
  bench.order({ type: "move-vessel", to: "counter" });
  const soon = safetyClockOf(bottled, bench.now)?.warmFor ?? Number.NaN;
  const later = safetyClockOf(runOf(bench), bench.now + 2 * HOUR);
  expect(later?.warmFor).toBe(soon);
  expect(later?.stands).toBe("counter");
  expect(later).not.toHaveProperty("fullAt");
});

test("property: it never runs back, and cold time never counts", () => {
  const moves = fc.array(
    fc.tuple(
      fc.constantFrom("counter", "fridge", "freezer"),
      fc.integer({ min: 0, max: 3 * HOUR }),
    ),
    { maxLength: 8 },
  );
  fc.assert(
    fc.property(moves, (told) => {
      const bench = atMilk();
      let before = 0;
      let warm = 0;
      let stands = "counter";
      for (const [to, after] of told) {
        bench.now += after;
        if (stands === "counter") warm += after;
        bench.order({ type: "move-vessel", to });
        stands = to;
        const clock = safetyClockOf(runOf(bench), bench.now);
        expect(clock?.warmFor).toBe(warm);
        expect(clock?.warmFor).toBeGreaterThanOrEqual(before);
        before = clock?.warmFor ?? 0;
      }
    }),
    { numRuns: 40 },
  );
});
