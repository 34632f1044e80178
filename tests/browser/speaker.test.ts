import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { HOUR, holdOf, OPENS, pass, putLog, untilStep } from "../support/phone/walk-page.ts";
import { waiting } from "../support/world/waiting.ts";

// What a phone may do to a page's sound, done by a stand-in: a desk does not take a speaker away.

const bar = barForTests({ size: "small" });

const PATIENT = { timeout: 10_000 };

const keepsAwake = () => {
  const lock = { release: () => Promise.resolve(), addEventListener: () => undefined };
  const request = () => Promise.resolve(lock);
  Object.defineProperty(navigator, "wakeLock", { value: { request } });
};

/** Keeps every context that is made, and can take one away as a call does on an iPhone. */
const mayInterrupt = () => {
  const made: AudioContext[] = [];
  const taken = new WeakSet<AudioContext>();
  class Watched extends AudioContext {
    constructor() {
      super();
      made.push(this);
    }
    override get state(): AudioContextState {
      return taken.has(this) ? "interrupted" : super.state;
    }
  }
  Reflect.set(globalThis, "AudioContext", Watched);
  Reflect.set(globalThis, "contexts", () => made.length);
  Reflect.set(globalThis, "interrupt", (yes: boolean) => {
    const last = made.at(-1);
    if (last === undefined) throw new RangeError("no context was made");
    if (yes) taken.add(last);
    else taken.delete(last);
    last.dispatchEvent(new Event("statechange"));
  });
};
const interrupt = (page: Page, yes: boolean) =>
  page.evaluate((is) => Reflect.get(globalThis, "interrupt")(is), yes);
const contexts = (page: Page) => page.evaluate<number>("contexts()");

/** Writes down what the one <audio> element is asked to play, on a phone that lacks the rest. */
const onlyMedia = () => {
  Reflect.deleteProperty(globalThis, "AudioContext");
  const plays: { loop: boolean; muted: boolean; src: string }[] = [];
  Reflect.set(globalThis, "plays", plays);
  const { play } = HTMLMediaElement.prototype;
  HTMLMediaElement.prototype.play = function () {
    plays.push({ loop: this.loop, muted: this.muted, src: this.src });
    Reflect.set(globalThis, "element", this);
    return play.call(this);
  };
};

const hasSession = () =>
  Object.defineProperty(navigator, "audioSession", { value: { type: "auto" } });
const session = (page: Page) => page.evaluate(() => Reflect.get(navigator, "audioSession").type);

type Code = keyof typeof said.alarm.status;
const untilSays = (page: Page, code: Code) =>
  page.locator(".status-line").getByText(said.alarm.status[code], { exact: true }).waitFor();

async function openWait(prepare: () => void) {
  await bar.afresh(prepare);
  await bar.page.addInitScript(keepsAwake);
  const log = waiting({ runId: "run-a", batch: "PB-1", from: OPENS, waitFor: HOUR });
  await putLog(bar, log, routes.run("run-a"), OPENS);
  await bar.page.locator(".status-line").waitFor();
  return bar;
}
const touch = () => bar.hands.touch([{ x: 180, y: 30 }], 80);

test("taken away by a call, it says so; given back, it rings again; a tap makes a new one", async () => {
  const { page } = await openWait(mayInterrupt);
  await touch();
  await untilSays(page, "sound-unheard");
  expect(await contexts(page)).toBe(1);
  await interrupt(page, true);
  await untilSays(page, "sound-blocked");
  await interrupt(page, false);
  await untilSays(page, "sound-unheard");
  expect(await contexts(page)).toBe(1);
  await interrupt(page, true);
  await untilSays(page, "sound-blocked");
  await touch();
  await untilSays(page, "sound-unheard");
  expect(await contexts(page)).toBe(2);
});

test("with no other way to sound, an <audio> element rises, then goes on at full strength", async () => {
  const { page, hands } = await openWait(onlyMedia);
  const heard = async () => {
    const plays = await page.evaluate<{ loop: boolean; muted: boolean; src: string }[]>("plays");
    return plays.filter(({ muted }) => !muted);
  };
  await touch();
  await untilSays(page, "sound-unheard");
  expect(await heard()).toEqual([]);
  await pass(page, HOUR);
  await page.locator(".alarm-sheet").waitFor();
  await expect.poll(async () => (await heard()).length, PATIENT).toBe(1);
  // A quarter of a minute later the rising recording is over.
  await page.evaluate(() => Reflect.get(globalThis, "element").dispatchEvent(new Event("ended")));
  await expect.poll(async () => (await heard()).length, PATIENT).toBe(2);
  const [rising, steady] = await heard();
  expect([rising?.loop, steady?.loop]).toEqual([false, true]);
  expect(steady?.src).not.toBe(rising?.src);
  await hands.hold(holdOf(page, said.alarm.heard));
  await page.waitForFunction(() => Reflect.get(globalThis, "element").paused);
  // Hushed, it does not begin again by itself.
  await page.evaluate(() => Reflect.get(globalThis, "element").dispatchEvent(new Event("ended")));
  expect((await heard()).length).toBe(2);
});

test("while a batch is made the silent switch is asked to be passed over, and after it no longer", async () => {
  const { page, hands } = await openWait(hasSession);
  expect(await session(page)).toBe("playback");
  await touch();
  await untilSays(page, "sound-unheard");
  expect(await session(page)).toBe("playback");
  await hands.hold(holdOf(page, said.run.done.curdleEarly ?? ""));
  await untilStep(page, "yield");
  await hands.tap(page.getByRole("button", { name: said.run.more, exact: true }));
  await hands.tap(page.getByRole("button", { name: said.run.abandon, exact: true }));
  await hands.tap(page.getByRole("radio", { name: said.run.abandonReasons[0] ?? "" }));
  await hands.hold(holdOf(page, said.run.abandonDone));
  await expect.poll(() => session(page), PATIENT).toBe("auto");
});
