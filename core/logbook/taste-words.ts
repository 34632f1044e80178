/** Plain words for what is tasted, so that wet hands need not type. Chosen by us: judgement. */
export const TASTE_WORDS = [
  "bright",
  "clean",
  "fruity",
  "floral",
  "herbal",
  "spicy",
  "nutty",
  "toasty",
  "smoky",
  "silky",
  "round",
  "creamy",
  "milky",
  "thin",
  "chalky",
  "grippy",
  "dry",
  "sharp",
  "bitter",
  "hot",
  "flat",
  "cooked",
  "stale",
  "sour-milk",
] as const;

/** A plain word for what is tasted. */
export type TasteWord = (typeof TASTE_WORDS)[number];
