import { type Liquid, volumeOf } from "../liquid/liquid.ts";
import { mix, scaleLiquid } from "../liquid/mixing.ts";
import { accepted, type Result } from "../quantity/result.ts";
import type { Written } from "./batch-amounts.ts";
import { retentionOf } from "./curd-retention.ts";
import type { HouseRules } from "./house-rules.ts";
import type { Ingredient } from "./ingredient.ts";
import type { Spec } from "./spec.ts";
import { heldBackFor, type TopUpRefusal } from "./top-up.ts";
import { clearOf, throughFilter, type Wash } from "./wash.ts";
import { retentionFor } from "./wash-group.ts";

/** A batch at a trial size: what stands in the vessel, what comes through, what it ends as. */
export interface Trial {
  readonly mixed: Liquid;
  readonly wash?: Wash;
  readonly clear: Liquid;
  readonly clearMl: number;
  /** ml of held-back spirit poured after the wash. */
  readonly heldBackMl: number;
  readonly heldBack: Liquid;
  readonly final: Liquid;
}

/** What all filters of a wash keep together, ml. */
export const filtersKeep = (spec: Spec, house: HouseRules): number =>
  (spec.wash?.filters ?? 0) * house.perFilter;

/**
 * What comes through of a punch: all of it where nothing is washed.
 *
 * @param punch - as mixed
 * @param dairy - the milk it meets; nothing where the spec is not washed
 * @param milk - ml
 */
export function washedTrial(
  spec: Spec,
  house: HouseRules,
  punch: Liquid,
  dairy: Ingredient | undefined,
  milk: number,
): Pick<Trial, "mixed" | "wash" | "clear" | "clearMl"> {
  if (spec.wash === undefined || dairy?.dairy === undefined) {
    return { mixed: punch, clear: punch, clearMl: volumeOf(punch) };
  }
  const wash: Wash = { punch, dairy: dairy.dairy, milk };
  const clearMl = throughFilter(
    wash,
    retentionOf(retentionFor(house, spec, wash.dairy), wash.dairy).mean,
    filtersKeep(spec, house),
  );
  return { mixed: punch, wash, clear: clearOf(wash, clearMl), clearMl };
}

/**
 * A spec's written amounts times a scale, taken through the wash and the top-up.
 *
 * @param scale - batch amounts divided by the amounts as written
 */
export function trialAt(
  spec: Spec,
  written: Written,
  house: HouseRules,
  scale: number,
): Result<Trial, TopUpRefusal> {
  const mixed = scaleLiquid(written.before, scale);
  const washed = washedTrial(spec, house, mixed, written.dairy, written.milk * scale);
  const whole = scaleLiquid(written.after, scale);
  const wholeMl = written.afterMl * scale;
  // A spec that is not washed holds nothing back, whatever its rule said while it was.
  const needed =
    washed.wash === undefined ? accepted(0) : heldBackFor(spec.topUp, washed.clear, whole, wholeMl);
  if (!needed.ok) return needed;
  const heldBackMl = needed.value;
  // Held-back sugar or acid alone has no ml: it goes in as it is.
  const heldBack = wholeMl > 0 ? scaleLiquid(whole, heldBackMl / wholeMl) : whole;
  return accepted({ ...washed, heldBackMl, heldBack, final: mix([washed.clear, heldBack]) });
}

/** Share of what is held back that a trial pours, 0 or more: above 1 where the target asks for more. */
export const pouredShare = (written: Written, trial: Trial, scale: number): number =>
  written.afterMl > 0 ? trial.heldBackMl / (written.afterMl * scale) : 1;
