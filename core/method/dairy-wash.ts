import { HOUR, MINUTE } from "../quantity/time-units-table.ts";
import type { Procedure, Step } from "./procedure.ts";
import { BOTTLED, handsOn, reading, timedWait } from "./steps.ts";

const RESCUE_BRANCHES: Step["branches"] = [
  { on: "finer-filter", to: "finer" },
  { on: "cold-rest", to: "cold-rest" },
  { on: "accept", to: "slow-drip" },
];

/**
 * The dairy wash: milk in the vessel first, punch poured into it, then filtered through its own
 * curd. Times are common practice, no source: rest one hour, first pass about a minute, cloudy run
 * poured back until the drip runs clear, then hours of slow drip with a reading now and then.
 */
export const DAIRY_WASH: Procedure = {
  id: "dairy-wash",
  version: 1,
  perishableFrom: "milk",
  steps: [
    handsOn("build", "build"),
    reading("milk", "milk", "milk"),
    handsOn("pour", "pour"),
    timedWait("curdle", "rest", HOUR, { stands: "counter" }),
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
      asks: "look",
      branches: [
        { on: "clear", to: "slow-drip" },
        { on: "cloudy", to: "re-pour" },
        { on: "hazy", to: "re-pour" },
        // Three passes through a bed that will not clear: more of the same seldom helps.
        { on: "cloudy", to: "rescue", fromRound: 3 },
        { on: "hazy", to: "rescue", fromRound: 3 },
      ],
    },
    handsOn("rescue", "other", { asks: "rescue", branches: RESCUE_BRANCHES }),
    handsOn("finer", "filter", { next: "re-pour" }),
    timedWait("cold-rest", "chill", 24 * HOUR, { stands: "fridge" }),
    handsOn("rack", "strain", { next: "yield" }),
    {
      id: "slow-drip",
      kind: "watched-wait",
      work: "drip",
      stands: "fridge",
      waitFor: 30 * MINUTE,
      askEvery: HOUR,
      branches: [],
    },
    reading("yield", "yield", "yield"),
    reading("top-up", "top-up", "top-up"),
    ...BOTTLED,
  ],
};
