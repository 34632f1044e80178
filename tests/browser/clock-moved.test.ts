import { beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  clockOf,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  putLog,
  SECOND,
  shot,
  storedLog,
} from "../support/phone/walk-page.ts";
import { waiting } from "../support/world/waiting.ts";
import { stationAt } from "../support/world/wash-stations.ts";

/** Half past the minute, so that the small change of a clock correction shows in no time of day. */
const NOW = OPENS + 30 * SECOND;
const resting = stationAt("run-rest", "PB-1003", NOW - 27 * MINUTE, "curdle");

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
  await putLog(bar, resting.events, routes.run("run-rest"), NOW);
  await bar.page.getByText(said.work.due("15:00"), { exact: true }).waitFor();
});

const question = () => bar.page.getByRole("alertdialog", { name: said.clock.ask });

const moved = [
  { move: "forward", by: 3 * HOUR, says: "3 h", keep: "18:00" },
  { move: "back", by: -40 * MINUTE, says: "40 min", keep: "14:20" },
];
for (const { move, by, says, keep } of moved) {
  test(`the phone's clock is set ${move}: it asks, and keeps the wait as long as it was`, async () => {
    const { page, hands } = bar;
    await page.clock.setSystemTime((await clockOf(page)) + by);
    await question().waitFor();
    expect(await question().textContent()).toContain(said.clock.moved(says));
    expect((await storedLog(page)).length).toBe(resting.events.length);
    await shot(page, `clock-moved-${move}`);
    await hands.hold(holdOf(page, said.clock.keep));
    await question().waitFor({ state: "detached" });
    await page.getByText(said.work.due(keep), { exact: true }).waitFor();
    const log = await storedLog(page);
    const [shift] = log.slice(resting.events.length);
    expect(log.length).toBe(resting.events.length + 1);
    expect(shift).toMatchObject({ type: "clock.shifted", keepElapsed: true });
    expect(shift?.type === "clock.shifted" && Math.abs(shift.byMs - by)).toBeLessThan(2500);
    expect(await page.locator(".alarm-sheet").count()).toBe(0);
    // It is a fact of the log, so a reload does not ask again.
    await page.reload();
    await page.getByText(said.work.due(keep), { exact: true }).waitFor();
    expect(await page.locator(".alarm-sheet").count()).toBe(0);
  });
}

test("the new time is right: due times stay, and what is due by it rings", async () => {
  const { page, hands } = bar;
  await page.clock.setSystemTime(NOW + 2 * HOUR);
  await question().waitFor();
  await hands.hold(holdOf(page, said.clock.trust));
  await page.locator(".alarm-sheet-late", { hasText: "1 h late" }).waitFor();
  expect((await storedLog(page)).at(-1)).toMatchObject({
    type: "clock.shifted",
    keepElapsed: false,
  });
});

test("set by mistake and put right before anybody answers: nothing is asked, and nothing moves", async () => {
  const { page } = bar;
  await page.clock.setSystemTime((await clockOf(page)) + HOUR);
  await question().waitFor();
  await page.clock.setSystemTime((await clockOf(page)) - HOUR);
  await question().waitFor({ state: "detached" });
  await page.getByText(said.work.due("15:00"), { exact: true }).waitFor();
  expect(await storedLog(page)).toHaveLength(resting.events.length);
});

test("another time zone moves no deadline and asks nothing", async () => {
  const { page, phone } = bar;
  const left = async () => (await page.locator(".run-digits").textContent()) ?? "";
  const session = await phone.context.newCDPSession(page);
  await session.send("Emulation.setTimezoneOverride", { timezoneId: "Asia/Kathmandu" });
  await page.reload();
  const due = new Intl.DateTimeFormat("en-GB", {
    timeZone: "Asia/Kathmandu",
    hour: "2-digit",
    minute: "2-digit",
  }).format(NOW + HOUR);
  await page.locator(".run-when", { hasText: due }).waitFor();
  expect(await left()).toMatch(/^(?:1:00:00|59:\d\d)$/u);
  expect(await page.locator(".alarm-sheet").count()).toBe(0);
  await session.send("Emulation.setTimezoneOverride", { timezoneId: "" });
});

test("summer time begins during a wait: nothing is asked, and it is due when it was", async () => {
  const { page, phone } = bar;
  const session = await phone.context.newCDPSession(page);
  await session.send("Emulation.setTimezoneOverride", { timezoneId: "Europe/Berlin" });
  // 29 March 2026, 02:00 becomes 03:00 there: by the IANA time zone database, as Chromium has it.
  const from = Date.parse("2026-03-29T00:30:30Z");
  const log = waiting({ runId: "run-spring", batch: "PB-1004", from, waitFor: HOUR });
  await putLog(bar, log, routes.run("run-spring"), from);
  await page.getByText(said.work.due("03:30"), { exact: true }).waitFor();
  await page.clock.fastForward(45 * MINUTE);
  await page.locator(".run-digits", { hasText: /^(?:15:00|14:\d\d)$/u }).waitFor();
  await page.getByText(said.work.due("03:30"), { exact: true }).waitFor();
  expect(await question().count()).toBe(0);
  await page.clock.fastForward(15 * MINUTE);
  await page.locator(".alarm-sheet-late").waitFor();
  expect(await question().count()).toBe(0);
  await session.send("Emulation.setTimezoneOverride", { timezoneId: "" });
});
