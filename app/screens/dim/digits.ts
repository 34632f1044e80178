import { MINUTE } from "../../../core/quantity/time-units-table.ts";
import { countdown } from "../../words/format.ts";

/**
 * What is left, in as few signs as can be told apart across a room: "4:07" in minutes and seconds,
 * "1h04" from an hour on, "2d 3h" from two days on, "12d" from ten.
 */
export function dimDigits(ms: number): string {
  if (Math.ceil(ms / 1000) < 3600) return countdown(ms);
  const minutes = Math.ceil(ms / MINUTE);
  const hours = Math.floor(minutes / 60);
  if (hours < 48) return `${hours}h${String(minutes % 60).padStart(2, "0")}`;
  const days = Math.floor(hours / 24);
  return days < 10 ? `${days}d ${hours % 24}h` : `${days}d`;
}

/** Up and down again between 0 and `most`, one notch a step. */
const swing = (step: number, most: number): number => {
  const at = step % (2 * most);
  return at <= most ? at : 2 * most - at;
};

/** How far the wandering face moves in a minute, each way, CSS px. */
const NOTCH = 5;

/**
 * Where the face stands in a minute: a little elsewhere than in the one before, so that no spot of a
 * screen that burns in is lit for long.
 *
 * @param minute - whole minutes since the epoch
 * @returns px from the middle, at most 10 across and 17.5 along
 */
export const wander = (minute: number): { readonly x: number; readonly y: number } => ({
  // Two swings whose lengths share little meet in many places.
  x: (swing(minute, 4) - 2) * NOTCH,
  y: (swing(minute, 7) - 3.5) * NOTCH,
});
