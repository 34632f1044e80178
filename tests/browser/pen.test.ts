import { beforeEach, expect, onTestFinished, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { refusals } from "../../app/words/en/refusals.ts";
import { spanish } from "../../app/words/es.ts";
import { ENGLISH, tongue } from "../../app/words/tongue.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { handsOn } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import { speak } from "../support/phone/speak.ts";
import {
  type Bar,
  OPENS,
  pass,
  putLog,
  SECOND,
  shot,
  storedLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { finishPlain } from "../support/phone/wash-by-hand.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

const FOLLOWS = said.places.penElsewhere;
const followLine = ({ page }: Bar) => page.locator(".notices-line", { hasText: FOLLOWS });

/** A second window of the app on the same phone, at an address. */
async function secondWindow(hash: string): Promise<Bar> {
  const page = await bar.phone.context.newPage();
  await page.goto(bar.server.url + hash);
  await page.waitForSelector("main");
  return { ...bar, page, hands: await handsOn(page) };
}

async function atCurdle(): Promise<void> {
  const station = stationAt("run-a", "PB-1003", OPENS, "wet-filter");
  await putLog(bar, station.events, routes.run("run-a"), station.since);
  await untilStep(bar.page, "wet-filter");
}

test("the second window shows what the first one stores, and changes nothing until it takes over", async () => {
  await atCurdle();
  const other = await secondWindow(routes.run("run-a"));
  await followLine(other).waitFor();
  expect(await followLine(bar).count()).toBe(0);
  await untilStep(other.page, "wet-filter");
  await shot(other.page, "pen-elsewhere");

  const before = await storedLog(bar.page);
  await finishPlain(other, "wet-filter");
  await other.page
    .getByText(refusals["pen-elsewhere"]?.({}) ?? "")
    .first()
    .waitFor();
  expect(await storedLog(bar.page)).toEqual(before);

  await bar.page.bringToFront();
  await finishPlain(bar, "wet-filter");
  await expect.poll(async () => (await storedLog(bar.page)).length).toBeGreaterThan(before.length);
  const after = await storedLog(bar.page);
  expect(after.length).toBeGreaterThan(before.length);
  // The other window moves on by itself.
  await other.page.bringToFront();
  await expect
    .poll(async () => (await other.page.locator(".run-verb").textContent()) ?? "")
    .not.toContain(said.work.verbs["wet-filter"] ?? "?");

  await other.hands.tap(tapOf(other.page, said.places.takePen));
  await followLine(bar).waitFor();
  await followLine(other).waitFor({ state: "detached" });
  await other.page.close();
  // It is back where it was: nobody has to ask for it.
  await followLine(bar).waitFor({ state: "detached" });
});

test("whoever took over works on; the one it was taken from is told", async () => {
  await atCurdle();
  const other = await secondWindow(routes.run("run-a"));
  await followLine(other).waitFor();
  await pass(other.page, SECOND);
  await other.hands.tap(tapOf(other.page, said.places.takePen));
  await followLine(other).waitFor({ state: "detached" });
  const before = await storedLog(bar.page);
  await finishPlain(other, "wet-filter");
  await expect.poll(async () => (await storedLog(bar.page)).length).toBeGreaterThan(before.length);
  await other.page.close();
});

test("a phone that a newer version has written on is shown, and left as it is", async () => {
  const { page } = bar;
  await atCurdle();
  const before = await storedLog(page);
  await page.goto("about:blank");
  await page.goto(`${bar.server.url}icon.svg`);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("second-pour", 99);
        opening.onerror = () => reject(opening.error);
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore("moons");
        };
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      }),
  );
  await page.goto(bar.server.url + routes.run("run-a"));
  await untilStep(page, "wet-filter");
  await page.locator(".notices-line", { hasText: said.places.newerStorage }).waitFor();
  await shot(page, "pen-newer");
  await finishPlain(bar, "wet-filter");
  await page
    .getByText(refusals["newer-storage"]?.({}) ?? "")
    .first()
    .waitFor();
  expect(await storedLog(page)).toEqual(before);
});

test("the browser is asked once, with the first thing that is really saved, to keep it", async () => {
  await bar.page.addInitScript(() => {
    if (!("StorageManager" in globalThis)) return;
    const asked: string[] = [];
    Reflect.set(globalThis, "asked", asked);
    StorageManager.prototype.persisted = async () => false;
    StorageManager.prototype.persist = async () => {
      asked.push(document.documentElement.dataset.version ?? "");
      return false;
    };
  });
  const asked = () => bar.page.evaluate(() => Reflect.get(globalThis, "asked").length);
  await atCurdle();
  expect(await asked()).toBe(0);
  await finishPlain(bar, "wet-filter");
  await expect.poll(asked).toBe(1);
  await pass(bar.page, 12 * SECOND);
  await bar.page.locator(".notices-line", { hasText: said.kit.keeping.mayBeCleared }).waitFor();
  // What is saved in a later visit asks nobody again.
  await bar.page.reload();
  await finishPlain(bar, "first-pass");
  await untilStep(bar.page, "re-pour");
  await pass(bar.page, 12 * SECOND);
  expect(await asked()).toBe(0);
});

test("a language that one window chooses is spoken in the others", async () => {
  onTestFinished(() => {
    tongue.value = ENGLISH;
  });
  await atCurdle();
  const run = await secondWindow(routes.run("run-a"));
  const bench = await secondWindow(routes.bench);
  await followLine(run).waitFor();
  await bench.page.locator(".bench-row").waitFor();
  await speak(bar, spanish);
  for (const { page } of [run, bench]) {
    await page.locator('html[lang="es"]').waitFor();
    const nav = page.getByRole("navigation", { name: said.places.nav });
    await nav.getByText(said.places.shelf).waitFor();
    await page.getByText(said.places.penElsewhere).waitFor();
  }
  await untilStep(run.page, "wet-filter");
  await run.page.close();
  await bench.page.close();
});
