import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  holdOf,
  MINUTE,
  OPENS,
  pass,
  putLog,
  shot,
  storedLog,
} from "../support/phone/walk-page.ts";
import { demoSpec, planned, started } from "../support/world/play-run.ts";

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
