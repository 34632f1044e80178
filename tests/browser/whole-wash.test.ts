import { expect, onTestFinished, test } from "vitest";
import type { RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import { endingOf } from "../../core/run/run.ts";
import { said } from "../support/phone/said.ts";
import { openBar, shot, storedLog } from "../support/phone/walk-page.ts";
import { MILK, ml, PLAN, THROUGH, TOP_UP, washByHand } from "../support/phone/wash-by-hand.ts";

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
  `reading.logged milk ${MILK}`,
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
  `yield.logged ${THROUGH}`,
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

/** What a person did; a drip's next call is moved by the app after each reading. */
const done = (log: readonly RunEvent[]): string[] =>
  log.filter(({ type }) => type !== "due.moved").map(told);

test("the whole wash, from the spec book to the Shelf and the Logbook", async () => {
  const bar = await openBar({ size: "small" });
  onTestFinished(bar.close);
  const { page, hands } = bar;
  const link = (name: string) => page.getByRole("link", { name, exact: true });
  const pictures: string[] = [];
  await washByHand(bar, async (step) => {
    pictures.push(step);
    await shot(page, `wash-${String(pictures.length).padStart(2, "0")}-${step}`);
    if (step !== "top-up") return;
    const pair = await page.locator(".run-pair").textContent();
    expect(pair).toContain(`${said.run.topUp.planned}${ml(PLAN.heldBackMl)}`);
    expect(pair).toContain(`${said.run.topUp.now}${ml(TOP_UP)}`);
    expect(await page.locator(".run-advice").textContent()).toContain("90 % of the expected yield");
  });

  const log = await storedLog(page);
  expect(done(log)).toEqual(TOLD);
  const run = foldRun(log);
  expect(run?.plan).toEqual(PLAN);
  expect(run && endingOf(run)?.how).toBe("finished");
  expect(run?.topUps[0]?.planned).toBeCloseTo(PLAN.heldBackMl, 6);
  expect(run?.topUps[0]?.ml).toBeCloseTo(TOP_UP, 6);

  await hands.tap(page.locator("main").getByRole("link", { name: said.run.toShelf, exact: true }));
  const row = page.locator(".shelf-row");
  await row.waitFor();
  await shot(page, "wash-90-shelf");
  expect(await row.textContent()).toContain(`Pear Beacon ${run?.batch}`);
  // Begun on Tuesday the 10th, which counts as day 1 of 7.
  expect(await row.textContent()).toContain("Mon, 16 Mar 2026");
  await hands.tap(link(said.places.logbook));
  await hands.tap(page.locator(".logbook-row"));
  await page.locator(".batch-log").waitFor();
  await shot(page, "wash-91-log");
  const lines = page.locator(".batch-log > li > p:not(.batch-stamp)");
  expect(await lines.count()).toBe(log.length);
  expect(bar.phone.complaints).toEqual([]);
});

test("with the server gone and a reload at every step, the job goes on where it was", async () => {
  const bar = await openBar({ size: "small" });
  onTestFinished(bar.close);
  const { page, phone, server } = bar;
  await server.stop();
  await phone.context.setOffline(true);
  /** All that is shown but the seconds: those run on. */
  const shown = async () => {
    await page.locator("main h1").waitFor();
    const main = page.locator("main");
    const text = (await main.textContent()) ?? "";
    const seconds = await page.locator(".run-digits").allTextContents();
    return text.replace(seconds[0] ?? "", "");
  };
  const reloaded: string[] = [];
  await washByHand(bar, async (step) => {
    const [before, log] = [await shown(), await storedLog(page)];
    await page.reload();
    const after = await shown();
    // A new page has not been touched yet, so it may not ring before it is; what says whether it will
    // comes after the first look.
    const { status: says, checkSound } = said.alarm;
    const status = (text: string) =>
      [says["sound-blocked"], says["sound-unheard"], checkSound].reduce(
        (rest, line) => rest.replace(line, ""),
        text,
      );
    expect([step, status(after)]).toEqual([step, status(before)]);
    expect(await storedLog(page)).toEqual(log);
    reloaded.push(step);
  });
  expect(reloaded.length).toBe(17);
  expect(done(await storedLog(page))).toEqual(TOLD);
  await page.locator("main").getByRole("link", { name: said.run.toShelf, exact: true }).click();
  expect(await page.locator(".shelf-row").textContent()).toContain("Pear Beacon");
  expect(phone.complaints).toEqual([]);
});
