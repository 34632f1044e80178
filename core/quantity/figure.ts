/** A way of computing, with its formula in symbols and where it comes from. */
export interface Rule {
  /** Key of its explanation in words. */
  readonly key: string;
  readonly formula: string;
  readonly source: string;
  /** How far it can be trusted, in the result's unit or in words of the trade. */
  readonly limits?: string;
}

/** Units a figure may carry; the page decides how to show them. */
export type FigureUnit =
  | "ml"
  | "g"
  | "abv"
  | "g/L"
  | "brix"
  | "ratio"
  | "kg/m3"
  | "pH"
  | "degC"
  | "share"
  | "count"
  | "ms"
  | "money";

/** A number that carries its derivation: what went in, by which rule, how exact. */
export interface Figure {
  /** What it is, a key of the words catalogue. */
  readonly name: string;
  readonly value: number;
  readonly unit: FigureUnit;
  readonly rule: Rule;
  readonly from: readonly Figure[];
  /** Half-width of its interval, in its own unit, where one is known. */
  readonly within?: number;
}

const AS_GIVEN: Rule = { key: "as-given", formula: "", source: "typed or chosen in this app" };

/** A figure that was typed or chosen, not computed. */
export const given = (name: string, value: number, unit: FigureUnit): Figure => ({
  name,
  value,
  unit,
  rule: AS_GIVEN,
  from: [],
});

/** A computed figure. */
export const figure = (
  name: string,
  value: number,
  unit: FigureUnit,
  rule: Rule,
  from: readonly Figure[],
  within?: number,
): Figure => ({ name, value, unit, rule, from, ...(within === undefined ? {} : { within }) });
