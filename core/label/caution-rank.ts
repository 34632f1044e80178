import { NOTE_RANK } from "./lay-out.ts";

/** What the house is reminded of; everything else is for whoever drinks or serves it. */
const NOTES: readonly string[] = ["fresh-juice", "over-seven-days", "local-use-by", "local-sale"];

/**
 * How soon a caution is left off a label that has no room for it.
 *
 * @returns 0 for one that always stays, a code from elsewhere among them; the highest goes first
 * @source judgement: what concerns whoever drinks or keeps it stays, as do name, batch, use-by,
 *   allergens, strength and volume; what reminds the house of its local code stands in the app too
 */
export function cautionRank(code: string): number {
  const at = NOTES.indexOf(code);
  return at < 0 ? 0 : NOTE_RANK + at;
}
