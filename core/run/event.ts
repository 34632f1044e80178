import * as z from "zod/mini";
import { OUTCOMES, procedureSchema, READING_KEYS, STANDS } from "../method/procedure.ts";
import { planSchema } from "../spec/plan.ts";
import { FILTER_SHAPES } from "../spec/spec.ts";
import { REPEATS, scoresSchema, VERDICTS } from "./taste.ts";

/** More than any vessel holds, ml: what an event may carry. */
export const MOST_AMOUNT = 10_000_000;

const id = z.string().check(z.minLength(1), z.maxLength(80));
/**
 * The beginning of the year 3000, epoch ms: nothing is said of a later moment. The last that a date can
 * hold (ECMA-262, 21.4.1.1) lies far beyond, so that waits and plans may be added to it. Judgement.
 */
export const LAST_MOMENT = 32_503_680_000_000;
/** A moment of work: whole epoch ms. */
export const moment = z.number().check(z.int(), z.gte(0), z.lte(LAST_MOMENT));
const amount = z.number().check(z.gte(0), z.lte(MOST_AMOUNT));
const words = z.string().check(z.maxLength(2000));
const fewWords = z.string().check(z.minLength(1), z.maxLength(40));
const initials = z.string().check(z.minLength(1), z.maxLength(8));

/** What else may watch a wait: the phone's own clock, a person, the writing on the vessel. */
export const WATCHERS = ["phone-clock", "person", "vessel"] as const;

/** Units a reading may carry. */
export const READING_UNITS = ["ml", "g", "degC", "count", "brix"] as const;

/** Vessels that are weighed with what is in them: the one the cloudy run is caught in, and the next. */
export const VESSELS = ["cloudy-run", "clear-run"] as const;

/** What is poured out of bottles is counted in. */
export const STOCK_UNITS = ["serves", "bottles", "ml"] as const;

/** How bottles come to their end. */
export const STOCK_ENDS = ["spent", "discarded"] as const;

/** What a scale showed, g: a volume that was weighed keeps both. */
const weighedSchema = z.object({ gross: amount, tare: amount });
const weighed = z.optional(weighedSchema);

const readingFields = {
  what: z.enum(READING_KEYS),
  value: z.number().check(z.gte(-50), z.lte(MOST_AMOUNT)),
  unit: z.enum(READING_UNITS),
  weighed,
};

/** Bottles of one size that were filled. */
export const bottlesSchema = z.object({
  count: z.number().check(z.int(), z.gte(1), z.lte(10_000)),
  size: z.number().check(z.gt(0), z.lte(100_000)),
});

const body = <Type extends string, Shape extends z.core.$ZodShape>(type: Type, shape: Shape) =>
  z.object({ type: z.literal(type), ...shape });

