import type { CDPSession, Page } from "playwright-core";
import type { RunEvent } from "../../../core/run/event.ts";
import { openPhone, type Phone, untilStored } from "../../support/phone/browser.ts";
import { putOn } from "../../support/phone/walk-page.ts";
import type { AppServer } from "../../support/tool/server.ts";
import { type Spread, say, spread, spreadOf, target, times, title } from "./figures.ts";
import { threeRuns } from "./seeded.ts";

const RUNS = 5;
/** How much slower the page's thread is made than this machine's. */
export const SLOWER = 4;
/** A poor signal: so long before each answer, and so many bytes a second (1.6 Mbit/s). */
const POOR = { latency: 400, downloadThroughput: 200_000, uploadThroughput: 96_000 };
/** After the screen is usable the largest paint may still come, ms. */
const SETTLES = 700;
/** Somebody has looked at the page before it is opened again: what it leaves for then is there, ms. */
const LOOKED_AT = 2000;

interface Opened {
  readonly fcp: number;
  readonly lcp: number;
  /** What one came to see stands there, and a tap on it leads on. */
  readonly usable: number;
  /** The page itself has drawn it, from what is stored, and goes on. */
  readonly live: number;
  /** When the page itself was there, and the last file that was asked for before it was live. */
  readonly answered: number;
  readonly lastFile: number;
  readonly files: number;
  /** What the page's thread worked till then, slowed, whoever else was on this machine; ms. */
  readonly worked: number;
}

/** What is opened: a page, what stands on it, and how one sees that it can be used. */
interface Case {
  readonly name: string;
  readonly server: AppServer;
  readonly usable: string;
  readonly log: readonly RunEvent[];
}

/** Runs in the page before it: notes when it painted, and when it could first be used. */
function watchOpening(selector: string): void {
  const seen = { fcp: 0, lcp: 0, usable: 0, live: 0 };
  Reflect.set(globalThis, "opened", seen);
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) seen.lcp = entry.startTime;
  }).observe({ type: "largest-contentful-paint", buffered: true });
  new PerformanceObserver((list) => {
    const first = list.getEntriesByName("first-contentful-paint")[0];
    if (first) seen.fcp = first.startTime;
  }).observe({ type: "paint", buffered: true });
  const look = () => {
    if (seen.live > 0 || !document.querySelector(selector)) return;
    const since = performance.now();
    seen.usable ||= since;
    if (!document.querySelector("[data-outline]")) seen.live = since;
  };
  new MutationObserver(look).observe(document, {
    childList: true,
    subtree: true,
    attributeFilter: ["data-outline"],
  });
}

/** What was fetched before the page was live. */
function readOpening(): Omit<Opened, "worked"> {
  const seen: Pick<Opened, "fcp" | "lcp" | "usable" | "live"> = Reflect.get(globalThis, "opened");
  const [page] = performance.getEntriesByType("navigation");
  const files = performance
    .getEntriesByType("resource")
    .filter((one) => one.startTime < seen.live)
    .map((one) => Number(Reflect.get(one, "responseEnd")))
    .filter((end) => end < seen.live);
  return {
    ...seen,
    answered: Number(Reflect.get(page ?? {}, "responseEnd")),
    files: files.length,
    lastFile: Math.max(0, ...files),
  };
}

async function workedMs(session: CDPSession): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  return (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN) * 1000;
}

async function measure(
  phone: Phone,
  one: Case,
  prepare: (session: CDPSession) => Promise<unknown>,
): Promise<Opened> {
  const page = await phone.context.newPage();
  const session = await phone.context.newCDPSession(page);
  await prepare(session);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  await page.addInitScript(watchOpening, one.usable);
  await page.goto(one.server.url, { waitUntil: "commit" });
  await page.waitForFunction(() => Reflect.get(Reflect.get(globalThis, "opened"), "live") > 0);
  const worked = await workedMs(session);
  await page.waitForTimeout(SETTLES);
  const opened = await page.evaluate(readOpening);
  await page.close();
  return { ...opened, worked };
}

/** As on a phone that has never seen the page; what was noted stays where `keep` says so. */
const forget = (one: Case) => async (session: CDPSession) => {
  await session.send("Storage.clearDataForOrigin", {
    origin: one.server.origin,
    storageTypes: "service_workers,cache_storage",
  });
  await session.send("Network.enable");
  await session.send("Network.clearBrowserCache");
  await session.send("Network.emulateNetworkConditions", { offline: false, ...POOR });
};

