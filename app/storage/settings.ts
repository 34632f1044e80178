import * as z from "zod/mini";
import { MASS_STEPS, VOLUME_STEPS } from "../../core/quantity/rounding.ts";
import { VESSELS } from "../../core/run/event.ts";
import type { Database } from "./database.ts";
import { inOne } from "./in-one.ts";

const placedSchema = z.object({
  job: z.string(),
  step: z.string(),
  startAt: z.number(),
  endAt: z.number(),
});
const timeOfDay = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));

/** What the house has chosen. Each field has a default, so an older record still reads. */
export const settingsSchema = z.object({
  /** What the app speaks; `auto` as the phone does. */
  language: z._default(z.enum(["auto", "en", "es", "fr"]), "auto"),
  ounce: z._default(z.enum(["bar", "exact"]), "bar"),
  /** Which units amounts are shown in; `auto` as where the phone is. Older records mean ml. */
  volumes: z._default(z.enum(["auto", "ml", "oz"]), "ml"),
  /** Which unit temperatures are told in; older records mean degrees C. */
  degrees: z._default(z.enum(["auto", "C", "F"]), "C"),
  /** Whether a plan's amounts are exact or in steps of the house's jigger or scale. */
  rounding: z._default(z.enum(["exact", "jigger", "scale"]), "exact"),
  /** Step of the house's jigger or jug, ml. */
  jiggerStep: z._default(z.literal(VOLUME_STEPS), 5),
  /** Step of the house's scale, g. */
  scaleStep: z._default(z.literal(MASS_STEPS), 1),
  /** The largest vessel a batch can stand in, ml. */
  vessel: z._default(z.number().check(z.gt(0), z.lte(1_000_000)), 10_000),
  /** How many people work at once. */
  people: z._default(z.number().check(z.int(), z.gte(1), z.lte(20)), 1),
  filterStands: z._default(z.number().check(z.int(), z.gte(1), z.lte(50)), 2),
  /** Room for batches, litres. */
  fridge: z._default(z.number().check(z.gte(0), z.lte(100_000)), 60),
  freezer: z._default(z.number().check(z.gte(0), z.lte(100_000)), 20),
  /** From when to when somebody is in, each day; the same twice for always. */
  hours: z._default(z.object({ from: timeOfDay, to: timeOfDay }), { from: "09:00", to: "01:00" }),
  /** What the house's vessels last weighed empty, g. */
  tares: z._default(z.partialRecord(z.enum(VESSELS), z.number().check(z.gte(0), z.lte(1e7))), {}),
  /** The prep list as somebody last saw it, to say what moved since. */
  seenPrep: z._default(z.array(placedSchema).check(z.maxLength(1000)), []),
  /** By when each batch on it had to be ready then, epoch ms by id. */
  seenReady: z._default(z.record(z.string(), z.number()), {}),
  /** Written beside money; any sign, or none. */
  currency: z._default(z.string().check(z.maxLength(4)), "€"),
  theme: z._default(z.enum(["auto", "dark", "light"]), "auto"),
  /** Which hand works the phone: the small controls stand on its side. */
  hand: z._default(z.enum(["right", "left"]), "right"),
  /** Larger controls, for gloves and knuckles. */
  glove: z._default(z.boolean(), false),
  /** Whether one giant target a step is offered when the glass is wet, or always there, or never. */
  wetHands: z._default(z.enum(["offer", "always", "never"]), "offer"),
  /** When somebody last heard the sound check, epoch ms; 0 for never. */
  soundHeardAt: z._default(z.number(), 0),
  /** Whether the step is also said aloud when it rings. */
  speak: z._default(z.boolean(), false),
  /** Whether the browser was asked to keep what is stored. */
  askedToKeep: z._default(z.boolean(), false),
  /** What labels are printed on, by the paper's id; one that is not known counts as the first. */
  labelPaper: z._default(z.string().check(z.maxLength(40)), "roll-62x100"),
  /** How many of each label; 0 for one a bottle. */
  labelCopies: z._default(z.number().check(z.int(), z.gte(0), z.lte(100)), 0),
  /** Place of the first label on its sheet, from 1. */
  labelFrom: z._default(z.number().check(z.int(), z.gte(1), z.lte(100)), 1),
  /** When a backup of this phone was last shared or saved, epoch ms; 0 for never. */
  lastBackupAt: z._default(z.number().check(z.gte(0)), 0),
  /** How many entries all logs had in it. */
  eventsAtBackup: z._default(z.number().check(z.int(), z.gte(0)), 0),
  /** Whether the demo specs were put in; removing them must not bring them back. */
  demoOffered: z._default(z.boolean(), false),
});

/** What the house has chosen. */
export type Settings = Readonly<z.infer<typeof settingsSchema>>;

/**
 * Before anything was chosen. A new phone takes the units of its country; one that has stored its
 * settings before there was that choice goes on as it was, for somebody is used to it.
 */
export const DEFAULT_SETTINGS: Settings = settingsSchema.parse({
  volumes: "auto",
  degrees: "auto",
});

const SETTINGS = "settings";
const DEVICE = "device";

/** Reads the settings; a damaged record falls back to the defaults. */
export async function readSettings(db: Database): Promise<Settings> {
  const checked = settingsSchema.safeParse(
    (await db.get("settings", SETTINGS)) ?? DEFAULT_SETTINGS,
  );
  return checked.success ? checked.data : DEFAULT_SETTINGS;
}

/** Saves the settings, flushed to disk before it resolves. */
export async function writeSettings(db: Database, settings: Settings): Promise<void> {
  const tx = db.transaction("settings", "readwrite", { durability: "strict" });
  await inOne(tx, () => tx.store.put(settings, SETTINGS));
}

/** This phone's own id, made once and kept. */
export async function deviceId(db: Database, newId: () => string): Promise<string> {
  // Only the first start writes: a flush to disk would keep every other one waiting.
  const before = await db.get("settings", DEVICE);
  if (typeof before === "string" && before !== "") return before;
  const tx = db.transaction("settings", "readwrite", { durability: "strict" });
  const known = await tx.store.get(DEVICE);
  if (typeof known === "string" && known !== "") {
    await tx.done;
    return known;
  }
  const fresh = newId();
  await Promise.all([tx.store.put(fresh, DEVICE), tx.done]);
  return fresh;
}
