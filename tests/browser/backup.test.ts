import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import type { Page } from "playwright-core";
import { beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { faultsOf } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  chooseFile,
  goTo,
  holdOf,
  OPENS,
  putLog,
  shot,
  storedLog,
  tapOf,
} from "../support/phone/walk-page.ts";
import { fileOfLines } from "../support/world/backup-file.ts";
import { madeWhole, started } from "../support/world/play-run.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const words = said.kit.backup;
const { restore, table } = said.kit;
const whole = madeWhole(started("run-a", "PB-1003", OPENS), {
  yield: 3700,
  topUp: 450,
  useBy: OPENS + 6 * 86_400_000,
});
const { events } = whole;
const AFTER = (events.at(-1)?.at ?? OPENS) + 60_000;

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

/** What a tap downloads: its name and its text. */
async function downloadBy(page: Page, act: () => Promise<void>) {
  const coming = page.waitForEvent("download");
  await act();
  const file = await coming;
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), "utf8") };
}

const benchLine = (page: Page) => page.locator(".backup-line");
const kitLine = (page: Page) => page.locator(".kit-due");

/** A share sheet that answers as told, and takes the files. */
function shareSheet(bar: { readonly page: Page }, answer: "taken" | "closed") {
  return bar.page.evaluate((how) => {
    Reflect.set(navigator, "canShare", () => true);
    const share = ({ files }: ShareData) => {
      Reflect.set(globalThis, "sharedFiles", files);
      const closed = new DOMException("closed", "AbortError");
      return how === "taken" ? Promise.resolve() : Promise.reject(closed);
    };
    Reflect.set(navigator, "share", share);
  }, answer);
}

test("after a batch has ended the Bench asks for a backup, until one was saved", async () => {
  const { hands } = bar;
  await putLog(bar, events, routes.bench, AFTER);
  await benchLine(bar.page).getByText(words.dueEnded(1, false)).waitFor();
  await shot(bar.page, "bench-backup");
  expect(await faultsOf(bar.page)).toEqual([]);
  await hands.tap(bar.page.getByRole("link", { name: words.toKit, exact: true }));
  await kitLine(bar.page).getByText(words.dueEnded(1, false)).waitFor();
  await shot(bar.page, "kit-backup");
  const saved = await downloadBy(bar.page, () => hands.tap(tapOf(bar.page, words.download)));
  expect(saved.name).toBe("second-pour-2026-03-10.txt");
  expect(saved.text.trimEnd().split("\n")).toHaveLength(events.length + 1);
  await bar.page.getByText(words.saved(saved.name)).waitFor();
  await kitLine(bar.page).waitFor({ state: "detached" });
  await goTo(bar.page, routes.bench);
  await bar.page.reload();
  await bar.page.locator(".bench-empty").waitFor();
  await goTo(bar.page, routes.kit);
  await bar.page.getByText(/^Last backup: \d\d:\d\d\.$/u).waitFor();
  await goTo(bar.page, routes.bench);
  await bar.page.locator(".bench-empty").waitFor();
  expect(await benchLine(bar.page).count()).toBe(0);
});

test("a batch still being made asks for a backup once 25 entries are in its log", async () => {
  const { events: log, since } = stationAt("run-a", "PB-1003", OPENS, "label");
  expect(log.length).toBeGreaterThan(25);
  await putLog(bar, log.slice(0, 24), routes.bench, since);
  await bar.page.locator(".bench-row").waitFor();
  await goTo(bar.page, routes.kit);
  await bar.page.getByText(words.never).waitFor();
  expect(await kitLine(bar.page).count()).toBe(0);
  await putLog(bar, log, routes.bench, since);
  await benchLine(bar.page).getByText(words.dueEntries(log.length, false)).waitFor();
});

test("a share sheet that was closed is no backup; one that took the file is", async () => {
  const { hands } = bar;
  await putLog(bar, events, routes.kit, AFTER);
  await kitLine(bar.page).waitFor();
  await shareSheet(bar, "closed");
  await hands.tap(tapOf(bar.page, words.make));
  await bar.page.getByText(words.dismissed).waitFor();
  expect(await kitLine(bar.page).count()).toBe(1);
  await shareSheet(bar, "taken");
  await hands.tap(tapOf(bar.page, words.make));
  await bar.page.getByText(words.shared("second-pour-2026-03-10.txt")).waitFor();
  await kitLine(bar.page).waitFor({ state: "detached" });
  const shared = await bar.page.evaluate(() => Reflect.get(globalThis, "sharedFiles")[0].text());
  expect(shared).toContain('"format":"second-pour-backup"');
});

test("a file that took longer than a tap counts is kept, and shared on another tap", async () => {
  const { hands } = bar;
  await putLog(bar, events, routes.kit, AFTER);
  await shareSheet(bar, "taken");
  await bar.page.evaluate(() =>
    Object.defineProperty(navigator, "userActivation", { value: { isActive: false } }),
  );
  await hands.tap(tapOf(bar.page, words.make));
  await bar.page.getByText(words.ready).waitFor();
  expect(await kitLine(bar.page).count()).toBe(1);
  await hands.tap(tapOf(bar.page, words.handOn));
  await bar.page.getByText(words.shared("second-pour-2026-03-10.txt")).waitFor();
  await kitLine(bar.page).waitFor({ state: "detached" });
});

