import { effect } from "@preact/signals";
import { stepOf } from "../core/method/procedure.ts";
import { alarmsOf } from "../core/run/alarm.ts";
import { openVisit } from "../core/run/run.ts";
import type { Alarm, AlarmKind, Ringing } from "./alarm/alarm.ts";
import { awakeHost, type KeepAwake, keepAwake } from "./alarm/keep-awake.ts";
import { clearNotices, notifyAlarm } from "./alarm/notify.ts";
import { Ringer, soundHost } from "./alarm/ring.ts";
import { alarmStatus as statusOf } from "./alarm/status.ts";
import { type Watcher, watchAlarms } from "./alarm/watcher.ts";
import type { Clock } from "./clock.ts";
import { stopVibrating, vibrate } from "./device/vibrate.ts";
import { routes } from "./routes.ts";
import { alarmStatus, now, openRuns, ringing, settings } from "./state.ts";
import { say } from "./words/say.ts";
import { stepTitle } from "./words/step-title.ts";

/** What the rest of the page may ask of the bell. */
export interface Bell {
  /** One round of a sound, inside a tap. */
  readonly sound: (kind: AlarmKind) => void;
}

const SHAKE = [400, 200, 400] as const;

/** Every alarm not yet heard, as the bell reads it. */
function alarms(): readonly Alarm[] {
  return openRuns.value.flatMap((run) =>
    alarmsOf(run).map(({ visit, kind, dueAt }) => {
      const step = run.visits.find((one) => one.key === visit)?.step ?? visit;
      const verb = stepTitle(stepOf(run.procedure, step));
      const key = `${run.id}/${visit}/${dueAt}`;
      return { key, kind, dueAt, label: `${run.plan.spec.name}: ${verb}` };
    }),
  );
}

/** Somebody said that the phone's own clock is set for every wait now running. */
function allInPhoneClock(): boolean {
  const waiting = openRuns.value.flatMap((run) => {
    const [alarm] = alarmsOf(run);
    return alarm === undefined ? [] : [{ alarm, handed: openVisit(run)?.handed }];
  });
  return (
    waiting.length > 0 &&
    waiting.every(({ alarm, handed }) => {
      return handed?.to === "phone-clock" && handed.dueAt === alarm.dueAt;
    })
  );
}

async function noticeAway(first: Ringing): Promise<void> {
  const worker = await navigator.serviceWorker?.getRegistration();
  const [alarm] = first.alarms;
  if (worker === undefined || alarm === undefined) return;
  const address = routes.run(alarm.key.split("/")[0] ?? "");
  await notifyAlarm(worker, {
    key: alarm.key,
    title: alarm.label,
    body: say.alarm.dueNow,
    address,
  });
}

async function clearNotice(was: Ringing | undefined): Promise<void> {
  const worker = await navigator.serviceWorker?.getRegistration();
  if (worker === undefined || was === undefined) return;
  for (const alarm of was.alarms) await clearNotices(worker, alarm.key);
}

const hidden = (): boolean => document.visibilityState === "hidden";

/** The status line, from what is known at this moment. */
function tellStatus(ringer: Ringer, awake: KeepAwake): void {
  const { soundHeardAt } = settings.value;
  alarmStatus.value = statusOf({
    visible: !hidden(),
    sound: ringer.soundState(),
    awake: awake.state(),
    heardAgo: soundHeardAt === 0 ? null : now.value - soundHeardAt,
    inPhoneClock: allInPhoneClock(),
  });
}

/** What rings, shakes and shows while something is due. */
const watchWith = (clock: Clock, ringer: Ringer): Watcher =>
  watchAlarms({
    clock,
    alarms,
    onRing: (due) => {
      ringing.value = due;
      ringer.startRinging(due.kind);
      vibrate(SHAKE);
      if (hidden()) void noticeAway(due);
    },
    onStill: (due) => {
      ringing.value = due;
      vibrate(SHAKE);
    },
    onStop: () => {
      void clearNotice(ringing.value);
      ringing.value = undefined;
      ringer.stopRinging();
      stopVibrating();
    },
  });

/** The tap that starts a step opens the speaker: browsers allow sound only from inside one. */
function unlockByHand(ringer: Ringer): void {
  const unlock = () => {
    if (openRuns.value.length > 0 && ringer.soundState() !== "running") ringer.prepareSound();
  };
  for (const kind of ["pointerup", "keydown", "click"] as const) {
    document.addEventListener(kind, unlock, { capture: true });
  }
}

/**
 * Hangs the bell: rings what is due for as long as it is due, keeps the screen on while something
 * is waited for, and keeps the status line true.
 */
export function hangBell(clock: Clock): Bell {
  const tell = () => tellStatus(ringer, awake);
  const ringer: Ringer = new Ringer(soundHost(() => tell()));
  const awake = keepAwake(awakeHost(() => tell()));
  const watcher = watchWith(clock, ringer);
  unlockByHand(ringer);
  document.addEventListener("visibilitychange", () => {
    if (!hidden()) ringer.reviveSound();
    watcher.look();
    tell();
  });
  effect(() => {
    if (openRuns.value.length > 0) void awake.hold();
    else {
      void awake.release();
      ringer.restSound();
    }
    watcher.look();
  });
  effect(tell);
  clock.every(1000, () => ringer.checkSound(clock.mono()));
  return { sound: (kind) => ringer.playOnce(kind) };
}
