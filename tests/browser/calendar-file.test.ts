import ICAL from "ical.js";
import type { Page } from "playwright-core";
import { afterEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { CALENDAR_TYPE, DUE_FILES, dueFileOf } from "../../core/board/calendar/due-file.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { HOUR, MINUTE, OPENS, pass, putLog, tapOf } from "../support/phone/walk-page.ts";
import { waiting } from "../support/world/waiting.ts";

const bar = barForTests({ size: "small" });
afterEach(() => bar.phone.context.setOffline(false));

const RUN = routes.run("run-a");
const wait = (waitFor: number, from = OPENS) =>
  waiting({ runId: "run-a", batch: "PB-1003", from, waitFor });
const link = (page: Page) => page.getByRole("link", { name: said.handOver.calendar });

async function openWays(page: Page): Promise<void> {
  await bar.hands.tap(tapOf(page, said.handOver.others));
}

/** What the page gets from an address, as a calendar of the phone would. */
const take = (page: Page, address: string) =>
  page.evaluate(async (from) => {
    const got = await fetch(from);
    const header = (name: string) => got.headers.get(name);
    return {
      status: got.status,
      type: header("content-type"),
      disposition: header("content-disposition"),
      text: await got.text(),
    };
  }, address);

/** Events as an independent parser reads them, with the moment at which each alarm sounds. */
function parsed(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents("vevent").map((component) => {
    const event = new ICAL.Event(component);
    const [alarm] = component.getAllSubcomponents("valarm");
    const trigger = alarm?.getFirstPropertyValue("trigger");
    const start = event.startDate.toJSDate().getTime();
    return {
      uid: event.uid,
      title: event.summary,
      start,
      alarm: trigger instanceof ICAL.Duration ? start + trigger.toSeconds() * 1000 : undefined,
      action: alarm?.getFirstPropertyValue("action"),
    };
  });
}

const keptFiles = (page: Page) =>
  page.evaluate(async (name) => {
    const files = await caches.open(name);
    return (await files.keys()).map(({ url }) => new URL(url).pathname);
  }, DUE_FILES);

test("with no network the worker hands out a calendar with the right moment and its alarm", async () => {
  await bar.afresh();
  const { page, phone, server } = bar;
  await putLog(bar, wait(HOUR + 17_000), RUN, OPENS);
  await openWays(page);
  await link(page).waitFor();
  const address = (await link(page).getAttribute("href")) ?? "";
  expect(address).toBe(server.url + dueFileOf("run-a", "curdle#1"));

  await phone.context.setOffline(true);
  const got = await take(page, address);
  expect(got).toMatchObject({ status: 200, type: CALENDAR_TYPE });
  expect(got.disposition).toBe('inline; filename="curdle-1.ics"');
  expect(parsed(got.text)).toEqual([
    {
      uid: "run-a.curdle#1",
      title: "Pear Beacon: Rest",
      start: OPENS + HOUR + 17_000,
      alarm: OPENS + HOUR + 17_000,
      action: "DISPLAY",
    },
  ]);

  // Opened as a link is, the page stays, and the browser has a file.
  const saving = page.waitForEvent("download");
  await bar.hands.tap(link(page));
  const file = await saving;
  expect(file.suggestedFilename()).toBe("curdle-1.ics");
  expect(new URL(page.url()).hash).toBe(RUN);
  await file.cancel();
});

test("an address that nothing is kept for says so, and is not the app", async () => {
  await bar.afresh();
  const got = await take(bar.page, `${bar.server.url}due/run-x/curdle-1.ics`);
  expect(got).toMatchObject({ status: 404, type: "text/plain; charset=utf-8" });
  expect(got.text).toContain("no longer kept");
  expect(got.text).not.toContain("<");
});

test("a due time that moves takes the place of the old one; what is long past is cleared away", async () => {
  await bar.afresh();
  await putLog(bar, wait(HOUR), RUN, OPENS);
  await openWays(bar.page);
  await link(bar.page).waitFor();
  const [first = "no file"] = await keptFiles(bar.page);
  const startOf = async () => parsed((await take(bar.page, first)).text)[0]?.start;
  expect(await startOf()).toBe(OPENS + HOUR);

  // The same wait, begun anew and longer.
  await bar.afresh();
  await putLog(bar, wait(2 * HOUR), RUN, OPENS);
  await openWays(bar.page);
  await link(bar.page).waitFor();
  expect(await startOf()).toBe(OPENS + 2 * HOUR);

  // Two days on another batch waits: only its own file is left.
  await bar.afresh();
  const later = OPENS + 48 * HOUR;
  const other = waiting({ runId: "run-b", batch: "PB-1004", from: later, waitFor: 3 * HOUR });
  await putLog(bar, other, routes.run("run-b"), later);
  await openWays(bar.page);
  await link(bar.page).waitFor();
  const own = new URL(dueFileOf("run-b", "curdle#1"), bar.server.url).pathname;
  expect(await keptFiles(bar.page)).toEqual([own]);
  expect((await take(bar.page, first)).status).toBe(404);
});

test("with no worker in charge the file is saved another way, and it says where", async () => {
  await bar.afresh(() => {
    // A blank page has no workers at all.
    if (!("serviceWorker" in navigator)) return;
    Object.defineProperty(navigator.serviceWorker, "controller", { value: null });
  });
  const { page, hands } = bar;
  await putLog(bar, wait(2 * HOUR), RUN, OPENS);
  await pass(page, MINUTE);
  await openWays(page);
  const saving = page.waitForEvent("download");
  await hands.tap(tapOf(page, said.handOver.calendar));
  const file = await saving;
  expect(file.suggestedFilename()).toBe("curdle-1.ics");
  await page.getByText(said.handOver.calendarSaved).waitFor();
  await file.cancel();
});
