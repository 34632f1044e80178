// The order of the layers is set by the first stylesheet read.
import "./style/tokens.css";
import "./style/base.css";
// Before anything else is run: the phone opens its storage meanwhile.
import "./open-early.ts";
import { effect, signal } from "@preact/signals";
import type { ComponentType } from "preact";
import { config } from "zod/mini";
import { HOUR } from "../core/quantity/time-units-table.ts";
import type { AlarmKind } from "../core/run/alarm.ts";
import type { AlarmStatus } from "./alarm/status.ts";
import { App, fetchScreen, isBench } from "./app.tsx";
import type { Bell } from "./bell.ts";
import { type Clock, phoneClock } from "./clock.ts";
import { atDesk, type Told } from "./desk.ts";
import { drawInto } from "./draw-into.ts";
import { drawn, firstLook } from "./first-look.ts";
import { followAddress, followChoices, keepTime } from "./follow.ts";
import { openedEarly } from "./open-early.ts";
import { guardLinks } from "./parts/link-guard.ts";
import { askForPen, dropPen, pen } from "./pen.ts";
import {
  decisions,
  everyRecord,
  openDesk,
  readAgain,
  readEverything,
  takeOver,
} from "./reading.ts";
import {
  address,
  alarmStatus,
  isLoaded,
  opening,
  openRuns,
  settings,
  somethingSaved,
  updateWaiting,
} from "./state.ts";
import { openDatabase } from "./storage/database.ts";
import { rememberedLanguage } from "./storage/remembered.ts";
import { deviceId } from "./storage/settings.ts";
import { speak } from "./words/language.ts";
import { say } from "./words/say.ts";

// The content policy forbids code made from text: without this zod would try, and be reported.
config({ jitless: true });

/** Longer than this it is said that something is wrong, ms. */
const SLOW_TO_OPEN = 8000;
const CHANNEL = "second-pour";
const NO_BELL: AlarmStatus = {
  layer: "nothing",
  code: "no-bell",
  missing: ["no-bell"],
};

const newId = (): string => crypto.randomUUID();
const whyNot = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/**
 * What rings, and what watches the phone's clock: fetched once the first screen stands. Until they
 * are there nothing rings; where they cannot be fetched the status line says so, and to start anew,
 * for a browser does not fetch again what it once failed to.
 */
async function hangBell(
  clock: Clock,
  onHung: (bell: Bell, sheet: ComponentType) => void,
): Promise<void> {
  try {
    const [bell, time, { AlarmSheet }] = await Promise.all([
      import("./bell.ts"),
      import("./time-watch.ts"),
      import("./screens/alarm-sheet.tsx"),
    ]);
    onHung(bell.hangBell(clock), AlarmSheet);
    time.watchTime(clock);
  } catch {
    alarmStatus.value = NO_BELL;
  }
}

/** With the first thing that is really saved, the browser is asked once to keep it. */
function askOnceToKeep(): void {
  effect(() => {
    if (!somethingSaved.value || settings.peek().askedToKeep) return;
    import("./ask-once.ts").then(
      (asking) => asking.askOnce(),
      () => undefined,
    );
  });
}

/** What another window stored is read again here. */
function followOthers(channel: BroadcastChannel): void {
  channel.addEventListener("message", ({ data }: MessageEvent<Told>) => {
    // A window of another version may say it otherwise: it will be read at the next start.
    const told = data.stored === "run" ? readAgain(data.runId) : readEverything();
    told.catch(() => undefined);
  });
}

async function openStorage(clock: Clock): Promise<void> {
  const fail = (why: string) => {
    opening.value = { type: "failed", why };
  };
  // Another window, or a phone that is busy, may keep it waiting: it goes on trying all the same.
  const patience = clock.after(SLOW_TO_OPEN, () => {
    if (opening.value.type === "opening") fail(say.places.slowToOpen);
  });
  const news = {
    onSuperseded: () => {
      dropPen();
      fail(say.places.superseded);
    },
    // The next write opens it anew.
    onLost: () => undefined,
  };
  const onPart = (done: number, all: number) => {
    opening.value = { type: "working-out", done, all };
  };
  try {
    const { db, newer } = await openedEarly(news);
    if (newer) pen.value = "newer";
    else await askForPen(takeOver);
    const nameOf = async () => (newer ? "reader" : await deviceId(db, newId));
    const channel = new BroadcastChannel(CHANNEL);
    followOthers(channel);
    const announce = (told: Told) => channel.postMessage(told);
    const reopen = async () => {
      const again = await openDatabase(news);
      // A newer version has written meanwhile: this one only shows what is there.
      if (again.newer && pen.value !== "newer") {
        pen.value = "newer";
        throw new Error(say.places.superseded);
      }
      return again.db;
    };
    await openDesk({ db, reopen, clock, newId, announce }, nameOf, onPart);
    opening.value = { type: "ready" };
  } catch (error) {
    fail(whyNot(error));
  } finally {
    patience();
  }
}

/** Waits until the first screen is seen; a Bench on which nothing stands needs no more. */
async function standing(clock: Clock, draw: () => void): Promise<void> {
  const bare = openRuns.value.length === 0 && isBench(address.value);
  if (!bare) await fetchScreen(address.value).catch(() => undefined);
  draw();
  drawn(clock);
  await firstLook;
}

/** A practice that is over does not stay. */
async function tidyUp(): Promise<void> {
  if (opening.value.type !== "ready" || pen.value !== "mine") return;
  await (await import("./storage/demo.ts")).removeEndedPractice(atDesk().db, isLoaded);
}

/** Fetched and read before it is wanted; a failure shows when it is. */
async function readAhead(): Promise<void> {
  if (opening.value.type === "ready") await everyRecord().catch(() => undefined);
  await Promise.all([decisions(), import("./commands.ts"), tidyUp()]).catch(() => undefined);
}

async function start(clock: Clock): Promise<void> {
  document.documentElement.dataset.version = __APP_VERSION__;
  keepTime(clock);
  followAddress();
  followChoices();
  askOnceToKeep();
  guardLinks();
  let bell: Bell | undefined;
  const sheet = signal<ComponentType | undefined>(undefined);
  const pause = (ms: number) => new Promise<void>((resolve) => void clock.after(ms, resolve));
  // Nothing on the first screen needs the worker: it is fetched once that screen stands.
  const updates = () => import("./update.ts");
  const onUpdate = async () => (await updates()).applyUpdate(pause);
  // A language other than English is fetched before anything is said.
  await speak(rememberedLanguage());
  const onSound = (kind: AlarmKind) => bell?.sound(kind);
  const page = () => <App onSound={onSound} onUpdate={onUpdate} sheet={sheet} />;
  const draw = drawInto(document.getElementById("app"), page, clock);
  // Fetched while storage opens; a failure shows when it is drawn.
  fetchScreen(address.value).catch(() => undefined);
  await openStorage(clock);
  await standing(clock, draw);
  await hangBell(clock, (hung, shown) => {
    bell = hung;
    sheet.value = shown;
  });
  await readAhead();
  import("./outline.tsx").then(
    ({ keepOutline }) => keepOutline(clock),
    () => undefined,
  );
  const { watchForUpdate } = await updates();
  await watchForUpdate({
    onWaiting: () => {
      updateWaiting.value = true;
    },
    scheduleChecks: (check) => {
      clock.every(HOUR, check);
      document.addEventListener("visibilitychange", () => {
        if (document.visibilityState === "visible") check();
      });
    },
  });
}

void start(phoneClock);
