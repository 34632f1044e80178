// Kills the browser at random moments of a scripted drip, with its real storage on disk, and looks
// each time whether everything is there that the page had called saved: npm run kills [count] [seed]
import { routes } from "../../app/routes.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import { note } from "../support/look/note.ts";
import { dropProfile, newProfile, openPhone } from "../support/phone/browser.ts";
import { handsOn } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import {
  type Bar,
  holdOf,
  OPENS,
  openBar,
  putLog,
  setClock,
  storedLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { setup } from "../support/tool/build.ts";
import { type AppServer, serveApp } from "../support/tool/server.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const [kills = 220, seed = 1] = process.argv.slice(2).map(Number);
const RUN = routes.run("run-a");
const { events, since } = stationAt("run-a", "PB-1003", OPENS, "slow-drip");
/** The longest a kill waits after the finger is lifted, ms: an act takes a few tens of them. */
const LONGEST = 250;

/** Numbers from 0 to 1, the same for the same seed (mulberry32, from memory). */
function numbers(from: number): () => number {
  let state = from;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** What the page has called saved, as it was told at that moment. */
type Seen = Set<number>;

async function openAgain(server: AppServer, profile: string, seen: Seen): Promise<Bar> {
  const phone = await openPhone({ origin: server.origin, profile, size: "small" });
  const { page } = phone;
  await page.exposeFunction("sawSaved", (text: string) => {
    const figure = /([\d,.]+)\sml/u.exec(text)?.[1];
    if (figure !== undefined) seen.add(Number(figure.replaceAll(",", "")));
  });
  await page.addInitScript((saved) => {
    new MutationObserver(() => {
      const text = document.querySelector(".notices-text")?.textContent ?? "";
      const tell: unknown = Reflect.get(globalThis, "sawSaved");
      if (text.includes(saved) && typeof tell === "function") tell(text);
    }).observe(document, { subtree: true, childList: true, characterData: true });
  }, said.run.saved);
  await setClock(phone.context, since);
  await page.goto(server.url + RUN);
  return { server, phone, page, hands: await handsOn(page) };
}

/** Types a reading, and holds to note it. */
async function typeReading({ page, hands }: Bar, ml: number): Promise<void> {
  await hands.tap(tapOf(page, said.run.collected));
  for (const key of String(ml)) await hands.tap(tapOf(page, key));
  await hands.hold(holdOf(page, said.run.take));
}

const readingsIn = (log: readonly RunEvent[]): readonly number[] =>
  log.flatMap((event) => (event.type === "reading.logged" ? [event.value] : []));

/** What is wrong with a log beside what was called saved; empty where nothing is. */
function faultsOf(log: readonly RunEvent[], seen: Seen): readonly string[] {
  const mine = log.slice(events.length);
  const readings = readingsIn(mine);
  const kinds = new Map<string, string[]>();
  for (const { act, type } of mine) kinds.set(act, [...(kinds.get(act) ?? []), type]);
  const shapes = new Set([...kinds.values()].map((types) => types.join("+")));
  return [
    ...[...seen].filter((ml) => !readings.includes(ml)).map((ml) => `lost: ${ml} ml`),
    ...readings.filter((ml, at) => readings.indexOf(ml) !== at).map((ml) => `twice: ${ml} ml`),
    ...(foldRun(log) === undefined ? ["the log tells of no batch"] : []),
    // The first reading says more than the others, for it is the first to set a time.
    ...(shapes.size > 2 ? [`half an act among ${[...shapes].join(" | ")}`] : []),
  ];
}

const chance = numbers(seed);
const seen: Seen = new Set();
let tried = 0;
let log: readonly RunEvent[] = [];

async function noteNext(bar: Bar): Promise<void> {
  tried += 1;
  await typeReading(bar, tried);
}

/** One life of the browser: what is stored is looked at, something is noted, and then it is killed. */
async function live(bar: Bar): Promise<readonly string[]> {
  const way = chance();
  if (way < 0.1) {
    await pause(chance() * 600);
    await bar.phone.kill();
    return [];
  }
  await untilStep(bar.page, "slow-drip");
  log = await storedLog(bar.page);
  const faults = faultsOf(log, seen);
  if (way < 0.35) {
    await noteNext(bar);
    await bar.page.locator(".run-pad").waitFor({ state: "detached" });
  }
  await noteNext(bar);
  await pause(chance() * LONGEST);
  await bar.phone.kill();
  return faults;
}

setup();
const server = await serveApp();
const profile = newProfile();
let faults: readonly string[] = [];
let done = 0;
try {
  const first = await openBar({ profile, server, at: since, size: "small" });
  await putLog(first, events, RUN, since);
  await untilStep(first.page, "slow-drip");
  await first.close();
  while (done < kills && faults.length === 0) {
    faults = await live(await openAgain(server, profile, seen));
    done += 1;
    if (done % 20 === 0) note(`${done} kills: ${seen.size} readings called saved so far`);
  }
  const last = await openAgain(server, profile, seen);
  await untilStep(last.page, "slow-drip");
  log = await storedLog(last.page);
  faults = [...faults, ...faultsOf(log, seen)];
  await last.phone.close();
} finally {
  await server.stop();
  // What the last kill left behind may still be writing.
  await pause(1000);
  dropProfile(profile);
}
const stored = readingsIn(log.slice(events.length)).length;
const lost = faults.filter((one) => one.startsWith("lost")).length;
note(
  `seed ${seed}: ${done} kills, ${tried} readings tried, ${seen.size} called saved before a kill, ${stored} stored, ${lost} lost`,
);
for (const fault of faults) note(fault);
if (faults.length > 0) process.exitCode = 1;
