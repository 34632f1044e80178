import { freezingPoint } from "../liquid/freezing.ts";
import { massOf, strengthOf } from "../liquid/liquid.ts";
import { measured } from "../quantity/amount.ts";
import { type Figure, figure, given } from "../quantity/figure.ts";
import type { Plan, PlanLine } from "./plan.ts";
import { RULES } from "./rules-table.ts";
import { balanceOf, milkFigure, yieldFigure } from "./stages.ts";

/** What is measured out of one line, each with its derivation. */
export interface AmountFigures {
  readonly ml: Figure;
  readonly g: Figure;
}

type Part = PlanLine["before"];

const densityFigure = ({ ml, g }: Part): Figure =>
  figure("density", ml > 0 ? (1000 * g) / ml : 0, "kg/m3", RULES.density, []);

/** How the batch came to be so much larger than the spec. */
const scaleFigure = (plan: Plan): Figure => figure("scale", plan.scale, "ratio", RULES.scale, []);

/**
 * What one line of a plan measures out before the wash or after it: by proportion in the unit it is
 * written in, by its density in the other.
 *
 * @param plan - exact
 * @param line - one of its lines
 * @throws RangeError when the plan's own spec does not have the line
 */
export function amountFigures(plan: Plan, line: PlanLine, part: "before" | "after"): AmountFigures {
  const own = plan.spec.lines.find(({ id }) => id === line.lineId);
  if (own === undefined) throw new RangeError(`a plan's spec must have its line ${line.lineId}`);
  const written = measured(own.amount, plan.ounce);
  const { ml, g } = line[part];
  const name = "amount";
  const scale = scaleFigure(plan);
  const density = densityFigure(line[part]);
  const shareOf = (amount: number, whole: number) => given("share", amount / whole, "share");
  if (written.kind === "mass") {
    const share = shareOf(g, written.g * plan.scale);
    const from = [given("written", written.g, "g"), scale, share];
    const weight = figure(name, g, "g", RULES.amount, from);
    return { g: weight, ml: figure(name, ml, "ml", RULES.measure, [weight, density]) };
  }
  const share = shareOf(ml, written.ml * plan.scale);
  const from = [given("written", written.ml, "ml"), scale, share];
  const volume = figure(name, ml, "ml", RULES.amount, from);
  return { ml: volume, g: figure(name, g, "g", RULES.weight, [volume, density]) };
}

/** The milk of a plan in both units; nothing where nothing is washed. */
export function milkFigures(plan: Plan): AmountFigures | undefined {
  const ml = milkFigure(plan);
  if (ml === undefined || plan.milk === undefined) return undefined;
  const g = figure("milk", plan.milk.g, "g", RULES.weight, [ml, densityFigure(plan.milk)]);
  return { ml, g };
}

/**
 * An amount rounded to a tool, with the exact one it came from.
 *
 * @param exact - as planned
 * @param part - as poured
 * @param by - which of the two was rounded; the other follows by density
 * @param step - of the tool, ml or g
 */
export function pouredFigures(
  exact: AmountFigures,
  part: Part,
  by: "ml" | "g",
  step: number,
): AmountFigures {
  const from = [exact[by], given("step", step, by)];
  const rounded = figure("amount-poured", part[by], by, RULES.rounded, from);
  const other = [rounded, densityFigure(part)];
  return by === "ml"
    ? { ml: rounded, g: figure("amount-poured", part.g, "g", RULES.weight, other) }
    : { g: rounded, ml: figure("amount-poured", part.ml, "ml", RULES.measure, other) };
}

/** The held-back spirit for the planned yield; nothing where nothing is held back. */
export function topUpFigure(plan: Plan): Figure | undefined {
  const { washed, heldBack, heldBackMl, spec } = plan;
  const through = yieldFigure(plan);
  if (washed === undefined || through === undefined || !(heldBackMl > 0)) return undefined;
  if (spec.topUp.rule !== "strength") {
    const parts = plan.lines
      .filter(({ after }) => after.ml > 0)
      .map(({ name, after }) => given(name, after.ml, "ml"));
    return figure("top-up", heldBackMl, "ml", RULES.heldBack, parts);
  }
  const from = [
    through,
    given("washed-strength", strengthOf(washed), "abv"),
    given("spirit-strength", strengthOf(heldBack), "abv"),
    given("target", spec.topUp.target, "abv"),
  ];
  return figure("top-up", heldBackMl, "ml", RULES.topUp, from);
}

/** How many drinks a batch pours. */
export function servesFigure(plan: Plan): Figure {
  const bottled = balanceOf("topped-up", plan.final).volume;
  const pour = given("serve-pour", plan.spec.serve.pour, "ml");
  return figure("serves", plan.finalMl / pour.value, "count", RULES.serves, [bottled, pour]);
}

/** What stands in the vessel when punch and milk meet, or everything where nothing is washed. */
export function fillFigure(plan: Plan): Figure {
  const punch = balanceOf("mixed", plan.mixed).volume;
  const milk = milkFigure(plan);
  const all = punch.value + (milk?.value ?? 0);
  return figure("fill", all, "ml", RULES.fill, milk === undefined ? [punch] : [punch, milk]);
}

/** What the ice, or whoever thins it, does to one drink. */
export interface GlassFigures {
  readonly water: Figure;
  readonly temperature: Figure;
  /** Share of it that is ice; nothing where none is. */
  readonly ice?: Figure;
}

/** Share of ice below which there is none to speak of. */
const NO_ICE = 0.005;

/** One drink of a plan in the glass, with its derivation. */
export function glassFigures(plan: Plan): GlassFigures {
  const { pour, dilution } = plan.spec.serve;
  const poured = given("serve-pour", pour, "ml");
  const bottled = given("bottled-strength", strengthOf(plan.final), "abv");
  const own = dilution === undefined ? [] : [given("own-dilution", dilution, "share")];
  const rule = dilution === undefined ? RULES.water : RULES.ownWater;
  const water = figure("water", plan.waterAdded, "ml", rule, [poured, bottled, ...own]);
  const at = RULES.glassTemperature;
  const temperature = figure("glass-temperature", plan.servedAt, "degC", at, [poured, water]);
  if (plan.servedIce < NO_ICE) return { water, temperature };
  const ice = figure("ice", plan.servedIce, "share", RULES.ice, [poured, water, temperature]);
  return { water, temperature, ice };
}

/**
 * Where the bottle begins to freeze.
 *
 * @returns degrees C; nothing where there is no water to freeze
 * @source as `freezingPoint`
 */
export function freezingFigure(plan: Plan): Figure | undefined {
  const { final } = plan;
  if (!(final.water > 0)) return undefined;
  const perWater = (what: string, g: number) =>
    figure(what, (1000 * g) / final.water, "g", RULES.perKgWater, []);
  const rest = massOf(final) - final.ethanol - final.water - final.sugar;
  return figure("freezing", freezingPoint(final), "degC", RULES.freezing, [
    perWater("ethanol-per-water", final.ethanol),
    perWater("sugar-per-water", final.sugar),
    perWater("rest-per-water", rest),
  ]);
}
