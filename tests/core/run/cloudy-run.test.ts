import { expect, test } from "vitest";
import { cloudyRunOf } from "../../../core/run/cloudy-run.ts";
import { mostInVessel } from "../../../core/run/wash-progress.ts";
import { demoSpec, planned, started } from "../../support/world/play-run.ts";

const MINUTE = 60_000;
const PLAN = planned(demoSpec("Pear Beacon"));
/** At its first pass, begun 87 minutes after the start. */
const passing = started("r", "PB", 0, PLAN)
  .finish({}, 20)
  .finish({ answer: { of: "milk", ml: PLAN.milk?.ml ?? 0 } }, 2)
  .finish({}, 1)
  .finish({}, 60)
  .finish({}, 4);
/** The first pass took two minutes, and 400 ml of it were poured back. */
const checking = passing.finish({}, 2).finish({ answer: { of: "cloudy-run", ml: 400 } }, 3);

test("before the first pour there is nothing to tell", () => {
  const now = passing.run.visits.at(-1)?.startedAt ?? 0;
  expect(cloudyRunOf(passing.run, now + MINUTE)).toEqual({ passes: 0, pouredBackMl: 0 });
});

// By hand: 400 ml in 2 min are 200 ml a minute.
test("what runs through now follows from the pass before", () => {
  const now = checking.run.visits.at(-1)?.startedAt ?? 0;
  expect(cloudyRunOf(checking.run, now + 90_000)).toEqual({
    passes: 1,
    pouredBackMl: 400,
    runningMl: 300,
  });
  expect(cloudyRunOf(checking.run, now - 1).runningMl).toBe(0);
  expect(cloudyRunOf(checking.run, now + 1000 * MINUTE).runningMl).toBe(mostInVessel(checking.run));
});

test("pass by pass it adds up, and at the pour itself nothing runs", () => {
  const pouring = checking.finish({ look: "cloudy" }, 5);
  expect(cloudyRunOf(pouring.run, 0)).toEqual({ passes: 1, pouredBackMl: 400 });
  const again = pouring.finish({ answer: { of: "cloudy-run", ml: 250 } }, 3);
  const now = again.run.visits.at(-1)?.startedAt ?? 0;
  // The second pass took 5 min: 50 ml a minute.
  expect(cloudyRunOf(again.run, now + 2 * MINUTE)).toEqual({
    passes: 2,
    pouredBackMl: 650,
    runningMl: 100,
  });
  const dripping = again.finish({ look: "clear" }, 3);
  expect(cloudyRunOf(dripping.run, now)).toEqual({ passes: 2, pouredBackMl: 650 });
});

test("two phones that noted one pour differently: the later word counts, once", () => {
  const [pour] = checking.run.rePours;
  if (pour === undefined) throw new RangeError("it was poured back");
  const run = { ...checking.run, rePours: [pour, { ...pour, id: "x", ml: 420 }] };
  expect(cloudyRunOf(run, 0)).toMatchObject({ passes: 1, pouredBackMl: 420 });
});
