/** What a person did to get a job done, and what the phone made of it. */
export interface Walked {
  readonly taps: number;
  readonly holds: number;
  /** Keys of our own pad. */
  readonly keys: number;
  /** Flicks until what is to be pressed or read stands in sight as a whole. */
  readonly scrolls: number;
  /** Screens, sheets and pads that came after the first. */
  readonly screens: number;
  /** How long the glass was held, ms, in real time. */
  readonly heldMs: number;
  /** From lifting a finger until the next thing stood there, ms, in real time. */
  readonly appMs: number;
}

/**
 * Operators of the keystroke-level model, s.
 *
 * @source Card, Moran and Newell, "The keystroke-level model for user performance time with
 *   interactive systems", Communications of the ACM 23 (1980); from memory, not looked up. Measured
 *   with keyboards and pointing devices at desks: fingers on glass, wet ones at that, will be
 *   slower, so only the difference between two ways of doing a job says something.
 */
export const OPERATORS = {
  /** Pressing a key: "typing random letters". */
  key: 0.5,
  /** Pointing at a target. */
  point: 1.1,
  /** Preparing in the mind: once for each screen, and once for a figure that is typed. */
  mental: 1.35,
} as const;

/** What the person needs, s: without the holds and without the phone. */
export function humanSeconds({ taps, holds, keys, scrolls, screens }: Walked): number {
  const { key, point, mental } = OPERATORS;
  const pressed = taps * (point + key) + holds * point + keys * key;
  // A flick is pointed and dragged like a tap, and then the screen is read anew.
  const flicked = scrolls * (point + key + mental);
  const thought = (1 + screens + (keys > 0 ? 1 : 0)) * mental;
  return pressed + flicked + thought;
}

/** The whole job, s. */
export const secondsOf = (walked: Walked): number =>
  humanSeconds(walked) + (walked.heldMs + walked.appMs) / 1000;
