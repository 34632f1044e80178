import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { keepWaiting } from "../support/phone/keep-waiting.ts";
import { choose } from "../support/phone/open-bench.ts";
import { said } from "../support/phone/said.ts";
import {
  answerAlarm,
  holdOf,
  MINUTE,
  OPENS,
  pass,
  putLog,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "../support/phone/walk-page.ts";
import { ml } from "../support/phone/wash-by-hand.ts";
import { demoSpec, type Played, planned, started } from "../support/world/play-run.ts";

const bar = barForTests({ size: "small" });

const PLAN = planned(demoSpec("Boatyard Flip-Side"));
const RUN = "run-drip";

/** At the look after which it may drip. */
const looked = (at: number): Played =>
  started(RUN, "BFS-1", at, PLAN)
    .finish({}, 5)
    .finish({ answer: { of: "milk", ml: PLAN.milk?.ml ?? 0 } }, 1)
    .finish({}, 1)
    .finish({}, 60)
    .finish({}, 3)
    .finish({}, 2)
    .finish({ answer: { of: "cloudy-run", ml: 200 } }, 2);
const CLEAR = { look: "clear" } as const;
/** Dripping since nine minutes before the tests' day begins, its shape known. */
const dripping = looked(OPENS - 85 * MINUTE)
  .finish(CLEAR, 2)
  .then({ type: "note-shape", visit: "slow-drip#1", shape: "cone" }, 1);

const pad = () => bar.page.locator(".run-pad");
const hash = (): string => new URL(bar.page.url()).hash;
const onBench = () => bar.page.locator(".bench-row").waitFor();
const readings = async () =>
  (await storedLog(bar.page)).flatMap((one) =>
    one.type === "reading.logged" ? [[one.what, one.value]] : [],
  );

/** From the Bench, the one tap that opens the pad. */
async function openPad(): Promise<void> {
  const { page, hands } = bar;
  await onBench();
  await hands.tap(page.locator(".bench-rows .link-button"));
  await pad().waitFor();
  expect(hash()).toBe(routes.read(RUN));
}

async function onOpenBench(): Promise<void> {
  await bar.afresh();
  await putLog(bar, dripping.events, routes.bench, OPENS);
  await onBench();
}

/** Whatever stands there now, it is not the pad. */
async function noPadAt(address: string): Promise<void> {
  await bar.page.waitForFunction((to) => location.hash === to, address);
  await pad().waitFor({ state: "detached" });
}

test("one tap on the Bench opens the pad; what is read is logged, and the way back is the Bench", async () => {
  const { page } = bar;
  await putLog(bar, dripping.events, routes.bench, OPENS);
  await openPad();
  await typeOnPad(bar, "900");
  await page.locator(".run-fact", { hasText: ml(900) }).waitFor();
  expect(await readings()).toContainEqual(["collected", 900]);
  await noPadAt(routes.run(RUN));
  await page.goBack();
  await onBench();
  expect(hash()).toBe(routes.bench);
  await page.goForward();
  await untilStep(page, "slow-drip");
  await noPadAt(routes.run(RUN));
});

test("a pad that is closed leaves the batch, and does not lie in the way back", async () => {
  await onOpenBench();
  const { page, hands } = bar;
  const logged = (await readings()).length;
  await openPad();
  await hands.tap(tapOf(page, "4"));
  await hands.tap(tapOf(page, said.run.backToStep));
  await noPadAt(routes.run(RUN));
  await untilStep(page, "slow-drip");
  expect(await readings()).toHaveLength(logged);
  await page.goBack();
  await onBench();
  // From the pad itself the way back is the Bench too.
  await openPad();
  await page.goBack();
  await onBench();
});

test("what rings lies over the pad, and leaves what was typed in it", async () => {
  await onOpenBench();
  const { page, hands } = bar;
  await openPad();
  await hands.tap(tapOf(page, "7"));
  await pass(page, 30 * MINUTE);
  await answerAlarm(bar);
  await page.locator(".alarm-sheet").waitFor({ state: "detached" });
  await pad().waitFor();
  expect(await page.getByRole("textbox").inputValue()).toBe("7");
  await typeOnPad(bar, "50");
  await page.locator(".run-fact", { hasText: ml(750) }).waitFor();
  await noPadAt(routes.run(RUN));
});

test("who has gone on while a reading was being stored is not called back", async () => {
  await onOpenBench();
  const { page } = bar;
  await openPad();
  const letGo = await keepWaiting(page);
  await typeOnPad(bar, "650");
  await page.goBack();
  await onBench();
  await letGo();
  await page.getByText(said.run.collectedIs(ml(650))).waitFor();
  expect(await readings()).toContainEqual(["collected", 650]);
  // Whatever it still had to do would have been done by the next turn.
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
  expect(hash()).toBe(routes.bench);
});

test("the pad opens only at a drip: an ended batch, an earlier step and no batch say what is there", async () => {
  await bar.afresh();
  const { page } = bar;
  const over = dripping.then({ type: "abandon", reason: "Spilt" });
  await putLog(bar, over.events, routes.read(RUN), OPENS);
  await page.getByRole("heading", { name: said.run.stopped }).waitFor();
  await noPadAt(routes.run(RUN));
  await page.goto(bar.server.url + routes.read("run-of-nobody"));
  await page.getByText(said.places.lost).waitFor();
  expect(await pad().count()).toBe(0);

  await bar.afresh();
  await putLog(bar, looked(OPENS - 80 * MINUTE).events, routes.read(RUN), OPENS);
  await untilStep(bar.page, "check-clear");
  await answerIfItRings();
  await bar.hands.hold(holdOf(bar.page, said.run.outcomes.clear));
  await untilStep(bar.page, "slow-drip");
  await noPadAt(routes.run(RUN));
});

async function answerIfItRings(): Promise<void> {
  const sheet = bar.page.locator(".alarm-sheet");
  if ((await sheet.count()) > 0) await answerAlarm(bar);
}

test("with wet hands the pad opens all the same, and gives way to the one target", async () => {
  await onOpenBench();
  const { page, hands } = bar;
  await choose(bar, { wetHands: "always" });
  await page.reload();
  await openPad();
  expect(await page.locator(".run").getAttribute("data-wet")).toBe("true");
  for (const key of "800") await hands.tap(tapOf(page, key));
  // Wet, a hold takes longer.
  await hands.holdTruly(holdOf(page, said.run.take));
  await noPadAt(routes.run(RUN));
  expect(await readings()).toContainEqual(["collected", 800]);
  await tapOf(page, said.run.collected).waitFor();
});
