import type { AlarmKind, Alarm as Due } from "../../core/run/alarm.ts";

/** Something that is due at a moment, with what it says. Derived from the log, never stored. */
export interface Alarm extends Due {
  readonly label: string;
}

/** Alarms that are due now, the longest overdue first, and the sound they share. */
export interface Ringing {
  readonly kind: AlarmKind;
  readonly alarms: readonly (Alarm & { readonly lateBy: number })[];
}

/** The most pressing first. */
const BY_URGENCY: readonly AlarmKind[] = ["do", "look", "done"];

/** What tells one alarm from another: a due time that moved is another one. */
export const keyOf = ({ runId, visit, dueAt }: Due): string =>
  JSON.stringify([runId, visit, dueAt]);

/** What should ring at `now`; null when nothing is due. An alarm given twice rings once. */
export function ringingAt(alarms: readonly Alarm[], now: number): Ringing | null {
  const due = [...new Map(alarms.map((alarm) => [keyOf(alarm), alarm])).values()]
    .filter((alarm) => alarm.dueAt <= now)
    .sort((a, b) => a.dueAt - b.dueAt)
    .map((alarm) => ({ ...alarm, lateBy: now - alarm.dueAt }));
  const kind = BY_URGENCY.find((one) => due.some((alarm) => alarm.kind === one));
  return kind ? { kind, alarms: due } : null;
}
