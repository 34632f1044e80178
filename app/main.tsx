// The order of the layers is set by the first stylesheet read.
import "./style/tokens.css";
import "./style/base.css";
import { effect } from "@preact/signals";
import { render } from "preact";
import { config } from "zod/mini";
import { type ClockSample, clockJump } from "./alarm/clock-jump.ts";
import { App } from "./app.tsx";
import { hangBell } from "./bell.ts";
import { type Clock, phoneClock } from "./clock.ts";
import { openDesk, readAgain } from "./commands.ts";
import { guardLinks } from "./parts/link-guard.ts";
import { address, clockMoved, notice, now, opening, settings, updateWaiting } from "./state.ts";
import { openDatabase } from "./storage/database.ts";
import { deviceId } from "./storage/settings.ts";
import { say } from "./words/say.ts";

// The content policy forbids code made from text: without this zod would try, and be reported.
config({ jitless: true });

const TICK = 1000;
const HOUR = 3_600_000;
const CHANNEL = "second-pour";

const newId = (): string => crypto.randomUUID();
const whyNot = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Redraws once a second, and whenever the page comes back into sight. */
function keepTime(clock: Clock): void {
  let visible = document.visibilityState === "visible";
  let before: ClockSample = { wall: clock.now(), mono: clock.mono(), visible };
  const tick = () => {
    const sample = { wall: clock.now(), mono: clock.mono(), visible };
    const jump = clockJump(before, sample);
    if (jump !== null) clockMoved.value = Math.round(jump);
    before = sample;
    visible = document.visibilityState === "visible";
    now.value = sample.wall;
    const shown = notice.value;
    if (shown !== undefined && shown.until <= sample.wall) notice.value = undefined;
  };
  tick();
  clock.every(TICK, tick);
  document.addEventListener("visibilitychange", () => {
    visible = false;
    tick();
  });
}

function followAddress(): void {
  const read = () => {
    address.value = location.hash;
  };
  addEventListener("hashchange", read);
  read();
}

function followTheme(): void {
  effect(() => {
    const { theme } = settings.value;
    if (theme === "auto") delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = theme;
  });
}

async function openStorage(clock: Clock): Promise<void> {
  const fail = (why: string) => {
    opening.value = { type: "failed", why };
  };
  try {
    const db = await openDatabase({
      onSuperseded: () => fail(say.places.superseded),
      onLost: () => fail(say.places.connectionLost),
    });
    const device = await deviceId(db, newId);
    const channel = new BroadcastChannel(CHANNEL);
    channel.addEventListener("message", (event) => {
      if (typeof event.data === "string") void readAgain(event.data);
    });
    const announce = (runId: string) => channel.postMessage(runId);
    await openDesk({ db, clock, device, newId, announce });
    opening.value = { type: "ready" };
  } catch (error) {
    fail(whyNot(error));
  }
}

async function start(clock: Clock): Promise<void> {
  document.documentElement.dataset.version = __APP_VERSION__;
  keepTime(clock);
  followAddress();
  followTheme();
  guardLinks();
  const bell = hangBell(clock);
  const pause = (ms: number) => new Promise<void>((resolve) => void clock.after(ms, resolve));
  // Nothing on the first screen needs the worker: it is fetched once that screen stands.
  const updates = () => import("./update.ts");
  const onUpdate = async () => (await updates()).applyUpdate(pause);
  const root = document.getElementById("app");
  if (root !== null) {
    render(<App onSound={bell.sound} onUpdate={onUpdate} />, root);
  }
  await openStorage(clock);
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
