import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { alarmsOf } from "../../core/run/alarm.ts";
import { foldRun } from "../../core/run/fold.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  answerAlarm,
  goTo,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  pass,
  putLog,
  shot,
  storedLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { demoSpec, planned, started } from "../support/world/play-run.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const words = said.sheet;
const around = said.run.around;

const bar = barForTests({ size: "small" });

const runNow = async (runId: string) => {
  const run = foldRun((await storedLog(bar.page)).filter((event) => event.runId === runId));
  if (run === undefined) throw new RangeError(`no run ${runId}`);
  return run;
};
const more = () => bar.hands.tap(tapOf(bar.page, said.run.more));

test("a sheet of a batch: temperatures, lots and hands, as they were noted and as they print", async () => {
  const { page, hands } = bar;
  const { events, since } = stationAt("run-sheet", "PB-1", OPENS - 2 * HOUR, "curdle");
  await putLog(bar, events, routes.sheet("run-sheet"), since + 5 * MINUTE);
  const field = (name: string) => page.getByRole("textbox", { name, exact: true });
  await field(words.addHands).fill("AB");
  await hands.tap(tapOf(page, words.noteHands));
  await page.locator(".sheet-list", { hasText: "AB" }).waitFor();
  await field(words.addTemperature).fill("warm");
  await hands.tap(tapOf(page, words.noteTemperature));
  // What a thermometer shows, from a deep freezer to hot fat: as far as a step takes it too.
  await page.getByText(words.temperatureFault(-40, 200)).waitFor();
  expect(await field(words.addTemperature).inputValue()).toBe("warm");
  await field(words.addTemperature).fill("121");
  await hands.tap(tapOf(page, words.noteTemperature));
  await page.locator(".sheet-list", { hasText: /121(?:\.0)? °C/u }).waitFor();
  await field(words.addTemperature).fill("12.5");
  await hands.tap(tapOf(page, words.noteTemperature));
  await page.locator(".sheet-list", { hasText: "12.5 °C" }).waitFor();
  await page.getByLabel(words.lotOf, { exact: true }).selectOption("milk-whole");
  await field(words.addLot).fill("L 204");
  await field(words.lotDate).fill("3");
  await hands.tap(tapOf(page, words.noteLot));
  await page.locator(".sheet-list", { hasText: ": L 204, use by" }).waitFor();
  await page.getByText(/^The earliest date among the lots/u).waitFor();
  await shot(page, "control-sheet");

  await page.emulateMedia({ media: "print" });
  const paper = page.locator(".sheet-paper");
  expect(await paper.isVisible()).toBe(true);
  expect(await page.locator(".app-places").isVisible()).toBe(false);
  expect(await tapOf(page, words.noteLot).isVisible()).toBe(false);
  expect(await paper.textContent()).toContain(words.cautions);
  await page.emulateMedia({ media: null });

  const run = await runNow("run-sheet");
  expect(run.hands.map(({ initials }) => initials)).toEqual(["AB"]);
  expect(run.lots.map(({ lot }) => lot)).toEqual(["L 204"]);
});

test("where the vessel stands moves the safety clock, and four hours warm are said loudly", async () => {
  const { page } = bar;
  await goTo(page, routes.run("run-sheet"));
  await untilStep(page, "curdle");
  await more();
  await bar.hands.tap(page.getByRole("radio", { name: around.standing.fridge, exact: true }));
  await expect
    .poll(async () => (await runNow("run-sheet")).stands.map(({ to }) => to))
    .toEqual(["fridge"]);
  await pass(page, 3 * HOUR);
  await answerAlarm(bar);
  expect(await page.locator(".run-warm").first().textContent()).toMatch(/min/u);
  await bar.hands.tap(page.getByRole("radio", { name: around.standing.counter, exact: true }));
  await expect.poll(async () => (await runNow("run-sheet")).stands.length).toBe(2);
  await pass(page, 5 * HOUR);
  await answerAlarm(bar);
  await page.locator('.run-warm[role="alert"]', { hasText: "4 h" }).waitFor();
});

test("a run paused for two days rings nothing meanwhile, and its log says so", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  const infusion = planned(demoSpec("Chamomile Dry Vermouth"), { by: "serves", serves: 20 });
  const at = OPENS + 20 * HOUR;
  await putLog(
    bar,
    started("run-pause", "CDV-1", at, infusion).finish({}, 5).events,
    routes.run("run-pause"),
    at + 6 * MINUTE,
  );
  await untilStep(page, "steep");
  await more();
  await hands.tap(tapOf(page, around.pause));
  await page
    .getByText(/^Paused/u)
    .first()
    .waitFor();
  await pass(page, 48 * HOUR);
  expect(alarmsOf(await runNow("run-pause"))).toEqual([]);
  expect(await page.locator(".alarm-sheet", { hasText: "Chamomile" }).count()).toBe(0);
  await hands.tap(tapOf(page, around.resume));
  await page.locator(".alarm-sheet", { hasText: "Chamomile" }).waitFor();
  await answerAlarm(bar);
  const log = (await storedLog(page)).filter(({ runId }) => runId === "run-pause");
  const [paused, resumed] = ["run.paused", "run.resumed"].map(
    (type) => log.find((one) => one.type === type)?.at ?? Number.NaN,
  );
  expect((resumed ?? Number.NaN) - (paused ?? Number.NaN)).toBeGreaterThanOrEqual(48 * HOUR);
});

test("one begun by mistake is given up with a reason; its log is kept", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  const at = OPENS + 80 * HOUR;
  await putLog(bar, started("run-slip", "PB-7", at).events, routes.run("run-slip"), at + MINUTE);
  await untilStep(page, "build");
  await more();
  await hands.tap(tapOf(page, said.run.abandon));
  const [reason = ""] = said.run.abandonReasons;
  await hands.tap(page.getByRole("radio", { name: reason, exact: true }));
  await hands.hold(holdOf(page, said.run.abandonDone));
  await expect.poll(async () => (await runNow("run-slip")).abandoned?.reason).toBe(reason);
  await goTo(page, routes.batch("run-slip"));
  await page.getByText(`Given up: ${reason}`).first().waitFor();
});

test("a wash that will not clear: three passes, then the barback says what now", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  const { events, since } = stationAt("run-cloudy", "PB-8", OPENS + 100 * HOUR, "check-clear");
  await putLog(bar, events, routes.run("run-cloudy"), since + 10_000);
  for (const [round, ml] of [
    [1, "250"],
    [2, "200"],
  ] as const) {
    await untilStep(page, "check-clear", round);
    await hands.hold(holdOf(page, said.run.outcomes.cloudy));
    await untilStep(page, "re-pour", round + 1);
    await page.locator(".run-pad").waitFor();
    for (const key of ml) await hands.tap(tapOf(page, key));
    await hands.hold(holdOf(page, said.run.take));
  }
  await untilStep(page, "check-clear", 3);
  await hands.hold(holdOf(page, said.run.outcomes.cloudy));
  await untilStep(page, "rescue");
  await shot(page, "rescue");
  await hands.hold(holdOf(page, said.run.outcomes["finer-filter"]));
  await untilStep(page, "finer");
  await hands.hold(holdOf(page, said.run.did));
  await untilStep(page, "re-pour", 4);
});