const line = (event: object) => JSON.stringify({ event });

test("on another phone it is counted first, and added on a hold", async () => {
  const { hands } = bar;
  await goTo(bar.page, routes.kit);
  await chooseFile(bar.page, fileOfLines(events.map(line)));
  await bar.page.getByText(restore.fresh(events.length)).waitFor();
  await bar.page.getByText(restore.known(0)).waitFor();
  expect(await storedLog(bar.page)).toEqual([]);
  await shot(bar.page, "kit-restore");
  await hands.hold(holdOf(bar.page, restore.add(events.length)));
  await bar.page.getByText(restore.added(events.length)).waitFor();
  expect((await storedLog(bar.page)).map(({ id }) => id)).toEqual(events.map(({ id }) => id));
  await goTo(bar.page, routes.logbook);
  await bar.page.getByText("PB-1003").waitFor();
});

test("lines that cannot be taken are listed with the reason, as text and nothing else", async () => {
  const bad = '{"<img src=x onerror=alert(1)>":1}';
  const many = Array.from({ length: 11 }, () => "moon");
  await goTo(bar.page, routes.kit);
  await chooseFile(bar.page, fileOfLines([...events.map(line), bad, ...many]));
  const list = bar.page.locator(".kit-lines");
  const kind = "<img src=x onerror=alert(1)>";
  const why = `is of a kind that this version does not know: “${kind}”. A newer one may.`;
  await list.getByText(restore.line(events.length + 2, why)).waitFor();
  await list.getByText(restore.more(2)).waitFor();
  expect(await list.locator("li").count()).toBe(11);
  expect(await bar.page.locator("img").count()).toBe(0);
  await shot(bar.page, "kit-left");
  await holdOf(bar.page, restore.add(events.length)).waitFor();
});

test("a file that was cut short is told to be, and what is left of it is added on a second hold", async () => {
  const { hands } = bar;
  const some = events.slice(0, 6);
  const cut = fileOfLines(events.map(line)).split("\n").slice(0, 7).join("\n");
  await goTo(bar.page, routes.kit);
  await chooseFile(bar.page, cut);
  await bar.page.getByText(restore.missing(events.length, some.length)).waitFor();
  expect(await holdOf(bar.page, restore.add(some.length)).count()).toBe(0);
  await shot(bar.page, "kit-damaged");
  expect(await faultsOf(bar.page)).toEqual([]);
  await hands.hold(holdOf(bar.page, restore.useRest));
  await holdOf(bar.page, restore.add(some.length)).waitFor();
  expect(await storedLog(bar.page)).toEqual([]);
  await hands.hold(holdOf(bar.page, restore.add(some.length)));
  await bar.page.getByText(restore.added(some.length)).waitFor();
  expect(await storedLog(bar.page)).toHaveLength(some.length);
});

test("reading a large file shows how far it is and can be given up: nothing is changed", async () => {
  const { hands } = bar;
  const [, second] = events;
  const notes = Array.from({ length: 60_000 }, (_, at) =>
    line({ ...second, id: `note-${at}`, type: "note.added", text: "cold" }),
  );
  await goTo(bar.page, routes.kit);
  await chooseFile(bar.page, fileOfLines(notes));
  await bar.page.getByText(/^Reading: [1-9][0-9,]* of 60,000 entries\.$/u).waitFor();
  await hands.tap(tapOf(bar.page, words.giveUp));
  await bar.page.getByText("Stopped. Nothing was changed.").waitFor();
  expect(await storedLog(bar.page)).toEqual([]);
});

test("what is no backup is refused with a sentence", async () => {
  await goTo(bar.page, routes.kit);
  for (const [text, says] of [
    ["", "This file is empty. Choose the one the app saved. Nothing was changed."],
    [
      "2 oz gin",
      "This file is not a Second Pour backup. Choose the one the app saved. Nothing was changed.",
    ],
  ] as const) {
    await chooseFile(bar.page, text);
    await bar.page.getByRole("alert").getByText(says).waitFor();
  }
});

test("batches and readings come out as tables that another program reads", async () => {
  const { hands } = bar;
  await putLog(bar, events, routes.kit, AFTER);
  const batches = await downloadBy(bar.page, () => hands.tap(tapOf(bar.page, table.batches)));
  expect(batches.name).toBe("second-pour-batches-2026-03-10.csv");
  expect(batches.text.startsWith("\uFEFF")).toBe(true);
  const [row, ...none]: unknown[] = parse(batches.text, { bom: true, columns: true });
  expect(none).toEqual([]);
  expect(row).toMatchObject({ Batch: "PB-1003", Spec: "Pear Beacon", "Yield ml": "3700" });
  expect(row).toMatchObject({
    Started: expect.stringMatching(/^2026-03-10T14:00:00[+-]\d\d:\d\d$/u),
  });
  const readings = await downloadBy(bar.page, () => hands.tap(tapOf(bar.page, table.readings)));
  expect(readings.name).toBe("second-pour-readings-2026-03-10.csv");
  const rows: unknown[] = parse(readings.text, { bom: true, columns: true });
  expect(rows).toHaveLength(5);
  expect(rows.at(3)).toMatchObject({ What: "yield", Value: "3700", Unit: "ml", Step: "Yield" });
});
