import { expect, onTestFinished, test } from "vitest";
import { volume } from "../../app/words/format.ts";
import { volumeOf } from "../../core/liquid/liquid.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import { endingOf, type Run } from "../../core/run/run.ts";
import { untilStored } from "../support/browser.ts";
import { demoSpec, planned } from "../support/play-run.ts";
import { said } from "../support/said.ts";
import {
  answerAlarm,
  type Bar,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  openBar,
  pass,
  shot,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "../support/walk-page.ts";
import { finishPlain, openPlan, tickAll, waitOut } from "../support/wash-by-hand.ts";

const ML = { volumes: "ml", ounce: "bar" } as const;
const ml = (value: number) => volume(value, ML);
const plan = planned(demoSpec("Pear Beacon"), { by: "serves", serves: 60 });
const milk = plan.milk?.ml ?? 0;
const expected = plan.yield?.expected ?? 0;
/** Nine tenths of what the plan expects came through. */
const through = Math.round(expected * 0.9);

async function start(bar: Bar): Promise<void> {
  const { page, hands } = bar;
  await openPlan(bar, "Pear Beacon");
  await page.getByLabel(said.plan.serves, { exact: true }).last().fill("60");
  await shot(page, "wash-00-plan");
  await hands.holdTruly(holdOf(page, said.plan.start));
  await untilStep(page, "build");
}

async function curdle(bar: Bar): Promise<void> {
  const { page, hands } = bar;
  await shot(page, "wash-01-build");
  await tickAll(bar);
  await finishPlain(bar, "build");
  await untilStep(page, "milk");
  await shot(page, "wash-02-milk");
  await hands.hold(holdOf(page, said.run.asPlanned(ml(milk))));
  await untilStep(page, "pour");
  await shot(page, "wash-03-pour");
  await finishPlain(bar, "pour");
  await untilStep(page, "curdle");
  await shot(page, "wash-04-rest");
  await pass(page, HOUR);
  await page.locator(".alarm-sheet").waitFor();
  await shot(page, "wash-05-alarm");
  await answerAlarm(bar);
  await page.locator(".alarm-sheet").waitFor({ state: "detached" });
  await finishPlain(bar, "curdle");
  await untilStep(page, "wet-filter");
}

async function firstPass(bar: Bar): Promise<void> {
  const { page, hands } = bar;
  await shot(page, "wash-06-wet-filter");
  await finishPlain(bar, "wet-filter");
  await untilStep(page, "first-pass");
  await shot(page, "wash-07-first-pass");
  await waitOut(bar, MINUTE);
  await finishPlain(bar, "first-pass");
  for (const [round, poured, look] of [
    [1, "400", "cloudy"],
    [2, "250", "clear"],
  ] as const) {
    await untilStep(page, "re-pour", round);
    await shot(page, `wash-08-re-pour-${round}`);
    await hands.tap(tapOf(page, said.run.typeAmount));
    await shot(page, "wash-09-pad");
    await typeOnPad(bar, poured);
    await untilStep(page, "check-clear", round);
    await waitOut(bar, MINUTE);
    await shot(page, `wash-10-clear-${round}`);
    await hands.hold(holdOf(page, said.run.lookDone[look]));
  }
  await untilStep(page, "slow-drip");
}

async function slowDrip(bar: Bar): Promise<void> {
  const { page, hands } = bar;
  await shot(page, "wash-11-drip");
  for (const [wait, reading] of [
    [30 * MINUTE, 1600],
    [HOUR, 2900],
    [HOUR, 3600],
  ] as const) {
    await waitOut(bar, wait);
    await hands.tap(tapOf(page, said.run.collected));
    await typeOnPad(bar, String(reading));
    await page.getByText(`${ml(reading)} so far`, { exact: false }).waitFor();
  }
  await shot(page, "wash-12-drip-read");
  await finishPlain(bar, "slow-drip");
  await untilStep(page, "yield");
}

async function bottle(bar: Bar): Promise<void> {
  const { page, hands } = bar;
  await shot(page, "wash-13-yield");
  await hands.tap(tapOf(page, said.run.typeAmount));
  await typeOnPad(bar, String(through));
  await untilStep(page, "top-up");
  await shot(page, "wash-14-top-up");
  const advised = plan.heldBackMl * (through / expected);
  const pair = await page.locator(".run-pair").innerText();
  expect(pair).toContain(ml(plan.heldBackMl));
  expect(pair).toContain(ml(advised));
  expect(await page.locator(".run-advice").innerText()).toContain("90 % of the expected yield");
  await hands.hold(holdOf(page, said.run.asPlanned(ml(advised))));
  await untilStep(page, "bottle");
  await shot(page, "wash-15-bottle");
  const bottles = Math.ceil((through + advised) / 700);
  await hands.hold(holdOf(page, said.run.bottle.done(bottles)));
  await untilStep(page, "label");
  await shot(page, "wash-16-label");
  await finishPlain(bar, "label");
  await page.getByRole("heading", { name: said.run.finished }).waitFor();
  await shot(page, "wash-17-finished");
}

/** What the log of the whole job must hold, in its order. */
const TOLD = [
  "run.started",
  "step.started build#1",
  "line.poured eau-de-vie",
  "line.poured rum",
  "line.poured lemon",
  "line.poured oolong",
  "line.poured ginger",
  "line.poured allspice",
  "step.finished build#1",
  "step.started milk#1",
  `reading.logged milk ${milk}`,
  "step.finished milk#1",
  "step.started pour#1",
  "step.finished pour#1",
  "step.started curdle#1",
  "alarm.heard curdle#1",
  "step.finished curdle#1",
  "step.started wet-filter#1",
  "step.finished wet-filter#1",
  "step.started first-pass#1",
  "alarm.heard first-pass#1",
  "step.finished first-pass#1",
  "step.started re-pour#1",
  "run.repoured 400",
  "step.finished re-pour#1",
  "step.started check-clear#1",
  "alarm.heard check-clear#1",
  "look.noted cloudy",
  "step.finished check-clear#1",
  "step.started re-pour#2",
  "run.repoured 250",
  "step.finished re-pour#2",
  "step.started check-clear#2",
  "alarm.heard check-clear#2",
  "look.noted clear",
  "step.finished check-clear#2",
  "step.started slow-drip#1",
  "alarm.heard slow-drip#1",
  "reading.logged collected 1600",
  "alarm.heard slow-drip#1",
  "reading.logged collected 2900",
  "alarm.heard slow-drip#1",
  "reading.logged collected 3600",
  "step.finished slow-drip#1",
  "step.started yield#1",
  `yield.logged ${through}`,
  "step.finished yield#1",
  "step.started top-up#1",
  "topup.poured",
  "step.finished top-up#1",
  "step.started bottle#1",
  "run.bottled",
  "step.finished bottle#1",
  "step.started label#1",
  "step.finished label#1",
];

function told(event: RunEvent): string {
  switch (event.type) {
    case "step.started":
    case "step.finished":
    case "alarm.heard":
      return `${event.type} ${event.visit}`;
    case "line.poured":
      return `${event.type} ${event.line}`;
    case "reading.logged":
      return `${event.type} ${event.what} ${event.value}`;
    case "run.repoured":
    case "yield.logged":
      return `${event.type} ${event.ml}`;
    case "look.noted":
      return `${event.type} ${event.look}`;
    default:
      return event.type;
  }
}

async function wholeJob(bar: Bar): Promise<Run> {
  await start(bar);
  await curdle(bar);
  await firstPass(bar);
  await slowDrip(bar);
  await bottle(bar);
  const log = await storedLog(bar.page);
  expect(log.map(told)).toEqual(TOLD);
  const run = foldRun(log);
  if (run === undefined) throw new RangeError("expected the log to tell of a run");
  return run;
}

test("the whole wash, from the plan to the Shelf and the Logbook", async () => {
  const bar = await openBar({ size: "small" });
  onTestFinished(bar.close);
  const { page, hands } = bar;
  const run = await wholeJob(bar);
  expect(run.plan).toEqual(plan);
  expect(endingOf(run)?.how).toBe("finished");
  const [topUp] = run.topUps;
  expect(topUp?.planned).toBeCloseTo(plan.heldBackMl, 6);
  expect(topUp?.ml).toBeCloseTo(plan.heldBackMl * (through / expected), 6);
  await hands.tap(page.getByRole("link", { name: said.run.toShelf, exact: true }).first());
  await page.locator(".shelf-row").waitFor();
  await shot(page, "wash-18-shelf");
  const row = await page.locator(".shelf-row").innerText();
  expect(row).toContain("Pear Beacon");
  // Made on Tuesday the 10th, which counts as day 1 of 7.
  expect(row).toContain("Use by Mon 16 Mar 2026");
  await hands.tap(page.getByRole("link", { name: said.places.logbook, exact: true }));
  await page.locator(".logbook-row").waitFor();
  await hands.tap(page.locator(".logbook-row"));
  await page.locator(".batch-log").waitFor();
  await shot(page, "wash-19-batch");
  expect(await page.locator(".batch-log > li p").count()).toBeGreaterThanOrEqual(TOLD.length);
  expect(bar.phone.complaints).toEqual([]);
});

test("the whole wash with no network at all, the server gone", async () => {
  const bar = await openBar({ size: "small" });
  onTestFinished(bar.close);
  const { page, phone, server } = bar;
  await server.stop();
  await phone.context.setOffline(true);
  await page.reload();
  await page.waitForSelector("main");
  const run = await wholeJob(bar);
  expect(run.plan).toEqual(plan);
  await page.getByRole("link", { name: said.run.toShelf, exact: true }).first().click();
  expect(await page.locator(".shelf-row").innerText()).toContain("Pear Beacon");
  expect(phone.complaints).toEqual([]);
});
