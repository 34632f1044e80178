import * as z from "zod/mini";
import { routes } from "../../app/routes.ts";
import { fileOf } from "../../app/storage/backup/write.ts";
import { volume } from "../../app/words/format.ts";
import { eventSchema, type RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import { mergeEvents } from "../../core/run/order.ts";
import { endingOf } from "../../core/run/run.ts";
import { said } from "../support/phone/said.ts";
import { demoSpec, planned } from "../support/world/play-run.ts";
import { ask, button, hold, tap, untilGone, untilSeen } from "./engines-hands.ts";
import { type Glass, pause, untilDone } from "./webdriver.ts";

const SHORT = 1500;
/** A wash whose waits are over almost at once: the clock of these engines is the real one. */
const SPEC = {
  ...demoSpec("Pear Beacon"),
  id: "short-beacon",
  name: "Short Beacon",
  demo: false,
  procedure: {
    id: "dairy-wash",
    times: { curdle: SHORT, "first-pass": SHORT, "check-clear": SHORT, "slow-drip": SHORT },
  },
};
const PLAN = planned(SPEC, { by: "serves", serves: 60 });
const EXPECTED = PLAN.yield?.expected ?? 0;
const THROUGH = Math.round(EXPECTED * 0.9);
const TOP_UP = PLAN.heldBackMl * (THROUGH / EXPECTED);
const BOTTLES = Math.ceil((THROUGH + TOP_UP) / 700);
const ml = (value: number): string => volume(value, { volumes: "ml", ounce: "bar" });

/** What the log must hold at the end, in its order; what the app moves by itself is left out. */
const TOLD = [
  ...["run.started", "step.started build#1"],
  ...PLAN.spec.lines.map(({ id }) => `line.poured ${id}`),
  ...["step.finished build#1", "step.started milk#1", "reading.logged", "step.finished milk#1"],
  ...["step.started pour#1", "step.finished pour#1"],
  ...["step.started curdle#1", "alarm.heard curdle#1", "step.finished curdle#1"],
  ...["step.started wet-filter#1", "step.finished wet-filter#1"],
  ...["step.started first-pass#1", "alarm.heard first-pass#1", "step.finished first-pass#1"],
  ...["step.started re-pour#1", "run.repoured", "step.finished re-pour#1"],
  ...["step.started check-clear#1", "alarm.heard check-clear#1", "look.noted"],
  ...["step.finished check-clear#1", "step.started slow-drip#1", "alarm.heard slow-drip#1"],
  ...["reading.logged", "step.finished slow-drip#1"],
  ...["step.started yield#1", "yield.logged", "step.finished yield#1"],
  ...["step.started top-up#1", "topup.poured", "step.finished top-up#1"],
  ...["step.started bottle#1", "run.bottled", "step.finished bottle#1"],
  ...["step.started label#1", "step.finished label#1"],
];

function told(event: RunEvent): string {
  if (event.type === "line.poured") return `${event.type} ${event.line}`;
  const visited = /^(?:step\.|alarm\.)/u.test(event.type) && "visit" in event;
  return visited ? `${event.type} ${event.visit}` : event.type;
}

const storedEvents = () =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open("second-pour");
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const all = opening.result.transaction("events").objectStore("events").getAll();
      all.onerror = () => reject(all.error);
      all.onsuccess = () => {
        opening.result.close();
        resolve(all.result);
      };
    };
  });

async function storedLog(glass: Glass): Promise<readonly RunEvent[]> {
  const stored = await ask(glass, z.array(z.unknown()), storedEvents);
  return mergeEvents(
    stored.map((event) => eventSchema.parse(event)),
    [],
  );
}

export const goToPlace = async (glass: Glass, hash: string): Promise<void> => {
  const go = (to: string) => {
    if (location.hash === to) return 0;
    document.querySelector("main")?.setAttribute("data-left", "");
    location.hash = to;
    return 0;
  };
  await ask(glass, z.number(), go, hash);
  await untilSeen(glass, { css: "main:not([data-left]) h1" });
};

const untilStep = (glass: Glass, step: string): Promise<void> => {
  const says = said.work.verbs[step];
  if (says === undefined) throw new RangeError(`no word for the step ${step}`);
  return untilSeen(glass, { css: "h1", says });
};

async function finish(glass: Glass, step: string): Promise<void> {
  await untilStep(glass, step);
  await hold(glass, said.run.done[step] ?? step);
}

async function typeOnPad(glass: Glass, figure: string): Promise<void> {
  for (const key of figure) await tap(glass, button(key));
  await hold(glass, said.run.take);
}

/** Waits for the alarm and answers it. */
async function hear(glass: Glass): Promise<void> {
  await untilSeen(glass, { css: ".alarm-sheet" });
  await hold(glass, said.alarm.heard);
  await untilGone(glass, ".alarm-sheet");
}

