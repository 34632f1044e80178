import { expect, test } from "vitest";
import { isPractice } from "../../app/practice.ts";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { keepWaiting } from "../support/phone/keep-waiting.ts";
import { said } from "../support/phone/said.ts";
import { holdOf, OPENS, putLog, storedLog, tapOf, untilStep } from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { started } from "../support/world/play-run.ts";

const bar = barForTests({ size: "small" });

const begun = async () =>
  (await storedLog(bar.page)).flatMap(({ type, runId }) => (type === "run.started" ? [runId] : []));

test("a start that is held again while the phone is slow begins one batch", async () => {
  const { page, hands } = bar;
  await openPlan(bar, "Pear Beacon");
  const letGo = await keepWaiting(page);
  await hands.hold(holdOf(page, said.plan.start));
  await hands.hold(holdOf(page, said.plan.start));
  await letGo();
  await untilStep(page, "build");
  expect(await begun()).toHaveLength(1);
});

test("a practice that is tapped again while the phone is slow is one practice", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  const practise = tapOf(page, said.first.practise);
  await practise.waitFor();
  const letGo = await keepWaiting(page);
  await hands.tap(practise);
  await hands.tap(practise);
  await letGo();
  await untilStep(page, "build");
  expect((await begun()).map(isPractice)).toEqual([true]);
});

test("a line that is ticked while another window writes says why it is not", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await putLog(bar, started("run-build", "PB-1", OPENS).events, routes.run("run-build"), OPENS);
  await untilStep(page, "build");
  await page.evaluate(() => {
    const taken = navigator.locks.request(
      "second-pour-pen",
      { steal: true },
      () => new Promise(() => undefined),
    );
    taken.catch(() => undefined);
  });
  await page.getByText(said.places.penElsewhere).waitFor();
  const line = page.locator(".run-lines button").first();
  await hands.tap(line);
  await page.getByText("Not done: another window of the app writes now.").waitFor();
  expect(await line.getAttribute("aria-pressed")).toBe("false");
});
