import type { Page } from "playwright-core";
import { foldRun } from "../../../core/run/fold.ts";
import type { Run } from "../../../core/run/run.ts";
import { madeWhole, started } from "../world/play-run.ts";
import { HOUR, OPENS, storedLog } from "./walk-page.ts";

/** A batch, `run-a`, that was bottled before the day at the bar began. */
export const made = madeWhole(started("run-a", "PB-1", OPENS - 12 * HOUR), {
  yield: 3700,
  topUp: 450,
  useBy: OPENS + 6 * 24 * HOUR,
});

/** The only batch on the phone, as its log tells it now. */
export const runNow = async (page: Page): Promise<Run> => {
  const run = foldRun(await storedLog(page));
  if (run === undefined) throw new RangeError("the run is stored");
  return run;
};
