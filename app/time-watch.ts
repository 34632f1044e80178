import { effect } from "@preact/signals";
import { openVisit, type Run } from "../core/run/run.ts";
import { type ClockSample, clockJump } from "./alarm/clock-jump.ts";
import { lastReading } from "./alarm/last-reading.ts";
import { type SleepGap, sleepWatch } from "./alarm/sleep-gap.ts";
import type { Clock } from "./clock.ts";
import { perform, tell } from "./commands.ts";
import { thisDevice } from "./desk.ts";
import { phoneZone } from "./local-time.ts";
import { movedInAll } from "./moved-in-all.ts";
import { clockMoved, logOf, opening, openRuns } from "./state.ts";
import { duration, forgetZone } from "./words/format.ts";

const LOOK_EVERY = 1000;
/** The zone is looked up once a minute: asking is slow, and it seldom changes. */
const ZONE_EVERY = 60;
/** A network may put the clock back by a little, ms. */
const LEAST_BACK = 5000;

/** Seldom wanted, so fetched only then; a page that lacks its words still notes what happened. */
const clockWords = async () => (await import("./words/say-later.ts")).sayLater.clock;

const visibleNow = (): boolean => document.visibilityState === "visible";
const isReady = (): boolean => opening.value.type === "ready";

/** Whether a run waited while the page slept, and nobody has noted that sleep. */
function sleptThrough(run: Run, { fromMs }: SleepGap): boolean {
  const visit = openVisit(run);
  if (visit?.dueAt === undefined || visit.startedAt > fromMs || run.pausedAt !== undefined) {
    return false;
  }
  // Another window of the app slept beside this one.
  return !logOf(run.id).some(
    (event) =>
      event.type === "phone.slept" &&
      event.device === thisDevice() &&
      event.fromMs + event.forMs > fromMs,
  );
}

async function noteSleep(gap: SleepGap): Promise<void> {
  const waited = openRuns.value.filter((run) => sleptThrough(run, gap));
  for (const run of waited) await perform(run.id, { type: "note-sleep", ...gap });
  if (waited.length > 0) tell((await clockWords()).slept(duration(gap.forMs)));
}

/** How far the clock is behind what this phone read from it last in a batch that is being made, ms. */
function behindBy(now: number): number {
  const readings = openRuns.value.map((run) => lastReading(logOf(run.id), thisDevice()) ?? 0);
  return Math.max(0, ...readings) - now;
}

/** Nothing can be seen of a clock that is moved while nobody looks, but that it went back. */
function askIfBehind(now: number): void {
  if (!isReady() || clockMoved.value !== undefined) return;
  const by = behindBy(now);
  if (by > LEAST_BACK) clockMoved.value = { byMs: -Math.round(by), seen: "away" };
}

/** Moved once more before anybody answered, it is asked about the whole of it; moved back, of nothing. */
function noteJump(jump: number): void {
  const { byMs: asked, seen } = clockMoved.value ?? {};
  const byMs = movedInAll(asked, Math.round(jump));
  clockMoved.value = byMs === undefined ? undefined : { byMs, seen: seen ?? "here" };
}

async function sayZone(zone: string): Promise<void> {
  if (openRuns.value.length > 0) tell((await clockWords()).zone(zone.replaceAll("_", " ")));
}

/** Says so once when the phone has moved to another zone; a change to summer time is none. */
function zoneWatch(): () => void {
  let zone = phoneZone();
  return () => {
    const next = phoneZone();
    if (next === zone) return;
    zone = next;
    forgetZone();
    void sayZone(next);
  };
}

/** Watches the phone's clock: moved, slept, put back, in another zone. Nothing is assumed: it asks. */
export function watchTime(clock: Clock): void {
  let unbroken = visibleNow();
  let before: ClockSample = { wall: clock.now(), mono: clock.mono(), visible: unbroken };
  let looks = 0;
  const asleep = sleepWatch(before.wall);
  const lookAtZone = zoneWatch();
  const look = () => {
    const sample = { wall: clock.now(), mono: clock.mono(), visible: unbroken };
    const jump = clockJump(before, sample);
    if (jump !== null) noteJump(jump);
    before = sample;
    const visible = visibleNow();
    const gap = asleep({ wall: sample.wall, left: !sample.visible, visible });
    unbroken = visible;
    if (!isReady()) return;
    if (gap !== null) void noteSleep(gap);
    if (!sample.visible && visible) askIfBehind(sample.wall);
    looks += 1;
    if (looks % ZONE_EVERY === 0 || !sample.visible) lookAtZone();
  };
  clock.every(LOOK_EVERY, look);
  for (const kind of ["visibilitychange", "freeze", "resume"] as const) {
    document.addEventListener(kind, () => {
      unbroken = false;
      look();
    });
  }
  effect(() => {
    if (isReady()) askIfBehind(clock.now());
  });
}
