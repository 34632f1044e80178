import { spawn } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { findBrowser } from "../tool/find-browser.mjs";
import { dropProfile, FLAGS, newProfile } from "./browser.ts";

/** A browser in which a tab behind another is truly out of sight, and can be frozen. */
export interface RealTabs {
  readonly page: Page;
  /** Puts another tab in front. */
  readonly leave: () => Promise<void>;
  readonly comeBack: () => Promise<void>;
  /** Stops or lets go on what runs in a page that was left, as a phone does to save power. */
  readonly freeze: (frozen: boolean) => Promise<void>;
  readonly close: () => Promise<void>;
}

const PATIENCE = 15_000;
const pause = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** The port that the browser wrote down for us, once it has. */
async function portOf(profile: string): Promise<string> {
  const note = join(profile, "DevToolsActivePort");
  for (let waited = 0; waited < PATIENCE; waited += 50) {
    const [port = ""] = existsSync(note) ? readFileSync(note, "utf8").split("\n") : [];
    if (port !== "") return port;
    await pause(50);
  }
  throw new RangeError("expected the browser to open a port, it did not");
}

async function tabsIn(context: BrowserContext): Promise<Omit<RealTabs, "close">> {
  const page = await context.newPage();
  const front = await context.newPage();
  const session = await context.newCDPSession(page);
  const untilSight = (state: string) =>
    page.waitForFunction((wanted) => document.visibilityState === wanted, state, { polling: 50 });
  const comeBack = async () => {
    await page.bringToFront();
    await untilSight("visible");
  };
  await comeBack();
  return {
    page,
    comeBack,
    leave: async () => {
      await front.bringToFront();
      await untilSight("hidden");
    },
    freeze: async (frozen) => {
      await session.send("Page.setWebLifecycleState", { state: frozen ? "frozen" : "active" });
    },
  };
}

/** Opens such a browser: Playwright's own keeps every tab in sight. */
export async function openTabs(): Promise<RealTabs> {
  const program = findBrowser();
  if (!program) throw new Error("No browser: run node tests/support/tool/find-browser.mjs");
  const profile = newProfile();
  const root = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  const own = ["--headless=new", "--remote-debugging-port=0", `--user-data-dir=${profile}`];
  const child = spawn(program, [...FLAGS, ...root, ...own], { stdio: "ignore" });
  const gone = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  const end = async () => {
    child.kill("SIGKILL");
    await gone;
    dropProfile(profile);
  };
  try {
    const address = `http://127.0.0.1:${await portOf(profile)}`;
    const browser = await chromium.connectOverCDP(address, { noDefaults: true });
    const [context] = browser.contexts();
    if (context === undefined) throw new RangeError("expected the browser to have a window");
    context.setDefaultTimeout(10_000);
    const close = async () => {
      await browser.close();
      await end();
    };
    return { ...(await tabsIn(context)), close };
  } catch (fault) {
    await end();
    throw fault;
  }
}
