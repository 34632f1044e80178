import * as z from "zod/mini";
import { eventSchema, LAST_MOMENT, type RunEvent } from "../../../core/run/event.ts";
import { type Books, CHECKS } from "../books.ts";
import type { Checked } from "../checked.ts";
import type { StoredPhoto } from "../database.ts";
import { photoLine, photoOf } from "./photo-line.ts";

/** What a store holds, as a backup brings it. */
export interface Kept extends Readonly<{ [Name in keyof Books]: Books[Name][number] }> {
  readonly events: RunEvent;
  readonly photos: StoredPhoto;
}

/** A store that a backup keeps. */
export type StoreName = keyof Kept;

interface Kind<Value> {
  /** What a line of the file calls it: never changed, files outlive us. */
  readonly line: string;
  readonly check: (value: unknown) => Checked<Value>;
  /** What is stored as a line says it, where that is not the same. */
  readonly write?: (stored: object) => object;
  /** How many are held or handed on at a time. */
  readonly atOnce: number;
}

const AT_ONCE = 200;

/** A stamp beyond all time would leave none above it for what is done next. */
const broughtEvent = z.intersection(
  eventSchema,
  z.object({ hlc: z.object({ ms: z.number().check(z.lte(LAST_MOMENT)) }) }),
);

/**
 * Every kind of line there is. A new one is a row here, beside its store in database.ts: an older
 * version of the app lists its lines as unknown and takes the rest.
 */
export const KINDS: { readonly [Name in StoreName]: Kind<Kept[Name]> } = {
  events: { line: "event", check: (value) => broughtEvent.safeParse(value), atOnce: AT_ONCE },
  specs: { line: "spec", check: CHECKS.specs, atOnce: AT_ONCE },
  ingredients: { line: "ingredient", check: CHECKS.ingredients, atOnce: AT_ONCE },
  procedures: { line: "procedure", check: CHECKS.procedures, atOnce: AT_ONCE },
  planned: { line: "planned", check: CHECKS.planned, atOnce: AT_ONCE },
  // Large ones: a few at a time.
  photos: { line: "photo", check: photoOf, write: photoLine, atOnce: 8 },
};

/** The stores, in the order in which they stand in a file. */
export const STORES = [
  "events",
  "specs",
  "ingredients",
  "procedures",
  "planned",
  "photos",
] as const satisfies readonly StoreName[];

/** Records by store and id. */
export type Brought = { readonly [Name in StoreName]: Map<string, Kept[Name]> };

/** No records at all. */
export const nothingBrought = (): Brought => ({
  events: new Map(),
  specs: new Map(),
  ingredients: new Map(),
  procedures: new Map(),
  planned: new Map(),
  photos: new Map(),
});
