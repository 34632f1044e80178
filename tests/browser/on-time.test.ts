import { expect, onTestFinished, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { note } from "../support/look/note.ts";
import { watchStalls } from "../support/look/stalls.ts";
import { openPhone, untilStored } from "../support/phone/browser.ts";
import { handsOn } from "../support/phone/hands.ts";
import { heardBy, listenIn, loudness, onsetAfter, pitchAt } from "../support/phone/hear.ts";
import { HOUR, putOn, SECOND } from "../support/phone/walk-page.ts";
import { serveApp } from "../support/tool/server.ts";
import { type Wait, waiting } from "../support/world/waiting.ts";

// These run in real time: what is promised is a moment, and an emulated clock cannot miss one.

/** An alarm may be late by so much while the page is in sight, ms. Judgement. */
const MAY_BE_LATE = 250;

/** A phone with a log on it, the app not yet opened. */
async function phoneWith(log: (now: number) => ReturnType<typeof waiting>) {
  const server = await serveApp();
  const phone = await openPhone({ origin: server.origin, size: "small" });
  const stalls = watchStalls();
  onTestFinished(async () => {
    stalls.end();
    expect(phone.complaints).toEqual([]);
    await phone.close();
    await server.stop();
  });
  await phone.page.goto(server.url);
  await untilStored(phone.page);
  await putOn(phone.page, "events", log(Date.now()));
  await phone.page.goto("about:blank");
  return { ...phone, server, stalls };
}

const due = (runId: string, dueAt: number, step: Wait["step"] = {}) =>
  waiting({ runId, batch: runId, from: dueAt - HOUR, waitFor: HOUR, step });

test("on a slow phone, six times slowed, each alarm shows within a quarter of a second", async () => {
  const dues: number[] = [];
  const { page, context, server, stalls } = await phoneWith((now) => {
    // No two at the same part of a second: looks that come every second must not be what helps.
    dues.push(...[6100, 7730, 9060, 10_990, 12_320, 13_650].map((ms) => now + ms));
    return dues.flatMap((dueAt, i) => due(`run-${i}`, dueAt));
  });
  await page.addInitScript(() => {
    const shown: number[] = [];
    Reflect.set(globalThis, "shown", shown);
    new MutationObserver(() => {
      const late = document.querySelector(".alarm-sheet-late")?.textContent;
      if (late === undefined || late === null) return;
      const count = 1 + Number(/and (\d+) more/u.exec(late)?.[1] ?? 0);
      while (shown.length < count) shown.push(Date.now());
    }).observe(document, { childList: true, subtree: true, characterData: true });
  });
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 6 });
  await page.goto(server.url + routes.bench);
  await page.locator(".status-line").waitFor();
  await (await handsOn(page)).touch([{ x: 180, y: 30 }], 80);
  await page.waitForFunction(
    (count) => Reflect.get(globalThis, "shown").length === count,
    dues.length,
    { timeout: 25_000 },
  );
  const shown = await page.evaluate<number[]>("shown");
  const late = shown.map((at, i) => Math.round(at - (dues[i] ?? 0)));
  note(`alarms shown after they were due, 6 times slowed: ${late.join(", ")} ms`);
  expect(Math.min(...late)).toBeGreaterThanOrEqual(0);
  for (const [i, by] of late.entries()) {
    const dueAt = dues[i] ?? 0;
    const stalled = stalls.longest(dueAt - 100, dueAt + by + 100);
    expect(by, `alarm ${i}, the machine stalled for ${stalled} ms`).toBeLessThanOrEqual(
      MAY_BE_LATE + stalled,
    );
  }
});

/** First pitches of the three sounds, Hz, and how long a round is, ms: app/alarm/sound-shape.ts. */
const SOUNDS = [
  { kind: "done", pitch: 1175, round: 3200, step: { stands: "fridge" } },
  { kind: "look", pitch: 1245, round: 2400, step: { kind: "watched-wait" } },
  { kind: "do", pitch: 740, round: 1600, step: { stands: "counter" } },
] as const;

test("what is sent to the speaker begins when it is due, differs by kind, and rises", async () => {
  const APART = 5500;
  const dues: number[] = [];
  const { page, server, stalls } = await phoneWith((now) => {
    dues.push(...SOUNDS.map((_, i) => now + 3500 + i * APART));
    return SOUNDS.flatMap(({ kind, step }, i) => due(`run-${kind}`, dues[i] ?? 0, step));
  });
  await page.addInitScript(listenIn);
  await page.goto(server.url + routes.bench);
  await page.locator(".status-line").waitFor();
  const hands = await handsOn(page);
  await hands.touch([{ x: 180, y: 30 }], 80);
  const until = (at: number) =>
    page.waitForFunction((moment) => Date.now() >= moment, at, { polling: 50, timeout: 20_000 });
  for (const [i, { round }] of SOUNDS.entries()) {
    await until((dues[i] ?? 0) + round + 600);
    await page.locator(".alarm-sheet .hold-button").press("Enter");
    await page.locator(".alarm-sheet").waitFor({ state: "detached" });
  }
  await until((dues.at(-1) ?? 0) + 3 * SECOND);
  const heard = await heardBy(page);
  const pitches = SOUNDS.map(({ pitch }) => pitch);
  for (const [i, { kind, pitch, round }] of SOUNDS.entries()) {
    const dueAt = dues[i] ?? 0;
    expect(loudness(heard, dueAt - 400, 380), `before ${kind}`).toBeLessThan(0.001);
    const onset = onsetAfter(heard, dueAt - 400) ?? Number.POSITIVE_INFINITY;
    const stalled = stalls.longest(dueAt - 100, dueAt + MAY_BE_LATE + SECOND);
    const by = Math.round(onset - dueAt);
    const [first, second] = [0, round].map((after) => loudness(heard, onset + after, 350));
    note(
      `${kind}: heard ${by} ms after it was due, loudness ${first?.toFixed(3)}, a round later ${second?.toFixed(3)}`,
    );
    expect(by, `${kind}, the machine stalled for ${stalled} ms`).toBeLessThanOrEqual(
      MAY_BE_LATE + stalled,
    );
    expect(pitchAt(heard, onset, 110, pitches), kind).toBe(pitch);
    expect(first, kind).toBeGreaterThan(0.05);
    // From a third to full strength in a quarter of a minute: app/alarm/sound-shape.ts.
    const rise = 1 + ((1 - 0.3) / 0.3) * (round / 15_000);
    expect((second ?? 0) / (first ?? 1), kind).toBeGreaterThan(1 + (rise - 1) * 0.6);
  }
  // Answered, it is silent.
  expect(loudness(heard, (dues.at(-1) ?? 0) + 2700, 300)).toBeLessThan(0.001);
});
