import { LEAST_JUMP } from "./alarm/clock-jump.ts";

/**
 * What has to be asked once a clock was moved again before anybody answered: by how much in all.
 *
 * @param asked - what was to be asked before, ms; nothing where there was nothing
 * @returns nothing where the clock is back where it was
 */
export function movedInAll(asked: number | undefined, by: number): number | undefined {
  const all = (asked ?? 0) + by;
  return Math.abs(all) > LEAST_JUMP ? all : undefined;
}