const DRAFTS = [
  body("run.started", {
    /** What the barback writes on the vessel. */
    batch: z.string().check(z.minLength(1), z.maxLength(40)),
    plan: planSchema,
    procedure: procedureSchema,
    appVersion: z.string().check(z.maxLength(60)),
  }),
  /** A visit is one passage through a step: "re-pour#2" is the second re-pour. */
  body("step.started", { visit: id, step: id }),
  body("step.finished", { visit: id }),
  /** One ingredient has gone into the vessel. */
  body("line.poured", { visit: id, line: id }),
  body("reading.logged", { visit: id, ...readingFields }),
  /** What was seen or tasted; a wait that goes on may be tasted several times. */
  body("look.noted", { visit: id, look: z.enum(OUTCOMES) }),
  body("run.repoured", { visit: id, ml: amount, weighed }),
  body("yield.logged", {
    visit: id,
    ml: amount,
    weighed,
    /** Phones had measured different yields, and somebody said that this one counts. */
    settles: z.optional(z.literal(true)),
  }),
  body("topup.poured", { visit: id, ml: amount, advised: amount, planned: amount }),
  body("alarm.heard", { visit: id, dueAt: moment }),
  /** Somebody said that another alarm also watches this wait. */
  body("alarm.handed", {
    visit: id,
    dueAt: moment,
    to: z.enum(WATCHERS),
    who: z.optional(initials),
  }),
  body("due.moved", { visit: id, dueAt: moment }),
  body("note.added", { text: words }),
  body("clock.shifted", { byMs: z.number().check(z.int()), keepElapsed: z.boolean() }),
  /** The page did not run meanwhile, so nothing here could have rung. Times in ms. */
  body("phone.slept", { fromMs: moment, forMs: moment }),
  body("event.undone", { undoes: id }),
  body("run.bottled", { visit: id, bottles: z.array(bottlesSchema), useBy: moment }),
  body("run.abandoned", { reason: words }),
  /** Nobody works on it for now: its alarms are silent, its waits go on. */
  body("run.paused", {}),
  body("run.resumed", {}),
  /** When it has to be ready. */
  body("ready.set", { by: moment }),
  /** What a vessel weighs empty, g. */
  body("tare.noted", { vessel: z.enum(VESSELS), grams: amount }),
  /** What stands above the filter, where the spec does not say. */
  body("shape.noted", { visit: id, shape: z.enum(FILTER_SHAPES) }),
  /** Where the vessel was put. */
  body("vessel.moved", { to: z.enum(STANDS) }),
  /** Whose hands it is in, by initials. */
  body("hands.changed", { initials }),
  /** The lot of an ingredient, and the use-by date on it where there is one. */
  body("lot.noted", {
    ingredient: id,
    lot: z.string().check(z.minLength(1), z.maxLength(60)),
    useBy: z.optional(moment),
  }),
  /** Somebody tasted it; their latest tasting takes the place of their earlier ones. */
  body("taste.noted", {
    scores: scoresSchema,
    /** Ours by code, or as typed. */
    words: z.array(fewWords).check(z.maxLength(24)),
    by: initials,
  }),
  body("verdict.given", { verdict: z.enum(VERDICTS), repeat: z.enum(REPEATS), text: words }),
  body("tag.added", { tag: fewWords }),
  body("tag.removed", { tag: fewWords }),
  /** A picture was taken; it is kept beside the log, on the phone that took it. */
  body("photo.added", {
    photo: id,
    media: z.string().check(z.minLength(1), z.maxLength(40)),
    bytes: amount,
    width: z.number().check(z.int(), z.gte(1), z.lte(20_000)),
    height: z.number().check(z.int(), z.gte(1), z.lte(20_000)),
  }),
  body("photo.removed", { photo: id }),
  /** Went out of the bottles, as it was counted and in ml. */
  body("stock.poured", {
    ml: z.number().check(z.gt(0), z.lte(MOST_AMOUNT)),
    count: z.number().check(z.gt(0), z.lte(MOST_AMOUNT)),
    unit: z.enum(STOCK_UNITS),
  }),
  /** Nothing of it is left to serve. */
  body("stock.ended", { how: z.enum(STOCK_ENDS), reason: words }),
] as const;

/** What happened, before it is stamped with an id and a time. */
export const draftSchema = z.discriminatedUnion("type", DRAFTS);

/** The stamp that every event carries. */
export const stampSchema = z.object({
  id,
  runId: id,
  /** The phone that logged it. */
  device: id,
  /** Groups the events of one tap, so that one undo takes back all of them. */
  act: id,
  /** Wall clock, epoch ms. */
  at: moment,
  hlc: z.object({
    ms: z.number().check(z.int(), z.gte(0)),
    n: z.number().check(z.int(), z.gte(0)),
  }),
  /** Version of the event's shape. */
  v: z.literal(1),
});

/** An event of a run: stamped, immutable. */
export const eventSchema = z.intersection(stampSchema, draftSchema);

/** What happened, before it is stamped. */
export type Draft = Readonly<z.infer<typeof draftSchema>>;
/** The stamp of an event. */
export type Stamp = Readonly<z.infer<typeof stampSchema>>;
/** An event of a run. */
export type RunEvent = Stamp & Draft;
/** Unit of a reading. */
export type ReadingUnit = (typeof READING_UNITS)[number];
/** What else watches a wait. */
export type OtherWatch = (typeof WATCHERS)[number];
/** A vessel that is weighed with what is in it. */
export type Vessel = (typeof VESSELS)[number];
/** What a scale showed, g. */
export type Weighed = Readonly<z.infer<typeof weighedSchema>>;
/** What is poured out of bottles is counted in. */
export type StockUnit = (typeof STOCK_UNITS)[number];
/** How bottles come to their end. */
export type StockEnd = (typeof STOCK_ENDS)[number];
/** Bottles of one size. */
export type Bottles = Readonly<z.infer<typeof bottlesSchema>>;
