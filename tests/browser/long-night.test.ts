import { beforeAll, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { loopsOn, noteLoops } from "../support/phone/hear.ts";
import { said } from "../support/phone/said.ts";
import {
  answerAlarm,
  clockOf,
  HOUR,
  holdOf,
  MINUTE,
  pass,
  putLog,
  SECOND,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "../support/phone/walk-page.ts";
import { finishPlain } from "../support/phone/wash-by-hand.ts";
import { demoSpec, type Played, planned, started } from "../support/world/play-run.ts";

// The clocks of this zone went from 02:00 to 03:00 on Sunday 29 March 2026 (tz database).
const ZONE = "Europe/Paris";
/** Saturday, six in the evening. */
const EVENING = Date.parse("2026-03-28T17:00:00Z");

const bar = barForTests({ size: "small", zone: ZONE, at: EVENING });
/** Everything that began to ring: when it should have, and when it did. */
const rang: { readonly what: string; readonly due: string; readonly lateMs: number }[] = [];

beforeAll(() => bar.page.addInitScript(noteLoops));

const rings = async (): Promise<readonly number[]> => (await loopsOn(bar.page)).began;
const sheet = () => bar.page.locator(".alarm-sheet");

/** A run as it stands in the phone's own log. */
async function logOf(runId: string): Promise<readonly RunEvent[]> {
  return (await storedLog(bar.page)).filter((event) => event.runId === runId);
}

/** When the latest passage through a step began. */
async function begun(runId: string, step: string): Promise<number> {
  const found = (await logOf(runId)).findLast(
    (event) => event.type === "step.started" && event.step === step,
  );
  if (found === undefined) throw new RangeError(`${runId} never came to ${step}`);
  return found.at;
}

/** What the latest reading moved the drip's next look to. */
async function movedTo(runId: string): Promise<number> {
  const found = (await logOf(runId)).findLast((event) => event.type === "due.moved");
  if (found?.type !== "due.moved") throw new RangeError(`${runId} moved no due time`);
  return found.dueAt;
}

/** The app killed and opened again where it was. */
async function reload(): Promise<void> {
  const { page, server } = bar;
  const { hash } = new URL(page.url());
  await page.goto("about:blank");
  await page.goto(server.url + hash);
  await page.waitForSelector("main");
  // Browsers allow sound only once the page was touched.
  await page.mouse.click(2, 2);
}

/**
 * Lets the time go by until something is due, and sees it begin to ring then: not a second before,
 * and within a second after unless the phone slept.
 */
async function ring(what: string, dueAt: number, asleepFor = 0): Promise<void> {
  const { page } = bar;
  const before = (await rings()).length;
  const left = dueAt - (await clockOf(page));
  if (asleepFor > 0) {
    await pass(page, left - asleepFor / 2);
    expect(await sheet().count()).toBe(0);
    await pass(page, asleepFor);
  } else {
    await pass(page, left - 4 * SECOND);
    expect(await rings()).toHaveLength(before);
    expect(await sheet().count()).toBe(0);
    await page.clock.runFor(5 * SECOND);
  }
  await sheet().getByText(what, { exact: true }).waitFor();
  const at = (await rings())[before] ?? Number.NaN;
  rang.push({ what, due: new Date(dueAt).toISOString(), lateMs: at - dueAt });
}

const finishLast = async (): Promise<void> => {
  await bar.hands.hold(bar.page.locator(".run-actions .hold-button").last());
};

/** From the yield to the Shelf. */
async function bottleUp(yieldMl: number, topUp: boolean): Promise<void> {
  const { page, hands } = bar;
  await untilStep(page, "yield");
  await hands.tap(tapOf(page, said.run.typeAmount));
  await typeOnPad(bar, String(yieldMl));
  if (topUp) {
    await untilStep(page, "top-up");
    await finishLast();
  }
  await untilStep(page, "bottle");
  await finishLast();
  await untilStep(page, "label");
  await finishPlain(bar, "label");
  await page.getByRole("heading", { name: said.run.finished }).waitFor();
}

const of = (name: string) => planned(demoSpec(name), { by: "serves", serves: 30 });

function story(): readonly Played[] {
  const infusion = started("run-barley", "SB-2803", EVENING - 10 * MINUTE, of("Smoked Barley"));
  const fat = started("run-rye", "BR-2803", EVENING, of("Brown-Butter Rye"));
  const wash = started("run-pear", "PB-2803", EVENING - 10 * MINUTE, of("Pear Beacon"));
  return [
    infusion.finish({}, 10),
    fat.finish({}, 5).finish({}, 5),
    wash
      .finish({}, 20)
      .finish({ answer: { of: "milk", ml: 700 } }, 5)
      .finish({}, 5),
  ];
}

test("three runs over 36 hours, the clocks put forward, reloads and a sleep: every alarm at its moment", async () => {
  const { page, hands } = bar;
  await putLog(
    bar,
    story().flatMap(({ events }) => events),
    routes.bench,
    EVENING + 21 * MINUTE,
  );
  await page.mouse.click(2, 2);
  // Twelve hours on from six in the evening is seven in the morning, that night.
  await page
    .locator(".bench-row", { hasText: "Smoked Barley" })
    .getByText("Sun 29 Mar 07:00")
    .waitFor();

  await ring("Pear Beacon: Rest", EVENING + 80 * MINUTE);
  await answerAlarm(bar);
  await finishPlain(bar, "curdle");
  await untilStep(page, "wet-filter");
  await finishPlain(bar, "wet-filter");
  await untilStep(page, "first-pass");
  await ring("Pear Beacon: First pass", (await begun("run-pear", "first-pass")) + MINUTE);
  await answerAlarm(bar);
  await finishPlain(bar, "first-pass");
  await untilStep(page, "re-pour");
  await hands.tap(tapOf(page, said.run.typeAmount));
  await typeOnPad(bar, "300");
  await untilStep(page, "check-clear");
  await reload();
  await ring("Pear Beacon: Clear?", (await begun("run-pear", "check-clear")) + MINUTE);
  await answerAlarm(bar);
  await hands.hold(holdOf(page, said.run.outcomes.clear));
  await untilStep(page, "slow-drip");

  let due = (await begun("run-pear", "slow-drip")) + 30 * MINUTE;
  for (const reading of ["900", "1500"]) {
    await ring("Pear Beacon: Slow drip", due);
    await answerAlarm(bar);
    // It goes once the answer is stored.
    await sheet().waitFor({ state: "detached" });
    await hands.tap(tapOf(page, said.run.collected));
    await typeOnPad(bar, reading);
    await page
      .locator(".run-fact", { hasText: `${Number(reading).toLocaleString("en-GB")} ml` })
      .first()
      .waitFor();
    due = await movedTo("run-pear");
    await reload();
  }
  await finishPlain(bar, "slow-drip");
  await bottleUp(1800, true);

  const mingle = await begun("run-rye", "mingle");
  await ring("Brown-Butter Rye: Mingle", mingle + 3 * HOUR);
  await answerAlarm(bar);
  await untilStep(page, "mingle");
  await finishLast();
  await untilStep(page, "freeze");
  await reload();

  // 07:00 by the clocks on the wall, which have been put forward meanwhile.
  await ring("Smoked Barley: Steep", EVENING + 12 * HOUR);
  await answerAlarm(bar);
  await hands.hold(holdOf(page, said.run.outcomes["not-yet"]));

  // The phone sleeps for two hours around the moment.
  const freeze = await begun("run-rye", "freeze");
  await ring("Brown-Butter Rye: Freeze", freeze + 12 * HOUR, 2 * HOUR);
  await sheet()
    .getByText(/^1 h( 00 min)? late/u)
    .waitFor();
  await answerAlarm(bar);
  await untilStep(page, "freeze");
  for (const step of ["freeze", "lift-fat", "strain-paper"]) {
    await untilStep(page, step);
    await finishLast();
  }
  await bottleUp(500, false);
  await reload();

  await ring("Smoked Barley: Steep", EVENING + 24 * HOUR);
  await answerAlarm(bar);
  await hands.hold(holdOf(page, said.run.outcomes["not-yet"]));
  await reload();
  await ring("Smoked Barley: Steep", EVENING + 30 * HOUR);
  await answerAlarm(bar);
  await hands.hold(holdOf(page, said.run.outcomes["not-yet"]));
  // Its hard stop: the next evening's six o'clock and twelve hours, by any clock that was not put forward.
  await ring("Smoked Barley: Steep", EVENING + 36 * HOUR);
  await answerAlarm(bar);

  const slept = rang.filter(({ what }) => what.endsWith("Freeze"));
  const awake = rang.filter((one) => !slept.includes(one));
  expect(rang.map(({ what }) => what)).toEqual([
    "Pear Beacon: Rest",
    "Pear Beacon: First pass",
    "Pear Beacon: Clear?",
    "Pear Beacon: Slow drip",
    "Pear Beacon: Slow drip",
    "Brown-Butter Rye: Mingle",
    "Smoked Barley: Steep",
    "Brown-Butter Rye: Freeze",
    "Smoked Barley: Steep",
    "Smoked Barley: Steep",
    "Smoked Barley: Steep",
  ]);
  for (const { lateMs } of awake) {
    expect(lateMs).toBeGreaterThanOrEqual(0);
    expect(lateMs).toBeLessThanOrEqual(SECOND);
  }
  expect(slept[0]?.lateMs).toBeGreaterThan(59 * MINUTE);
  expect(slept[0]?.lateMs).toBeLessThan(61 * MINUTE);
}, 240_000);
