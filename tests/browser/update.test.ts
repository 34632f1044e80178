import { cpSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, onTestFinished, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { foldRun } from "../../core/run/fold.ts";
import { openPhone, untilStored } from "../support/phone/browser.ts";
import { handsOn } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import { clockOf, goTo, putLog, storedLog, tapOf, untilStep } from "../support/phone/walk-page.ts";
import { buildApp, buildProbe } from "../support/tool/build.ts";
import { serveApp } from "../support/tool/server.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const V1 = "1.0.0-first";
const V2 = "1.0.0-second";
const folder = mkdtempSync(join(tmpdir(), "second-pour-builds-"));
const first = join(folder, "first");
const second = join(folder, "second");

beforeAll(async () => {
  buildApp({ into: first, version: V1 });
  buildApp({ into: second, version: V2 });
  await buildProbe({ into: first, version: V1 });
});
afterAll(() => rmSync(folder, { recursive: true }));

const note = (page: Page, name: string) => page.locator("html").getAttribute(`data-${name}`);
const untilNoted = (page: Page, name: string) => page.waitForSelector(`html[data-${name}]`);
const send = (page: Page, name: string) =>
  page.evaluate((type) => dispatchEvent(new Event(type)), name);

async function addProbe(page: Page): Promise<void> {
  await page.addScriptTag({ url: "./probe.js", type: "module" });
  await untilNoted(page, "offline-copy");
}

async function phoneOnFirst() {
  const server = await serveApp({ folder: first, under: "/bar/" });
  const phone = await openPhone({ origin: server.origin });
  onTestFinished(async () => {
    await phone.close();
    await server.stop();
  });
  await phone.page.goto(server.url);
  await untilStored(phone.page);
  await addProbe(phone.page);
  expect(await note(phone.page, "offline-copy")).toBe("kept");
  return { server, phone, page: phone.page };
}

test("a newer version waits through reloads and restarts, and comes in when let in", async () => {
  const { server, phone, page } = await phoneOnFirst();
  server.deploy(second);
  await send(page, "probe-check");
  await untilNoted(page, "waiting");
  expect(await note(page, "waiting")).toBe(V2);
  expect(await note(page, "version")).toBe(V1);

  // The probe is no part of the app: it was not stored, and the first build is needed for it.
  server.deploy(first);
  await page.reload();
  await page.waitForSelector("#app > *");
  expect(await note(page, "version")).toBe(V1);
  await addProbe(page);
  await untilNoted(page, "waiting");
  await phone.context.setOffline(true);

  const reloaded = page.waitForEvent("load");
  await send(page, "probe-apply");
  await reloaded;
  await page.waitForSelector("#app > *");
  expect(await note(page, "version")).toBe(V2);
  const workers = await page.evaluate(async () => {
    const { waiting, installing } = await navigator.serviceWorker.ready;
    return { waiting: waiting !== null, installing: installing !== null };
  });
  expect(workers).toEqual({ waiting: false, installing: false });
  expect(phone.complaints).toEqual([]);
});

test("while another window is open, it stays out of both", async () => {
  const { server, phone, page } = await phoneOnFirst();
  const other = await phone.context.newPage();
  await other.goto(server.url);
  await other.waitForSelector("#app > *");
  server.deploy(second);
  await send(page, "probe-check");
  await untilNoted(page, "waiting");
  await send(page, "probe-apply");
  await untilNoted(page, "outcome");
  expect(await note(page, "outcome")).toBe("other-window-open");
  await other.reload();
  await other.waitForSelector("#app > *");
  expect([await note(page, "version"), await note(other, "version")]).toEqual([V1, V1]);
});

test("a page that reloaded once in vain asks to be closed, and does not reload again", async () => {
  const { page } = await phoneOnFirst();
  await page.evaluate((v) => sessionStorage.setItem("second-pour.reloaded-from", v), V1);
  await send(page, "probe-apply");
  await untilNoted(page, "outcome");
  expect(await note(page, "outcome")).toBe("close-and-reopen");
});

/** Looks for a new version, and says what became of it. */
const fateOfUpdate = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const fate = new Promise<string>((resolve) =>
      registration.addEventListener("updatefound", () => {
        const arrived = registration.installing;
        arrived?.addEventListener("statechange", () => resolve(arrived.state));
      }),
    );
    await registration.update().catch(() => undefined);
    return fate;
  });

