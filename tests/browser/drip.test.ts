import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { dueTime, duration, mass, percent } from "../../app/words/format.ts";
import { clearLesson } from "../../core/logbook/learn/clear-lesson.ts";
import { recordOf } from "../../core/logbook/record.ts";
import { timeToClear } from "../../core/logbook/time-to-clear.ts";
import { stepOf } from "../../core/method/procedure.ts";
import { dripOutlook, lastDrip } from "../../core/run/drip-outlook.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import type { Run } from "../../core/run/run.ts";
import { clearDensity } from "../../core/run/weigh.ts";
import { axeFinds, faintWords, sticksOut } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { SIZES } from "../support/phone/browser.ts";
import { said } from "../support/phone/said.ts";
import {
  answerAlarm,
  clockOf,
  goTo,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  pass,
  putLog,
  SECOND,
  shot,
  storedLog,
  tapOf,
  typeOnPad,
} from "../support/phone/walk-page.ts";
import { ml, openPlan } from "../support/phone/wash-by-hand.ts";
import { demoSpec, type Played, planned, started } from "../support/world/play-run.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });

const THEMES = ["dark", "light"] as const;
const PLAN = planned(demoSpec("Pear Beacon"));
const words = said.drip;

/** What is wrong with how the screen looks, in both themes; and a picture of each. */
async function unreadable(name: string): Promise<string[]> {
  const { page } = bar;
  const found: string[] = [];
  for (const size of [SIZES.usual, SIZES.small]) {
    await page.setViewportSize(size);
    found.push(...(await sticksOut(page)));
    for (const colorScheme of THEMES) {
      await page.emulateMedia({ colorScheme });
      found.push(...(await faintWords(page)), ...(await axeFinds(page)));
      await shot(page, `drip-${name}-${size.width}-${colorScheme}`);
    }
  }
  await page.emulateMedia({ colorScheme: "dark" });
  return found;
}

function runOf(log: readonly RunEvent[], id: string): Run {
  const run = foldRun(log.filter(({ runId }) => runId === id));
  if (run === undefined) throw new RangeError(`the log tells of no ${id}`);
  return run;
}

/** On this phone the sound was checked in this shift. */
const hearSound = (): Promise<void> =>
  bar.page.evaluate(
    (heardAt) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("second-pour");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const tx = db.transaction("settings", "readwrite");
          tx.objectStore("settings").put({ soundHeardAt: heardAt }, "settings");
          tx.onerror = () => reject(tx.error);
          tx.oncomplete = () => {
            db.close();
            resolve();
          };
        };
      }),
    OPENS,
  );

/** By how much the controls at the foot cover the verb: what it is, is read at a glance. px */
const verbCovered = (): Promise<number> =>
  bar.page.evaluate(() => {
    const boxOf = (of: string) => document.querySelector(of)?.getBoundingClientRect();
    const [verb, actions] = [boxOf(".run-verb"), boxOf(".run-actions")];
    return (verb?.bottom ?? Number.NaN) - (actions?.top ?? Number.NaN);
  });

const stored = async (id: string): Promise<Run> => runOf(await storedLog(bar.page), id);
const facts = () => bar.page.locator(".run-fact").allTextContents();

