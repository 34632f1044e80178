import type { Locator, Page } from "playwright-core";
import { afterEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { answers } from "../../app/words/answers.ts";
import { ENGLISH, tongue } from "../../app/words/tongue.ts";
import { everyLook } from "../support/look/every-look.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { speak } from "../support/phone/speak.ts";
import {
  answerAlarm,
  MINUTE,
  OPENS,
  pass,
  putLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { TONGUES } from "../support/world/tongues.ts";
import { stationAt } from "../support/world/wash-stations.ts";

type Question = keyof typeof answers;

const bar = barForTests({ size: "small" });

afterEach(() => {
  tongue.value = ENGLISH;
});

const sheet = (page: Page): Locator => page.locator("dialog[open]");

/** Asks, reads the whole answer, and closes it again. */
async function ask(question: Question, look: () => Promise<void> = async () => undefined) {
  const { page, hands } = bar;
  await hands.tap(tapOf(page, said.why[question]));
  await sheet(page).getByRole("heading", { name: said.why[question] }).waitFor();
  for (const line of answers[question].says) await sheet(page).getByText(line).waitFor();
  await sheet(page).getByText(answers[question].source).waitFor();
  await look();
  await sheet(page).getByRole("button", { name: said.plan.close }).click();
  await sheet(page).waitFor({ state: "detached" });
}

const STEPS: readonly (readonly [step: string, question: Question])[] = [
  ["milk", "milkFirst"],
  ["first-pass", "clearEnough"],
  ["re-pour", "pourBack"],
  ["check-clear", "clearEnough"],
  ["yield", "whichYield"],
  ["top-up", "topUp"],
];

async function stand(step: string): Promise<void> {
  // One run, ever further on: others would ring meanwhile.
  const { events, since } = stationAt("run-a", "PB-1003", OPENS, step);
  await putLog(bar, events, routes.run("run-a"), since);
  await untilStep(bar.page, step);
}

test("each step that raises a question answers it in place, with no signal", async () => {
  await bar.afresh();
  const { page } = bar;
  await page.evaluate(() => navigator.serviceWorker.ready);
  await bar.phone.context.setOffline(true);
  for (const [step, question] of STEPS) {
    await stand(step);
    await ask(question);
    // It is where it was.
    await untilStep(page, step);
  }
  await bar.phone.context.setOffline(false);
}, 120_000);

test("a step that raises none asks none, and one giant target has nothing beside it", async () => {
  await bar.afresh();
  const { page } = bar;
  await stand("pour");
  expect(await page.locator(".why").count()).toBe(0);
  await stand("re-pour");
  expect(await page.locator(".why").isVisible()).toBe(true);
  await page.locator("main.run").evaluate((one) => one.setAttribute("data-wet", "true"));
  expect(await page.locator(".why").isVisible()).toBe(false);
});

test("what rings takes the place of an answer that is open", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await stand("check-clear");
  await hands.tap(tapOf(page, said.why.clearEnough));
  await sheet(page).waitFor();
  await pass(page, 5 * MINUTE);
  await answerAlarm(bar);
  expect(await sheet(page).count()).toBe(0);
  await untilStep(page, "check-clear");
});

test("the plan answers what its range means and how sure the curdling is", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await openPlan(bar, "Pear Beacon");
  for (const [title, question] of [
    [said.plan.measure.title, "range"],
    [said.plan.curdle, "curdle"],
  ] as const) {
    const part = page.locator("summary", { hasText: title });
    if ((await page.getByRole("button", { name: said.why[question] }).count()) === 0) {
      await hands.tap(part);
    }
    await ask(question);
  }
});

test("questions and answers are readable on both phones, in both themes and every language", async () => {
  const found: Record<string, string[]> = {};
  for (const [, spoken] of TONGUES) {
    await bar.afresh();
    const { page } = bar;
    await speak(bar, spoken);
    for (const [step, question] of STEPS) {
      await stand(step);
      const look = async (what: string) => {
        const where = `why-${spoken.language}-${step}-${what}`;
        Object.assign(found, await everyLook(page, where));
      };
      await look("step");
      await ask(question, () => look("answer"));
    }
  }
  expect(found).toEqual({});
}, 300_000);
