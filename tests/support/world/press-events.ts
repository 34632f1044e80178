import type { PressEvent } from "../../../app/parts/press.ts";
import { HOLD_FOR } from "../../../app/parts/press-rules.ts";

/** A finger comes down on the control. */
export const down = (
  at: number,
  more: Partial<PressEvent & { type: "down" }> = {},
): PressEvent => ({
  type: "down",
  at,
  pointer: 1,
  touch: true,
  width: 20,
  contacts: 1,
  quietUntil: Number.NEGATIVE_INFINITY,
  edge: false,
  holdFor: HOLD_FOR,
  ...more,
});

/** It is taken away. */
export const up = (at: number, pointer = 1): PressEvent => ({ type: "up", at, pointer });

/** The fill of a hold has come to its end. */
export const filled = (at: number): PressEvent => ({ type: "filled", at });
