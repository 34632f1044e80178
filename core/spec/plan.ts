import * as z from "zod/mini";
import { DAIRY_KINDS } from "../acid/dairy-kind-table.ts";
import { ingredientSchema } from "./ingredient.ts";
import { batchSizeSchema, specSchema } from "./spec.ts";

const amount = z.number().check(z.gte(0));
const optionalAmount = z.optional(amount);
const both = z.object({ ml: amount, g: amount });
const words = z.string().check(z.maxLength(80));

/** The masses of a liquid, g (cation in mol), as kept in a frozen plan. */
const liquidSchema = z.object({
  ethanol: amount,
  water: amount,
  sugar: amount,
  acids: z.object({
    citric: optionalAmount,
    malic: optionalAmount,
    tartaric: optionalAmount,
    lactic: optionalAmount,
    acetic: optionalAmount,
    phosphoric: optionalAmount,
  }),
  cation: amount,
  solids: amount,
});

/** One ingredient of a batch: what is poured before the wash, and what is kept back until after it. */
export const planLineSchema = z.object({
  lineId: words,
  ingredientId: words,
  name: words,
  /** Weighed rather than measured: sugar, acid, leaves. */
  weighed: z.boolean(),
  before: both,
  after: both,
});

/** The dairy of a batch. */
export const planMilkSchema = z.object({
  name: words,
  dairy: z.enum(DAIRY_KINDS),
  ml: amount,
  g: amount,
});

/** What should come through the filter, ml. */
export const planYieldSchema = z.object({
  /** Punch and milk together, ml, as measured before they meet. */
  poured: amount,
  expected: amount,
  low: amount,
  high: amount,
  /** Where the expectation comes from. */
  from: z.enum(["common-practice", "own-batches"]),
  batches: z.number(),
  /** What it was worked out with: litres the curd keeps per litre of milk, ml each filter keeps. */
  curdKeeps: z.optional(amount),
  filterKeeps: z.optional(amount),
  /** How long the slow drip takes against the usual, learnt from the house's own batches. */
  drip: z.optional(z.object({ times: amount, low: amount, high: amount, batches: z.number() })),
});

/** The computed amounts and predictions of a batch before it starts; frozen into a run. */
export const planSchema = z.object({
  v: z.literal(1),
  spec: specSchema,
  ingredients: z.array(ingredientSchema),
  size: batchSizeSchema,
  ounce: z.enum(["bar", "exact"]),
  /** Batch amounts divided by the amounts as written. */
  scale: amount,
  lines: z.array(planLineSchema),
  milk: z.optional(planMilkSchema),
  yield: z.optional(planYieldSchema),
  /** The punch as mixed, before milk. */
  mixed: liquidSchema,
  /** What comes through the filter, for the expected yield. */
  washed: z.optional(liquidSchema),
  /** All the held-back spirit. */
  heldBack: liquidSchema,
  heldBackMl: amount,
  /** In the bottle. */
  final: liquidSchema,
  finalMl: amount,
  /** One drink as it stands in the glass, its ice counted as water. */
  served: liquidSchema,
  servedMl: amount,
  /** degrees C */
  servedAt: z.number(),
  /** Share of its mass that is ice. */
  servedIce: amount,
  /** ml per drink. */
  waterAdded: amount,
});

/** The computed amounts and predictions of a batch before it starts. */
export type Plan = Readonly<z.infer<typeof planSchema>>;
/** One ingredient of a planned batch. */
export type PlanLine = Readonly<z.infer<typeof planLineSchema>>;
