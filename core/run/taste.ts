import * as z from "zod/mini";

/** What a tasting looks at, in the order of a sip: the eye first, the throat last. */
export const ASPECTS = [
  "clarity",
  "colour",
  "aroma",
  "sweetness",
  "acid",
  "spirit",
  "texture",
  "finish",
] as const;

/** The top of every score; the least is 0. */
export const MOST_SCORE = 10;

/** What somebody makes of a batch as a whole. */
export const VERDICTS = ["good", "fair", "poor"] as const;
/** Whether it would be made again. */
export const REPEATS = ["yes", "with-changes", "no"] as const;

const score = z.optional(z.number().check(z.int(), z.gte(0), z.lte(MOST_SCORE)));

/** Scores of one tasting; what was not tasted for has none. */
export const scoresSchema = z.object({
  clarity: score,
  colour: score,
  aroma: score,
  sweetness: score,
  acid: score,
  spirit: score,
  texture: score,
  finish: score,
});

/** What a tasting looks at. */
export type Aspect = (typeof ASPECTS)[number];
/** Scores of one tasting, 0 to 10 each. */
export type Scores = Readonly<z.infer<typeof scoresSchema>>;
/** What somebody makes of a batch. */
export type Verdict = (typeof VERDICTS)[number];
/** Whether it would be made again. */
export type Repeat = (typeof REPEATS)[number];
