/**
 * Marks that say which way text runs: embeddings, overrides, isolates, and the three that stand for a
 * letter of a direction. They are not seen, and turn round what follows: "20:00" reads "00:02".
 *
 * @source Unicode Standard Annex #9, section 2 (from memory)
 */
const TURNS = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu;

/**
 * A text without marks that turn it round. A name in any script does without them: its letters say
 * themselves which way they run.
 *
 * @param text - as typed, or as a file brings it
 * @example
 * unturned("Pear\u202E Beacon").length // => 11
 */
export const unturned = (text: string): string => text.replace(TURNS, "");
