import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { findBrowser } from "../tool/find-browser.mjs";

/** What every browser of the tests is started with. */
export const FLAGS: readonly string[] = [
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** CSS pixels of the phones the app is shown on. */
export const SIZES = {
  small: { width: 360, height: 640 },
  usual: { width: 390, height: 844 },
} as const;

export interface PhoneOptions {
  /** The only origin the page may talk to. */
  readonly origin: string;
  readonly size?: keyof typeof SIZES;
  readonly theme?: "dark" | "light";
  readonly reducedMotion?: boolean;
  readonly pixelsPerPoint?: number;
  /** The language and country that the phone is set to; Britain's unless told. */
  readonly locale?: string;
  /** The time zone that the phone is set to; this machine's unless told. */
  readonly zone?: string;
  /** A profile folder to keep, so that it can be opened again; see `newProfile`. */
  readonly profile?: string;
}

export interface Phone {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Off-origin requests, policy breaches and uncaught errors so far: expected to stay empty. */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
  /** Ends the whole browser as a flat battery would: SIGKILL, no goodbye. */
  readonly kill: () => Promise<void>;
}

/** A folder that keeps a phone's storage between two `openPhone`. */
export const newProfile = (): string => mkdtempSync(join(tmpdir(), "second-pour-phone-"));

/** A browser's helpers may still write for a moment when it has gone. */
export const dropProfile = (profile: string): void =>
  rmSync(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });

function listen(context: BrowserContext, origin: string, complaints: string[]): void {
  context.on("request", (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (protocol.startsWith("http") && asked !== origin) complaints.push(`asked ${request.url()}`);
  });
  context.on("weberror", (event) => complaints.push(`threw ${event.error().message}`));
  context.on("console", (message) => {
    if (message.text().includes("Content Security Policy")) complaints.push(message.text());
  });
}

async function browserProcess(context: BrowserContext): Promise<number> {
  const session = await context.browser()?.newBrowserCDPSession();
  const { processInfo } = (await session?.send("SystemInfo.getProcessInfo")) ?? { processInfo: [] };
  const main = processInfo.find(({ type }) => type === "browser");
  if (!main) throw new RangeError("expected the browser to name its process, got none");
  return main.id;
}

/** Opens a phone-sized Chromium; its one page is still blank. */
export async function openPhone(options: PhoneOptions): Promise<Phone> {
  const executablePath = findBrowser();
  if (!executablePath) throw new Error("No browser: run node tests/support/tool/find-browser.mjs");
  const profile = options.profile ?? newProfile();
  const context = await chromium.launchPersistentContext(profile, {
    executablePath,
    args: process.getuid?.() === 0 ? [...FLAGS, "--no-sandbox"] : [...FLAGS],
    viewport: SIZES[options.size ?? "usual"],
    deviceScaleFactor: options.pixelsPerPoint ?? 2,
    hasTouch: true,
    isMobile: true,
    locale: options.locale ?? "en-GB",
    ...(options.zone === undefined ? {} : { timezoneId: options.zone }),
    colorScheme: options.theme ?? "dark",
    reducedMotion: options.reducedMotion ? "reduce" : "no-preference",
  });
  context.setDefaultTimeout(10_000);
  const complaints: string[] = [];
  listen(context, options.origin, complaints);
  const tidy = () => {
    if (!options.profile) dropProfile(profile);
  };
  return {
    context,
    page: context.pages()[0] ?? (await context.newPage()),
    complaints,
    close: async () => {
      await context.close();
      tidy();
    },
    kill: async () => {
      const gone = new Promise((resolve) => context.once("close", resolve));
      process.kill(await browserProcess(context), "SIGKILL");
      await gone;
      tidy();
    },
  };
}

/** Waits until the app stands and every file it needs is stored on the phone. */
export async function untilStored(page: Page): Promise<void> {
  await page.waitForSelector("#app > *");
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}
