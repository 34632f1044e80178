import * as z from "zod/mini";
import { DAIRY_KINDS } from "../acid/dairy-kind-table.ts";
import { ALLERGENS } from "./allergen-table.ts";

/** Shelves of the cupboard. */
export const INGREDIENT_KINDS = [
  "spirit",
  "liqueur",
  "wine",
  "juice",
  "syrup",
  "tea",
  "dairy",
  "bitters",
  "water",
  "dry",
] as const;

const perLitre = z.number().check(z.gte(0), z.lte(2000));

/** How sweet it is, kept as it was typed so that it reads back the same. */
export const sweetnessSchema = z.discriminatedUnion("as", [
  z.object({ as: z.literal("brix"), value: z.number().check(z.gte(0), z.lte(85)) }),
  z.object({ as: z.literal("g/L"), value: z.number().check(z.gte(0), z.lte(1200)) }),
]);

/** Grams of each acid per litre. */
export const acidsSchema = z.object({
  citric: z.optional(perLitre),
  malic: z.optional(perLitre),
  tartaric: z.optional(perLitre),
  lactic: z.optional(perLitre),
  acetic: z.optional(perLitre),
  phosphoric: z.optional(perLitre),
});

/** An ingredient of the cupboard, with what the core needs to mix it by mass. */
export const ingredientSchema = z.object({
  id: z.string().check(z.minLength(1), z.maxLength(80)),
  name: z.string().check(z.minLength(1), z.maxLength(80)),
  kind: z.enum(INGREDIENT_KINDS),
  /** v/v at 20 degrees C, 0 to 1. */
  strength: z.number().check(z.gte(0), z.lte(1)),
  sweetness: sweetnessSchema,
  /** g/L; for dry goods g per kg. */
  acids: acidsSchema,
  /** Net strong cation, mol/L; 0 where unknown. For dry goods mol per kg. */
  cation: z.number().check(z.gte(0), z.lte(5)),
  /** Other dissolved solids (salt, milk sugar), g/L; for dry goods g per kg. */
  solids: z.optional(perLitre),
  /** kg/m3 at 20 degrees C where it was measured; otherwise computed from the rest. */
  density: z.optional(z.number().check(z.gte(600), z.lte(2200))),
  dairy: z.optional(z.enum(DAIRY_KINDS)),
  /** Dry goods that are strained out: liquid they keep, ml per g. */
  absorbs: z.optional(z.number().check(z.gte(0), z.lte(20))),
  /** Dry goods that are wet (fruit): water they give to the drink, g per g. */
  waterShare: z.optional(z.number().check(z.gte(0), z.lte(1))),
  /** The house's own spec that it is made from: its allergens follow. */
  madeFrom: z.optional(z.string().check(z.minLength(1), z.maxLength(80))),
  allergens: z.array(z.enum(ALLERGENS)),
  /** Keys of cautions that belong to it wherever it is used. */
  cautions: z.array(z.string().check(z.maxLength(40))),
  /** What the bar pays, for a pack of so many ml (or g for dry goods). */
  price: z.optional(
    z.object({ paid: z.number().check(z.gte(0)), pack: z.number().check(z.gt(0)) }),
  ),
});

/** An ingredient of the cupboard. */
export type Ingredient = Readonly<z.infer<typeof ingredientSchema>>;
