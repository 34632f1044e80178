import type { CDPSession } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { refusals } from "../../app/words/en/refusals.ts";
import { foldRun } from "../../core/run/fold.ts";
import { dropProfile, newProfile, openPhone, type Phone } from "../support/phone/browser.ts";
import { type Hands, handsOn } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import {
  holdOf,
  OPENS,
  openBar,
  putLog,
  setClock,
  shot,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "../support/phone/walk-page.ts";
import { type AppServer, serveApp } from "../support/tool/server.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const profile = newProfile();
const station = stationAt("run-a", "PB-1003", OPENS, "yield");
let server: AppServer;
let phone: Phone;
let hands: Hands;
/** There is no room for as long as this lasts. */
let narrow: CDPSession;

/**
 * A phone whose room is used up. It is full before the app opens: Chromium goes on for a while
 * trusting the room that it knew of.
 */
beforeAll(async () => {
  server = await serveApp();
  const bar = await openBar({ server, profile, size: "small" });
  await putLog(bar, station.events, routes.run("run-a"), station.since);
  await untilStep(bar.page, "yield");
  await bar.close();
  phone = await openPhone({ origin: server.origin, profile, size: "small" });
  const { page } = phone;
  narrow = await page.context().newCDPSession(page);
  await narrow.send("Storage.overrideQuotaForOrigin", { origin: server.origin, quotaSize: 1 });
  await setClock(phone.context, station.since);
  await page.goto(server.url + routes.run("run-a"));
  await untilStep(page, "yield");
  hands = await handsOn(page);
});
afterAll(async () => {
  await phone.close();
  await server.stop();
  dropProfile(profile);
});

test("a phone without room says what to do, keeps what was typed, and takes it once there is room", async () => {
  const { page } = phone;
  const bar = { server, phone, page, hands };
  const before = await storedLog(page);
  await hands.tap(tapOf(page, said.run.typeAmount));
  await typeOnPad(bar, "4000");
  await page.getByText(said.places.noRoom).waitFor();
  await page
    .getByText(refusals["no-room"]?.({}) ?? "")
    .first()
    .waitFor();
  await shot(page, "no-room");
  expect(await storedLog(page)).toEqual(before);
  expect(await page.locator(".run-pad").textContent()).toContain("4000 ml");
  await narrow.detach();
  await hands.hold(holdOf(page, said.run.take));
  await untilStep(page, "top-up");
  expect(foldRun(await storedLog(page))?.yields.at(-1)?.ml).toBe(4000);
  await page.getByText(said.places.noRoom).waitFor({ state: "detached" });
  expect(phone.complaints).toEqual([]);
});
