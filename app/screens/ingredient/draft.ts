import * as z from "zod/mini";
import { DAIRY_KINDS } from "../../../core/acid/dairy-kind-table.ts";
import { ACID_NAMES, type AcidName } from "../../../core/quantity/acid-name.ts";
import { ALLERGENS, type Allergen } from "../../../core/spec/allergen-table.ts";
import { INGREDIENT_KINDS, type Ingredient } from "../../../core/spec/ingredient.ts";
import { draftBook } from "../../drafts.ts";
import { typed } from "../../words/format.ts";
import { asWritten } from "../../words/written.ts";

export type Kind = Ingredient["kind"];
export type Dairy = NonNullable<Ingredient["dairy"]>;

/** An ingredient as the form holds it: every figure as typed. */
export interface IngredientDraft {
  readonly name: string;
  readonly kind: Kind;
  readonly dairy: Dairy;
  readonly strength: string;
  readonly sweetAs: Ingredient["sweetness"]["as"];
  readonly sweet: string;
  readonly acids: Readonly<Record<AcidName, string>>;
  readonly pH: string;
  readonly density: string;
  readonly allergens: readonly Allergen[];
  /** All but the one that follows from the strength. */
  readonly cautions: readonly string[];
  readonly absorbs: string;
  readonly waterShare: string;
  readonly madeFrom: string;
  readonly paid: string;
  readonly pack: string;
}

/** The caution that follows from the strength alone. */
export const OVERPROOF = "overproof";

const NO_ACIDS: IngredientDraft["acids"] = {
  citric: "",
  malic: "",
  tartaric: "",
  lactic: "",
  acetic: "",
  phosphoric: "",
};

/** A new ingredient. */
export const blankOf = (name: string): IngredientDraft => ({
  name,
  kind: "spirit",
  dairy: "whole",
  strength: "",
  sweetAs: "g/L",
  sweet: "",
  acids: NO_ACIDS,
  pH: "",
  density: "",
  allergens: [],
  cautions: [],
  absorbs: "",
  waterShare: "",
  madeFrom: "",
  paid: "",
  pack: "",
});

/** 0 is an empty field: nobody types it. */
const orEmpty = (value: number | undefined): string => (value ? typed(value, 6) : "");

/** The form of an ingredient as it stands in the cupboard. */
export function draftOf(one: Ingredient): IngredientDraft {
  const { price } = one;
  const acids = ACID_NAMES.map((name) => [name, orEmpty(one.acids[name])] as const);
  return {
    ...blankOf(one.name),
    kind: one.kind,
    dairy: one.dairy ?? "whole",
    strength: orEmpty(one.strength * 100),
    sweetAs: one.sweetness.as,
    sweet: orEmpty(one.sweetness.value),
    acids: { ...NO_ACIDS, ...Object.fromEntries(acids) },
    density: orEmpty(one.density),
    allergens: one.allergens,
    cautions: one.cautions.filter((caution) => caution !== OVERPROOF),
    absorbs: orEmpty(one.absorbs),
    waterShare: orEmpty(one.waterShare),
    madeFrom: one.madeFrom ?? "",
    ...(price && {
      paid: typed(price.paid, 2),
      pack: asWritten({ value: price.pack, unit: one.kind === "dry" ? "g" : "ml" }),
    }),
  };
}

/** What a kind can have: fields of the form that make sense for it. */
export interface Has {
  readonly strength: boolean;
  readonly sweet: boolean;
  readonly acids: boolean;
  readonly pH: boolean;
  readonly density: boolean;
}

const NONE: Has = { strength: false, sweet: false, acids: false, pH: false, density: false };
const SOUR: Has = { strength: true, sweet: true, acids: true, pH: true, density: true };
const SPIRITED: Has = { ...SOUR, acids: false, pH: false };

/** Which fields a kind of ingredient has. */
export const HAS: Readonly<Record<Kind, Has>> = {
  spirit: SPIRITED,
  bitters: SPIRITED,
  liqueur: SOUR,
  wine: SOUR,
  juice: SOUR,
  syrup: SOUR,
  tea: SOUR,
  dairy: NONE,
  water: NONE,
  dry: { ...NONE, sweet: true, acids: true },
};

const text = z.string();

const draftSchema = z.object({
  name: text,
  kind: z.enum(INGREDIENT_KINDS),
  dairy: z.enum(DAIRY_KINDS),
  strength: text,
  sweetAs: z.enum(["brix", "g/L"]),
  sweet: text,
  acids: z.record(z.enum(ACID_NAMES), text),
  pH: text,
  density: text,
  allergens: z.array(z.enum(ALLERGENS)),
  cautions: z.array(text),
  absorbs: text,
  waterShare: text,
  madeFrom: text,
  paid: text,
  pack: text,
});

export const { keptDraft, keepDraft, dropDraft } = draftBook<IngredientDraft>(
  "ingredient",
  (kept) => draftSchema.safeParse(kept),
);