test("a drip of unknown shape is asked about, weighed twice, foretold, and outlives a reload", async () => {
  const { page, hands } = bar;
  const { since } = stationAt("run-drip", "PB-1", 0, "slow-drip");
  const { events } = stationAt("run-drip", "PB-1", OPENS - since, "slow-drip");
  await hearSound();
  await putLog(bar, events, routes.run("run-drip"), OPENS);
  const question = page.getByRole("radiogroup", { name: words.shape });
  await question.waitFor();
  expect(await unreadable("asks")).toEqual([]);
  expect(await verbCovered()).toBeLessThanOrEqual(0);
  await hands.tap(question.getByRole("radio", { name: words.shapes.cone }));
  await question.waitFor({ state: "detached" });
  expect((await stored("run-drip")).shapes.map(({ shape }) => shape)).toEqual(["cone"]);
  expect(await facts()).toContain(words.forecast.none);
  await page.locator(".run-digits").waitFor();
  // The offer to take it back stands at the foot for eight seconds.
  await pass(page, 9 * SECOND);
  await page.locator(".notices-line").waitFor({ state: "detached" });
  expect(await verbCovered()).toBeLessThanOrEqual(0);
  expect(await unreadable("answered")).toEqual([]);

  const density = clearDensity(await stored("run-drip"));
  const grossOf = (volume: number): number => Math.round(812 + volume * density);
  await pass(page, 30 * MINUTE);
  await answerAlarm(bar);
  await hands.tap(tapOf(page, said.run.collected));
  await hands.tap(page.getByRole("radio", { name: words.weigh.weight }));
  await page.getByText(words.weigh.tare["clear-run"]).waitFor();
  await typeOnPad(bar, "812");
  await page.getByText(words.weigh.vesselIs("812 g")).waitFor();
  await typeOnPad(bar, "700");
  const fault = page.locator(".number-pad-fault:not(:empty)");
  await fault.waitFor();
  expect(await fault.textContent()).toContain("700 g is less than the empty vessel (812 g)");
  expect(await page.getByRole("textbox").inputValue()).toBe("700");
  expect(await unreadable("pad-refused")).toEqual([]);
  for (const _ of "700") await hands.tap(tapOf(page, said.run.erase));
  const gross = grossOf(900);
  for (const key of String(gross)) await hands.tap(tapOf(page, key));
  const net = words.weigh.net(mass(gross), "812 g", mass(gross - 812), ml((gross - 812) / density));
  await page.getByText(net).waitFor();
  expect(await unreadable("pad-weight")).toEqual([]);
  await hands.hold(holdOf(page, said.run.take));
  await page.locator(".run-fact", { hasText: ml((gross - 812) / density) }).waitFor();
  expect(await unreadable("one-reading")).toEqual([]);
  expect((await facts()).join(" ")).toContain("It helps most about");

  await page.reload();
  await page.locator(".run-fact", { hasText: ml((gross - 812) / density) }).waitFor();
  await pass(page, HOUR);
  await answerAlarm(bar);
  await hands.tap(tapOf(page, said.run.collected));
  // The vessel is known: the pad opens on the scale.
  await page.getByText(words.weigh.vesselIs("812 g")).waitFor();
  await typeOnPad(bar, String(grossOf(1900)));
  await page.locator(".drip-chart").waitFor();
  const run = await stored("run-drip");
  expect(
    run.readings.filter(({ what }) => what === "collected").map(({ weighed }) => weighed),
  ).toEqual([gross, grossOf(1900)].map((one) => ({ gross: one, tare: 812 })));
  await foretold(run);
  expect(await unreadable("foretold")).toEqual([]);
  await page.locator(".drip-chart").evaluate((one) => one.scrollIntoView({ block: "start" }));
  expect(await unreadable("foretold-chart")).toEqual([]);
  await page.reload();
  await page.locator(".drip-chart").waitFor();
  await foretold(run);
}, 60_000);

/** What the screen and its drawing say is what the log comes to. */
async function foretold(run: Run): Promise<void> {
  const { page } = bar;
  const outlook = dripOutlook(run);
  const visit = lastDrip(run);
  if (outlook?.type !== "forecast" || visit === undefined) throw new RangeError("two were read");
  const now = await clockOf(page);
  const at = (when: "p10" | "p50" | "p90") =>
    dueTime(visit.startedAt + outlook.throughAt[when], now);
  const shown = await facts();
  const share = percent(outlook.target);
  expect(shown).toContain(words.forecast.through(share, at("p50")));
  expect(shown).toContain(words.forecast.between(at("p10"), at("p90")));
  const told = await page.getByRole("img", { name: /^2 readings/u }).getAttribute("aria-label");
  const target = ml(outlook.target * outlook.totalMl.p50);
  expect(told).toContain(words.chart.ahead(share, target, at("p50"), at("p10"), at("p90")));
  const rows = page.locator(".drip-chart tbody tr");
  // Two readings, and three places on the way ahead.
  expect(await rows.count()).toBe(5);
  expect(await page.locator(".drip-chart-reading").count()).toBe(2);
  for (const part of ["band", "ahead", "fitted", "target", "now"]) {
    expect([part, await page.locator(`.drip-chart-${part}`).count()]).toEqual([part, 1]);
  }
}

/** A batch at its first pass. */
const passing = (id: string, batch: string, at: number): Played =>
  started(id, batch, at, PLAN)
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: PLAN.milk?.ml ?? 0 } }, 2)
    .finish({}, 1)
    .finish({}, 60)
    .finish({}, 4);

/** A batch at its slow drip, clear after the first look. */
const dripping = (id: string, batch: string, at: number): Played =>
  passing(id, batch, at)
    .finish({}, 2)
    .finish({ answer: { of: "cloudy-run", ml: 400 } }, 2)
    .finish({ look: "clear" }, 2);

