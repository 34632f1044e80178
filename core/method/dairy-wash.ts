import type { Procedure, Step } from "./procedure.ts";

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const HOUR = 60 * MINUTE;

const handsOn = (id: string, work: Step["work"]): Step => ({
  id,
  kind: "hands-on",
  work,
  branches: [],
});

const reading = (id: string, work: Step["work"], needs: NonNullable<Step["needs"]>): Step => ({
  id,
  kind: "reading",
  work,
  needs,
  branches: [],
});

/**
 * The dairy wash: milk in the vessel first, punch poured into it, then filtered through its own
 * curd. Times are common practice, no source: rest one hour, first pass about a minute, cloudy run
 * poured back until the drip runs clear, then hours of slow drip with a reading now and then.
 */
export const DAIRY_WASH: Procedure = {
  id: "dairy-wash",
  version: 1,
  steps: [
    handsOn("build", "build"),
    reading("milk", "milk", "milk"),
    handsOn("pour", "pour"),
    {
      id: "curdle",
      kind: "timed-wait",
      work: "rest",
      waitFor: HOUR,
      askEvery: 15 * MINUTE,
      branches: [],
    },
    handsOn("wet-filter", "filter"),
    {
      id: "first-pass",
      kind: "watched-wait",
      work: "pass",
      waitFor: MINUTE,
      askEvery: MINUTE,
      branches: [],
    },
    reading("re-pour", "re-pour", "cloudy-run"),
    {
      id: "check-clear",
      kind: "watched-wait",
      work: "pass",
      waitFor: MINUTE,
      askEvery: MINUTE,
      look: true,
      branches: [
        { look: "cloudy", to: "re-pour" },
        { look: "hazy", to: "re-pour" },
      ],
    },
    {
      id: "slow-drip",
      kind: "watched-wait",
      work: "drip",
      waitFor: 30 * MINUTE,
      askEvery: HOUR,
      branches: [],
    },
    reading("yield", "yield", "yield"),
    reading("top-up", "top-up", "top-up"),
    reading("bottle", "bottle", "bottled"),
    handsOn("label", "label"),
  ],
};
