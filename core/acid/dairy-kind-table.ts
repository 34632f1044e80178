/** Dairy and plant milks the curdling model tells apart, as a form lists them. */
export const DAIRY_KINDS = [
  "skim",
  "whole",
  "cream",
  "goat",
  "soy",
  "oat",
  "almond",
  "coconut",
] as const;

/** A dairy or plant milk the curdling model tells apart. */
export type DairyKind = (typeof DAIRY_KINDS)[number];
