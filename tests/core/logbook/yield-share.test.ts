import { expect, test } from "vitest";
import { yieldShareOf } from "../../../core/logbook/yield-share.ts";
import { demoSpec, dripped, planned, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");

/** A plan with round figures: 4 L of punch in one line, 1 L of milk, 4.57 L expected. */
const round = () => {
  const plan = planned(demoSpec("Pear Beacon"));
  const [line] = plan.lines;
  const { yield: expected, milk } = plan;
  if (line === undefined || expected === undefined || milk === undefined) {
    throw new RangeError("the demo spec must be washed");
  }
  return {
    ...plan,
    lines: [{ ...line, before: { ml: 4000, g: 4000 } }],
    milk: { ...milk, ml: 1000 },
    yield: { ...expected, poured: 4970, expected: 4570 },
  };
};

// The reference notes' worked example: 4 L + 1 L give 4.57 L.
test("yield over all that was poured in, dairy included, beside what was expected", () => {
  const { run } = dripped(started("a", "a", MADE, round())).finish({
    answer: { of: "yield", ml: 4000 },
  });
  expect(yieldShareOf(run)).toEqual({
    ml: 4000,
    poured: 5000,
    share: 0.8,
    expectedMl: 4570,
    expectedShare: 0.914,
  });
});

test("the milk that was really measured counts", () => {
  const { run } = started("a", "a", MADE, round())
    .finish()
    .finish({ answer: { of: "milk", ml: 1200 } })
    .finish()
    .finish()
    .finish()
    .finish()
    .finish({ answer: { of: "cloudy-run", ml: 400 } })
    .finish({ look: "clear" })
    .finish()
    .finish({ answer: { of: "yield", ml: 4160 } });
  expect(yieldShareOf(run)).toMatchObject({ poured: 5200, share: 0.8, expectedShare: 0.914 });
});

test("says nothing before the yield is measured, or of a batch that is not washed", () => {
  expect(yieldShareOf(dripped(started("a", "a", MADE)).run)).toBeUndefined();
  const slush = started("b", "b", MADE, planned(demoSpec("Harbour Slush")));
  expect(yieldShareOf(slush.run)).toBeUndefined();
});
