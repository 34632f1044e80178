import { Buffer } from "node:buffer";
import { mkdirSync } from "node:fs";
import type { BrowserContext, Locator, Page } from "playwright-core";
import type { Book } from "../../../app/storage/books.ts";
import { eventSchema, type RunEvent } from "../../../core/run/event.ts";
import { mergeEvents } from "../../../core/run/order.ts";
import { type AppServer, serveApp } from "../tool/server.ts";
import { openPhone, type Phone, type PhoneOptions, untilStored } from "./browser.ts";
import { type Hands, handsOn } from "./hands.ts";
import { said } from "./said.ts";

export const SECOND = 1000;
export const MINUTE = 60 * SECOND;
export const HOUR = 60 * MINUTE;

/** When the tests' day at the bar begins: an invented Tuesday, by the phone's own clock. */
export const OPENS = new Date(2026, 2, 10, 14, 0).getTime();

/** A phone with the app on it, and hands on its glass. */
export interface Bar {
  readonly server: AppServer;
  readonly phone: Phone;
  readonly page: Page;
  readonly hands: Hands;
}

/**
 * The browser's clock, moved by `pass`. Playwright's clock stamps an event when it is first read;
 * here the glass says when it was touched, as on a phone.
 */
export async function setClock(context: BrowserContext, at: number): Promise<void> {
  await context.addInitScript(() => {
    Reflect.set(
      globalThis,
      "glassTime",
      Object.getOwnPropertyDescriptor(Event.prototype, "timeStamp"),
    );
  });
  await context.clock.install({ time: at });
  await context.addInitScript(() => {
    Object.defineProperty(Event.prototype, "timeStamp", Reflect.get(globalThis, "glassTime"));
  });
}

/** Opens the app on a phone of its own. `close` of what it returns ends everything it began. */
export async function openBar({
  at = OPENS,
  hash = "",
  server: given,
  ...phoneOptions
}: Omit<PhoneOptions, "origin"> & {
  readonly at?: number;
  readonly hash?: string;
  readonly server?: AppServer;
} = {}): Promise<Bar & { readonly close: () => Promise<void> }> {
  const server = given ?? (await serveApp());
  const phone = await openPhone({ ...phoneOptions, origin: server.origin });
  await setClock(phone.context, at);
  const { page } = phone;
  await page.goto(server.url + hash);
  await page.waitForSelector("main");
  await untilStored(page);
  const close = async () => {
    await phone.close();
    if (given === undefined) await server.stop();
  };
  return { server, phone, page, hands: await handsOn(page), close };
}

/** Forgets all that the app stored, and sets the clock back. */
export async function emptyPhone({
  server,
  phone,
  page,
}: Pick<Bar, "server" | "phone" | "page">): Promise<void> {
  const session = await phone.context.newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", {
    origin: server.origin,
    storageTypes: "indexeddb,local_storage",
  });
  await session.detach();
  await phone.context.clock.setSystemTime(OPENS);
}

/**
 * A page of its own for the next test, on a phone that is empty again and has its clock set back.
 *
 * @param prepare - runs in the page before the app does, to take from it what a phone may lack
 */
export async function startAfresh<Kept extends Bar>(
  bar: Kept,
  prepare: () => void = () => undefined,
): Promise<Kept> {
  const { server, phone } = bar;
  const page = await phone.context.newPage();
  await bar.page.close();
  await emptyPhone({ server, phone, page });
  await page.addInitScript(prepare);
  await page.goto(server.url);
  await page.waitForSelector("main");
  return { ...bar, page, hands: await handsOn(page) };
}

/** Goes to an address of the app, as a link would, and waits for the screen there. */
export async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    if (location.hash === to) return;
    document.querySelector("main")?.setAttribute("data-left", "");
    location.hash = to;
  }, hash);
  await page.locator("main:not([data-left]) h1").waitFor();
}

/** Lets so many ms go by on the phone, as when it lies on the shelf. */
export const pass = (page: Page, ms: number): Promise<void> => page.clock.fastForward(ms);

