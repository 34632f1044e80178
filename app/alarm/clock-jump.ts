/** Both clocks of a phone, read together. */
export interface ClockSample {
  /** Epoch ms; people and networks set it. */
  readonly wall: number;
  /** Ms since the page began; nobody sets it, but it may stand still while the phone sleeps. */
  readonly mono: number;
  /** Whether the page was in sight, without a break, since the sample before. */
  readonly visible: boolean;
}

/** Smaller steps are a network correcting the clock, ms. */
export const LEAST_JUMP = 2000;
/** Samples further apart may have slept in between, ms. */
const CLOSE_TOGETHER = 3000;

/**
 * By how much the phone's clock was moved between two samples, ms; null when it was not, or when
 * the page may have slept and nobody can tell. A phone that sleeps with the page in sight and its
 * steady clock stopped looks the same as a clock set forward: ask, do not assume.
 */
export function clockJump(before: ClockSample, after: ClockSample): number | null {
  const ran = after.mono - before.mono;
  if (!after.visible || ran < 0 || ran > CLOSE_TOGETHER) return null;
  const by = after.wall - before.wall - ran;
  return Math.abs(by) > LEAST_JUMP ? by : null;
}
