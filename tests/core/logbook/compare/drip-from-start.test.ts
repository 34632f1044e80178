import { expect, test } from "vitest";
import { dripFromStart } from "../../../../core/logbook/compare/drip-from-start.ts";
import { keptIn, PEAR_PLAN } from "../../../support/world/learnt-batches.ts";
import { dripped, started } from "../../../support/world/play-run.ts";

const MINUTE = 60_000;
const collected = (value: number) =>
  ({ type: "log-reading", visit: "slow-drip#1", what: "collected", value, unit: "ml" }) as const;

test("from nothing through every reading to the yield, counted from its own beginning", () => {
  const begun = started("run-1", "PB-1", 7 * 86_400_000, PEAR_PLAN)
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: PEAR_PLAN.milk?.ml ?? 0 } })
    .finish()
    .finish()
    .finish()
    .finish()
    .finish({ answer: { of: "cloudy-run", ml: 300 } })
    .finish({ look: "clear" });
  const run = begun
    .then(collected(900), 60)
    .then(collected(1500), 60)
    .finish({}, 120)
    .finish({ answer: { of: "yield", ml: 4000 } }).run;
  expect(dripFromStart(run)).toEqual([
    { forMs: 0, ml: 0 },
    { forMs: 60 * MINUTE, ml: 900 },
    { forMs: 120 * MINUTE, ml: 1500 },
    { forMs: 240 * MINUTE, ml: 4000 },
  ]);
});

test("without readings the yield alone stands at its end; before it drips there is nothing", () => {
  const points = dripFromStart(keptIn(1, 0.4).run);
  expect(points).toHaveLength(2);
  expect(points?.[1]?.forMs).toBe(340 * MINUTE);
  expect(dripFromStart(started("run-2", "PB-2", 0, PEAR_PLAN).run)).toBeUndefined();
  expect(dripFromStart(dripped(started("run-3", "PB-3", 0, PEAR_PLAN)).run)).toBeUndefined();
});
