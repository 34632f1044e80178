import fc from "fast-check";
import { expect, test } from "vitest";
import { strengthOf } from "../../../../core/liquid/liquid.ts";
import { madeHow } from "../../../../core/logbook/compare/made-how.ts";
import { keptIn, PEAR_PLAN } from "../../../support/world/learnt-batches.ts";
import { dripped, started } from "../../../support/world/play-run.ts";

const DAY = 24 * 3_600_000;

test("what the curd kept is read back from the yield", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.9, noNaN: true }), (curd) => {
      expect(madeHow(keptIn(1, curd).run).curdKept).toBeCloseTo(curd, 9);
    }),
    { numRuns: 20 },
  );
});

// 20 ml a filter: common practice, no source.
test("a plan of before, which does not say what a filter keeps, is taken at 20 ml each", () => {
  const { run } = keptIn(1, 0.4);
  const { filterKeeps: _, ...old } = run.plan.yield ?? { expected: 0 };
  const said = run.plan.yield && { ...run.plan.yield, filterKeeps: 20 };
  const kept = (one: typeof run.plan.yield) =>
    madeHow({ ...run, plan: { ...run.plan, ...(one && { yield: one }) } }).curdKept;
  const silent = run.plan.yield && { ...run.plan.yield, ...old, filterKeeps: undefined };
  expect(kept(silent)).toBeCloseTo(kept(said) ?? Number.NaN, 12);
});

// By hand: reference notes, 4 L of punch on 1 L of milk give 4.57 L at 0.35 l/l with one filter.
test("a yield as planned kept what the plan says it keeps", () => {
  const run = keptIn(1, PEAR_PLAN.yield?.curdKeeps ?? 0).run;
  expect(run.yields[0]?.ml).toBeCloseTo(PEAR_PLAN.yield?.expected ?? 0, 6);
});

test("the punch as mixed, the last temperature of each work, the days left on the milk", () => {
  const begun = started("run-1", "PB-1", 100 * DAY, PEAR_PLAN).then({
    type: "note-lot",
    ingredient: "milk-whole",
    lot: "L7",
    useBy: 104 * DAY,
  });
  const log = (value: number) => ({ what: "temperature", value, unit: "degC" }) as const;
  const { run } = dripped(begun)
    .then({ type: "log-reading", visit: "slow-drip#1", ...log(6) })
    .then({ type: "log-reading", visit: "slow-drip#1", ...log(4) })
    .then({ type: "log-reading", visit: "curdle#1", ...log(17) });
  const made = madeHow(run);
  expect(made.degrees).toEqual({ drip: 4, rest: 17 });
  expect(made.milkDaysLeft).toBe(4);
  expect(made.punch.strength).toBe(strengthOf(PEAR_PLAN.mixed));
  expect(made).not.toHaveProperty("curdKept");
});

test("what was not noted is not there", () => {
  const { run } = started("run-2", "PB-2", DAY, PEAR_PLAN);
  expect(madeHow(run)).toEqual({ punch: expect.anything(), degrees: {} });
});
