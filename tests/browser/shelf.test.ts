import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { foldRun } from "../../core/run/fold.ts";
import { faultsOf } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  OPENS,
  putLog,
  putOn,
  shot,
  storedLog,
  tapOf,
} from "../support/phone/walk-page.ts";
import { DEMO_SPECS } from "../support/world/demo-bar.ts";
import { madeWhole, type Played, started } from "../support/world/play-run.ts";

const words = said.shelf;
const DAY = 24 * HOUR;

const bar = barForTests({ size: "small" });

/** A batch of 4,500 ml, its serve as the spec has it, made so many days before the tests' day. */
const made = (id: string, batch: string, daysAgo: number, keeps: number): Played => {
  const at = OPENS - daysAgo * DAY;
  return madeWhole(started(id, batch, at), { yield: 3700, topUp: 450, useBy: at + keeps * DAY });
};

const SERVE = started("x", "x", OPENS).run.plan.spec.serve.pour;
const ALL = Math.floor(4500 / SERVE);

async function typeFigure(figure: string): Promise<void> {
  for (const key of figure) {
    await bar.hands.tap(tapOf(bar.page, key === "." ? said.run.mark : key));
  }
}

const stocked = async (id: string) => {
  const events = (await storedLog(bar.page)).filter(({ runId }) => runId === id);
  return foldRun(events)?.stockPoured.map(({ count, unit }) => [count, unit]);
};

/** The page in both themes, for the eye. */
async function look(name: string): Promise<void> {
  if (process.env.SHOTS !== "1") return;
  for (const colorScheme of ["dark", "light"] as const) {
    await bar.page.emulateMedia({ colorScheme });
    await shot(bar.page, `${name}-${colorScheme}`);
  }
  await bar.page.emulateMedia({ colorScheme: "dark" });
}

test("a service is poured out in serves, taken back within its eight seconds, and counted in bottles", async () => {
  const { page, hands } = bar;
  const late = made("late", "PB-2", 2, 12);
  const soon = made("soon", "PB-1", 3, 7);
  await putLog(bar, [...late.events, ...soon.events], routes.shelf, OPENS);
  const rows = page.locator(".shelf-row");
  const left = () => rows.first().locator(".shelf-serves").textContent();
  await rows.nth(1).waitFor();
  // The earliest use-by first.
  expect(await page.locator(".shelf-batch").allTextContents()).toEqual(["PB-1", "PB-2"]);
  expect(await left()).toBe(words.serves(ALL));
  await look("shelf-two");

  await hands.tap(tapOf(page, words.pour.open("PB-1")));
  await typeFigure("12");
  await page.locator(".number-pad-note", { hasText: `leaves ${ALL - 12} serves` }).waitFor();
  await look("shelf-pour");
  expect(await faultsOf(page)).toEqual([]);
  await hands.hold(holdOf(page, words.pour.take));
  await page.getByText(words.serves(ALL - 12)).waitFor();
  await page.getByText(words.pour.done("12 serves")).waitFor();
  expect(await stocked("soon")).toEqual([[12, "serves"]]);
  await hands.tap(tapOf(page, said.places.undo));
  await rows.first().getByText(words.serves(ALL)).waitFor();

  await hands.tap(tapOf(page, words.pour.open("PB-1")));
  await hands.tap(page.getByRole("radio", { name: words.pour.ways.bottles, exact: true }));
  await typeFigure("1.5");
  await hands.hold(holdOf(page, words.pour.take));
  await page.getByText(words.serves(Math.floor((4500 - 1125) / SERVE))).waitFor();
  expect(await stocked("soon")).toEqual([[1.5, "bottles"]]);
  // And from the log, later.
  await goTo(page, routes.batch("soon"));
  await hands.tap(tapOf(page, said.batch.correct));
  await hands.tap(tapOf(page, said.batch.takeBackName("Poured out: 1.5 bottles (1,125 ml)")));
  await goTo(page, routes.shelf);
  await rows.first().getByText(words.serves(ALL)).waitFor();
});

