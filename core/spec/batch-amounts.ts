import { type Liquid, NOTHING, volumeOf } from "../liquid/liquid.ts";
import { mix, scaleLiquid } from "../liquid/mixing.ts";
import { measured } from "../quantity/amount.ts";
import type { Ounce } from "../quantity/ounce.ts";
import { accepted, type Result, refused } from "../quantity/result.ts";
import { type StrainRefusal, strained } from "./absorption.ts";
import type { Ingredient } from "./ingredient.ts";
import { type IngredientRefusal, type Portion, portionOf } from "./ingredient-liquid.ts";
import type { Spec, SpecLine } from "./spec.ts";

/** Where ingredients are looked up. */
export type Cupboard = ReadonlyMap<string, Ingredient>;

/** One line of a spec with what it is made of, for the amounts as written. */
export interface LinePortion {
  readonly line: SpecLine;
  readonly ingredient: Ingredient;
  readonly portion: Portion;
}

/** A spec's amounts as written: nothing scaled yet. */
export interface Written {
  readonly lines: readonly LinePortion[];
  /** What is poured before the wash, strained of its botanicals. */
  readonly before: Liquid;
  /** What is kept back until after it, strained of its own. */
  readonly after: Liquid;
  /** ml of what is kept back: as measured out, less what its botanicals keep. */
  readonly afterMl: number;
  readonly dairy?: Ingredient;
  /** ml of milk for the punch as written. */
  readonly milk: number;
}

/** Why a spec's amounts cannot be worked out. */
export type WrittenRefusal =
  | IngredientRefusal
  | StrainRefusal
  | "spec-without-lines"
  | "spec-ingredient-missing"
  | "wash-dairy-missing"
  | "wash-dairy-not-dairy"
  | "nothing-to-wash";

function linePortion(
  line: SpecLine,
  cupboard: Cupboard,
  ounce: Ounce,
): Result<LinePortion, WrittenRefusal> {
  const ingredient = cupboard.get(line.ingredientId);
  if (ingredient === undefined) {
    return refused("spec-ingredient-missing", { id: line.ingredientId });
  }
  const portion = portionOf(ingredient, measured(line.amount, ounce));
  return portion.ok ? accepted({ line, ingredient, portion: portion.value }) : portion;
}

function milkFor(
  spec: Spec,
  cupboard: Cupboard,
  before: Liquid,
): Result<{ dairy?: Ingredient; milk: number }, WrittenRefusal> {
  if (spec.wash === undefined) return accepted({ milk: 0 });
  const dairy = cupboard.get(spec.wash.dairyId);
  if (dairy === undefined) return refused("wash-dairy-missing", { id: spec.wash.dairyId });
  // A cream liqueur is no milk to wash with: its spirit would be lost to the balance.
  if (dairy.dairy === undefined || dairy.strength > 0) {
    return refused("wash-dairy-not-dairy", { name: dairy.name });
  }
  const punch = volumeOf(before);
  return punch > 0
    ? accepted({ dairy, milk: spec.wash.ratio * punch })
    : refused("nothing-to-wash");
}

/** Something poured or weighed into a vessel. */
export interface Poured extends Portion {
  readonly ingredient: Ingredient;
}

/**
 * What stands in a vessel once its botanicals are strained out of it.
 *
 * @param parts - all that went in
 * @returns the liquid, and its ml as measured out; or a refusal where the botanicals keep all of it
 * @source as `strained`
 */
export function pouredTogether(
  parts: readonly Poured[],
): Result<{ readonly liquid: Liquid; readonly ml: number }, StrainRefusal> {
  const sum = (of: (part: Poured) => number): number =>
    parts.reduce((total, part) => total + of(part), 0);
  const kept = sum(({ ingredient: { kind, absorbs = 0 }, g }) =>
    kind === "dry" ? g * absorbs : 0,
  );
  const liquid = strained(mix([NOTHING, ...parts.map((part) => part.liquid)]), kept);
  if (!liquid.ok) return liquid;
  return accepted({ liquid: liquid.value, ml: Math.max(0, sum((part) => part.ml) - kept) });
}

/** A share of every line. */
const sharesOf = (
  lines: readonly LinePortion[],
  share: (line: SpecLine) => number,
): readonly Poured[] =>
  lines.map(({ line, ingredient, portion: { liquid, ml, g } }) => {
    const part = share(line);
    return { ingredient, liquid: scaleLiquid(liquid, part), ml: ml * part, g: g * part };
  });

/**
 * Works out what a spec's lines are made of, for the amounts as written.
 *
 * @param spec - its lines may carry a share that is held back until after the wash
 * @param cupboard - where its ingredients are looked up
 * @param ounce - which ounce the house pours
 * @returns what is poured before the wash and after it, and the milk; or the first thing that is wrong
 * @source mass balance; milk by its ratio to the volume of the punch
 */
export function writtenAmounts(
  spec: Spec,
  cupboard: Cupboard,
  ounce: Ounce,
): Result<Written, WrittenRefusal> {
  if (spec.lines.length === 0) return refused("spec-without-lines");
  const lines: LinePortion[] = [];
  for (const line of spec.lines) {
    const found = linePortion(line, cupboard, ounce);
    if (!found.ok) return found;
    lines.push(found.value);
  }
  const held = (line: SpecLine): number => (spec.wash === undefined ? 0 : line.heldBack);
  const first = pouredTogether(sharesOf(lines, (line) => 1 - held(line)));
  if (!first.ok) return first;
  const last = pouredTogether(sharesOf(lines, held));
  if (!last.ok) return last;
  const milk = milkFor(spec, cupboard, first.value.liquid);
  if (!milk.ok) return milk;
  return accepted({
    lines,
    before: first.value.liquid,
    after: last.value.liquid,
    afterMl: last.value.ml,
    ...milk.value,
  });
}