/** The worker starts anew too, as when the app was closed for a while. */
const stopWorker = async (session: CDPSession) => {
  await session.send("ServiceWorker.enable");
  await session.send("ServiceWorker.stopAllWorkers");
};

/** Everything is on the phone once its worker runs; a second visit warms what a phone keeps warm. */
async function settle(page: Page, one: Case): Promise<void> {
  await page.goto(one.server.url);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await untilStored(page);
  await page.waitForTimeout(LOOKED_AT);
}

async function runsOf(one: Case): Promise<Readonly<Record<"first" | "offline", Opened[]>>> {
  const phone = await openPhone({ origin: one.server.origin });
  const first: Opened[] = [];
  const offline: Opened[] = [];
  try {
    await phone.page.goto(one.server.url);
    await untilStored(phone.page);
    if (one.log.length > 0) await putOn(phone.page, "events", one.log);
    // Batches brought along are worked out at the next start, and only then.
    await settle(phone.page, one);
    await phone.page.goto("about:blank");
    for (let run = 0; run < RUNS; run += 1) first.push(await measure(phone, one, forget(one)));
    await settle(phone.page, one);
    await phone.page.goto("about:blank");
    await phone.context.setOffline(true);
    // The first one is not counted: the browser still compiles what it will keep compiled.
    await measure(phone, one, stopWorker);
    for (let run = 0; run < RUNS; run += 1) offline.push(await measure(phone, one, stopWorker));
  } finally {
    await phone.close();
  }
  return { first, offline };
}

const KINDS = {
  fcp: "first paint",
  lcp: "largest paint",
  usable: "usable",
  live: "live, drawn from storage",
  worked: "page thread's own work",
} as const;
const WHAT = {
  first: "first visit, 400 ms before each answer, 1.6 Mbit/s",
  offline: "offline start from the worker",
} as const;

type Summary = { readonly name: string } & Readonly<Record<keyof Opened, Spread>>;

const SEEN = ["fcp", "lcp", "usable", "live", "worked"] as const;

function summary(name: string, runs: readonly Opened[]): Summary {
  const of = (what: keyof Opened) => spreadOf(runs.map((run) => run[what]));
  const came = { answered: of("answered"), lastFile: of("lastFile"), files: of("files") };
  return {
    name,
    fcp: of("fcp"),
    lcp: of("lcp"),
    usable: of("usable"),
    live: of("live"),
    worked: of("worked"),
    ...came,
  };
}

function report(kind: keyof typeof WHAT, one: Summary, floor: Summary): void {
  console.log(`  ${WHAT[kind]}`);
  for (const what of SEEN) {
    const ratio = times(one[what].median, floor[what].median);
    say(`  ${one.name}, ${KINDS[what]}`, `${spread(one[what])} = ${ratio}`);
  }
  const last = `last of ${spread(one.files)} files at ${spread(one.lastFile)}`;
  say(`  ${one.name}, of which`, `page there at ${spread(one.answered)}, ${last}`);
}

function judge([floor, ...rest]: readonly Summary[]): void {
  for (const one of rest) {
    for (const what of ["lcp", "usable"] as const) {
      const name = `offline, ${one.name}, ${KINDS[what]}`;
      target(name, one[what].median, 1000);
      target(`${name}, to bare`, one[what].median / (floor?.[what].median ?? 0), 1.5, "x");
    }
    target(`offline, ${one.name}, ${KINDS.live}`, one.live.median, 1000);
  }
}

const casesOf = (app: AppServer, bare: AppServer, log: readonly RunEvent[]): readonly Case[] => [
  { name: "bare page", server: bare, usable: "main h1", log: [] },
  { name: "app, empty", server: app, usable: "main h1", log: [] },
  { name: "app, three runs", server: app, usable: "li:nth-child(3) > .bench-row", log },
];

/** How long the app takes to open, against the bare page in the same run. */
export async function starts(app: AppServer, bare: AppServer): Promise<void> {
  title(`Opening, ms: median of ${RUNS} (least to most), page thread ${SLOWER} x slower`);
  const floor: { first?: Summary; offline?: Summary } = {};
  const offline: Summary[] = [];
  for (const one of casesOf(app, bare, threeRuns(Date.now()))) {
    const runs = await runsOf(one);
    for (const kind of ["first", "offline"] as const) {
      const mine = summary(one.name, runs[kind]);
      floor[kind] ??= mine;
      report(kind, mine, floor[kind]);
      if (kind === "offline") offline.push(mine);
    }
  }
  judge(offline);
}