test("more poured than there was: nothing below nothing, and somebody is asked", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await putLog(bar, made("a", "PB-1", 2, 9).events, routes.shelf, OPENS);
  await hands.tap(tapOf(page, words.pour.open("PB-1")));
  await hands.tap(page.getByRole("radio", { name: words.pour.ways.bottles, exact: true }));
  await typeFigure("8");
  await page
    .locator(".number-pad-note", { hasText: words.pour.more("6,000 ml", "4,500 ml") })
    .waitFor();
  await hands.hold(holdOf(page, words.pour.take));
  await page.getByText(words.over.ask("1,500 ml")).waitFor();
  expect(await page.locator(".shelf-serves").textContent()).toBe(words.serves(0));
  await look("shelf-over");
  await hands.tap(tapOf(page, words.over.gone));
  await page.locator('[aria-checked="true"]', { hasText: words.end.ways.spent }).waitFor();
  await hands.hold(holdOf(page, words.end.take));
  await page.getByRole("heading", { name: words.goneTitle, exact: true }).waitFor();
  expect(await page.locator(".shelf-row").count()).toBe(0);
});

test("past its use-by it is discarded with its reason, and that can be taken back", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  const old = made("old", "PB-0", 60, 7);
  const past = made("past", "PB-1", 9, 7);
  await putLog(bar, [...old.events, ...past.events], routes.shelf, OPENS);
  // What nobody took off the shelf for weeks does not stand in the way.
  await page.getByText(words.forgotten.says(1)).waitFor();
  expect(await page.locator(".shelf-row").count()).toBe(1);
  expect(await tapOf(page, words.pour.open("PB-1")).count()).toBe(0);
  await hands.tap(tapOf(page, words.end.open("PB-1")));
  await look("shelf-end");
  expect(await faultsOf(page)).toEqual([]);
  await hands.hold(holdOf(page, words.end.take));
  await page.getByText("PB-1: Discarded: past its use-by").waitFor();
  await page.locator(".shelf-gone", { hasText: "Discarded: past its use-by" }).waitFor();
  await look("shelf-gone");
  await hands.tap(tapOf(page, said.places.undo));
  await page.locator(".shelf-row").waitFor();
  await hands.tap(tapOf(page, words.forgotten.show));
  await page.locator(".shelf-batch", { hasText: "PB-0" }).waitFor();
});

test("from what is poured of an evening it says how long it lasts, and puts the next batch on the list", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  // By hand: 450 ml on each of eight evenings in ten days is 360 ml a day; the 900 ml left last two
  // days and a half.
  const pours = Array.from({ length: 8 }).reduce<Played>(
    (so) => so.then({ type: "pour-stock", unit: "ml", count: 450 }, 24 * 60),
    made("a", "PB-1", 9, 14),
  );
  await putOn(page, "specs", DEMO_SPECS);
  await putLog(bar, pours.events, routes.shelf, OPENS);
  const next = page.locator(".shelf-next");
  await next.waitFor();
  await page
    .getByText(/^About 4\.2 serves a day: an estimate from 8 evenings in 10 days/u)
    .waitFor();
  const text = await next.textContent();
  expect(text).toContain("Lasts until about Fri 13 Mar 02:00.");
  expect(text).toMatch(/Start the next batch by Thu 12 Mar \d\d:\d\d\./u);
  await next.evaluate((one) => one.scrollIntoView());
  await look("shelf-next");
  await hands.hold(holdOf(page, words.next.put));
  await page.getByText(words.next.doing.planned).waitFor();
  expect(await page.locator(".hold-button", { hasText: words.next.put }).count()).toBe(0);
  await goTo(page, routes.days);
  await page.locator(".days-batch", { hasText: "Pear Beacon" }).waitFor();
});
