import { type Alarm, keyOf, type Ringing, ringingAt } from "./alarm.ts";

/** The little of a clock that watching needs. */
export interface WatchClock {
  /** Epoch ms. */
  readonly now: () => number;
  /** Calls back about every `ms`, for as long as the phone lets it; returns how to stop. */
  readonly every: (ms: number, run: () => void) => () => void;
  /** Calls back once, about `ms` from now; returns how to stop. */
  readonly after: (ms: number, run: () => void) => () => void;
}

/** What is watched, and who hears of it. */
export interface Watching {
  readonly clock: WatchClock;
  /** Every alarm not yet heard; read afresh at each look. */
  readonly alarms: () => readonly Alarm[];
  /** Something began to be due, or what is due changed. */
  readonly onRing: (ringing: Ringing) => void;
  /** Still due, at each look after that: for what must be repeated to go on. */
  readonly onStill?: ((ringing: Ringing) => void) | undefined;
  /** Nothing is due any more. */
  readonly onStop: () => void;
}

/** A watch that goes on until it is ended. */
export interface Watcher {
  /** Looks now: call on return to sight, after an event, on anything that may have changed. */
  readonly look: () => void;
  readonly end: () => void;
}

const LOOK_EVERY = 1000;

const signOf = (ringing: Ringing): string =>
  JSON.stringify([ringing.kind, ...ringing.alarms.map(keyOf)]);

/** The next moment at which something falls due. */
const nextDue = (alarms: readonly Alarm[], now: number): number | undefined => {
  const coming = alarms.flatMap(({ dueAt }) => (dueAt > now ? [dueAt] : []));
  return coming.length === 0 ? undefined : Math.min(...coming);
};

/**
 * Rings what is due for as long as it is due. No look relies on an earlier one having happened: a
 * watcher made after a reload, or that slept for a day, rings at its first look. Besides looking
 * every second it looks at the very moment when something falls due; each look finds that anew.
 */
export function watchAlarms(watching: Watching): Watcher {
  const { clock, alarms, onRing, onStill, onStop } = watching;
  let sign: string | null = null;
  let disarm = () => {};
  const arm = (all: readonly Alarm[], now: number) => {
    disarm();
    const next = nextDue(all, now);
    disarm = next === undefined ? () => {} : clock.after(next - now, look);
  };
  const look = () => {
    const [all, now] = [alarms(), clock.now()];
    const ringing = ringingAt(all, now);
    const was = sign;
    sign = ringing && signOf(ringing);
    if (ringing && sign !== was) onRing(ringing);
    else if (ringing) onStill?.(ringing);
    else if (was !== null) onStop();
    arm(all, now);
  };
  const stop = clock.every(LOOK_EVERY, look);
  look();
  return {
    look,
    end: () => {
      stop();
      disarm();
      if (sign !== null) onStop();
      sign = null;
    },
  };
}
