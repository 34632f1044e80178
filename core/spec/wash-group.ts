import type { DairyKind } from "../acid/dairy-kind-table.ts";
import type { HouseRules, Retention, WashLearnt } from "./house-rules.ts";
import type { FilterShape, Spec } from "./spec.ts";

/** What sets washes apart that learn from each other only through the house. */
export interface WashKind {
  readonly procedureId: string;
  readonly shape: FilterShape;
  readonly dairy: DairyKind;
  /** Invented batches teach invented ones alone. */
  readonly demo: boolean;
}

/** The procedure of a washed spec that names none. */
const USUAL = "dairy-wash";

/** Whose batches these are: the bar's own, or the invented ones. */
export const worldOf = ({ demo }: Pick<WashKind, "demo">): string => (demo ? "demo" : "own");

/** One name for washes of a kind: of the same procedure, filter and dairy. */
export const washGroup = (kind: WashKind): string =>
  `${worldOf(kind)}|${kind.procedureId}|${kind.shape}|${kind.dairy}`;

/** What the house's own batches have taught of a wash, or else of any wash of the house. */
export function learntFor(house: HouseRules, spec: Spec, dairy: DairyKind): WashLearnt | undefined {
  const demo = spec.demo === true;
  const procedureId = spec.procedure?.id ?? USUAL;
  const shape = spec.wash?.filterShape ?? "unknown";
  const { learnt = {} } = house;
  return learnt[washGroup({ procedureId, shape, dairy, demo })] ?? learnt[worldOf({ demo })];
}

/** What curd is taken to keep in a spec's wash, against whole milk: learnt where it was. */
export const retentionFor = (house: HouseRules, spec: Spec, dairy: DairyKind): Retention =>
  learntFor(house, spec, dairy)?.retention ?? house.retention;
