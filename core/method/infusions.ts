import { HOUR, MINUTE } from "../quantity/time-units-table.ts";
import type { Procedure } from "./procedure.ts";
import { BOTTLED, handsOn, reading, tastedWait, timedWait } from "./steps.ts";

// Times: common practice, no source, unless a line says otherwise. Every infusion ends on taste.

/** A long infusion: tasted at 12, 24 and 30 hours, stopped at 36 whatever it tastes like. */
export const LONG_INFUSION: Procedure = {
  id: "long-infusion",
  version: 1,
  steps: [
    handsOn("build", "build"),
    tastedWait("steep", 12 * HOUR, {
      askAt: [24 * HOUR, 30 * HOUR],
      longestFor: 36 * HOUR,
      askEvery: 6 * HOUR,
      stands: "counter",
    }),
    handsOn("strain-mesh", "strain"),
    handsOn("strain-paper", "strain"),
    reading("yield", "yield", "yield"),
    ...BOTTLED,
  ],
};

/** A short infusion, as of tea or flowers: tasted every ten minutes, stopped at 45. */
export const SHORT_INFUSION: Procedure = {
  id: "short-infusion",
  version: 1,
  steps: [
    handsOn("build", "build"),
    tastedWait("steep", 10 * MINUTE, { askEvery: 10 * MINUTE, longestFor: 45 * MINUTE }),
    handsOn("strain-mesh", "strain"),
    reading("yield", "yield", "yield"),
    ...BOTTLED,
  ],
};

/** A fat wash: fat and spirit shaken and left warm, frozen until the fat is hard, strained cold. */
export const FAT_WASH: Procedure = {
  id: "fat-wash",
  version: 1,
  perishableFrom: "melt",
  steps: [
    handsOn("build", "build"),
    handsOn("melt", "other", { uses: [{ resource: "burner", amount: 1 }] }),
    timedWait("mingle", "rest", 3 * HOUR, { stands: "counter" }),
    timedWait("freeze", "chill", 12 * HOUR, {
      stands: "freezer",
      uses: [{ resource: "freezer", amount: 1 }],
    }),
    handsOn("lift-fat", "strain"),
    handsOn("strain-paper", "strain"),
    reading("yield", "yield", "yield"),
    ...BOTTLED,
  ],
};
