import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { dueTime, mass, percent } from "../../app/words/format.ts";
import { dripOutlook, lastDrip } from "../../core/run/drip-outlook.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import type { Run } from "../../core/run/run.ts";
import { clearDensity } from "../../core/run/weigh.ts";
import { everyLook } from "../support/look/every-look.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { choose } from "../support/phone/open-bench.ts";
import { said } from "../support/phone/said.ts";
import {
  answerAlarm,
  clockOf,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  pass,
  putLog,
  SECOND,
  storedLog,
  tapOf,
  typeOnPad,
} from "../support/phone/walk-page.ts";
import { ml } from "../support/phone/wash-by-hand.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });
const words = said.drip;

/** What is wrong with how the screen looks; and pictures of it. */
const unreadable = (name: string) => everyLook(bar.page, `drip-${name}`);

function runOf(log: readonly RunEvent[], id: string): Run {
  const run = foldRun(log.filter(({ runId }) => runId === id));
  if (run === undefined) throw new RangeError(`the log tells of no ${id}`);
  return run;
}

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
  // On this phone the sound was checked in this shift.
  await choose(bar, { soundHeardAt: OPENS });
  await putLog(bar, events, routes.run("run-drip"), OPENS);
  const question = page.getByRole("radiogroup", { name: words.shape });
  await question.waitFor();
  expect(await unreadable("asks")).toEqual({});
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
  expect(await unreadable("answered")).toEqual({});

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
  expect(await unreadable("pad-refused")).toEqual({});
  for (const _ of "700") await hands.tap(tapOf(page, said.run.erase));
  const gross = grossOf(900);
  for (const key of String(gross)) await hands.tap(tapOf(page, key));
  const net = words.weigh.net(mass(gross), "812 g", mass(gross - 812), ml((gross - 812) / density));
  await page.getByText(net).waitFor();
  expect(await unreadable("pad-weight")).toEqual({});
  await hands.hold(holdOf(page, said.run.take));
  await page.locator(".run-fact", { hasText: ml((gross - 812) / density) }).waitFor();
  expect(await unreadable("one-reading")).toEqual({});
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
  expect(await unreadable("foretold")).toEqual({});
  await page.locator(".drip-chart").evaluate((one) => one.scrollIntoView({ block: "start" }));
  expect(await unreadable("foretold-chart")).toEqual({});
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
