import * as z from "zod/mini";
import {
  MASS_MEASURES,
  type MassUnit,
  VOLUME_MEASURES,
  type VolumeUnit,
} from "../quantity/measures-table.ts";
import { DAY, SECOND } from "../quantity/time-units-table.ts";

const VOLUME_UNITS = [...Object.keys(VOLUME_MEASURES), "oz"];
const UNITS = new Set([...VOLUME_UNITS, ...Object.keys(MASS_MEASURES)]);

const id = z.string().check(z.minLength(1), z.maxLength(80));
const share = z.number().check(z.gte(0), z.lte(1));
const litres = z.number().check(z.gt(0), z.lte(1_000_000));

const unitSchema = z.custom<VolumeUnit | MassUnit>(
  (unit) => typeof unit === "string" && UNITS.has(unit),
);

const amountSchema = z.object({
  value: z.number().check(z.gt(0), z.lte(1_000_000)),
  unit: unitSchema,
});

/** One ingredient of a spec, as written, with the share kept back until after the wash. */
export const specLineSchema = z.object({
  id,
  ingredientId: id,
  amount: amountSchema,
  heldBack: share,
});

/** Shapes of a filter's vessel that the drip forecast tells apart. */
export const FILTER_SHAPES = ["topped-up", "straight", "cone", "unknown"] as const;

/** How the spec is washed. */
export const washSchema = z.object({
  dairyId: id,
  /** Litres of milk per litre of the punch that is poured into it. */
  ratio: z.number().check(z.gte(0.02), z.lte(2)),
  order: z.enum(["punch-into-milk", "milk-into-punch"]),
  filters: z.number().check(z.int(), z.gte(1), z.lte(50)),
  /** How the filter's vessel is shaped, or that it is kept topped up: it decides how the drip slows. */
  filterShape: z.optional(z.enum(FILTER_SHAPES)),
});

/** How the held-back spirit follows the measured yield. */
export const topUpSchema = z.discriminatedUnion("rule", [
  z.object({ rule: z.literal("proportion") }),
  z.object({ rule: z.literal("strength"), target: z.number().check(z.gt(0), z.lt(1)) }),
  z.object({ rule: z.literal("fixed") }),
]);

/** Ways a serve is chilled and thinned. */
export const SERVE_METHODS = ["stirred", "shaken", "over-ice", "blended", "straight"] as const;

/** One drink. */
export const serveSchema = z.object({
  /** Poured from the bottle, ml. */
  pour: z.number().check(z.gt(0), z.lte(2000)),
  method: z.enum(SERVE_METHODS),
  /** Water added per volume poured, where the house measured its own. */
  dilution: z.optional(z.number().check(z.gte(0), z.lte(3))),
  glass: z.string().check(z.maxLength(60)),
  garnish: z.string().check(z.maxLength(80)),
  /** What the menu asks for it, in the house's money. */
  price: z.optional(z.number().check(z.gt(0), z.lte(100_000))),
});

/** A drink's recipe: ingredients with amounts, how it is prepared, how it is served. */
export const specSchema = z.object({
  id,
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  version: z.number().check(z.int(), z.gte(1)),
  lines: z.array(specLineSchema),
  wash: z.optional(washSchema),
  topUp: topUpSchema,
  /** How it is made, with times of its own (ms, by step); washed specs are dairy washes without it. */
  procedure: z.optional(
    z.object({
      id,
      times: z.record(id, z.number().check(z.int(), z.gte(SECOND), z.lte(90 * DAY))),
    }),
  ),
  serve: serveSchema,
  /** Days it may be kept by the house's rule; the day it is made counts as the first. */
  keepDays: z.number().check(z.int(), z.gte(1), z.lte(365)),
  notes: z.string().check(z.maxLength(2000)),
  demo: z.optional(z.boolean()),
});

/** A drink's recipe. */
export type Spec = Readonly<z.infer<typeof specSchema>>;
/** One ingredient of a spec. */
export type SpecLine = Readonly<z.infer<typeof specLineSchema>>;
/** How the held-back spirit follows the measured yield. */
export type TopUpRule = Readonly<z.infer<typeof topUpSchema>>;
/** The shape of a filter's vessel. */
export type FilterShape = (typeof FILTER_SHAPES)[number];
/** How a serve is chilled and thinned. */
export type ServeMethod = (typeof SERVE_METHODS)[number];

/** How big a batch is to be. */
export const batchSizeSchema = z.discriminatedUnion("by", [
  z.object({ by: z.literal("serves"), serves: z.number().check(z.gt(0), z.lte(100_000)) }),
  z.object({
    by: z.literal("bottles"),
    bottles: z.number().check(z.gt(0), z.lte(10_000)),
    size: z.number().check(z.gt(0), z.lte(100_000)),
  }),
  z.object({ by: z.literal("volume"), volume: litres }),
  /** The wash vessel, ml: punch and milk fill it. */
  z.object({ by: z.literal("vessel"), vessel: litres }),
  /** All that there is of one ingredient. */
  z.object({ by: z.literal("stock"), ingredientId: id, amount: amountSchema }),
]);

/** How big a batch is to be: by what comes out, by the vessel it fills, or by what there is. */
export type BatchSize = Readonly<z.infer<typeof batchSizeSchema>>;
