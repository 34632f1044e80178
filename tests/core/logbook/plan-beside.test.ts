import { expect, test } from "vitest";
import { strengthOf } from "../../../core/liquid/liquid.ts";
import { type Beside, planBesideOf } from "../../../core/logbook/plan-beside.ts";
import { demoSpec, dripped, madeWhole, planned, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const begun = started("a", "PB-2511", MADE);
const { plan } = begun.run;

const rows = (run: typeof begun.run) =>
  new Map<string, Beside>(planBesideOf(run).map((row) => [row.what, row]));

test("before anything is measured there is only the plan", () => {
  const all = planBesideOf(begun.run);
  expect(all.map(({ what }) => what)).toEqual([
    "milk",
    "yield",
    "topUp",
    "bottled",
    "strength",
    "sugar",
    "acid",
  ]);
  expect(all.every((row) => !("happened" in row))).toBe(true);
  expect(rows(begun.run).get("milk")?.planned).toBe(plan.milk?.ml);
});

test("each figure stands beside what was measured", () => {
  const made = madeWhole(begun, { yield: 3700, topUp: 450, useBy: MADE + 1 });
  expect(Object.fromEntries(rows(made.run))).toMatchObject({
    milk: { planned: plan.milk?.ml, happened: plan.milk?.ml },
    yield: { planned: plan.yield?.expected, happened: 3700 },
    topUp: { planned: plan.heldBackMl, happened: 450 },
    bottled: { planned: plan.finalMl, happened: 4500 },
  });
});

test("made exactly as planned, it is exactly as strong, as sweet and as sour", () => {
  const exact = dripped(begun)
    .finish({ answer: { of: "yield", ml: plan.yield?.expected ?? 0 } })
    .finish({ answer: { of: "top-up", ml: plan.heldBackMl } });
  for (const what of ["strength", "sugar", "acid"]) {
    const row = rows(exact.run).get(what);
    expect(row?.happened).toBeCloseTo(row?.planned ?? Number.NaN, 6);
  }
  const strong = dripped(begun)
    .finish({ answer: { of: "yield", ml: plan.yield?.expected ?? 0 } })
    .finish({ answer: { of: "top-up", ml: plan.heldBackMl * 1.5 } });
  expect(rows(strong.run).get("strength")?.happened).toBeGreaterThan(strengthOf(plan.final));
});

test("a batch without milk or held-back spirit has no line for them", () => {
  const spec = { ...demoSpec("Pear Beacon") };
  const { wash: _, ...unwashed } = spec;
  const lines = unwashed.lines.map((line) => ({ ...line, heldBack: 0 }));
  const whole = started("b", "b", MADE, planned({ ...unwashed, lines }));
  expect(planBesideOf(whole.run).map(({ what }) => what)).not.toEqual(
    expect.arrayContaining(["milk"]),
  );
  expect(rows(whole.run).get("topUp")).toBeUndefined();
});
