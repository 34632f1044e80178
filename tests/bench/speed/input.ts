import type { CDPSession } from "playwright-core";
import { openBar } from "../../support/phone/walk-page.ts";
import { washByHand } from "../../support/phone/wash-by-hand.ts";
import type { AppServer } from "../../support/tool/server.ts";
import { quantile, say, target, title } from "./figures.ts";
import { slowHands } from "./slow-hands.ts";
import { SLOWER } from "./start.ts";

/** One thing a finger did, as the browser timed it: from the contact to the next picture, ms. */
interface Answered {
  readonly step: string;
  readonly what: string;
  readonly on: string;
  readonly ms: number;
  /** Of which: until the page's thread was free, in the page's own code, until it was drawn. */
  readonly waited: number;
  readonly worked: number;
  readonly drew: number;
}

interface Felt {
  readonly answers: readonly (Answered & { readonly id: number })[];
  readonly shifts: readonly {
    readonly value: number;
    readonly step: string;
    readonly of: string;
  }[];
  readonly slow: readonly { readonly step: string; readonly ms: number; readonly from: string }[];
}

/** Runs in the page before it: notes every answer to a finger, every shift, every long frame. */
function watchHands(): void {
  const answers: unknown[] = [];
  const shifts: unknown[] = [];
  const slow: unknown[] = [];
  Reflect.set(globalThis, "felt", { answers, shifts, slow });
  Reflect.set(globalThis, "step", "opening");
  const step = () => Reflect.get(globalThis, "step");
  const nameOf = (node: unknown) => {
    if (!(node instanceof Element)) return "?";
    const near = node.closest("button, a, input, [class]") ?? node;
    const words = (near.textContent ?? "").trim().slice(0, 24);
    return `${near.tagName.toLowerCase()}.${near.className || "-"} "${words}"`;
  };
  const field = (of: unknown, name: string): unknown => Reflect.get(Object(of), name);
  const number = (of: unknown, name: string) => Number(field(of, name) ?? 0);
  const watch = (type: string, take: (entry: PerformanceEntry) => void, more: object = {}) =>
    new PerformanceObserver((list) => list.getEntries().forEach(take)).observe({
      type,
      buffered: true,
      ...more,
    });
  const onEvent = (entry: PerformanceEntry) => {
    const id = number(entry, "interactionId");
    if (id === 0) return;
    const begun = number(entry, "processingStart");
    const done = number(entry, "processingEnd");
    answers.push({
      id,
      step: step(),
      what: entry.name,
      on: nameOf(field(entry, "target")),
      ms: entry.duration,
      waited: begun - entry.startTime,
      worked: done - begun,
      drew: entry.startTime + entry.duration - done,
    });
  };
  watch("event", onEvent, { durationThreshold: 16 });
  watch("layout-shift", (entry) => {
    if (field(entry, "hadRecentInput") === true) return;
    const [first] = [field(entry, "sources")].flat();
    shifts.push({ value: number(entry, "value"), step: step(), of: nameOf(field(first, "node")) });
  });
  watch("long-animation-frame", (entry) => {
    const scripts = [field(entry, "scripts")].flat();
    const longest = scripts.sort((a, b) => number(b, "duration") - number(a, "duration"))[0];
    const file = String(field(longest, "sourceURL") ?? "").replace(/^.*\//u, "");
    const from = `${String(field(longest, "invoker") ?? "drawing")} ${file}`;
    slow.push({ step: step(), ms: entry.duration, from });
  });
}

/** The worst of what each finger did counts for it. */
function interactions(felt: Felt): readonly Answered[] {
  const worst = new Map<number, Answered>();
  for (const one of felt.answers) {
    const before = worst.get(one.id);
    if (before === undefined || before.ms < one.ms) worst.set(one.id, one);
  }
  return [...worst.values()].sort((a, b) => b.ms - a.ms);
}

/** The whole wash by hand on a slowed page; with what a finger felt all along. */
async function walk(app: AppServer): Promise<Felt> {
  const bar = await openBar({ size: "small", server: app });
  const { page, phone } = bar;
  try {
    await page.addInitScript(watchHands);
    await page.reload();
    await page.waitForSelector("main");
    phone.context.setDefaultTimeout(20_000);
    const session: CDPSession = await phone.context.newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    const hands = await slowHands(page);
    await washByHand({ ...bar, hands }, (step) =>
      page.evaluate((now) => void Reflect.set(globalThis, "step", now), step),
    );
    // The last taps are counted once they are painted.
    await page.waitForTimeout(500);
    return await page.evaluate(() => Reflect.get(globalThis, "felt"));
  } finally {
    await bar.close();
  }
}

const SHOWN = 6;

/** How soon the app answers a finger, and how still it stands, over the whole job. */
export async function input(app: AppServer): Promise<void> {
  title(`A whole wash by hand, page thread ${SLOWER} x slower`);
  const felt = await walk(app);
  const all = interactions(felt);
  const ms = all.map((one) => one.ms);
  say("interactions timed (16 ms or more)", String(all.length));
  say(
    "median, 75th, 98th percentile, worst, ms",
    [0.5, 0.75, 0.98, 1].map((share) => quantile(ms, share)).join(", "),
  );
  target("input delay, 98th percentile", quantile(ms, 0.98), 100);
  target("input delay, worst", quantile(ms, 1), 100);
  for (const one of all.slice(0, SHOWN)) {
    const parts = [one.waited, one.worked, one.drew].map((part) => part.toFixed(0)).join(" + ");
    say(`  ${one.ms} ms = ${parts}, after ${one.step}`, `${one.what} ${one.on}`);
  }
  const frames = [...felt.slow].sort((a, b) => b.ms - a.ms);
  say("frames longer than 50 ms in all of it", String(frames.length));
  for (const one of frames.slice(0, SHOWN)) {
    say(`  ${one.ms.toFixed(0)} ms, after ${one.step}`, one.from);
  }
  target(
    "layout shift, summed",
    felt.shifts.reduce((sum, { value }) => sum + value, 0),
    0.02,
    "",
  );
  const shifts = [...felt.shifts].sort((a, b) => b.value - a.value);
  for (const one of shifts.slice(0, SHOWN)) {
    say(`  ${one.value.toFixed(4)}, after ${one.step}`, one.of);
  }
}
