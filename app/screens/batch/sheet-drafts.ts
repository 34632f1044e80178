import * as z from "zod/mini";
import { type Scores, scoresSchema } from "../../../core/run/taste.ts";
import { draftBook } from "../../drafts.ts";

/** A tasting sheet that is being filled in. */
export interface TasteDraft {
  readonly scores: Scores;
  readonly words: readonly string[];
  /** Initials; nothing until somebody says who tastes. */
  readonly by?: string | undefined;
}

const draftSchema = z.object({
  scores: scoresSchema,
  words: z.array(z.string()),
  by: z.optional(z.string()),
});

/** Nothing tasted yet. */
export const BLANK: TasteDraft = { scores: {}, words: [] };

/** Tasting sheets that were begun, by batch: leaving the screen loses nothing. */
export const sheetDrafts = draftBook<TasteDraft>("tasting", (kept) => draftSchema.safeParse(kept));