/** Opens the app at a step of a batch that is being made. */
async function phoneAtWork() {
  const { server, phone, page } = await phoneOnFirst();
  const bar = { server, phone, page, hands: await handsOn(page) };
  const at = await clockOf(page);
  const { events } = stationAt("run-a", "PB-1003", at, "wet-filter");
  await putLog(bar, events, routes.run("run-a"));
  await untilStep(page, "wet-filter");
  await addProbe(page);
  return bar;
}

/** The app itself knows of the new version: Kit tells of it, and that it has to wait. */
async function untilKnown(page: Page): Promise<void> {
  await goTo(page, routes.kit);
  await page.getByText(said.kit.version.waiting, { exact: true }).waitFor();
  await page.getByText(said.places.updateLater, { exact: true }).waitFor();
}

test("work in hand is never interrupted; set aside, it goes on in the new version as it was begun", async () => {
  const bar = await phoneAtWork();
  const { server, phone, page, hands } = bar;
  const offer = page.locator(".notices-line", { hasText: said.places.updateWaiting });
  server.deploy(second);
  await send(page, "probe-check");
  await untilNoted(page, "waiting");
  await untilKnown(page);
  await goTo(page, routes.run("run-a"));
  await untilStep(page, "wet-filter");
  expect(await offer.count()).toBe(0);
  const log = await storedLog(page);
  await server.stop();
  await phone.context.setOffline(true);
  await hands.tap(tapOf(page, said.run.more));
  await hands.tap(tapOf(page, said.run.around.pause));
  await offer.waitFor();
  const reloaded = page.waitForEvent("load");
  await hands.tap(tapOf(page, said.places.updateNow));
  await reloaded;
  await page.waitForSelector("#app > *");
  expect(await note(page, "version")).toBe(V2);
  await page.locator("main h1").waitFor();
  const after = await storedLog(page);
  expect(after.slice(0, log.length)).toEqual(log);
  const [before, now] = [foldRun(log), foldRun(after)];
  expect(now).toMatchObject({
    appVersion: before?.appVersion,
    procedure: before?.procedure,
    plan: before?.plan,
  });
  expect(now?.pausedAt).toBeDefined();
  expect(phone.complaints).toEqual([]);
});

test("a form that is not saved keeps a new version out", async () => {
  const { server, phone, page } = await phoneOnFirst();
  await goTo(page, routes.spec("new"));
  await page.getByLabel(said.spec.name, { exact: true }).fill("Half a thought");
  server.deploy(second);
  await addProbe(page).catch(() => undefined);
  await send(page, "probe-check");
  await untilNoted(page, "waiting");
  await untilKnown(page);
  const offer = page.locator(".notices-line", { hasText: said.places.updateWaiting });
  expect(await offer.count()).toBe(0);
  expect(phone.complaints).toEqual([]);
});

test("on a phone without room the new version stays out, and the old one goes on", async () => {
  const { server, phone, page } = await phoneOnFirst();
  const narrow = await page.context().newCDPSession(page);
  await narrow.send("Storage.overrideQuotaForOrigin", { origin: server.origin, quotaSize: 1 });
  server.deploy(second);
  expect(await fateOfUpdate(page)).toBe("redundant");
  await server.stop();
  await phone.context.setOffline(true);
  await page.reload();
  await page.waitForSelector("#app > *");
  expect(await note(page, "version")).toBe(V1);
});

test("a version that arrives broken is dropped, and the old one goes on, offline too", async () => {
  const { server, phone, page } = await phoneOnFirst();
  const broken = join(folder, "broken");
  cpSync(second, broken, { recursive: true });
  // A file that both versions share is stored already: only a new one is missed.
  const known = readdirSync(join(first, "assets"));
  const script = readdirSync(join(broken, "assets")).find(
    (name) => name.endsWith(".js") && !known.includes(name),
  );
  rmSync(join(broken, "assets", script ?? "no script found"));
  server.deploy(broken);
  const dropped = await fateOfUpdate(page);
  expect(dropped).toBe("redundant");
  await server.stop();
  await phone.context.setOffline(true);
  await page.reload();
  await page.waitForSelector("#app > *");
  expect(await note(page, "version")).toBe(V1);
});
