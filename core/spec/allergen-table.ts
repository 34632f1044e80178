/**
 * Allergens that must be declared.
 * EU: Regulation (EU) No 1169/2011, Annex II (14 groups); read 2026-11-25 from the project's reference
 * notes, the law itself was not opened. The US list (FALCPA with the FASTER Act of 2021) has nine of
 * them: it names wheat for gluten, and leaves out celery, mustard, sulphites, lupin and molluscs.
 */
export const ALLERGENS = [
  "gluten",
  "crustaceans",
  "egg",
  "fish",
  "peanut",
  "soy",
  "milk",
  "nuts",
  "celery",
  "mustard",
  "sesame",
  "sulphites",
  "lupin",
  "molluscs",
] as const;

/** An allergen group of the EU list. */
export type Allergen = (typeof ALLERGENS)[number];
