/** The acids of the trade that the core tells apart; each is known by its dissociation constants. */
export const ACID_NAMES = [
  "citric",
  "malic",
  "tartaric",
  "lactic",
  "acetic",
  "phosphoric",
] as const;

/** One of the acids the core knows. */
export type AcidName = (typeof ACID_NAMES)[number];

/** Grams of each acid; an acid left out counts as none. */
export type AcidMasses = Readonly<Partial<Record<AcidName, number | undefined>>>;

/**
 * Total mass of a set of acids.
 *
 * @param acids - grams of each
 * @returns grams, all acids together
 * @example
 * totalAcid({ citric: 4, malic: 2 }) // => 6
 */
export function totalAcid(acids: AcidMasses): number {
  return ACID_NAMES.reduce((sum, name) => sum + (acids[name] ?? 0), 0);
}
