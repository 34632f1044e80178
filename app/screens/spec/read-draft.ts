import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { measured } from "../../../core/quantity/amount.ts";
import type { Cupboard } from "../../../core/spec/batch-amounts.ts";
import { portionOf } from "../../../core/spec/ingredient-liquid.ts";
import type { Spec, SpecLine } from "../../../core/spec/spec.ts";
import { typedNumber } from "../../parts/typed-number.ts";
import { chosenProcedure, misfitOf } from "../../procedure-book.ts";
import type { Settings } from "../../storage/settings.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { amountIn, lengthIn, numberIn } from "../../words/typed-in.ts";
import type { LineDraft, SpecDraft } from "./draft.ts";

/** What is wrong with a form, by field: a sentence each. */
export type Faults = ReadonlyMap<string, string>;

/** A form read: the spec where nothing is wrong with it. */
export interface ReadDraft {
  readonly spec?: Spec;
  readonly faults: Faults;
}

/** What a form does not hold. */
export interface Stamp {
  readonly id: string;
  readonly version: number;
  readonly demo?: boolean | undefined;
}

type Ounce = Settings["ounce"];
const PERCENT = ["%"];

/** Milk per punch: "1 : 4", "1/4", "0.25", "25 %", or "250 ml" for each litre. */
export function readRatio(text: string): number | undefined {
  const parts = /^([^:]+):([^:]+)$/u.exec(text);
  const [milk, punch] = [parts?.[1], parts?.[2]].map((part) =>
    typedNumber(part ?? "", { low: 1e-3, high: 1000 }),
  );
  const lead = numberIn(text.trim());
  const amount = amountIn(text);
  let ratio: number | undefined;
  if (milk !== undefined && punch !== undefined) ratio = milk / punch;
  else if (lead?.rest === "") ratio = lead.value;
  else if (lead?.rest === "%") ratio = lead.value / 100;
  else if (amount.ok && amount.value.rest === "") {
    const size = measured(amount.value, "exact");
    ratio = size.kind === "volume" ? size.ml / 1000 : undefined;
  }
  return ratio !== undefined && ratio >= 0.02 && ratio <= 2 ? ratio : undefined;
}

/** The volume of one drink, ml. */
function readPour(text: string, ounce: Ounce): number | undefined {
  const bare = typedNumber(text, { low: 0, high: 2000 });
  if (bare !== undefined && bare > 0) return bare;
  const read = amountIn(text);
  if (!read.ok || read.value.rest !== "") return undefined;
  const size = measured(read.value, ounce);
  return size.kind === "volume" && size.ml <= 2000 ? size.ml : undefined;
}

/** What is wrong with an amount for an ingredient, in a sentence. */
function readAmount(text: string, ingredientId: string, cupboard: Cupboard, ounce: Ounce) {
  const read = amountIn(text);
  if (!read.ok) return { fault: sentence(read) };
  const { value, unit, rest } = read.value;
  if (rest !== "") return { fault: sayLater.spec.line.rest(rest) };
  const ingredient = cupboard.get(ingredientId);
  const portion = ingredient && portionOf(ingredient, measured({ value, unit }, ounce));
  if (portion?.ok === false) return { fault: sentence(portion) };
  return { amount: { value, unit } };
}

function readLine(
  line: LineDraft,
  cupboard: Cupboard,
  ounce: Ounce,
  faults: Map<string, string>,
): SpecLine | undefined {
  const read = readAmount(line.amount, line.ingredientId, cupboard, ounce);
  const held = typedNumber(line.held || "0", { low: 0, high: 100, units: PERCENT });
  if (read.fault !== undefined) faults.set(`amount:${line.id}`, read.fault);
  if (held === undefined) faults.set(`held:${line.id}`, sayLater.spec.line.heldFault);
  if (read.amount === undefined || held === undefined) return undefined;
  const { id, ingredientId } = line;
  return { id, ingredientId, amount: read.amount, heldBack: held / 100 };
}

/** Reads one field: what it holds, or a stand-in with its fault noted. */
type Reader = <Value>(
  key: string,
  value: Value | undefined,
  fault: string,
  instead: Value,
) => Value;

/** Not asked for while nothing is washed, but kept for when it is again. */
function unaskedTopUp({ rule, target }: SpecDraft): Spec["topUp"] {
  if (rule !== "strength") return { rule };
  const share = typedNumber(target, { low: 0.01, high: 99.99, units: PERCENT });
  return share === undefined ? { rule: "proportion" } : { rule, target: share / 100 };
}

