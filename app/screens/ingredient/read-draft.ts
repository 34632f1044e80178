import { cationToReach } from "../../../core/acid/juice.ts";
import { DENSITY_BELIEVED } from "../../../core/liquid/compose.ts";
import { ACID_NAMES, type AcidMasses } from "../../../core/quantity/acid-name.ts";
import { measured } from "../../../core/quantity/amount.ts";
import { OVERPROOF_FROM } from "../../../core/spec/caution-table.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import { portionOf } from "../../../core/spec/ingredient-liquid.ts";
import { typedNumber } from "../../parts/typed-number.ts";
import { decimals, typed } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { amountIn } from "../../words/typed-in.ts";
import { HAS, type IngredientDraft, OVERPROOF } from "./draft.ts";

/** A form read: the ingredient where nothing is wrong with it, a sentence for each field that is. */
export interface ReadDraft {
  readonly ingredient?: Ingredient;
  readonly faults: ReadonlyMap<string, string>;
  /** kg/m3, as worked out from the other figures. */
  readonly density?: number;
}

const words = sayLater.ingredient;

const UNITS = {
  strength: ["%", "% abv", "abv", "% vol"],
  brix: ["°", "°bx", "°brix", "bx", "brix"],
  perLitre: ["g", "g/l", "g/kg"],
  absorbs: ["ml/g"],
  density: ["kg/m3", "kg/m³", "g/l"],
};

/** An empty field counts as none of it. */
function figure(text: string, high: number, units: readonly string[]): number | undefined {
  return text.trim() === "" ? 0 : typedNumber(text, { low: 0, high, units });
}

type Note = (key: string, fault: string) => void;

function readSweetness(draft: IngredientDraft, note: Note): Ingredient["sweetness"] {
  const { sweet, kind } = draft;
  if (!HAS[kind].sweet) return { as: "g/L", value: 0 };
  const as = kind === "dry" ? "g/L" : draft.sweetAs;
  if (as === "brix") {
    const value = figure(sweet, 85, UNITS.brix);
    if (value === undefined) note("sweet", words.brixFault);
    return { as, value: value ?? 0 };
  }
  const most = kind === "dry" ? 1000 : 1200;
  const value = figure(sweet, most, UNITS.perLitre);
  if (value === undefined) note("sweet", words.sugarFault(typed(most)));
  return { as, value: value ?? 0 };
}

function readAcids(draft: IngredientDraft, note: Note): AcidMasses {
  const { kind } = draft;
  if (!HAS[kind].acids) return {};
  const most = kind === "dry" ? 1000 : 500;
  const read = ACID_NAMES.flatMap((name) => {
    const value = figure(draft.acids[name], most, UNITS.perLitre);
    if (value === undefined) note(`acid:${name}`, words.acidFault(typed(most)));
    return value ? [[name, value] as const] : [];
  });
  return Object.fromEntries(read);
}

/** The cation that holds the acids at a measured pH; without one it stays as it was. */
function readCation(draft: IngredientDraft, acids: AcidMasses, was: number, note: Note): number {
  if (!HAS[draft.kind].pH) return 0;
  if (draft.pH.trim() === "") return was;
  const pH = typedNumber(draft.pH.replace(/^ph\s*/iu, ""), { low: 1, high: 7.5 });
  const reached = pH === undefined ? undefined : cationToReach(acids, pH);
  if (reached?.ok) return Math.min(5, reached.value);
  const low = reached?.refusal === "ph-below-its-acids" ? Number(reached.about.low) : undefined;
  note("pH", low === undefined ? words.pHFault : words.pHBelow(decimals(low, 1)));
  return was;
}

function readPrice(draft: IngredientDraft, note: Note): Pick<Ingredient, "price"> {
  if (draft.paid.trim() === "" && draft.pack.trim() === "") return {};
  const paid = typedNumber(draft.paid, { low: 0, high: 1_000_000 });
  const pack = amountIn(draft.pack);
  const size = pack.ok && pack.value.rest === "" ? measured(pack.value, "exact") : undefined;
  const dry = draft.kind === "dry";
  const fits = size !== undefined && (size.kind === "mass") === dry;
  if (paid === undefined) note("paid", words.paidFault);
  if (!fits) note("pack", dry ? words.packFaultDry : words.packFault);
  if (paid === undefined || !fits) return {};
  return { price: { paid, pack: size.kind === "mass" ? size.g : size.ml } };
}

