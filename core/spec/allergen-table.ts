/**
 * Allergens that must be declared.
 * EU: Regulation (EU) No 1169/2011, Annex II (14 groups). US: Food Allergen Labeling and Consumer
 * Protection Act with the FASTER Act of 2021 (9 major allergens). Lists read 2026-11-25 from the
 * project's reference notes; the law itself was not opened.
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

/**
 * The US list names wheat where the EU names cereals with gluten, and leaves out celery, mustard,
 * sulphites (a labelling rule of their own), lupin and molluscs.
 * @public the US list, beside the EU list that labels use
 */
export const US_MAJOR_ALLERGENS: readonly Allergen[] = [
  "milk",
  "egg",
  "fish",
  "crustaceans",
  "nuts",
  "peanut",
  "gluten",
  "soy",
  "sesame",
];
