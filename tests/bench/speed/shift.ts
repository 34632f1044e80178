import type { CDPSession, Page } from "playwright-core";
import { routes } from "../../../app/routes.ts";
import { openPhone, untilStored } from "../../support/phone/browser.ts";
import {
  answerAlarm,
  type Bar,
  goTo,
  MINUTE,
  OPENS,
  openBar,
  putLog,
  SECOND,
  setClock,
  storedLog,
} from "../../support/phone/walk-page.ts";
import type { AppServer } from "../../support/tool/server.ts";
import { say, target, title } from "./figures.ts";
import { type HeapKinds, heapKinds } from "./heap-kinds.ts";
import { fourRuns } from "./seeded.ts";

const HOURS = 12;
/** The phone is looked at so often. */
const LOOKS_EVERY = 15 * MINUTE;
/** Of each quarter of an hour so much is lived second by second; the rest is one leap. */
const LIVED = 90 * SECOND;
/** Until then what is fetched late is still coming in. */
const SETTLED = 2;

interface Weight {
  /** Page's clock, hours since the shift began. */
  readonly hour: number;
  readonly heapKb: number;
  readonly nodes: number;
  readonly listeners: number;
}

async function weigh(session: CDPSession, hour: number): Promise<Weight> {
  await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  const { nodes, jsEventListeners } = await session.send("Memory.getDOMCounters");
  return { hour, heapKb: usedSize / 1000, nodes, listeners: jsEventListeners };
}

/** Least squares: how much more there is of something each hour. */
function slope(weights: readonly Weight[], of: (weight: Weight) => number): number {
  const mean = (take: (weight: Weight) => number) =>
    weights.reduce((sum, one) => sum + take(one), 0) / weights.length;
  const hour = mean((one) => one.hour);
  const level = mean(of);
  const both = mean((one) => (one.hour - hour) * (of(one) - level));
  return both / mean((one) => (one.hour - hour) ** 2);
}

async function live(page: Page): Promise<void> {
  await page.clock.fastForward(LOOKS_EVERY - LIVED);
  await page.clock.runFor(LIVED);
}

/** Answers whatever rings, looks at every batch and at the dim face, and lays the phone down. */
async function look(bar: Bar, log: readonly string[]): Promise<void> {
  const { page } = bar;
  for (let rings = 0; rings < log.length; rings += 1) {
    if ((await page.locator(".alarm-sheet").count()) === 0) break;
    await answerAlarm(bar);
    // The next one that rings takes the place of this one, or the sheet goes.
    await page.waitForTimeout(100);
  }
  for (const runId of log) await goTo(page, routes.run(runId));
  await goTo(page, routes.dim("run-steep"));
  await goTo(page, routes.bench);
}

interface Shift {
  readonly weights: readonly Weight[];
  /** Once settled, and at the end. */
  readonly before: HeapKinds;
  readonly after: HeapKinds;
  readonly complaints: number;
  /** What was written into the logs meanwhile: it stays in memory, as it should. */
  readonly noted: number;
}

async function shiftOf(app: AppServer): Promise<Shift> {
  const bar = await openBar({ size: "small", server: app });
  try {
    const log = fourRuns(OPENS);
    await putLog(bar, log, routes.bench, OPENS);
    await bar.page.locator(".bench-row").nth(3).waitFor();
    const session = await bar.phone.context.newCDPSession(bar.page);
    const runs = [...new Set(log.map(({ runId }) => runId))];
    const weights: Weight[] = [];
    let before: HeapKinds | undefined;
    const looks = (HOURS * 60 * MINUTE) / LOOKS_EVERY;
    for (let at = 1; at <= looks; at += 1) {
      await live(bar.page);
      await look(bar, runs);
      const hour = (at * LOOKS_EVERY) / (60 * MINUTE);
      if (Number.isInteger(hour)) weights.push(await weigh(session, hour));
      if (hour === SETTLED) before = await heapKinds(session);
    }
    const after = await heapKinds(session);
    const noted = (await storedLog(bar.page)).length - log.length;
    return {
      weights,
      before: before ?? after,
      after,
      noted,
      complaints: bar.phone.complaints.length,
    };
  } finally {
    await bar.close();
  }
}

/** The same hours on a page that does nothing: what the measuring itself leaves behind. */
async function idleShift(bare: AppServer): Promise<readonly Weight[]> {
  const phone = await openPhone({ origin: bare.origin });
  try {
    await setClock(phone.context, OPENS);
    await phone.page.goto(bare.url);
    await untilStored(phone.page);
    const session = await phone.context.newCDPSession(phone.page);
    const weights: Weight[] = [];
    for (let hour = 1; hour <= HOURS; hour += 1) {
      for (let part = 0; part < (60 * MINUTE) / LOOKS_EVERY; part += 1) await live(phone.page);
      weights.push(await weigh(session, hour));
    }
    return weights;
  } finally {
    await phone.close();
  }
}

function report(name: string, weights: readonly Weight[]): Readonly<Record<string, number>> {
  const settled = weights.filter(({ hour }) => hour >= SETTLED);
  const list = (of: (weight: Weight) => number) =>
    weights.map((one) => of(one).toFixed(0)).join(" ");
  say(
    `${name}: heap after garbage collection, kB each hour`,
    list((one) => one.heapKb),
  );
  say(
    `${name}: nodes each hour`,
    list((one) => one.nodes),
  );
  say(
    `${name}: listeners each hour`,
    list((one) => one.listeners),
  );
  const slopes = {
    heap: slope(settled, (one) => one.heapKb),
    nodes: slope(settled, (one) => one.nodes),
    listeners: slope(settled, (one) => one.listeners),
  };
  const words = Object.entries(slopes).map(([what, more]) => `${what} ${more.toFixed(2)}`);
  say(`${name}: more each hour (heap in kB), from hour ${SETTLED} on`, words.join(", "));
  return slopes;
}

/** What a long shift leaves in the phone's memory. */
export async function shift(app: AppServer, bare: AppServer): Promise<void> {
  title(`A shift of ${HOURS} hours, four runs, looked at every quarter of an hour`);
  report("bare page", await idleShift(bare));
  const { weights, before, after, complaints, noted } = await shiftOf(app);
  const slopes = report("app", weights);
  say("errors on the page meanwhile", String(complaints));
  const hours = HOURS - SETTLED;
  const held = after.held - before.held;
  say(
    "compiled code of the browser's, kB more each hour",
    ((after.code - before.code) / hours).toFixed(1),
  );
  say("events noted in the logs, kB held for each", `${noted}, ${(held / noted).toFixed(2)}`);
  // A percent of what is held an hour would be a tenth more by the end of the shift.
  target("app: held in memory, kB more each hour", held / hours, before.held / 100, "kB");
  target("app: nodes, more each hour", slopes.nodes ?? Number.NaN, 5, "");
  target("app: listeners, more each hour", slopes.listeners ?? Number.NaN, 2, "");
}
