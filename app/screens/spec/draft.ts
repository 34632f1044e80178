import * as z from "zod/mini";
import {
  FILTER_SHAPES,
  type FilterShape,
  SERVE_METHODS,
  type Spec,
  type SpecLine,
} from "../../../core/spec/spec.ts";
import { draftBook } from "../../drafts.ts";
import { typed } from "../../words/format.ts";
import { asWritten, proportion, typedLength } from "../../words/written.ts";

/** One ingredient as the form holds it: what was typed, understood or not. */
export interface LineDraft {
  readonly id: string;
  readonly ingredientId: string;
  readonly amount: string;
  /** Held-back share, %. */
  readonly held: string;
}

/** A spec as the form holds it: every figure as typed, so that nothing typed is lost. */
export interface SpecDraft {
  readonly name: string;
  readonly lines: readonly LineDraft[];
  /** The line being typed. */
  readonly adding: string;
  /** The ingredient being made in the cupboard for that line. */
  readonly awaiting: string;
  readonly washed: boolean;
  readonly dairyId: string;
  readonly ratio: string;
  readonly order: NonNullable<Spec["wash"]>["order"];
  readonly filters: string;
  readonly filterShape: FilterShape;
  /** How an unwashed drink is made; a washed one is a dairy wash. */
  readonly procedureId: string;
  /** Times of its own, as typed, by step; empty for the procedure's. */
  readonly times: Readonly<Record<string, string>>;
  readonly rule: Spec["topUp"]["rule"];
  readonly target: string;
  readonly pour: string;
  readonly method: Spec["serve"]["method"];
  readonly dilution: string;
  readonly price: string;
  readonly glass: string;
  readonly garnish: string;
  readonly keepDays: string;
  readonly notes: string;
}

/** A new spec: washed, for that is what the app is for; the figures are common practice. */
export const BLANK: SpecDraft = {
  name: "",
  lines: [],
  adding: "",
  awaiting: "",
  washed: true,
  dairyId: "milk-whole",
  ratio: proportion(0.25),
  order: "punch-into-milk",
  filters: "2",
  filterShape: "unknown",
  procedureId: "",
  times: {},
  rule: "proportion",
  target: "",
  pour: "90 ml",
  method: "stirred",
  dilution: "",
  price: "",
  glass: "",
  garnish: "",
  keepDays: "3",
  notes: "",
};

const lineDraft = (line: SpecLine): LineDraft => ({
  id: line.id,
  ingredientId: line.ingredientId,
  amount: asWritten(line.amount),
  held: typed(line.heldBack * 100),
});

/** The form of a spec as it is stored. */
export function draftOf(spec: Spec): SpecDraft {
  const { wash, topUp, serve } = spec;
  return {
    ...BLANK,
    name: spec.name,
    lines: spec.lines.map(lineDraft),
    washed: wash !== undefined,
    ...(wash && {
      dairyId: wash.dairyId,
      ratio: proportion(wash.ratio),
      order: wash.order,
      filters: typed(wash.filters),
      filterShape: wash.filterShape ?? "unknown",
    }),
    procedureId: spec.procedure?.id ?? "",
    times: Object.fromEntries(
      Object.entries(spec.procedure?.times ?? {}).map(([step, ms]) => [step, typedLength(ms)]),
    ),
    rule: topUp.rule,
    target: topUp.rule === "strength" ? typed(topUp.target * 100) : "",
    pour: asWritten({ value: serve.pour, unit: "ml" }),
    method: serve.method,
    dilution: serve.dilution === undefined ? "" : typed(serve.dilution * 100),
    price: serve.price === undefined ? "" : typed(serve.price, 2),
    glass: serve.glass,
    garnish: serve.garnish,
    keepDays: typed(spec.keepDays),
    notes: spec.notes,
  };
}

const text = z.string();

const draftSchema = z.object({
  name: text,
  lines: z.array(z.object({ id: text, ingredientId: text, amount: text, held: text })),
  adding: text,
  awaiting: text,
  washed: z.boolean(),
  dairyId: text,
  ratio: text,
  order: z.enum(["punch-into-milk", "milk-into-punch"]),
  filters: text,
  filterShape: z.enum(FILTER_SHAPES),
  procedureId: text,
  times: z.record(text, text),
  rule: z.enum(["proportion", "strength", "fixed"]),
  target: text,
  pour: text,
  method: z.enum(SERVE_METHODS),
  dilution: text,
  price: text,
  glass: text,
  garnish: text,
  keepDays: text,
  notes: text,
});

export const { keptDraft, keepDraft, dropDraft } = draftBook<SpecDraft>("spec", (kept) =>
  draftSchema.safeParse(kept),
);

/** Whether two forms hold the same; an errand to the cupboard changes nothing. */
export const sameDraft = (a: SpecDraft, b: SpecDraft): boolean =>
  JSON.stringify({ ...a, awaiting: "" }) === JSON.stringify({ ...b, awaiting: "" });
