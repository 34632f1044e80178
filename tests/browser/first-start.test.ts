import type { Page } from "playwright-core";
import { afterEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { ENGLISH, tongue } from "../../app/words/tongue.ts";
import { everyLook } from "../support/look/every-look.ts";
import { note } from "../support/look/note.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { speak } from "../support/phone/speak.ts";
import {
  clockOf,
  goTo,
  holdOf,
  OPENS,
  putLog,
  putOn,
  shot,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "../support/phone/walk-page.ts";
import { finishPlain, tickAll, waitOut } from "../support/phone/wash-by-hand.ts";
import { demoSpec, planned, started } from "../support/world/play-run.ts";
import { TONGUES } from "../support/world/tongues.ts";

const words = said.first;

const bar = barForTests({ size: "small" });

afterEach(() => {
  tongue.value = ENGLISH;
});

const offer = (page: Page) => page.getByRole("heading", { name: words.title });

async function begin(): Promise<Page> {
  await bar.afresh();
  await offer(bar.page).waitFor();
  await bar.hands.tap(tapOf(bar.page, words.practise));
  await untilStep(bar.page, "build");
  await bar.page.getByText(words.mark).waitFor();
  return bar.page;
}

/** Holds what the app offers as planned, whatever the amount. */
const asPlanned = (page: Page) =>
  bar.hands.hold(page.locator(".hold-button").filter({ hasText: said.run.asPlanned("").trim() }));

async function toTheDrip(page: Page): Promise<void> {
  await tickAll(bar);
  await finishPlain(bar, "build");
  await untilStep(page, "milk");
  await asPlanned(page);
  await untilStep(page, "pour");
  await finishPlain(bar, "pour");
  await untilStep(page, "curdle");
  await waitOut(bar);
  await finishPlain(bar, "curdle");
  await untilStep(page, "wet-filter");
  await finishPlain(bar, "wet-filter");
  await untilStep(page, "first-pass");
  await waitOut(bar);
  await finishPlain(bar, "first-pass");
  await untilStep(page, "re-pour");
  await bar.hands.tap(tapOf(page, said.run.typeAmount));
  await typeOnPad(bar, "120");
  await untilStep(page, "check-clear");
  await waitOut(bar);
  await bar.hands.hold(holdOf(page, said.run.outcomes.clear));
  await untilStep(page, "slow-drip");
}

async function toTheEnd(page: Page): Promise<void> {
  const { hands } = bar;
  await waitOut(bar);
  await hands.tap(tapOf(page, said.run.collected));
  await typeOnPad(bar, "500");
  await finishPlain(bar, "slow-drip");
  await untilStep(page, "yield");
  await hands.tap(tapOf(page, said.run.typeAmount));
  await typeOnPad(bar, "640");
  await untilStep(page, "top-up");
  await asPlanned(page);
  await untilStep(page, "bottle");
  await hands.hold(page.locator(".hold-button").last());
  await untilStep(page, "label");
  await finishPlain(bar, "label");
  await page.getByRole("heading", { name: words.over }).waitFor();
}

test("a new phone offers a practice: the whole wash by hand, and nothing of it stays", async () => {
  const page = await begin();
  await bar.phone.context.setOffline(true);
  const begun = performance.now();
  const clock = await clockOf(page);
  await toTheDrip(page);
  // Left in the middle and come back to, it is where it was.
  await page.reload();
  await untilStep(page, "slow-drip");
  await toTheEnd(page);
  // Hands that never hesitate, and waits that the test's clock went past.
  const hands = performance.now() - begun;
  const waited = Math.max(0, (await clockOf(page)) - clock - hands);
  note(
    `practice: ${Math.round(hands / 1000)} s of taps and holds, ${Math.round(waited / 1000)} s of waits`,
  );
  await shot(page, "practice-over");
  // No list hears of it.
  await goTo(page, routes.shelf);
  await page.getByText(said.shelf.empty, { exact: true }).waitFor();
  expect(await page.getByText(words.name).count()).toBe(0);
  await goTo(page, routes.logbook);
  await page.getByText(said.logbook.empty, { exact: true }).waitFor();
  expect(await page.getByText(words.name).count()).toBe(0);
  await page.goBack();
  await page.goBack();
  await bar.hands.tap(tapOf(page, words.done));
  await page.getByText(words.gone).waitFor();
  expect(await storedLog(page)).toEqual([]);
  await offer(page).waitFor();
  await bar.phone.context.setOffline(false);
}, 120_000);

test("left in the middle it can be given up at once; over and forgotten, it goes by itself", async () => {
  let page = await begin();
  await bar.hands.tap(tapOf(page, words.leave));
  await page.getByText(words.gone).waitFor();
  expect(await storedLog(page)).toEqual([]);

  page = await begin();
  await toTheDrip(page);
  await toTheEnd(page);
  // Somebody still looks at it: its last step may be taken back, even after the page began anew.
  await page.reload();
  await page.getByRole("heading", { name: words.over }).waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await bar.hands.tap(tapOf(page, said.run.more));
  await bar.hands.tap(tapOf(page, said.run.undoLast));
  await untilStep(page, "label");
  await finishPlain(bar, "label");
  await page.getByRole("heading", { name: words.over }).waitFor();
  await page.goto(bar.server.url);
  await offer(page).waitFor();
  await expect.poll(() => storedLog(page)).toEqual([]);
}, 120_000);

test("a phone on which something was made is not asked again; Kit still has it", async () => {
  await bar.afresh();
  await putLog(
    bar,
    started("run-1", "PB-1", OPENS, planned(demoSpec("Pear Beacon"))).events,
    "",
    OPENS,
  );
  await bar.page.locator(".bench-row").waitFor();
  expect(await offer(bar.page).count()).toBe(0);
  await goTo(bar.page, routes.kit);
  await tapOf(bar.page, words.practise).waitFor();
});

test("nor is one that holds a spec of its own; the demo's specs are none", async () => {
  await bar.afresh();
  const own = { ...demoSpec("Pear Beacon"), id: "own", name: "Ours", demo: false };
  await offer(bar.page).waitFor();
  await goTo(bar.page, routes.specs);
  await bar.hands.tap(tapOf(bar.page, said.specs.putDemo));
  await bar.page.locator(".specs-entry").first().waitFor();
  await goTo(bar.page, routes.bench);
  await offer(bar.page).waitFor();
  await putOn(bar.page, "specs", [own]);
  await bar.page.reload();
  // Kit is drawn only once everything was read.
  await goTo(bar.page, routes.kit);
  await tapOf(bar.page, words.practise).waitFor();
  await goTo(bar.page, routes.bench);
  await bar.page.getByText(said.bench.empty, { exact: true }).waitFor();
  expect(await offer(bar.page).count()).toBe(0);
});

test("a practice takes no turn on the prep list", async () => {
  await begin();
  await goTo(bar.page, routes.days);
  await bar.page.getByText(said.days.empty, { exact: true }).waitFor();
});

test("the invented history is offered beside it, and ends the offer", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await offer(page).waitFor();
  await hands.tap(tapOf(page, said.learnt.demo.put));
  await offer(page).waitFor({ state: "detached" });
});

test("readable on both phones, in both themes and every language; nothing is cut", async () => {
  const found: Record<string, string[]> = {};
  await bar.afresh();
  const { page } = bar;
  await page.locator(".first-start h2").waitFor();
  for (const [, spoken] of TONGUES) {
    await speak(bar, spoken);
    await goTo(page, routes.bench);
    await page.locator(".first-start h2").waitFor();
    Object.assign(found, await everyLook(page, `first-start-${spoken.language}`));
  }
  expect(found).toEqual({});
});
