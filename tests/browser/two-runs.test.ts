import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
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
  typeOnPad,
  untilStep,
} from "../support/phone/walk-page.ts";
import { demoSpec, planned, started } from "../support/world/play-run.ts";
import { waiting } from "../support/world/waiting.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });

/** Rests until an hour after the tests' day begins. */
const resting = started("run-rest", "PB-1", OPENS - 23 * MINUTE)
  .finish({}, 20)
  .finish({ answer: { of: "milk", ml: 1000 } }, 2)
  .finish({}, 1);
/** Drips, and is to be looked at half an hour after the tests' day begins. */
const dripping = started(
  "run-drip",
  "BFS-1",
  OPENS - 75 * MINUTE,
  planned(demoSpec("Boatyard Flip-Side"), { by: "serves", serves: 30 }),
)
  .finish({}, 5)
  .finish({ answer: { of: "milk", ml: 600 } }, 1)
  .finish({}, 1)
  .finish({}, 60)
  .finish({}, 3)
  .finish({}, 2)
  .finish({ answer: { of: "cloudy-run", ml: 200 } }, 2)
  .finish({ look: "clear" }, 1);
/** Waits for hands since ten minutes before the tests' day begins. */
const handsOn = started("run-milk", "PB-2", OPENS - 12 * MINUTE).finish({}, 2);

test("two waits and one for hands: soonest wanted first, and each alarm is answered by itself", async () => {
  const { page, hands } = bar;
  const rows = () => page.locator(".bench-row .bench-batch").allTextContents();
  const sheet = page.locator(".alarm-sheet");
  await putLog(
    bar,
    [...resting.events, ...dripping.events, ...handsOn.events],
    routes.bench,
    OPENS,
  );
  await page.locator(".bench-row").nth(2).waitFor();
  expect(await rows()).toEqual(["PB-2", "BFS-1", "PB-1"]);
  await shot(page, "bench-three");

  await pass(page, 30 * MINUTE);
  await sheet.getByText("Boatyard Flip-Side: Slow drip").waitFor();
  expect(await rows()).toEqual(["BFS-1", "PB-2", "PB-1"]);
  await pass(page, 30 * MINUTE);
  await sheet.getByText(said.alarm.others(1)).waitFor();
  expect(await sheet.textContent()).toContain("Boatyard Flip-Side: Slow drip30 min late");
  expect(await rows()).toEqual(["BFS-1", "PB-1", "PB-2"]);
  await shot(page, "bench-two-ring");

  // One hold answers one alarm: the finger that stays on the glass does not answer the next.
  await hands.holdTruly(holdOf(page, said.alarm.heard));
  await sheet.getByText("Pear Beacon: Rest").waitFor();
  expect(new URL(page.url()).hash).toBe(routes.run("run-drip"));
  const heard = async () =>
    (await storedLog(page)).flatMap((one) =>
      one.type === "alarm.heard" ? [[one.runId, one.visit, one.dueAt]] : [],
    );
  const first = ["run-drip", "slow-drip#1", OPENS + 30 * MINUTE];
  expect(await heard()).toEqual([first]);
  await hands.hold(holdOf(page, said.alarm.heard));
  await sheet.waitFor({ state: "detached" });
  expect(new URL(page.url()).hash).toBe(routes.run("run-rest"));
  expect(await heard()).toEqual([first, ["run-rest", "curdle#1", OPENS + 60 * MINUTE]]);

  // Answered, the drip is looked at again in an hour, the rest in a quarter of one.
  await hands.tap(page.locator(".run-back"));
  await page.locator(".bench-row").nth(2).waitFor();
  expect(await rows()).toEqual(["PB-2", "PB-1", "BFS-1"]);
  expect(await page.locator(".bench-row", { hasText: "PB-1" }).textContent()).toContain("15:15");
  expect(await page.locator(".bench-row", { hasText: "BFS-1" }).textContent()).toContain("16:00");
});

/** Stands at its yield, which has to be typed; two others ring half an hour and an hour later. */
async function besideWaits() {
  await bar.afresh();
  const station = stationAt("run-yield", "PB-7", OPENS - HOUR, "yield");
  const waits = [1, 2].flatMap((number) =>
    waiting({
      runId: `run-wait-${number}`,
      batch: `PB-${number}`,
      from: station.since,
      waitFor: number * 30 * MINUTE,
    }),
  );
  const log = [...station.events, ...waits];
  await putLog(bar, log, routes.run("run-yield"), station.since);
  await bar.page.locator(".status-line").waitFor();
  return bar;
}
const ringing = () => bar.page.locator(".alarm-sheet", { hasText: "Pear Beacon: Rest" });

test("another batch that rings over a half-typed figure is answered there, and nothing typed is lost", async () => {
  const { page, hands } = await besideWaits();
  await hands.tap(tapOf(page, said.run.typeAmount));
  const figure = page.locator(".number-pad-field");
  await hands.tap(tapOf(page, "4"));
  await hands.tap(tapOf(page, "2"));
  await pass(page, 30 * MINUTE);
  await ringing().waitFor();
  await shot(page, "rings-over-a-figure");
  await hands.hold(holdOf(page, said.alarm.heard));
  await ringing().waitFor({ state: "detached" });
  await page.getByText(said.alarm.waitsOnBench("Pear Beacon: Rest")).waitFor();
  await shot(page, "heard-over-a-figure");
  expect(new URL(page.url()).hash).toBe(routes.run("run-yield"));
  expect(await figure.inputValue()).toBe("42");
  await typeOnPad(bar, "00");
  await untilStep(page, "top-up");
  const yields = (await storedLog(page)).flatMap((one) =>
    one.type === "yield.logged" ? [one.ml] : [],
  );
  expect(yields).toEqual([4200]);

  // With nothing half typed it leads to the batch that rang.
  await pass(page, 30 * MINUTE);
  await ringing().waitFor();
  await hands.hold(holdOf(page, said.alarm.heard));
  await page.waitForURL((url) => url.hash === routes.run("run-wait-2"));
});

test("words that are half typed stay where they are too; a field that is empty holds nobody", async () => {
  const { page, hands } = await besideWaits();
  await goTo(page, routes.sheet("run-yield"));
  const lot = page.getByRole("textbox", { name: said.sheet.addLot, exact: true });
  await lot.fill("L 20");
  await pass(page, 30 * MINUTE);
  await ringing().waitFor();
  await hands.hold(holdOf(page, said.alarm.heard));
  await page.getByText(said.alarm.waitsOnBench("Pear Beacon: Rest")).waitFor();
  expect(await lot.inputValue()).toBe("L 20");
  await lot.fill("");
  await pass(page, 30 * MINUTE);
  await ringing().waitFor();
  await hands.hold(holdOf(page, said.alarm.heard));
  await page.waitForURL((url) => url.hash === routes.run("run-wait-2"));
});
