import { signal } from "@preact/signals";
import type { BatchSize } from "../../../core/spec/spec.ts";
import type { Changes } from "../../../core/spec/what-if.ts";

/** What a person has set on the plan of one spec; kept while the app is open, gone with the page. */
export interface PlanDesk {
  /** As it stands in the form; what is no number stands in it as NaN. */
  readonly typed: BatchSize;
  /** The last size that made sense. */
  readonly size: BatchSize;
  /** What this batch does otherwise than its spec. */
  readonly used: Changes;
  /** Where the batch does not fit the largest vessel: one lot of it, or all at once. */
  readonly lots: "one" | "all";
  readonly open: readonly string[];
}

const FIRST_SIZE: BatchSize = { by: "serves", serves: 60 };
const EMPTY_DESK: PlanDesk = {
  typed: FIRST_SIZE,
  size: FIRST_SIZE,
  used: {},
  lots: "one",
  open: ["measure"],
};

const desks = signal<ReadonlyMap<string, PlanDesk>>(new Map());
/** Apart from the rest: a slider moves it many times a second, and only its own section follows. */
const trials = signal<ReadonlyMap<string, Changes>>(new Map());

const NOTHING_TRIED: Changes = {};

/** What is set for a spec. */
export const deskOf = (specId: string): PlanDesk => desks.value.get(specId) ?? EMPTY_DESK;

/** Sets something for a spec. */
export function setDesk(specId: string, change: Partial<PlanDesk>): void {
  desks.value = new Map(desks.value).set(specId, { ...deskOf(specId), ...change });
}

/** What is tried out beside a spec. */
export const trialOf = (specId: string): Changes => trials.value.get(specId) ?? NOTHING_TRIED;

/** Tries something out beside a spec. */
export function setTrial(specId: string, tried: Changes): void {
  trials.value = new Map(trials.value).set(specId, tried);
}

/** Opens or closes a section. */
export function setOpen(specId: string, section: string, open: boolean): void {
  const others = deskOf(specId).open.filter((one) => one !== section);
  setDesk(specId, { open: open ? [...others, section] : others });
}
