import { type Alarm, alarmsOf } from "../run/alarm.ts";
import { byText } from "../run/order.ts";
import { openVisit, type Run, type Visit } from "../run/run.ts";

/** One run as the Bench lists it. */
export interface BenchRow {
  readonly run: Run;
  readonly visit: Visit;
  /** The next moment it wants somebody; nothing while it waits for hands. */
  readonly alarm?: Alarm;
  /** ms overdue, 0 when not. */
  readonly lateBy: number;
}

/** Overdue, waiting for hands, waiting for its time. */
const turnOf = ({ alarm }: BenchRow, now: number): number =>
  alarm === undefined ? 1 : alarm.dueAt <= now ? 0 : 2;

const wantedAt = ({ alarm, visit }: BenchRow): number => alarm?.dueAt ?? visit.startedAt;

/**
 * The runs being made, soonest wanted first: overdue ones, then those that wait for hands (since
 * when), then those whose wait ends soonest; runs that are wanted alike, by their id.
 *
 * @param open - runs that have not ended
 * @param now - epoch ms
 * @returns a row for each run that stands at a step
 */
export function benchRows(open: readonly Run[], now: number): readonly BenchRow[] {
  return open
    .flatMap((run): BenchRow[] => {
      const visit = openVisit(run);
      if (visit === undefined) return [];
      const [alarm] = alarmsOf(run);
      const lateBy = alarm === undefined ? 0 : Math.max(0, now - alarm.dueAt);
      return [{ run, visit, lateBy, ...(alarm === undefined ? {} : { alarm }) }];
    })
    .sort(
      (a, b) =>
        turnOf(a, now) - turnOf(b, now) || wantedAt(a) - wantedAt(b) || byText(a.run.id, b.run.id),
    );
}

/**
 * When the Bench looks otherwise although nobody has done anything: waits end.
 *
 * @param open - runs that have not ended
 * @param now - epoch ms
 * @returns epoch ms after now, each once, soonest first
 */
export const waitsEnd = (open: readonly Run[], now: number): readonly number[] =>
  [...new Set(benchRows(open, now).flatMap(({ alarm }) => alarm?.dueAt ?? []))]
    .filter((at) => at > now)
    .sort((a, b) => a - b);
