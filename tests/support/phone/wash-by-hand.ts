import type { Page } from "playwright-core";
import { volume } from "../../../app/words/format.ts";
import { alarmsOf } from "../../../core/run/alarm.ts";
import { foldRun } from "../../../core/run/fold.ts";
import { demoSpec, planned } from "../world/play-run.ts";
import { said } from "./said.ts";
import {
  answerAlarm,
  type Bar,
  clockOf,
  holdOf,
  pass,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "./walk-page.ts";

/** Volumes as a new phone shows them. */
export const ml = (value: number): string => volume(value, { volumes: "ml", ounce: "bar" });

/** The batch that is made by hand: sixty serves of a demo spec. */
export const PLAN = planned(demoSpec("Pear Beacon"), { by: "serves", serves: 60 });
export const MILK = PLAN.milk?.ml ?? 0;
const EXPECTED = PLAN.yield?.expected ?? 0;
/** Nine tenths of what the plan expects come through. */
export const THROUGH = Math.round(EXPECTED * 0.9);
/** The held-back spirit in the same proportion. */
export const TOP_UP = PLAN.heldBackMl * (THROUGH / EXPECTED);
/** Bottles of 700 ml, the last one perhaps not full. */
export const BOTTLES = Math.ceil((THROUGH + TOP_UP) / 700);

/** What is done at each step besides its work: look at it, photograph it, reload the page. */
export type AtStep = (step: string) => Promise<void>;

const link = (page: Page, name: string) => page.getByRole("link", { name, exact: true });

/** From any screen to the plan of a demo spec. */
export async function openPlan({ page, hands }: Bar, spec: string): Promise<void> {
  await hands.tap(link(page, said.places.specs));
  await page.getByRole("heading", { name: said.specs.title }).waitFor();
  const way = link(page, said.specs.planName(spec));
  if ((await way.count()) === 0) await hands.tap(tapOf(page, said.specs.putDemo));
  await way.waitFor();
  await hands.tap(way);
  await page.getByRole("heading", { name: said.plan.title(spec) }).waitFor();
}

/** Ticks every line of the build as it goes in. */
export async function tickAll({ page, hands }: Bar): Promise<void> {
  const lines = await page.locator(".run-lines > li").count();
  for (let at = 1; at <= lines; at += 1) {
    const line = page.locator(`.run-lines > li:nth-child(${at}) button`);
    await hands.tap(line);
    await page.locator(`.run-lines > li:nth-child(${at}) [aria-pressed="true"]`).waitFor();
  }
}

/** Holds the button that ends a step which is simply done. */
export async function finishPlain({ page, hands }: Bar, step: string): Promise<void> {
  const done = said.run.done[step];
  if (done === undefined) throw new RangeError(`no word for the end of ${step}`);
  await hands.hold(holdOf(page, done));
}

/** Lets the wait on the screen go by to its deadline, and answers it when it rings. */
export async function waitOut(bar: Bar): Promise<void> {
  const runId = new URL(bar.page.url()).hash.replace(/^.*\//u, "");
  const run = foldRun((await storedLog(bar.page)).filter((event) => event.runId === runId));
  const [alarm] = run === undefined ? [] : alarmsOf(run);
  if (alarm === undefined) throw new RangeError("nothing is waited for on this screen");
  await pass(bar.page, Math.max(0, alarm.dueAt - (await clockOf(bar.page))));
  await answerAlarm(bar);
  await bar.page.locator(".alarm-sheet").waitFor({ state: "detached" });
}

async function start(bar: Bar): Promise<void> {
  const { page, hands } = bar;
  await openPlan(bar, PLAN.spec.name);
  await page.getByRole("textbox", { name: said.plan.serves, exact: true }).fill("60");
  await hands.holdTruly(holdOf(page, said.plan.start));
  await untilStep(page, "build");
}

async function curdle(bar: Bar, atStep: AtStep): Promise<void> {
  const { page, hands } = bar;
  await tickAll(bar);
  await atStep("build");
  await finishPlain(bar, "build");
  await untilStep(page, "milk");
  await atStep("milk");
  await hands.hold(holdOf(page, said.run.asPlanned(ml(MILK))));
  await untilStep(page, "pour");
  await atStep("pour");
  await finishPlain(bar, "pour");
  await untilStep(page, "curdle");
  await atStep("curdle");
  await waitOut(bar);
  await finishPlain(bar, "curdle");
}

async function firstPass(bar: Bar, atStep: AtStep): Promise<void> {
  const { page, hands } = bar;
  await untilStep(page, "wet-filter");
  await atStep("wet-filter");
  await finishPlain(bar, "wet-filter");
  await untilStep(page, "first-pass");
  await atStep("first-pass");
  await waitOut(bar);
  await finishPlain(bar, "first-pass");
  for (const [round, poured, look] of [
    [1, "400", "cloudy"],
    [2, "250", "clear"],
  ] as const) {
    await untilStep(page, "re-pour", round);
    await atStep(`re-pour-${round}`);
    // Who pours back again finds the pad open.
    if (round === 1) await hands.tap(tapOf(page, said.run.typeAmount));
    await page.locator(".run-pad").waitFor();
    await typeOnPad(bar, poured);
    await untilStep(page, "check-clear", round);
    await atStep(`check-clear-${round}`);
    await waitOut(bar);
    await hands.hold(holdOf(page, said.run.outcomes[look]));
  }
}

async function slowDrip(bar: Bar, atStep: AtStep): Promise<void> {
  const { page, hands } = bar;
  await untilStep(page, "slow-drip");
  await atStep("slow-drip");
  for (const reading of [1600, 2900, 3600]) {
    await waitOut(bar);
    await hands.tap(tapOf(page, said.run.collected));
    await typeOnPad(bar, String(reading));
    await page.locator(".run-fact", { hasText: ml(reading) }).waitFor();
  }
  await atStep("slow-drip-read");
  await finishPlain(bar, "slow-drip");
}

async function bottle(bar: Bar, atStep: AtStep): Promise<void> {
  const { page, hands } = bar;
  await untilStep(page, "yield");
  await atStep("yield");
  await hands.tap(tapOf(page, said.run.typeAmount));
  await typeOnPad(bar, String(THROUGH));
  await untilStep(page, "top-up");
  await atStep("top-up");
  await hands.hold(holdOf(page, said.run.asPlanned(ml(TOP_UP))));
  await untilStep(page, "bottle");
  await atStep("bottle");
  await hands.hold(holdOf(page, said.run.bottle.done(BOTTLES)));
  await untilStep(page, "label");
  await atStep("label");
  await finishPlain(bar, "label");
  await page.getByRole("heading", { name: said.run.finished }).waitFor();
  await atStep("finished");
}

/** The whole job by hand, from the spec book to the end of the batch: cloudy once, then clear. */
export async function washByHand(bar: Bar, atStep: AtStep): Promise<void> {
  await start(bar);
  await curdle(bar, atStep);
  await firstPass(bar, atStep);
  await slowDrip(bar, atStep);
  await bottle(bar, atStep);
}