/** Puts the spec on the phone through the app's own restore. */
export async function bringSpec(glass: Glass): Promise<void> {
  const text = await fileOf({ specs: [SPEC] }, { madeAt: Date.now(), app: "0.0.0-test" });
  await goToPlace(glass, routes.kit);
  await untilSeen(glass, { css: ".kit-pick" });
  const choose = (content: string) => {
    const files = new DataTransfer();
    files.items.add(new File([content], "backup.txt", { type: "text/plain" }));
    const input = document.querySelector<HTMLInputElement>(".kit-file");
    if (input === null) return 0;
    input.files = files.files;
    input.dispatchEvent(new Event("change", { bubbles: true }));
    return input.files.length;
  };
  await ask(glass, z.literal(1), choose, text);
  await hold(glass, said.kit.restore.add(1));
  await untilSeen(glass, { css: "p", says: said.kit.restore.added(1) });
}

async function start(glass: Glass): Promise<void> {
  await goToPlace(glass, routes.specs);
  await tap(glass, { css: "a", says: said.specs.planName(SPEC.name) });
  await untilSeen(glass, { css: "h1", says: said.plan.title(SPEC.name) });
  await tap(glass, { css: "label", says: said.plan.serves });
  // Only when the tap has led into the field: what is typed takes the place of what it held.
  await ask(glass, z.literal("in it"), () => {
    const entry = document.activeElement;
    if (entry instanceof HTMLInputElement) entry.select();
    return entry instanceof HTMLInputElement ? "in it" : entry?.outerHTML;
  });
  await glass.type("60");
  await hold(glass, said.plan.start);
}

async function wash(glass: Glass): Promise<void> {
  await untilStep(glass, "build");
  for (let line = 1; line <= PLAN.spec.lines.length; line += 1) {
    const css = `.run-lines > li:nth-child(${line}) button`;
    await tap(glass, { css });
    await untilSeen(glass, { css: `.run-lines > li:nth-child(${line}) [aria-pressed="true"]` });
  }
  await finish(glass, "build");
  await untilStep(glass, "milk");
  await hold(glass, said.run.asPlanned(ml(PLAN.milk?.ml ?? 0)));
  await finish(glass, "pour");
  await untilStep(glass, "curdle");
  await hear(glass);
  await finish(glass, "curdle");
  await finish(glass, "wet-filter");
  await untilStep(glass, "first-pass");
  await hear(glass);
  await finish(glass, "first-pass");
}

async function drip(glass: Glass): Promise<void> {
  await untilStep(glass, "re-pour");
  await tap(glass, button(said.run.typeAmount));
  await typeOnPad(glass, "400");
  await untilStep(glass, "check-clear");
  await hear(glass);
  await hold(glass, said.run.outcomes.clear);
  await untilStep(glass, "slow-drip");
  await hear(glass);
  await tap(glass, button(said.run.collected));
  await typeOnPad(glass, "1600");
  await untilGone(glass, ".number-pad");
  await finish(glass, "slow-drip");
}

async function bottle(glass: Glass): Promise<void> {
  await untilStep(glass, "yield");
  await tap(glass, button(said.run.typeAmount));
  await typeOnPad(glass, String(THROUGH));
  await untilStep(glass, "top-up");
  await hold(glass, said.run.asPlanned(ml(TOP_UP)));
  await untilStep(glass, "bottle");
  await hold(glass, said.run.bottle.done(BOTTLES));
  await finish(glass, "label");
  await untilSeen(glass, { css: "h1", says: said.run.finished });
}

/** In the page: what is shown, but for the running clock and for whether it may sound already. */
const seen = () => {
  const copy = document.querySelector("main")?.cloneNode(true);
  if (!(copy instanceof Element)) return "";
  for (const line of copy.querySelectorAll(".status-line")) line.remove();
  return (copy.textContent ?? "").replace(/\d+:\d\d(?::\d\d)?/gu, "");
};

/** Loads the page anew: what is shown and stored must be the same. */
async function reloaded(glass: Glass): Promise<void> {
  const [before, log] = [await ask(glass, z.string(), seen), await storedLog(glass)];
  await glass.reload();
  await untilDone(async () => {
    const after = await ask(glass, z.string(), seen);
    if (after !== before) throw new Error(`after a reload it shows “${after}”, not “${before}”`);
  });
  const again = await storedLog(glass);
  if (JSON.stringify(again) !== JSON.stringify(log)) throw new Error("the reload changed the log");
}

async function lookBack(glass: Glass): Promise<void> {
  const log = await storedLog(glass);
  const run = foldRun(log);
  if (run === undefined || endingOf(run)?.how !== "finished") throw new Error("it never finished");
  const done = log.filter(({ type }) => type !== "due.moved").map(told);
  if (done.join() !== TOLD.join()) throw new Error(`the log tells ${done.join(", ")}`);
  await goToPlace(glass, routes.label(run.id));
  await untilSeen(glass, button(said.label.print));
  await goToPlace(glass, routes.shelf);
  await untilSeen(glass, { css: ".shelf-row" });
  await goToPlace(glass, routes.logbook);
  await tap(glass, { css: ".logbook-row" });
  await untilSeen(glass, { css: ".batch-log" });
}

/** The whole job, from the plan to the logbook, loaded anew half way and at the end. */
export async function wholeJob(glass: Glass): Promise<void> {
  await start(glass);
  await wash(glass);
  await untilStep(glass, "re-pour");
  // The last notice goes by itself.
  await pause(1000);
  await reloaded(glass);
  await drip(glass);
  await bottle(glass);
  await glass.reload();
  await untilSeen(glass, { css: "main h1" });
  await lookBack(glass);
}
