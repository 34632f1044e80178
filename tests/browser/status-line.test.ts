import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  type Bar,
  HOUR,
  holdOf,
  OPENS,
  pass,
  putLog,
  storedLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const RUN = routes.run("run-a");
const resting = stationAt("run-a", "PB-1003", OPENS, "curdle");

const keepsAwake = () => {
  const lock = { release: () => Promise.resolve(), addEventListener: () => undefined };
  const request = () => Promise.resolve(lock);
  Object.defineProperty(navigator, "wakeLock", { value: { request } });
};
/**
 * A speaker that stays shut until the glass was touched, and a screen that can be kept on. What
 * drives the browser counts as a touch in it whenever it looks at the page, so it is shut by hand.
 */
const shutSpeaker = () => {
  const lock = { release: () => Promise.resolve(), addEventListener: () => undefined };
  const request = () => Promise.resolve(lock);
  Object.defineProperty(navigator, "wakeLock", { value: { request } });
  let touched = false;
  addEventListener(
    "pointerdown",
    () => {
      touched = true;
    },
    { capture: true },
  );
  class Shut extends AudioContext {
    constructor(options?: AudioContextOptions) {
      super(options);
      if (!touched) void this.suspend();
    }

    override resume(): Promise<void> {
      return touched ? super.resume() : new Promise(() => undefined);
    }
  }
  Reflect.set(globalThis, "AudioContext", Shut);
};
const sleeps = () => {
  const request = () => Promise.reject(new DOMException("low battery", "NotAllowedError"));
  Object.defineProperty(navigator, "wakeLock", { value: { request } });
};
const isMute = () => {
  Reflect.deleteProperty(globalThis, "AudioContext");
  Reflect.deleteProperty(globalThis, "Audio");
};

const bar = barForTests({ size: "small" });

/** A rest that has just begun, on a phone that lacks what is taken from it. */
async function openResting(prepare?: () => void): Promise<void> {
  await bar.afresh(prepare);
  await putLog(bar, resting.events, RUN, resting.since);
  await untilStep(bar.page, "curdle");
}

const check = (page: Page) => page.getByRole("link", { name: said.alarm.checkSound, exact: true });

type Code = keyof typeof said.alarm.status;
const untilSays = (page: Page, code: Code) =>
  page.locator(".status-line").getByText(said.alarm.status[code], { exact: true }).waitFor();

async function checkSound({ page, hands }: Bar): Promise<void> {
  await hands.tap(page.getByRole("link", { name: said.places.kit, exact: true }));
  await hands.tap(tapOf(page, said.kit.sound.play));
  await hands.tap(tapOf(page, said.kit.sound.yes));
  await page.getByText("That counts for 12 hours").waitFor();
  await page.goto(page.url().replace(/#.*$/u, RUN));
  await untilStep(page, "curdle");
}

test("untouched, touched, sound checked, and twelve hours later: it says what holds", async () => {
  await openResting(shutSpeaker);
  const { page, hands } = bar;
  await untilSays(page, "sound-blocked");
  await hands.touch([{ x: 180, y: 30 }], 80);
  await untilSays(page, "sound-unheard");
  await checkSound(bar);
  await untilSays(page, "rings-here");
  await hands.hold(holdOf(page, said.handOver.clockDone));
  await untilSays(page, "rings-here-and-phone-clock");
  expect((await storedLog(page)).at(-1)).toMatchObject({
    type: "alarm.handed",
    visit: "curdle#1",
    dueAt: resting.since + HOUR,
    to: "phone-clock",
  });
  // A page that comes back has not been touched, but the phone's own clock still rings.
  await page.reload();
  await untilSays(page, "phone-clock");
  await hands.touch([{ x: 180, y: 30 }], 80);
  await untilSays(page, "rings-here-and-phone-clock");
  expect(await check(page).count()).toBe(0);
  // The phone's clock was set for the first deadline only, and the sound check has aged.
  await pass(page, HOUR);
  await hands.hold(holdOf(page, said.alarm.heard));
  await untilSays(page, "rings-here");
  await pass(page, 12 * HOUR);
  await untilSays(page, "sound-check-old");
});

test("a batch is being made and nobody has heard this phone: one line leads to the check and back", async () => {
  await openResting(keepsAwake);
  const { page, hands } = bar;
  await page.goto(page.url().replace(/#.*$/u, routes.bench));
  await page.locator(".bench-row").waitFor();
  await hands.tap(check(page));
  await hands.tap(tapOf(page, said.kit.sound.play));
  await page.getByText(said.kit.sound.ask).waitFor();
  await hands.tap(tapOf(page, said.kit.sound.yes));
  await hands.tap(page.getByRole("link", { name: said.kit.sound.back }));
  await page.locator(".bench-row").waitFor();
  await untilSays(page, "rings-here");
  expect(await check(page).count()).toBe(0);
  // It counts for one shift, and is never in the way of the work.
  await pass(page, 12 * HOUR + HOUR / 2);
  await hands.hold(holdOf(page, said.alarm.heard));
  await untilStep(page, "curdle");
  await check(page).waitFor();
  await hands.hold(holdOf(page, said.run.done.curdle ?? ""));
  await untilStep(page, "wet-filter");
});

test("the part that rings cannot be fetched: it says that nothing rings, and to start anew", async () => {
  await bar.afresh();
  const { page, phone } = bar;
  await putLog(bar, resting.events, routes.bench, resting.since);
  // Past the worker, as on a first visit whose signal is gone before all is there.
  const session = await phone.context.newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.setBypassServiceWorker", { bypass: true });
  await session.send("Network.setCacheDisabled", { cacheDisabled: true });
  await page.route("**/assets/bell-*.js", (route) => route.abort());
  await page.reload();
  await untilSays(page, "no-bell");
  await page.unroute("**/assets/bell-*.js");
  await page.reload();
  await page.locator('.status-line[data-layer="rings-on-return"]').waitFor();
  await session.detach();
});

test("the phone refuses to keep its screen on: it says that it may ring late", async () => {
  await openResting(sleeps);
  await bar.hands.touch([{ x: 180, y: 30 }], 80);
  await checkSound(bar);
  await untilSays(bar.page, "screen-lock-refused");
});

test("a browser with no sound says so, and the deadline still shows", async () => {
  await openResting(isMute);
  const { page } = bar;
  await untilSays(page, "no-sound");
  await pass(page, HOUR);
  await page.locator(".alarm-sheet").waitFor();
});

test("nobody heard it: the sound check counts for nothing", async () => {
  await openResting();
  const { page, hands } = bar;
  await page.goto(page.url().replace(/#.*$/u, routes.kit));
  await hands.tap(tapOf(page, said.kit.sound.play));
  await hands.tap(tapOf(page, said.kit.sound.no));
  await page.getByText(said.kit.sound.help).waitFor();
  await page.goto(page.url().replace(/#.*$/u, RUN));
  await untilSays(page, "sound-unheard");
});
