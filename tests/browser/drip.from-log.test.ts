import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { duration } from "../../app/words/format.ts";
import { clearLesson } from "../../core/logbook/learn/clear-lesson.ts";
import { recordOf } from "../../core/logbook/record.ts";
import { timeToClear } from "../../core/logbook/time-to-clear.ts";
import { stepOf } from "../../core/method/procedure.ts";
import { everyLook } from "../support/look/every-look.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  putLog,
  storedLog,
  untilStep,
} from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { demoSpec, type Played, planned, started } from "../support/world/play-run.ts";

const bar = barForTests({ size: "small" });

const PLAN = planned(demoSpec("Pear Beacon"));
const words = said.drip;

/** What is wrong with how the screen looks; and pictures of it. */
const unreadable = (name: string) => everyLook(bar.page, `drip-${name}`);
const facts = () => bar.page.locator(".run-fact").allTextContents();

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
  expect(await unreadable("stuck")).toEqual({});
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
  expect(await unreadable("batch")).toEqual({});
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
  const usually = words.pass.usually(
    duration(took.mean),
    Math.round(passes),
    3,
    duration(took.low),
    duration(took.high),
  );
  // What is ended is read behind the first look.
  await expect.poll(notes).toContain(usually);
  expect(await notes()).toContain(words.pass.cloudy("400 ml", 1));
  expect(await unreadable("pass")).toEqual({});

  // Opened anew it stands there with the rest: nothing is pushed down under a thumb.
  await page.addInitScript(() => {
    const seen: string[] = [];
    Reflect.set(globalThis, "firstNotes", seen);
    new MutationObserver(() => {
      const stands = document.querySelector(".run-words .run-detail") !== null;
      if (!stands || seen.length > 0) return;
      for (const one of document.querySelectorAll(".run-note")) seen.push(one.textContent ?? "");
      seen.push("");
    }).observe(document, { childList: true, subtree: true });
  });
  await page.reload();
  await page.waitForFunction(() => Reflect.get(globalThis, "firstNotes").length > 0);
  expect(await page.evaluate("firstNotes")).toContain(usually);

  await goTo(page, routes.bench);
  await openPlan(bar, "Pear Beacon");
  await hands.hold(holdOf(page, said.plan.start));
  await untilStep(page, "build");
  const fresh = (await storedLog(page)).findLast(({ type }) => type === "run.started");
  if (fresh?.type !== "run.started") throw new RangeError("a batch was started");
  expect(stepOf(fresh.procedure, "check-clear")).toMatchObject({
    waitFor: 2 * MINUTE,
    learntFrom: 3,
  });
  expect(stepOf(fresh.procedure, "curdle")).not.toHaveProperty("learntFrom");
});
