import type { CDPSession, Page } from "playwright-core";
import { routes } from "../../../app/routes.ts";
import { openPhone, untilStored } from "../../support/phone/browser.ts";
import { openTabs } from "../../support/phone/real-tabs.ts";
import { putOn } from "../../support/phone/walk-page.ts";
import type { AppServer } from "../../support/tool/server.ts";
import { say, target, title } from "./figures.ts";
import { threeRuns } from "./seeded.ts";
import { SLOWER } from "./start.ts";

/** How long each screen is watched, real time, s; a machine that others wait for may ask for less. */
const WATCHED = Number(process.env.WATCHED ?? 60);
/** A wait changes once a second: more often nothing need wake up, nor be drawn. Judgement. */
const ONCE_A_SECOND = 60;
const DRAWN_AT_MOST = 2 * ONCE_A_SECOND;
/** The minute is counted from outside, and begins and ends somewhere within a second. */
const SLACK = 1.1;
/** What comes late is there by then: rows, the bell, what is read behind the first screen, ms. */
const QUIETENS = 4000;

interface Woken {
  timer: number;
  interval: number;
  frame: number;
  long: number[];
}

/** Runs in the page before it: counts every call that wakes the page's thread. */
function countWaking(): void {
  const woken: Woken = { timer: 0, interval: 0, frame: 0, long: [] };
  Reflect.set(globalThis, "woken", woken);
  const count = (name: string, kind: "timer" | "interval" | "frame") => {
    const native: (call: unknown, ...rest: unknown[]) => unknown = Reflect.get(globalThis, name);
    Reflect.set(globalThis, name, (call: unknown, ...rest: unknown[]) =>
      native(
        (...args: unknown[]) => {
          woken[kind] += 1;
          if (typeof call === "function") Reflect.apply(call, undefined, args);
        },
        ...rest,
      ),
    );
  };
  count("setTimeout", "timer");
  count("setInterval", "interval");
  count("requestAnimationFrame", "frame");
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) woken.long.push(duration);
  }).observe({ type: "longtask" });
}

interface Busy extends Woken {
  /** Time the page's thread worked, ms a minute. */
  readonly ms: number;
  readonly styles: number;
  readonly layouts: number;
  /** Animations of the style sheets that go on by themselves. */
  readonly moving: number;
}

async function metrics(session: CDPSession): Promise<(name: string) => number> {
  const { metrics: all } = await session.send("Performance.getMetrics");
  return (name) => all.find((one) => one.name === name)?.value ?? 0;
}

const wokenOf = (page: Page): Promise<Woken> =>
  page.evaluate(() => structuredClone(Reflect.get(globalThis, "woken")));

/** What a page does by itself in a minute. */
async function watch(page: Page, session: CDPSession): Promise<Busy> {
  await page.waitForTimeout(QUIETENS);
  await session.send("Performance.enable");
  const [before, first] = [await metrics(session), await wokenOf(page)];
  await page.waitForTimeout(WATCHED * 1000);
  const [after, last] = [await metrics(session), await wokenOf(page)];
  const moving = await page.evaluate(
    () => document.getAnimations().filter((one) => one.playState === "running").length,
  );
  const minute = 60 / WATCHED;
  const since = (name: string) => (after(name) - before(name)) * minute;
  return {
    timer: (last.timer - first.timer) * minute,
    interval: (last.interval - first.interval) * minute,
    frame: (last.frame - first.frame) * minute,
    long: last.long.slice(first.long.length),
    ms: since("TaskDuration") * 1000,
    styles: since("RecalcStyleCount"),
    layouts: since("LayoutCount"),
    moving,
  };
}

function report(name: string, busy: Busy, timed: boolean): void {
  const { timer, interval, frame } = busy;
  say(`${name}: wake-ups`, `timers ${timer}, intervals ${interval}, frames ${frame} a minute`);
  target(`${name}: wake-ups a minute`, timer + interval + frame, ONCE_A_SECOND * SLACK, "");
  say(
    `${name}: page thread busy, ms a minute`,
    `${busy.ms.toFixed(0)} (styles ${busy.styles}, layouts ${busy.layouts}, moving ${busy.moving})`,
  );
  target(`${name}: styles worked out a minute`, busy.styles, DRAWN_AT_MOST, "");
  if (timed) target(`${name}: tasks longer than 50 ms`, busy.long.length, 0, "");
  if (busy.long.length > 0) say("  they took, ms", busy.long.map((ms) => ms.toFixed(0)).join(", "));
}

/** Puts the runs on a phone and slows its page down. */
async function prepare(page: Page, url: string, hash: string): Promise<CDPSession> {
  await page.addInitScript(countWaking);
  await page.goto(url);
  await untilStored(page);
  await putOn(page, "events", threeRuns(Date.now()));
  await page.goto("about:blank");
  await page.goto(url + hash);
  await page.locator("main").waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  return session;
}

async function inFront(app: AppServer, name: string, hash: string): Promise<void> {
  const phone = await openPhone({ origin: app.origin });
  try {
    const session = await prepare(phone.page, app.url, hash);
    report(name, await watch(phone.page, session), true);
  } finally {
    await phone.close();
  }
}

async function outOfSight(app: AppServer): Promise<void> {
  const tabs = await openTabs();
  try {
    const session = await prepare(tabs.page, app.url, routes.bench);
    await tabs.leave();
    report("Bench, another tab in front", await watch(tabs.page, session), false);
  } finally {
    await tabs.close();
  }
}

async function floor(bare: AppServer): Promise<void> {
  const phone = await openPhone({ origin: bare.origin });
  try {
    await phone.page.addInitScript(countWaking);
    await phone.page.goto(bare.url);
    await untilStored(phone.page);
    const session = await phone.context.newCDPSession(phone.page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    report("bare page", await watch(phone.page, session), false);
  } finally {
    await phone.close();
  }
}

/** What the app does while nobody touches it and three batches wait. */
export async function awake(app: AppServer, bare: AppServer): Promise<void> {
  title(`Waiting, three runs, ${WATCHED} s each, page thread ${SLOWER} x slower`);
  await floor(bare);
  await inFront(app, "Bench", routes.bench);
  await inFront(app, "run screen, a drip", routes.run("run-drip"));
  await inFront(app, "dim face", routes.dim("run-drip"));
  await outOfSight(app);
}
