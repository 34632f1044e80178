import type { Plan } from "../../../core/spec/plan.ts";
import { settings } from "../../state.ts";
import { volume } from "../../words/format.ts";

/** A volume as this house shows it. */
export const show = (ml: number): string => volume(ml, settings.value);

/** A name in which no line end parts a figure from its unit: "Gin 43 %". */
export const bound = (name: string): string => name.replaceAll(/(?<=\d) (?=%)/gu, "\u00a0");

/** A batch as it is to be made: how many lots, and the plan of each. */
export interface Made {
  readonly lots: number;
  /** Exact. */
  readonly exact: Plan;
  /** As poured: rounded to the house's tools where it wants that. */
  readonly plan: Plan;
}