/** Checks that the figures can be one litre or kilogram together, and that a measured density fits. */
function readDensity(
  draft: IngredientDraft,
  bare: Ingredient,
  note: Note,
): { readonly computed?: number; readonly density?: number } {
  const dry = bare.kind === "dry";
  const litre = portionOf(bare, dry ? { kind: "mass", g: 1000 } : { kind: "volume", ml: 1000 });
  if (!litre.ok) note("whole", dry ? words.impossibleDry : words.impossible);
  if (!litre.ok || !HAS[bare.kind].density) return {};
  const computed = { computed: litre.value.g };
  if (draft.density.trim() === "") return computed;
  const density = typedNumber(draft.density, { low: 600, high: 2200, units: UNITS.density });
  if (density === undefined) {
    note("density", words.densityFault);
    return computed;
  }
  if (Math.abs(density / litre.value.g - 1) > DENSITY_BELIEVED) {
    note("density", words.densityOff(decimals(litre.value.g, 0)));
  }
  return { ...computed, density };
}

/** In the order they had; a strong spirit is always overproof, a milk is always kept cold. */
function cautionsOf(draft: IngredientDraft, strength: number, base: Ingredient | undefined) {
  const wanted = new Set([
    ...draft.cautions,
    ...(strength >= OVERPROOF_FROM ? [OVERPROOF] : []),
    ...(draft.kind === "dairy" ? ["keep-cold"] : []),
  ]);
  const before = (base?.cautions ?? []).filter((one) => wanted.has(one));
  return [...new Set([...before, ...wanted])];
}

/** Dry goods that are strained out: what they keep and what they give. */
function readStrained(
  draft: IngredientDraft,
  note: Note,
): Pick<Ingredient, "absorbs" | "waterShare"> {
  if (draft.kind !== "dry") return {};
  const absorbs = figure(draft.absorbs, 20, UNITS.absorbs);
  const waterShare = figure(draft.waterShare, 1, []);
  if (absorbs === undefined) note("absorbs", words.absorbsFault);
  if (waterShare === undefined) note("waterShare", words.waterShareFault);
  return { ...(absorbs && { absorbs }), ...(waterShare && { waterShare }) };
}

/**
 * Reads a form: the ingredient it describes, and a sentence for every field that needs another look.
 *
 * @param draft - as typed
 * @param id - under which it is kept
 * @param base - as it stands in the cupboard, for what the form does not hold
 */
export function readDraft(
  draft: IngredientDraft,
  id: string,
  base: Ingredient | undefined,
): ReadDraft {
  const faults = new Map<string, string>();
  const note: Note = (key, fault) => void faults.set(key, fault);
  const { kind } = draft;
  const name = draft.name.trim();
  if (name === "") note("name", words.nameFault);
  const percent = HAS[kind].strength ? figure(draft.strength, 100, UNITS.strength) : 0;
  if (percent === undefined) note("strength", words.strengthFault);
  const strength = (percent ?? 0) / 100;
  const acids = readAcids(draft, note);
  const bare: Ingredient = {
    id,
    name,
    kind,
    strength,
    sweetness: readSweetness(draft, note),
    acids,
    cation: readCation(draft, acids, base?.cation ?? 0, note),
    ...(base?.solids !== undefined && { solids: base.solids }),
    ...(kind === "dairy" && { dairy: draft.dairy }),
    ...readStrained(draft, note),
    ...(draft.madeFrom !== "" && { madeFrom: draft.madeFrom }),
    allergens: [...draft.allergens],
    cautions: cautionsOf(draft, strength, base),
    ...readPrice(draft, note),
  };
  const { density, computed } = readDensity(draft, bare, note);
  const ingredient = density === undefined ? bare : { ...bare, density };
  return {
    faults,
    ...(faults.size === 0 && { ingredient }),
    ...(computed !== undefined && { density: computed }),
  };
}
