// Ten years of history brought in from one backup file, and how the app works with it: npm run
// ten-years [batches]. Invented, the same each time; a batch has fifty events.
import { appendFileSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import type { CDPSession, Page } from "playwright-core";
import { routes } from "../../app/routes.ts";
import { headerLine } from "../../app/storage/backup/header.ts";
import { Sha256 } from "../../app/storage/backup/sha256.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { note } from "../support/look/note.ts";
import { dropProfile, newProfile, openPhone, untilStored } from "../support/phone/browser.ts";
import { handsOn } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import { setup } from "../support/tool/build.ts";
import { type AppServer, serveApp } from "../support/tool/server.ts";
import {
  demoSpec,
  dripped,
  madeWhole,
  type Played,
  planned,
  started,
} from "../support/world/play-run.ts";

const [batches = 5000] = process.argv.slice(2).map(Number);
const EVENTS = 50;
const DAY = 86_400_000;
const FROM = Date.parse("2016-03-01T10:00:00Z");
const SPACING = (10 * 365 * DAY) / batches;
const THROTTLE = 4;
const PLANS = ["Pear Beacon", "Boatyard Flip-Side"].map((name) => planned(demoSpec(name)));

/** Notes until the log has as many events as a long night leaves. */
function filled(run: Played): readonly RunEvent[] {
  let so = run;
  for (let at = so.events.length; at < EVENTS; at += 1) {
    so = so.then({ type: "add-note", text: `Looked at it, the ${at}th time` });
  }
  return so.events;
}

function batch(at: number): readonly RunEvent[] {
  const id = `old-${at}`;
  const made = FROM + at * SPACING;
  const begun = started(id, `PB-${at}`, made, PLANS[at % PLANS.length]);
  // Three stand on the bench.
  if (at >= batches - 3) return dripped(begun).events;
  const yielded = 3300 + ((at * 137) % 900);
  return filled(madeWhole(begun, { yield: yielded, topUp: 450, useBy: made + 6 * DAY }));
}

/** The file, written batch by batch; its sum is known only at the end, so it is put together then. */
function writeHistory(folder: string): { readonly path: string; readonly lines: number } {
  const path = join(folder, "history.txt");
  const encoder = new TextEncoder();
  const sum = new Sha256();
  const parts: string[] = [];
  let lines = 0;
  for (let at = 0; at < batches; at += 1) {
    for (const event of batch(at)) {
      const line = `${lines === 0 ? "" : "\n"}${JSON.stringify({ event })}`;
      sum.take(encoder.encode(line));
      parts.push(line);
      lines += 1;
    }
  }
  const header = headerLine({ madeAt: FROM, lines, sha256: sum.sum() }, "0.0.0-test");
  writeFileSync(path, `${header}\n`);
  for (let at = 0; at < parts.length; at += 5000) {
    appendFileSync(path, parts.slice(at, at + 5000).join(""));
  }
  appendFileSync(path, "\n");
  return { path, lines };
}

const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`;

async function timed(what: string, work: () => Promise<unknown>): Promise<void> {
  const from = performance.now();
  await work();
  note(`${what.padEnd(64)} ${seconds(performance.now() - from)}`);
}

/** Blocks of the main thread longer than 50 ms since the page opened, and the longest, ms. */
const longTasks = (page: Page) =>
  page.evaluate(() => {
    const seen: unknown = Reflect.get(globalThis, "longTasks");
    return Array.isArray(seen) ? seen.map(Number) : [];
  });

async function watched(page: Page, what: string, work: () => Promise<unknown>): Promise<void> {
  const before = (await longTasks(page)).length;
  await timed(what, work);
  const tasks = (await longTasks(page)).slice(before);
  note(
    `${"".padEnd(6)}long tasks: ${tasks.length}, the longest ${Math.max(0, ...tasks).toFixed(0)} ms`,
  );
}

async function open(server: AppServer, profile: string): Promise<Page> {
  const phone = await openPhone({ origin: server.origin, profile, size: "small" });
  const { page } = phone;
  page.setDefaultTimeout(600_000);
  await page.addInitScript(() => {
    const tasks: number[] = [];
    Reflect.set(globalThis, "longTasks", tasks);
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: "longtask", buffered: true });
    new MutationObserver((_, self) => {
      if (document.querySelector(".bench-row, .bench-empty") === null) return;
      self.disconnect();
      Reflect.set(globalThis, "benchAt", performance.now());
    }).observe(document, { subtree: true, childList: true });
  });
  return page;
}

async function slow(page: Page): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: THROTTLE });
  return session;
}

/** Brings the file in through Kit, as a person would. */
async function restore(page: Page, path: string, lines: number): Promise<void> {
  const hands = await handsOn(page);
  await page.locator("input[type=file]").first().waitFor();
  const add = page.locator(".hold-button", { hasText: said.kit.restore.add(lines) });
  await watched(page, `dry run of ${lines} entries`, async () => {
    await page.locator("input.kit-file").first().setInputFiles(path);
    await add.waitFor();
  });
  await watched(page, "bringing them in, records worked out", async () => {
    await hands.hold(add);
    await page.getByText(said.kit.restore.added(lines)).waitFor();
  });
}

async function coldStarts(server: AppServer, profile: string): Promise<void> {
  const times: number[] = [];
  for (let turn = 0; turn < 5; turn += 1) {
    const page = await open(server, profile);
    await slow(page);
    await page.goto(server.url);
    await page.locator(".bench-row").first().waitFor();
    times.push(await page.evaluate(() => Number(Reflect.get(globalThis, "benchAt"))));
    await page.context().close();
  }
  times.sort((a, b) => a - b);
  note(
    `cold start to the Bench at ${THROTTLE}x: median ${seconds(times[2] ?? Number.NaN)}, ${times.map(seconds).join(", ")}`,
  );
}

async function logbook(server: AppServer, profile: string): Promise<void> {
  const page = await open(server, profile);
  await page.goto(server.url);
  await page.locator(".bench-row").first().waitFor();
  await slow(page);
  await watched(page, `logbook opened at ${THROTTLE}x`, async () => {
    await page.evaluate((to) => {
      location.hash = to;
    }, routes.logbook);
    await page.locator(".logbook-row").first().waitFor();
  });
  // What is read behind the first rows is over by then: the scrolling alone is watched.
  await page.waitForTimeout(3000);
  await watched(page, "scrolled through what is drawn, 3 s of wheel", async () => {
    for (let turn = 0; turn < 60; turn += 1) {
      await page.mouse.wheel(0, 200);
      await page.waitForTimeout(50);
    }
  });
  const find = page.getByRole("searchbox").or(page.locator("main input")).first();
  await watched(page, "searched for one batch, typed key by key", async () => {
    await find.pressSequentially("pb-4321", { delay: 60 });
    await page.locator(".logbook-row").nth(1).waitFor({ state: "detached" });
  });
  await page.context().close();
}

async function backup(server: AppServer, profile: string): Promise<void> {
  const page = await open(server, profile);
  await page.goto(server.url + routes.kit);
  const hands = await handsOn(page);
  const save = page.getByRole("button", { name: said.kit.backup.download, exact: true });
  await save.waitFor();
  await watched(page, "backup of everything, into a file", async () => {
    const [file] = await Promise.all([page.waitForEvent("download"), hands.tap(save)]);
    await file.path();
  });
  await page.context().close();
}

setup();
const folder = mkdtempSync(join(tmpdir(), "second-pour-history-"));
const profile = newProfile();
const server = await serveApp();
try {
  note(`load average ${loadavg()[0]?.toFixed(1)}`);
  const { path, lines } = writeHistory(folder);
  note(`${batches} batches, ${lines} events`);
  const page = await open(server, profile);
  await page.goto(server.url + routes.kit);
  await untilStored(page);
  await restore(page, path, lines);
  await page.context().close();
  await coldStarts(server, profile);
  await logbook(server, profile);
  await backup(server, profile);
} finally {
  await server.stop();
  dropProfile(profile);
  rmSync(folder, { recursive: true, force: true });
}
