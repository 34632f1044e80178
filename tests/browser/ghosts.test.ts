import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { SIZES } from "../support/phone/browser.ts";
import type { Place } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import {
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  pass,
  putLog,
  storedLog,
  tapOf,
} from "../support/phone/walk-page.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const RUN = routes.run("run-a");

const bar = barForTests({ size: "small" });

/** Small whole numbers that look like chance and are the same each time. */
function chance(seed: number) {
  let state = seed;
  return (below: number): number => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

interface Scene {
  readonly step: string;
  readonly size: keyof typeof SIZES;
  /** What is tapped first: opens the pad. */
  readonly opens?: string;
  /** How long after the step began, ms. */
  readonly later?: number;
}

const SCENES: readonly Scene[] = [
  { step: "build", size: "small" },
  { step: "curdle", size: "small" },
  { step: "curdle", size: "usual", later: 2 * HOUR },
  { step: "check-clear", size: "usual" },
  { step: "slow-drip", size: "small", opens: said.run.collected },
  { step: "yield", size: "usual", opens: said.run.typeAmount },
  { step: "top-up", size: "small" },
  { step: "bottle", size: "usual" },
];

async function enter({ step, size, opens, later }: Scene) {
  const { events, since } = stationAt("run-a", "PB-1003", OPENS, step);
  await bar.afresh();
  const { page, hands } = bar;
  await page.setViewportSize(SIZES[size]);
  await putLog(bar, events, RUN, since);
  await page.locator("h1").waitFor();
  if (opens !== undefined) {
    await hands.tap(tapOf(page, opens));
    await hands.tap(tapOf(page, "7"));
  }
  if (later !== undefined) {
    await pass(page, later);
    await page.locator(".alarm-sheet").waitFor();
  }
  return events;
}

/** Everything on the screen that a contact might have changed. */
const chosen = async () => {
  const { page } = bar;
  const texts = (selector: string) => page.locator(selector).allTextContents();
  return {
    hash: new URL(page.url()).hash,
    heading: await texts("h1"),
    rings: await texts(".alarm-sheet-what"),
    typed: await page
      .locator(".number-pad-field")
      .evaluateAll((fields) => fields.map((field) => field.getAttribute("value"))),
    counts: await texts(".stepper-value"),
    chips: await texts('[aria-checked="true"]'),
    ticked: await texts('[aria-pressed="true"]'),
    more: await page.locator(".run-more").count(),
    wet: await page.locator('[data-wet="true"]').count(),
  };
};

/** Contacts that are each too short for a finger, twenty a second: alone, together, overlapping. */
async function rain(roll: (below: number) => number, size: keyof typeof SIZES, drops: number) {
  const { width, height } = SIZES[size];
  const place = (): Place => ({ x: roll(width), y: roll(height) });
  let fallen = 0;
  const fall = () => {
    const lasts = roll(59);
    const after = roll(44);
    const kind = roll(6);
    if (kind === 0) {
      fallen += 2;
      return bar.hands.splash([place(), place()], lasts, after);
    }
    const together = kind === 1 ? 2 + roll(2) : 1;
    fallen += together;
    return bar.hands.touch(Array.from({ length: together }, place), lasts, after);
  };
  while (fallen < drops) await Promise.all(Array.from({ length: 50 }, fall));
  return fallen;
}

const DROPS = 10_000;

test(`${DROPS} drops at twenty a second complete no step and change no figure`, async () => {
  let fallen = 0;
  for (const [at, scene] of SCENES.entries()) {
    const where = `${scene.step} ${at}`;
    const events = await enter(scene);
    const before = await chosen();
    fallen += await rain(chance(20_260_310 + at), scene.size, DROPS / SCENES.length);
    expect(await chosen(), where).toEqual(before);
    expect(await storedLog(bar.page), where).toEqual(events);
    // It asks about wet hands, beneath whatever lies over it.
    expect(await holdOf(bar.page, said.run.wet.ask).count(), where).toBe(1);
  }
  expect(fallen).toBeGreaterThanOrEqual(DROPS);
}, 120_000);

test("the glass is not deaf afterwards: the next finger counts", async () => {
  await enter({ step: "pour", size: "small" });
  await rain(chance(7), "small", 200);
  await bar.hands.hold(holdOf(bar.page, said.run.done.pour ?? ""));
  await bar.page.getByRole("heading", { name: said.work.verbs.curdle ?? "" }).waitFor();
});

const primary = () => bar.page.locator(".run-actions .hold-button").last();

test("three drops within 20 s offer one giant target, and one hold brings everything back", async () => {
  const events = await enter({ step: "pour", size: "small" });
  const { page, hands } = bar;
  const ask = holdOf(page, said.run.wet.ask);
  const drop = () => hands.touch([{ x: 180, y: 300 }], 20, 500);
  await drop();
  await drop();
  expect(await ask.count()).toBe(0);
  await drop();
  await ask.waitFor();
  await hands.tap(ask);
  expect(await page.locator('.run[data-wet="true"]').count()).toBe(0);
  await hands.hold(ask);
  await page.locator('.run[data-wet="true"]').waitFor();
  await page.locator(".app-places").waitFor({ state: "hidden" });
  const box = await primary().boundingBox();
  expect(box?.height).toBeGreaterThan(640 * 0.6);
  expect(box?.y).toBeGreaterThan(640 / 3 - 24);
  expect(await page.locator("button:visible, a:visible").count()).toBe(2);
  // A hold that is long enough for dry hands is not long enough now.
  await hands.hold(primary());
  expect(await storedLog(page)).toEqual(events);
  await hands.hold(holdOf(page, said.run.wet.all));
  expect(await page.locator('.run[data-wet="true"]').count()).toBe(1);
  const { x = 0, y = 0 } = (await holdOf(page, said.run.wet.all).boundingBox()) ?? {};
  await hands.touch([{ x: x + 20, y: y + 20 }], 920);
  await page.locator('.run[data-wet="false"]').waitFor();
  await page.locator(".app-places").waitFor();
});

test("with wet hands every step is one target, and its hold does the step", async () => {
  await enter({ step: "pour", size: "small" });
  const { page, hands } = bar;
  for (let at = 0; at < 3; at += 1) await hands.touch([{ x: 180, y: 300 }], 20, 500);
  await hands.hold(holdOf(page, said.run.wet.ask));
  await page.locator('.run[data-wet="true"]').waitFor();
  await hands.touch([{ x: 180, y: 450 }], 920);
  await page.getByRole("heading", { name: said.work.verbs.curdle ?? "" }).waitFor();
  expect(await page.locator('.run[data-wet="true"]').count()).toBe(1);
  await pass(page, 70 * MINUTE);
  const sheet = page.locator(".alarm-sheet");
  await sheet.waitFor();
  const heard = await holdOf(page, said.alarm.heard).boundingBox();
  expect(heard?.height).toBeGreaterThan(640 * 0.6);
  await hands.hold(holdOf(page, said.alarm.heard));
  expect(await sheet.count()).toBe(1);
  await hands.touch([{ x: 180, y: 500 }], 920);
  await sheet.waitFor({ state: "detached" });
});

test("keys alone: Page Down twice, or kept down, is a hold; once, or Page Up between, is not", async () => {
  const events = await enter({ step: "pour", size: "small" });
  const { page, hands } = bar;
  const verb = (step: string) =>
    page.getByRole("heading", { name: said.work.verbs[step] ?? "", exact: true });
  const pressAgain = page.getByText(said.run.pressAgain);
  await hands.key("PageDown", 40);
  await pressAgain.waitFor();
  expect(await primary().evaluate((one) => one === document.activeElement)).toBe(true);
  await hands.key("PageUp", 40);
  await pressAgain.waitFor({ state: "detached" });
  await hands.key("PageDown", 40, 200);
  await hands.key("PageDown", 40, 1300);
  expect(await storedLog(page)).toEqual(events);
  await hands.key("PageDown", 40, 200);
  await verb("curdle").waitFor();
  await hands.key("PageDown", 590, 1000);
  expect(await verb("curdle").count()).toBe(1);
  await hands.key("PageDown", 700, 2000);
  await verb("wet-filter").waitFor();
  expect((await storedLog(page)).filter(({ type }) => type === "step.finished").length).toBe(
    events.filter(({ type }) => type === "step.finished").length + 2,
  );
});

test("keys go through the answers one by one, take a figure on the pad, and come back from it", async () => {
  await enter({ step: "check-clear", size: "small" });
  const { page, hands } = bar;
  const focused = () => page.locator(":focus .hold-button-label").textContent();
  for (const look of ["cloudy", "hazy", "clear", "cloudy"] as const) {
    await hands.key("ArrowRight", 40, 1500);
    expect(await focused()).toBe(said.run.outcomes[look]);
  }
  await enter({ step: "yield", size: "small" });
  await bar.hands.key("PageDown", 40, 1500);
  await bar.hands.key("PageDown", 40, 300);
  await bar.page.locator(".run-pad").waitFor();
  await bar.hands.key("PageUp", 40);
  await bar.page.locator(".run-pad").waitFor({ state: "detached" });
});