/** What the phone's clock says, epoch ms. */
export const clockOf = (page: Page): Promise<number> => page.evaluate(() => Date.now());

/** All that stands in a store of the phone's database, read past the app. */
export const storedIn = (page: Page, store: "events" | Book): Promise<readonly unknown[]> =>
  page.evaluate(
    (name) =>
      new Promise<unknown[]>((resolve, reject) => {
        const opening = indexedDB.open("second-pour");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const all = db.transaction(name).objectStore(name).getAll();
          all.onerror = () => reject(all.error);
          all.onsuccess = () => {
            db.close();
            resolve(all.result);
          };
        };
      }),
    store,
  );

/** The whole log as it stands in the phone's database, in the common order. */
export async function storedLog(page: Page): Promise<readonly RunEvent[]> {
  const stored = await storedIn(page, "events");
  return mergeEvents(
    stored.map((event) => eventSchema.parse(event)),
    [],
  );
}

/** Puts records into a store of the phone's database; the page must be opened anew to read them. */
export async function putOn(
  page: Page,
  store: "events" | Book,
  records: readonly object[],
): Promise<void> {
  await page.evaluate(
    ([name, all]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("second-pour");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const tx = db.transaction([name, "settings"], "readwrite");
          for (const record of all) tx.objectStore(name).put(record);
          // Events came without records: the app works them out anew.
          if (name === "events") tx.objectStore("settings").delete("records");
          tx.onerror = () => reject(tx.error);
          tx.oncomplete = () => {
            db.close();
            resolve();
          };
        };
      }),
    [store, [...records]] as const,
  );
}

/**
 * Puts a log into the phone's database and opens the app on it.
 *
 * @param hash - the address it opens at
 * @param at - what the clock says by then; it goes on from where it is where none is given
 */
export async function putLog(
  { server, phone, page }: Bar,
  events: readonly RunEvent[],
  hash = "",
  at?: number,
): Promise<void> {
  await putOn(page, "events", events);
  await page.goto("about:blank");
  if (at !== undefined) await phone.context.clock.setSystemTime(at);
  await page.goto(server.url + hash);
  await page.waitForSelector("main");
}

/** A hold button, by its first line. */
export const holdOf = (page: Page, label: string): Locator =>
  page.locator(".hold-button").filter({ has: page.getByText(label, { exact: true }) });

/** A button that takes a tap, by its name. */
export const tapOf = (page: Page, name: string): Locator =>
  page.getByRole("button", { name, exact: true });

/** Chooses a file in Kit, as from the phone's files. */
export const chooseFile = (page: Page, text: string): Promise<void> =>
  page
    .locator('input[type="file"]')
    .setInputFiles({ name: "backup.txt", mimeType: "text/plain", buffer: Buffer.from(text) });

/** Waits until the run screen stands at a step. */
export async function untilStep(page: Page, step: string, round = 1): Promise<void> {
  const name = said.work.verbs[step];
  if (name === undefined) throw new RangeError(`no word for the step ${step}`);
  await page.getByRole("heading", { name, exact: true }).waitFor();
  if (round === 1) return;
  await page.locator(".run-where", { hasText: said.run.round(round) }).waitFor();
}

/** Types a figure on our own pad, and holds to take it. */
export async function typeOnPad({ page, hands }: Bar, figure: string): Promise<void> {
  for (const key of figure) {
    await hands.tap(tapOf(page, key === "." ? said.run.mark : key));
  }
  await hands.hold(holdOf(page, said.run.take));
}

/** Answers what rings. */
export async function answerAlarm({ page, hands }: Bar): Promise<void> {
  await page.locator(".alarm-sheet").waitFor();
  await hands.hold(holdOf(page, said.alarm.heard));
}

const FOLDER = "tests/shots";

/** A photograph for the eye, when SHOTS=1. */
export async function shot(page: Page, name: string): Promise<void> {
  if (process.env.SHOTS !== "1") return;
  mkdirSync(FOLDER, { recursive: true });
  await page.screenshot({ path: `${FOLDER}/${name}.png` });
}
