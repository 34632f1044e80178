import { effect } from "@preact/signals";
import { stepOf } from "../core/method/procedure.ts";
import { type AlarmKind, alarmsOf } from "../core/run/alarm.ts";
import { type Alarm, keyOf, type Ringing, ringingAt } from "./alarm/alarm.ts";
import { awakeHost, type KeepAwake, keepAwake } from "./alarm/keep-awake.ts";
import { type AlarmNotice, type Notices, noticesWith } from "./alarm/notify.ts";
import { Ringer, soundHost } from "./alarm/ring.ts";
import { type Watcher, watchAlarms } from "./alarm/watcher.ts";
import type { Clock } from "./clock.ts";
import { showBadge } from "./device/badge.ts";
import { hushSpeech, primeSpeech, sayAloud } from "./device/speech.ts";
import { stopVibrating, vibrate } from "./device/vibrate.ts";
import { statusFrom } from "./known-status.ts";
import { routes } from "./routes.ts";
import { alarmStatus, opening, openRuns, ringing, settings } from "./state.ts";
import { howLate } from "./words/how-late.ts";
import { named } from "./words/joined.ts";
import { say } from "./words/say.ts";
import { stepTitle } from "./words/step-title.ts";

/** What the rest of the page may ask of the bell. */
export interface Bell {
  /** One round of a sound, inside a tap. */
  readonly sound: (kind: AlarmKind) => void;
}

/** How often the step is said while it rings, ms. Judgement. */
const SAY_EVERY = 15_000;

/** Every alarm not yet heard, as the bell reads it. */
function alarms(): readonly Alarm[] {
  return openRuns.value.flatMap((run) =>
    alarmsOf(run).map((due) => {
      const step = run.visits.find((one) => one.key === due.visit)?.step ?? due.visit;
      const verb = stepTitle(stepOf(run.procedure, step));
      return { ...due, label: named(run.plan.spec.name, verb) };
    }),
  );
}

const noticeOf = (alarm: Alarm): AlarmNotice => ({
  key: keyOf(alarm),
  title: alarm.label,
  body: say.alarm.dueNow,
  address: routes.run(alarm.runId),
});

const keysOf = (due: Ringing | null | undefined): readonly string[] => due?.alarms.map(keyOf) ?? [];

const hidden = (): boolean => document.visibilityState === "hidden";

/** The status line, from what is known at this moment. */
function tellStatus(ringer: Ringer, awake: KeepAwake): void {
  alarmStatus.value = statusFrom({ sound: ringer.soundState(), awake: awake.state() });
}

/** The most pressing step in words, now and then while it rings, where the house wants it said. */
function speaker(clock: Clock): (due: Ringing) => void {
  let saidAt = Number.NEGATIVE_INFINITY;
  return ({ alarms: [first] }) => {
    const at = clock.mono();
    if (first === undefined || !settings.value.speak || at - saidAt < SAY_EVERY) return;
    if (sayAloud(`${first.label}, ${howLate(first.lateBy)}`)) saidAt = at;
  };
}

/** What rings, shakes, speaks and shows while something is due. */
function watchWith(clock: Clock, ringer: Ringer, notices: Notices): Watcher {
  const speak = speaker(clock);
  const show = (due: Ringing) => {
    ringing.value = due;
    vibrate(due.kind);
    speak(due);
  };
  return watchAlarms({
    clock,
    alarms,
    onRing: (due) => {
      const before = keysOf(ringing.value);
      ringer.startRinging(due.kind);
      show(due);
      showBadge(due.alarms.length);
      // One that was answered beside others must not stay on the phone's lock screen.
      notices.keepOnly(keysOf(due));
      const more = due.alarms.filter((one) => !before.includes(keyOf(one)));
      if (hidden()) notices.show(more.map(noticeOf));
    },
    onStill: show,
    onStop: () => {
      notices.keepOnly([]);
      ringing.value = undefined;
      ringer.stopRinging();
      stopVibrating();
      hushSpeech();
      showBadge(0);
    },
  });
}

/** The tap that starts a step opens the speaker: browsers allow sound only from inside one. */
function unlockByHand(ringer: Ringer): void {
  let primed = false;
  const unlock = () => {
    if (openRuns.value.length === 0) return;
    if (ringer.soundState() !== "running") ringer.prepareSound();
    if (!primed && settings.value.speak) primed = primeSpeech();
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
  const notices = noticesWith(async () => navigator.serviceWorker?.getRegistration());
  // Those of a page that ended while it rang, where they were answered elsewhere.
  if (opening.value.type === "ready") notices.keepOnly(keysOf(ringingAt(alarms(), clock.now())));
  const watcher = watchWith(clock, ringer, notices);
  unlockByHand(ringer);
  // What the icon still shows from before: the first look after the log is read knows better.
  showBadge(0);
  document.addEventListener("visibilitychange", () => {
    const rang = ringing.value;
    if (!hidden()) ringer.reviveSound();
    // What rings already and is left is not heard any more.
    else if (rang !== undefined) notices.show(rang.alarms.map(noticeOf));
    watcher.look();
    tell();
  });
  let making = false;
  effect(() => {
    const was = making;
    making = openRuns.value.length > 0;
    // Made long before it is to ring: making a voice takes a slow phone most of a second.
    if (making && !was) ringer.reviveSound();
    if (making) void awake.hold();
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
