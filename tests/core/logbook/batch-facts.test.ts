import { expect, test } from "vitest";
import { batchFactsOf } from "../../../core/logbook/batch-facts.ts";
import { dripped, madeWhole, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const MINUTE = 60_000;
const begun = () => started("a", "PB-2511", MADE);

test("what a whole batch came to", () => {
  const { run } = madeWhole(begun(), { yield: 3700, topUp: 450, useBy: MADE + 1 });
  const facts = batchFactsOf(run);
  expect(facts).toMatchObject({
    yielded: { ml: 3700 },
    topUp: { ml: 450, planned: run.plan.heldBackMl },
    bottled: { bottles: [{ count: 6, size: 750 }] },
    passes: 1,
  });
  // By hand: the spirit follows the yield in proportion.
  const expected = run.plan.yield?.expected ?? 0;
  expect(facts.topUp?.advised).toBeCloseTo((run.plan.heldBackMl * 3700) / expected, 6);
});

test("how long each passage took, the open one not yet", () => {
  const { run } = dripped(begun());
  const took = batchFactsOf(run).steps.map(({ visit, took: ms }) => [visit, ms && ms / MINUTE]);
  expect(took).toEqual([
    ["build#1", 20],
    ["milk#1", 2],
    ["pour#1", 5],
    ["curdle#1", 60],
    ["wet-filter#1", 4],
    ["first-pass#1", 2],
    ["re-pour#1", 3],
    ["check-clear#1", 3],
    ["slow-drip#1", 340],
    ["yield#1", undefined],
  ]);
});

test("a batch just started has nothing to say yet", () => {
  const { yielded, topUp, bottled, passes } = batchFactsOf(begun().run);
  expect({ yielded, topUp, bottled, passes }).toEqual({
    yielded: undefined,
    topUp: undefined,
    bottled: undefined,
    passes: 0,
  });
});
