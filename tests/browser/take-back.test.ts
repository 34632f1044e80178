import { beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { refusals } from "../../app/words/en/refusals.ts";
import { foldRun } from "../../core/run/fold.ts";
import { openVisit } from "../../core/run/run.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { handsOn } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import {
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
  untilStep,
} from "../support/phone/walk-page.ts";
import { finishPlain } from "../support/phone/wash-by-hand.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

async function openAt(step: string) {
  const station = stationAt("run-a", "PB-1003", OPENS, step);
  await putLog(bar, station.events, routes.run("run-a"), station.since);
  return station.events;
}

const notice = () => bar.page.locator(".notices-line");
const run = async () => foldRun(await storedLog(bar.page));
const standsAt = async () => {
  const now = await run();
  return now && openVisit(now)?.key;
};

test("within 8 s a step is taken back from the foot of the screen, and its reading with it", async () => {
  const { page, hands } = bar;
  const before = await openAt("yield");
  await hands.tap(tapOf(page, said.run.typeAmount));
  await typeOnPad(bar, "4000");
  await untilStep(page, "top-up");
  await notice().filter({ hasText: said.run.saved }).waitFor();
  expect((await run())?.yields.at(-1)?.ml).toBe(4000);
  await pass(page, 5 * SECOND);
  await hands.tap(tapOf(page, said.places.undo));
  await untilStep(page, "yield");
  expect(await standsAt()).toBe("yield#1");
  expect((await run())?.yields).toEqual([]);
  // Nothing is erased: the log tells of the reading and of its taking back.
  const log = await storedLog(page);
  expect(log.slice(before.length).map(({ type }) => type)).toEqual([
    "yield.logged",
    "step.finished",
    "step.started",
    "event.undone",
  ]);
  await page.reload();
  await untilStep(page, "yield");
});

/** From now on nothing more fits on the phone. */
const fillPhone = () =>
  bar.page.evaluate(() => {
    IDBObjectStore.prototype.put = IDBObjectStore.prototype.add = () => {
      throw new DOMException("the phone is full", "QuotaExceededError");
    };
  });

test("a taking back that is refused is said in a sentence, and the step stands", async () => {
  const { page, hands } = bar;
  await openAt("pour");
  await finishPlain(bar, "pour");
  await untilStep(page, "curdle");
  await notice().filter({ hasText: said.run.saved }).waitFor();
  // The same act is taken back in another window first.
  const other = await bar.phone.context.newPage();
  await other.goto(page.url());
  await untilStep(other, "curdle");
  const otherHands = await handsOn(other);
  await otherHands.tap(tapOf(other, said.places.takePen));
  await other.getByText(said.places.penElsewhere).waitFor({ state: "detached" });
  await otherHands.tap(tapOf(other, said.run.more));
  await otherHands.tap(tapOf(other, said.run.undoLast));
  await untilStep(other, "pour");
  await other.close();
  await untilStep(page, "pour");
  await page.getByText(said.places.penElsewhere).waitFor({ state: "detached" });
  const log = await storedLog(page);
  await hands.tap(tapOf(page, said.places.undo));
  const sentence = refusals["nothing-to-undo"]?.({}) ?? "";
  await notice().filter({ hasText: sentence }).waitFor();
  expect(await storedLog(page)).toEqual(log);
  expect(await standsAt()).toBe("pour#1");
});

test("what is not saved is said above what rings, too", async () => {
  const { page, hands } = bar;
  const before = await openAt("curdle");
  await fillPhone();
  await pass(page, 70 * MINUTE);
  const heard = holdOf(page, said.alarm.heard);
  await heard.waitFor();
  await hands.hold(heard);
  const line = page.locator(".alarm-sheet-unsaved");
  await line.waitFor();
  expect(await line.textContent()).toContain("NOT SAVED");
  const seen = await line.evaluate((one) => {
    const { x, y, width, height } = one.getBoundingClientRect();
    return document.elementFromPoint(x + width / 2, y + height / 2) === one && y >= 0;
  });
  expect(seen).toBe(true);
  expect(await storedLog(page)).toEqual(before);
  expect(await heard.count()).toBe(1);
});

test("after 8 s the offer is gone, and More still takes the step back", async () => {
  const { page, hands } = bar;
  await openAt("pour");
  await finishPlain(bar, "pour");
  await untilStep(page, "curdle");
  await notice().waitFor();
  await pass(page, 9 * SECOND);
  await notice().waitFor({ state: "detached" });
  await hands.tap(tapOf(page, said.run.more));
  await shot(page, "run-more");
  await hands.tap(tapOf(page, said.run.undoLast));
  await untilStep(page, "pour");
  expect(await standsAt()).toBe("pour#1");
  // What was taken back can be brought back: the rest goes on from when it began.
  const began = (await storedLog(page)).find(
    (event) => event.type === "step.started" && event.visit === "curdle#1",
  );
  await notice().filter({ hasText: said.run.undone }).waitFor();
  await hands.tap(tapOf(page, said.places.undo));
  await untilStep(page, "curdle");
  const again = await run();
  expect(again && openVisit(again)?.startedAt).toBe(began?.at);
});

test("step by step, More takes back as far as the start, and no further", async () => {
  const { page, hands } = bar;
  await openAt("curdle");
  await hands.tap(tapOf(page, said.run.more));
  for (const step of ["pour", "milk", "build"]) {
    await hands.tap(tapOf(page, said.run.undoLast));
    await untilStep(page, step);
  }
  expect(await tapOf(page, said.run.undoLast).getAttribute("aria-disabled")).toBe("true");
  expect(await standsAt()).toBe("build#1");
});

test("a tick is taken off by a second tap, and the log keeps both", async () => {
  const { page, hands } = bar;
  const before = await openAt("build");
  const line = page.locator(".run-lines button").first();
  await hands.tap(line);
  await page.locator('.run-lines [aria-pressed="true"]').waitFor();
  await hands.tap(line);
  await page.locator('.run-lines [aria-pressed="true"]').waitFor({ state: "detached" });
  const log = await storedLog(page);
  expect(log.slice(before.length).map(({ type }) => type)).toEqual(["line.poured", "event.undone"]);
  expect((await run())?.poured).toEqual([]);
});

test("a finished batch comes back to its last step", async () => {
  const { page, hands } = bar;
  await openAt("label");
  await finishPlain(bar, "label");
  await page.getByRole("heading", { name: said.run.finished }).waitFor();
  await pass(page, 9 * SECOND);
  await hands.tap(tapOf(page, said.run.more));
  await hands.tap(tapOf(page, said.run.undoLast));
  await untilStep(page, "label");
  expect(await standsAt()).toBe("label#1");
});

test("an abandoned batch says why, and comes back", async () => {
  const { page, hands } = bar;
  await openAt("slow-drip");
  await hands.tap(tapOf(page, said.run.more));
  await hands.tap(tapOf(page, said.run.abandon));
  const give = holdOf(page, said.run.abandonDone);
  await hands.hold(give);
  expect((await run())?.abandoned).toBeUndefined();
  const [, , why = ""] = said.run.abandonReasons;
  await hands.tap(page.getByRole("radio", { name: why }));
  await hands.hold(give);
  await page.getByRole("heading", { name: said.run.stopped }).waitFor();
  expect((await run())?.abandoned?.reason).toBe(why);
  await hands.tap(tapOf(page, said.places.undo));
  await untilStep(page, "slow-drip");
  expect((await run())?.abandoned).toBeUndefined();
});
