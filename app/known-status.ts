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
export function statusFrom(phone: Pick<AlarmFacts, "sound" | "awake">): AlarmStatus {
  const { soundHeardAt } = settings.value;
  return statusOf({
    ...phone,
    visible: document.visibilityState !== "hidden",
    heardAgo: soundHeardAt === 0 ? null : now.value - soundHeardAt,
    waits: otherWatches(),
  });
}

/**
 * What the status line says at this moment. Before the bell hangs it is silent, as it is until the
 * first tap; said at once, the line does not push away what stands below it when the bell comes.
 */
export const statusNow = (): AlarmStatus =>
  alarmStatus.value ?? statusFrom({ sound: "blocked", awake: "absent" });
