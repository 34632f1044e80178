import { eachLaw } from "../../core/method/drip/vessel-shape.ts";
import { dripOutlook, shapeOf } from "../../core/run/drip-outlook.ts";
import type { Run } from "../../core/run/run.ts";
import { atDesk } from "../desk.ts";
import { openBatches } from "../state.ts";

const turn = () => new Promise<void>((resolve) => void atDesk().clock.after(0, resolve));

/**
 * Works out the forecasts that planning the day asks for, one at a turn: all of them at once would
 * keep a slow phone's finger waiting. They are remembered.
 */
export async function readyAhead(): Promise<void> {
  for (const run of openBatches.peek()) {
    await turn();
    dripOutlook(run);
  }
  await turn();
}

/** Makes what the first forecast of a drip is worked out from, a part at a turn, before it is asked for. */
export async function readyDrip(run: Run): Promise<void> {
  for (const _ of eachLaw(shapeOf(run))) await turn();
}
