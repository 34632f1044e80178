import type { OtherWatch } from "../core/run/event.ts";
import { secondWatchOf } from "../core/run/second-watch.ts";
import { type AlarmFacts, type AlarmStatus, alarmStatus as statusOf } from "./alarm/status.ts";
import { alarmStatus, now, openRuns, settings } from "./state.ts";

/** For each wait now running, what else watches it. */
const otherWatches = (): readonly (readonly OtherWatch[])[] =>
  openRuns.value.flatMap((run) => {
    const handed = secondWatchOf(run);
    return handed === undefined ? [] : [handed.told.map(({ to }) => to)];
  });

/** What the status line says, from what is known of the phone. */
export function statusFrom(
  phone: Pick<AlarmFacts, "sound" | "awake">,
  at = now.value,
  visible = document.visibilityState !== "hidden",
): AlarmStatus {
  const { soundHeardAt } = settings.value;
  return statusOf({
    ...phone,
    visible,
    heardAgo: soundHeardAt === 0 ? null : at - soundHeardAt,
    waits: otherWatches(),
  });
}

/** What holds until the bell hangs: it is silent, as it is until the first tap. */
const BELL_LESS = { sound: "blocked", awake: "absent" } as const;

/** What the status line says when the page is opened at a moment and the bell does not hang yet. */
export const statusAtStart = (at: number): AlarmStatus => statusFrom(BELL_LESS, at, true);

/**
 * What the status line says at this moment; said before the bell hangs, the line does not push away
 * what stands below it when the bell comes.
 */
export const statusNow = (): AlarmStatus => alarmStatus.value ?? statusFrom(BELL_LESS);
