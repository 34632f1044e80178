import { expect, test } from "vitest";
import { leadTimeOf } from "../../../core/board/lead-time.ts";
import { usualDrip } from "../../../core/method/drip/usual-drip.ts";
import { demoSpec, planned, started } from "../../support/world/play-run.ts";

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const plan = planned(demoSpec("Pear Beacon"));
const { procedure } = started("a", "a", 0, plan).run;

test("all steps of the usual way, one after the other, the drip as the batch's volume has it", () => {
  const { yield: coming, spec } = plan;
  const drip = usualDrip(coming?.expected ?? 0, spec.wash?.filters ?? 1);
  // By hand: an hour's rest, two first minutes of a pass, and nine things for hands of five minutes
  // each: build, milk, pour, filter, pour back, yield, top-up, bottle, label.
  const rest = 60 + 2 + 9 * 5;
  expect(leadTimeOf(plan, procedure)).toBe(drip + rest * MINUTE);
});

test("a larger batch needs longer notice, more filters a shorter one", () => {
  const large = planned(demoSpec("Pear Beacon"), { by: "bottles", bottles: 24, size: 750 });
  expect(leadTimeOf(large, procedure)).toBeGreaterThan(leadTimeOf(plan, procedure));
  const { wash } = plan.spec;
  if (wash === undefined) throw new RangeError("it is a washed spec");
  const wide = { ...plan, spec: { ...plan.spec, wash: { ...wash, filters: wash.filters + 2 } } };
  expect(leadTimeOf(wide, procedure)).toBeLessThan(leadTimeOf(plan, procedure));
});

test("an infusion needs its whole time", () => {
  const [first] = procedure.steps;
  if (first === undefined) throw new RangeError("it has steps");
  const soak = { ...procedure, steps: [{ ...first, longestFor: 14 * DAY }] };
  expect(leadTimeOf(plan, soak)).toBe(14 * DAY);
});
