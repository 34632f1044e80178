/** What had come through, and when. */
export interface DripReading {
  /** ms since the drip began */
  readonly atMs: number;
  /** ml collected since then */
  readonly ml: number;
}

/** A reading the forecast does not use. */
export interface KeptOut extends DripReading {
  /** Less than before it; too little to measure; before the drip; twice at one moment. */
  readonly why: "lower-than-before" | "too-little" | "before-the-drip" | "same-moment";
}

/** Readings sorted by use. */
export interface SiftedReadings {
  /** In order of time, never decreasing. */
  readonly used: readonly DripReading[];
  readonly keptOut: readonly KeptOut[];
}

/** Below this share of the expected total a jug shows nothing: judgement. */
const READABLE = 0.002;

function reasonAgainst(
  reading: DripReading,
  before: DripReading | undefined,
  least: number,
): KeptOut["why"] | undefined {
  if (reading.atMs <= 0) return "before-the-drip";
  if (before !== undefined && reading.ml < before.ml) return "lower-than-before";
  if (reading.ml < least) return "too-little";
  return before?.atMs === reading.atMs ? "same-moment" : undefined;
}

/**
 * Readings that can be used: what was collected never goes down, so a lower one is a mistake.
 *
 * @param readings - in any order
 * @param expectedMl - what is expected to come through, ml
 * @throws RangeError when a reading is not a number
 * @limits a reading far too high shuts out the true ones after it until it is undone
 * @example
 * siftReadings([{ atMs: 9, ml: 500 }, { atMs: 5, ml: 400 }, { atMs: 12, ml: 450 }], 1000).used.length // => 2
 */
export function siftReadings(readings: readonly DripReading[], expectedMl: number): SiftedReadings {
  const used: DripReading[] = [];
  const keptOut: KeptOut[] = [];
  for (const reading of readings.toSorted((a, b) => a.atMs - b.atMs)) {
    const { atMs, ml } = reading;
    if (!Number.isFinite(atMs) || !Number.isFinite(ml)) {
      throw new RangeError(`a reading must be two finite numbers, got ${atMs} ms and ${ml} ml`);
    }
    const why = reasonAgainst(reading, used.at(-1), READABLE * expectedMl);
    if (why === undefined) used.push({ atMs, ml });
    else keptOut.push({ atMs, ml, why });
  }
  return { used, keptOut };
}
