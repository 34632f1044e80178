import { HOUR, MINUTE } from "../quantity/time-units-table.ts";
import { alarmsOf } from "./alarm.ts";
import { type Handed, openVisit, type Run } from "./run.ts";

/** A shorter wait is not worth a second watch, ms. Judgement. */
const WORTH_HANDING_OVER = 30 * MINUTE;
/** From here on a wait asks for one: whoever began it may have gone home, ms. Judgement. */
const ASKS_FROM = 4 * HOUR;

/** What else watches the wait that a run stands at, and whether something should. */
export interface SecondWatch {
  readonly visit: string;
  /** What the others were told, or are to be told, epoch ms. */
  readonly dueAt: number;
  /** Watches that were told exactly this due time, each once. */
  readonly told: readonly Handed[];
  /** `asked`: longer than four hours, and nothing else watches it yet. */
  readonly need: "none" | "offered" | "asked";
}

const sameWatch = (a: Handed, b: Handed): boolean => a.to === b.to && a.who === b.who;

/**
 * What else watches a run's next alarm.
 *
 * @param run - as its log tells it
 * @returns nothing where nothing is waited for; a hand-over of an earlier due time is not counted,
 *   for that clock rings at the wrong moment
 */
export function secondWatchOf(run: Run): SecondWatch | undefined {
  const visit = openVisit(run);
  const [alarm] = alarmsOf(run);
  if (visit === undefined || alarm === undefined) return undefined;
  const { dueAt } = alarm;
  const told = (visit.handed ?? [])
    .filter((one) => one.dueAt === dueAt)
    .filter((one, at, all) => all.findIndex((other) => sameWatch(one, other)) === at);
  // The part of a wait that nobody comes to: since its start, or since somebody last answered.
  const length = dueAt - Math.max(visit.startedAt, visit.heardAt ?? 0);
  const asks = length >= ASKS_FROM && told.length === 0;
  const need = length < WORTH_HANDING_OVER ? "none" : asks ? "asked" : "offered";
  return { visit: visit.key, dueAt, told, need };
}
