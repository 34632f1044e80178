import type { Locator } from "playwright-core";
import type { Hands } from "../support/hands.ts";

/**
 * What a practised hand takes, s: to reach a place and press it, to strike a key of a pad, to make up
 * one's mind on a new screen. Card, Moran and Newell's keystroke-level model, CACM 23 (1980) 396, from
 * memory: P 1.1, K 0.28, M 1.35; a hold lasts 0.7 besides, as `press-rules.ts`.
 */
const POINT = 1.1;
const KEY = 0.28;
const MIND = 1.35;
const HOLD = 0.7;
/** A thumb's sweep that brings up what is below the fold. */
const SWEEP = POINT;

export interface Effort {
  taps: number;
  holds: number;
  keys: number;
  sweeps: number;
  screens: number;
}

export const seconds = ({ taps, holds, keys, sweeps, screens }: Effort): number =>
  (taps + holds) * POINT + holds * HOLD + keys * KEY + sweeps * SWEEP + screens * MIND;

/** Whether somebody would have to move the screen first. */
async function belowFold(control: Locator): Promise<boolean> {
  return control.evaluate((one) => {
    const { x, y, width, height } = one.getBoundingClientRect();
    return !one.contains(document.elementFromPoint(x + width / 2, y + height / 2));
  });
}

/** Hands that count what they do. */
export function counted(hands: Hands): { readonly hands: Hands; readonly effort: Effort } {
  const effort: Effort = { taps: 0, holds: 0, keys: 0, sweeps: 0, screens: 1 };
  const looked = async (control: Locator) => {
    await control.waitFor();
    if (await belowFold(control)) effort.sweeps += 1;
  };
  return {
    effort,
    hands: {
      ...hands,
      tap: async (control) => {
        await looked(control);
        effort.taps += 1;
        await hands.tap(control);
      },
      hold: async (control) => {
        await looked(control);
        effort.holds += 1;
        await hands.hold(control);
      },
    },
  };
}
