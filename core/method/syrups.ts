import { HOUR, MINUTE } from "../quantity/time-units-table.ts";
import type { Procedure } from "./procedure.ts";
import { BOTTLED, handsOn, reading, timedWait } from "./steps.ts";

// Times: common practice, no source.

/** A sherbet: sugar on citrus skins draws their oil out, then juice dissolves it. */
export const SHERBET: Procedure = {
  id: "sherbet",
  version: 1,
  steps: [
    handsOn("skins", "other", { handsFor: 15 * MINUTE }),
    timedWait("draw-oil", "rest", 12 * HOUR, { stands: "counter" }),
    handsOn("build", "build"),
    handsOn("stir", "stir"),
    handsOn("strain-mesh", "strain"),
    reading("brix", "brix", "brix"),
    ...BOTTLED,
  ],
};

/** A cordial brought to a °Brix: too thin or too thick goes back to be corrected. */
export const CORDIAL: Procedure = {
  id: "cordial",
  version: 1,
  steps: [
    handsOn("build", "build"),
    handsOn("stir", "stir"),
    timedWait("cool", "chill", 2 * HOUR, { stands: "fridge" }),
    reading("brix", "brix", "brix"),
    handsOn("correct", "other"),
    ...BOTTLED,
  ],
};

const stirred = (id: string): Procedure => ({
  id,
  version: 1,
  steps: [handsOn("build", "build"), handsOn("stir", "stir"), ...BOTTLED],
});

/** A juice brought to the sourness of another with weighed acids. */
export const ACID_JUICE: Procedure = stirred("acid-juice");

/** A syrup by weight: stirred until clear, then its °Brix read. */
export const SYRUP: Procedure = {
  id: "syrup",
  version: 1,
  steps: [
    handsOn("build", "build"),
    handsOn("stir", "stir"),
    reading("brix", "brix", "brix"),
    ...BOTTLED,
  ],
};

/** Salt dissolved in water. */
export const SALINE: Procedure = stirred("saline");

/** A drink let down with its water ahead of time and kept in the freezer. */
export const FREEZER_BOTTLE: Procedure = {
  id: "freezer-bottle",
  version: 1,
  steps: [
    handsOn("build", "build"),
    handsOn("stir", "stir"),
    reading("bottle", "bottle", "bottled"),
    handsOn("label", "label"),
    timedWait("freeze", "chill", 6 * HOUR, {
      stands: "freezer",
      uses: [{ resource: "freezer", amount: 1 }],
    }),
  ],
};