function readWash(
  draft: SpecDraft,
  cupboard: Cupboard,
  read: Reader,
): Pick<Spec, "wash" | "topUp"> {
  const { wash: words, topUp } = sayLater.spec;
  const dairy = cupboard.get(draft.dairyId)?.dairy;
  const target = typedNumber(draft.target, { low: 0.01, high: 99.99, units: PERCENT });
  const rule: Spec["topUp"] =
    draft.rule === "strength"
      ? {
          rule: "strength",
          target: read("target", target, topUp.targetFault, 1) / 100,
        }
      : { rule: draft.rule };
  const filters = typedNumber(draft.filters, { low: 1, high: 50, whole: true });
  return {
    topUp: rule,
    wash: {
      dairyId: read("dairy", dairy && draft.dairyId, words.dairyFault, ""),
      ratio: read("ratio", readRatio(draft.ratio), words.ratioFault, 1),
      order: draft.order,
      filters: read("filters", filters, words.filtersFault, 1),
      ...(draft.filterShape !== "unknown" && { filterShape: draft.filterShape }),
    },
  };
}

/** The procedure a drink names, with times of its own; none where it takes the usual one. */
function readProcedure(draft: SpecDraft, read: Reader): Pick<Spec, "procedure"> {
  const { washed, procedureId } = draft;
  if (misfitOf(washed, procedureId) === "gone") {
    read("procedure", undefined, sayLater.spec.making.gone, "");
  }
  const procedure = chosenProcedure(washed, procedureId);
  if (procedure === undefined) return {};
  const { id } = procedure;
  const times = procedure.steps.flatMap(({ id: step, waitFor }) => {
    const text = draft.times[step]?.trim() ?? "";
    if (waitFor === undefined || text === "") return [];
    const ms = lengthIn(text);
    return [[step, read(`time-${step}`, ms, sayLater.spec.making.timeFault, waitFor)] as const];
  });
  if (id === DAIRY_WASH.id && times.length === 0) return {};
  return { procedure: { id, times: Object.fromEntries(times) } };
}

function readServe(draft: SpecDraft, ounce: Ounce, read: Reader): Spec["serve"] {
  const { serve: words } = sayLater.spec;
  const { method, glass, garnish } = draft;
  const serve = {
    pour: read("pour", readPour(draft.pour, ounce), words.pourFault, 1),
    method,
    glass: glass.trim(),
    garnish: garnish.trim(),
  };
  const optional = (key: "dilution" | "price", high: number, low: number, fault: string) =>
    draft[key].trim() === ""
      ? undefined
      : read(key, typedNumber(draft[key], { low, high, units: PERCENT }), fault, low);
  const dilution = optional("dilution", 300, 0, words.dilutionFault);
  const price = optional("price", 100_000, 0.01, words.priceFault);
  return {
    ...serve,
    ...(dilution !== undefined && { dilution: dilution / 100 }),
    ...(price !== undefined && { price }),
  };
}

/**
 * Reads a form: the spec it describes, and a sentence for every field that needs another look.
 *
 * @param draft - as typed
 * @param stamp - what the form does not hold
 */
export function readDraft(
  draft: SpecDraft,
  stamp: Stamp,
  cupboard: Cupboard,
  ounce: Ounce,
): ReadDraft {
  const faults = new Map<string, string>();
  const read: Reader = (key, value, fault, instead) => {
    if (value === undefined) faults.set(key, fault);
    return value ?? instead;
  };
  const name = read("name", draft.name.trim() || undefined, sayLater.spec.nameFault, "");
  const lines = draft.lines.flatMap((line) => readLine(line, cupboard, ounce, faults) ?? []);
  if (draft.adding.trim() !== "") faults.set("adding", sayLater.spec.add.waiting);
  else if (draft.lines.length === 0) {
    faults.set("adding", sentence({ refusal: "spec-without-lines", about: {} }));
  }
  const keepDays = typedNumber(draft.keepDays, { low: 1, high: 365, whole: true });
  const spec: Spec = {
    id: stamp.id,
    name,
    version: stamp.version,
    lines,
    ...(draft.washed ? readWash(draft, cupboard, read) : { topUp: unaskedTopUp(draft) }),
    ...readProcedure(draft, read),
    serve: readServe(draft, ounce, read),
    keepDays: read("keepDays", keepDays, sayLater.spec.keep.fault, 1),
    notes: draft.notes.trim(),
    ...(stamp.demo === true && { demo: true }),
  };
  return faults.size === 0 ? { spec, faults } : { faults };
}
