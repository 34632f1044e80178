import type { Page } from "playwright-core";
import { beforeEach, expect, onTestFinished, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { handsOn } from "../support/phone/hands.ts";
import { loopsOn, noteLoops } from "../support/phone/hear.ts";
import { said } from "../support/phone/said.ts";
import {
  clockOf,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  pass,
  putLog,
  SECOND,
  shot,
  storedLog,
  untilStep,
} from "../support/phone/walk-page.ts";
import { finishPlain } from "../support/phone/wash-by-hand.ts";
import { tellStatusAtAlarm } from "../support/phone/witness.ts";
import { started } from "../support/world/play-run.ts";

const MILK = 1000;
/** A batch whose rest begins as the tests' day does. */
const resting = started("run-rest", "PB-1003", OPENS - 23 * MINUTE)
  .finish({}, 20)
  .finish({ answer: { of: "milk", ml: MILK } }, 2)
  .finish({}, 1);
const RUN = routes.run("run-rest");

const playing = async (page: Page) => (await loopsOn(page)).playing;
const untilPlaying = (page: Page, sounds: number) =>
  page.waitForFunction((n) => Reflect.get(globalThis, "loops").playing === n, sounds);

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh(noteLoops);
});

const sheet = (page: Page) => page.locator(".alarm-sheet");

test("a deadline rings when it comes, on whatever screen, until a hold answers it", async () => {
  const { page, hands } = bar;
  await putLog(bar, resting.events, "#/specs");
  // The first touch lets the page sound.
  await hands.tap(page.getByRole("heading", { name: said.specs.title }));
  await pass(page, HOUR - 30 * SECOND);
  expect(await sheet(page).count()).toBe(0);
  expect(await playing(page)).toBe(0);
  await pass(page, 30 * SECOND);
  await sheet(page).waitFor();
  await untilPlaying(page, 1);
  expect(await sheet(page).textContent()).toMatch(/Pear Beacon: Rest(due now|\d+ s late)/u);

  await hands.tap(holdOf(page, said.alarm.heard));
  expect((await storedLog(page)).length).toBe(resting.events.length);
  await hands.holdTruly(holdOf(page, said.alarm.heard));
  await sheet(page).waitFor({ state: "detached" });
  await untilPlaying(page, 0);
  expect(new URL(page.url()).hash).toBe(RUN);
  const heard = (await storedLog(page)).at(-1);
  expect(heard).toMatchObject({ type: "alarm.heard", visit: "curdle#1", dueAt: OPENS + HOUR });
});

test("the page was closed: an hour late it rings at once and says how late", async () => {
  await putLog(bar, resting.events);
  const { phone, server } = bar;
  const page = await phone.context.newPage();
  onTestFinished(() => page.close());
  await bar.page.close();
  await phone.context.clock.fastForward(2 * HOUR + 5 * MINUTE);
  await page.addInitScript(noteLoops);
  await page.addInitScript(tellStatusAtAlarm);
  // Nothing may sound before the page is touched, and the status line says so. To look at the page
  // from here would count as a touch, so the page itself is asked to tell.
  const told = page.waitForEvent("console", (line) => line.text().startsWith("at the alarm"));
  await page.goto(server.url);
  expect((await told).text()).toBe(`at the alarm: ${said.alarm.status["sound-blocked"]}`);
  const hands = await handsOn(page);
  await sheet(page).waitFor();
  expect(await sheet(page).textContent()).toContain("1 h 05 min late");
  await shot(page, "alarm-late");
  await hands.touch([{ x: 180, y: 30 }], 80);
  await untilPlaying(page, 1);

  const at = await clockOf(page);
  await hands.hold(holdOf(page, said.alarm.heard));
  await sheet(page).waitFor({ state: "detached" });
  await untilPlaying(page, 0);
  const heard = (await storedLog(page)).at(-1);
  expect(heard).toMatchObject({ type: "alarm.heard", visit: "curdle#1", dueAt: OPENS + HOUR });
  expect(Math.abs((heard?.at ?? 0) - at)).toBeLessThan(30 * SECOND);
  // It is over, so the main action is to end it.
  await finishPlain({ ...bar, page, hands }, "curdle");
  await untilStep(page, "wet-filter");
});

test("not acted on, it asks again after a quarter of an hour", async () => {
  const { page, hands } = bar;
  await putLog(bar, resting.events, RUN);
  await pass(page, HOUR);
  await hands.hold(holdOf(page, said.alarm.heard));
  await sheet(page).waitFor({ state: "detached" });
  await pass(page, 15 * MINUTE - 30 * SECOND);
  expect(await sheet(page).count()).toBe(0);
  await pass(page, 30 * SECOND);
  await sheet(page).waitFor();
  expect((await storedLog(page)).filter(({ type }) => type === "alarm.heard").length).toBe(1);
});
