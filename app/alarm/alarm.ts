/** What an alarm asks for: hands at once, a look, or nothing but knowing that it is finished. */
export type AlarmKind = "do" | "look" | "done";

/** Something that is due at a moment. Derived from the log, never stored. */
export interface Alarm {
  readonly key: string;
  readonly kind: AlarmKind;
  /** Epoch ms. */
  readonly dueAt: number;
  readonly label: string;
}

/** Alarms that are due now, the longest overdue first, and the sound they share. */
export interface Ringing {
  readonly kind: AlarmKind;
  readonly alarms: readonly (Alarm & { readonly lateBy: number })[];
}

/** The most pressing first. */
const BY_URGENCY: readonly AlarmKind[] = ["do", "look", "done"];

/** What should ring at `now`; null when nothing is due. An alarm given twice rings once. */
export function ringingAt(alarms: readonly Alarm[], now: number): Ringing | null {
  const due = [...new Map(alarms.map((alarm) => [alarm.key, alarm])).values()]
    .filter((alarm) => alarm.dueAt <= now)
    .sort((a, b) => a.dueAt - b.dueAt)
    .map((alarm) => ({ ...alarm, lateBy: now - alarm.dueAt }));
  const kind = BY_URGENCY.find((one) => due.some((alarm) => alarm.kind === one));
  return kind ? { kind, alarms: due } : null;
}
