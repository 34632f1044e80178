import { strengthOf, volumeOf } from "../liquid/liquid.ts";
import { portion } from "../liquid/mixing.ts";
import { actualFinal } from "../run/actual.ts";
import type { Run } from "../run/run.ts";
import type { Allergen } from "../spec/allergen-table.ts";
import { allergensOf } from "../spec/declared.ts";
import { servePour } from "../spec/serve.ts";
import type { ServeMethod } from "../spec/spec.ts";

/** How one drink of a batch is served. Volumes in ml. */
export interface ServeCard {
  readonly name: string;
  readonly batch: string;
  readonly pour: number;
  readonly method: ServeMethod;
  /** Water that chilling adds to one pour. */
  readonly water: number;
  readonly inGlass: number;
  /** v/v in the glass with all its ice melted, not rounded. */
  readonly strength: number;
  /** Share of what is in the glass that is ice. */
  readonly ice: number;
  readonly glass: string;
  readonly garnish: string;
  readonly allergens: readonly Allergen[];
}

/**
 * The card that whoever is on shift serves by.
 *
 * @param run - bottled or not yet
 * @returns water and strength in the glass for what is really in the bottle; nothing where that
 *   holds no water, as when a yield of 0 was measured
 * @source `servePour`
 * @limits as `servePour`; the garnish is free text: an allergen it brings is not in the list
 */
export function serveCardOf(run: Run): ServeCard | undefined {
  const { spec, ingredients } = run.plan;
  const { pour, method, glass, garnish } = spec.serve;
  const bottle = actualFinal(run);
  if (!(bottle.water > 0)) return undefined;
  const served = servePour(portion(bottle, pour), spec.serve);
  return {
    name: spec.name,
    batch: run.batch,
    pour,
    method,
    water: served.waterAdded,
    inGlass: volumeOf(served.liquid),
    strength: strengthOf(served.liquid),
    ice: served.ice,
    glass,
    garnish,
    allergens: allergensOf(ingredients),
  };
}