/** The same with readings: minutes after the one before, ml. */
const readings = (drip: Played, read: readonly (readonly [number, number])[]): Played =>
  read.reduce(
    (so, [minutes, value]) =>
      so.then(
        { type: "log-reading", visit: "slow-drip#1", what: "collected", value, unit: "ml" },
        minutes,
      ),
    drip,
  );

test("a filter that has all but stopped: no time is promised, and what helps is said", async () => {
  await bar.afresh();
  const { page } = bar;
  const stuck = readings(dripping("run-stuck", "PB-2", OPENS - 20 * HOUR), [
    [60, 400],
    [60, 800],
    [120, 1300],
    [240, 1420],
    [480, 1450],
  ]);
  await putLog(bar, stuck.events, routes.run("run-stuck"), OPENS);
  await page.locator(".drip-chart").waitFor();
  const shown = await facts();
  expect(shown).toContain(words.forecast.never("90 %"));
  expect(shown).toContain(words.forecast.help);
  expect(shown.join(" ")).not.toContain("8 in 10 times between");
  expect(shown.join(" ")).toContain("The filter is blinding");
  const told = await page.locator(".drip-chart svg").getAttribute("aria-label");
  expect(told).toContain("may never be reached");
  await page.locator(".drip-chart").evaluate((one) => one.scrollIntoView({ block: "center" }));
  expect(await unreadable("stuck")).toEqual([]);
});

test("a drip that is over is drawn on its batch's page", async () => {
  await bar.afresh();
  const { page } = bar;
  const read = readings(dripping("run-over", "PB-3", OPENS - 12 * HOUR), [
    [60, 1200],
    [120, 2400],
    [180, 3300],
  ]);
  const over = read
    .finish({}, 60)
    .finish({ answer: { of: "yield", ml: 3700 } }, 5)
    .finish({ answer: { of: "top-up", ml: 400 } }, 5)
    .finish({ answer: { of: "bottled", bottles: [{ count: 6, size: 700 }], useBy: OPENS } }, 9)
    .finish({}, 5);
  await putLog(bar, over.events, routes.batch("run-over"), OPENS);
  const chart = page.locator(".drip-chart");
  await chart.waitFor();
  expect(await chart.locator("svg").getAttribute("aria-label")).toMatch(
    /^3 readings, the last 3,300 ml/u,
  );
  expect(await page.locator(".drip-chart-now").count()).toBe(0);
  await chart.evaluate((one) => one.scrollIntoView({ block: "center" }));
  expect(await unreadable("batch")).toEqual([]);
});

test("three batches teach when it runs clear: a new one asks then, and says so", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  const past = [1, 2, 3].map((day) =>
    dripping(`run-past-${day}`, `PB-${day}`, OPENS - day * 24 * HOUR).then({
      type: "abandon",
      reason: "Spilt",
    }),
  );
  const now = passing("run-now", "PB-9", OPENS - 87 * MINUTE)
    .finish({}, 0)
    .finish({ answer: { of: "cloudy-run", ml: 400 } }, 0);
  await putLog(
    bar,
    [...past, now].flatMap(({ events }) => events),
    routes.run("run-now"),
    OPENS,
  );
  await page.locator(".run-actions").waitFor();
  const records = past.map(({ run }) => recordOf(run));
  const learnt = timeToClear(records, "dairy-wash");
  const lesson = clearLesson([...records, recordOf(now.run)], "run-now");
  if (learnt === undefined || lesson === undefined) throw new RangeError("three batches teach");
  const { took, passes } = lesson;
  const notes = () => page.locator(".run-note").allTextContents();
  // What is ended is read behind the first look.
  await expect
    .poll(notes)
    .toContain(
      words.pass.usually(
        duration(took.mean),
        Math.round(passes),
        3,
        duration(took.low),
        duration(took.high),
      ),
    );
  expect(await notes()).toContain(words.pass.cloudy("400 ml", 1));
  expect(await unreadable("pass")).toEqual([]);

  await goTo(page, routes.bench);
  await openPlan(bar, "Pear Beacon");
  await hands.hold(holdOf(page, said.plan.start));
  await page.getByRole("heading", { name: said.work.verbs.build ?? "" }).waitFor();
  const fresh = (await storedLog(page)).findLast(({ type }) => type === "run.started");
  if (fresh?.type !== "run.started") throw new RangeError("a batch was started");
  expect(stepOf(fresh.procedure, "check-clear")).toMatchObject({
    waitFor: 2 * MINUTE,
    learntFrom: 3,
  });
  expect(stepOf(fresh.procedure, "curdle")).not.toHaveProperty("learntFrom");
});
