import { expect, onTestFinished, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { dropProfile, newProfile, untilStored } from "../support/phone/browser.ts";
import { openTabs } from "../support/phone/real-tabs.ts";
import { said } from "../support/phone/said.ts";
import { setSight, takeSight } from "../support/phone/sight.ts";
import {
  type Bar,
  clockOf,
  HOUR,
  holdOf,
  MINUTE,
  OPENS,
  openBar,
  pass,
  putLog,
  putOn,
  SECOND,
  storedLog,
} from "../support/phone/walk-page.ts";
import { serveApp } from "../support/tool/server.ts";
import { waiting } from "../support/world/waiting.ts";

const RUN = routes.run("run-a");
/** Half past the minute, so that the small change of a clock shows in no time of day. */
const NOW = OPENS + 30 * SECOND;

const bar = barForTests({ size: "small" });

const sheet = ({ page }: Pick<Bar, "page">) => page.locator(".alarm-sheet");
const slept = async ({ page }: Bar) =>
  (await storedLog(page)).flatMap((one) =>
    one.type === "phone.slept" ? [{ from: one.fromMs, for: one.forMs }] : [],
  );

/** A wait of half an hour that has just begun, on a page whose sight is ours. */
async function waitHalfAnHour() {
  await bar.afresh(takeSight);
  const log = waiting({ runId: "run-a", batch: "PB-1003", from: NOW, waitFor: 30 * MINUTE });
  await putLog(bar, log, RUN, NOW);
  await bar.page.locator(".run-digits").waitFor();
  // The parts that watch the clock are fetched once the screen stands.
  await bar.page.locator(".status-line").waitFor();
  return bar;
}

async function away(ms: number): Promise<void> {
  await setSight(bar.page, "hidden");
  await pass(bar.page, ms);
  await setSight(bar.page, "visible");
}

test("truly frozen behind another tab: thawed, it rings at once and says how late", async () => {
  const server = await serveApp();
  const tabs = await openTabs();
  onTestFinished(async () => {
    await tabs.close();
    await server.stop();
  });
  const { page } = tabs;
  await page.goto(server.url);
  await untilStored(page);
  const now = await clockOf(page);
  const dueAt = now + 4 * SECOND;
  const log = waiting({ runId: "run-a", batch: "PB-1003", from: dueAt - HOUR, waitFor: HOUR });
  await putOn(page, "events", log);
  await page.goto("about:blank");
  await page.goto(server.url + RUN);
  await page.locator(".status-line").waitFor();
  await page.evaluate(() => {
    const lives: string[] = [];
    Reflect.set(globalThis, "lives", lives);
    document.addEventListener("freeze", () => lives.push("frozen"));
    document.addEventListener("resume", () => lives.push("thawed"));
  });
  await tabs.leave();
  await tabs.freeze(true);
  // A frozen page has the real clock: past the deadline by three seconds, of which two are asked for.
  await new Promise((resolve) => setTimeout(resolve, 7 * SECOND));
  await tabs.freeze(false);
  await tabs.comeBack();
  await sheet(tabs).waitFor();
  expect(await page.evaluate("lives")).toEqual(["frozen", "thawed"]);
  const late = /Rest(\d+) s late/u.exec((await sheet(tabs).textContent()) ?? "")?.[1];
  expect(Number(late)).toBeGreaterThanOrEqual(2);
  expect((await clockOf(page)) - dueAt).toBeGreaterThanOrEqual(Number(late) * SECOND - 500);
  // Seconds are no sleep worth a line.
  expect((await storedLog(page)).map(({ type }) => type)).toEqual(log.map(({ type }) => type));
});

test("out of sight for a minute: nothing was missed, nothing is noted", async () => {
  const { page } = await waitHalfAnHour();
  await away(MINUTE - SECOND);
  await page.locator(".status-line").waitFor();
  expect(await sheet(bar).count()).toBe(0);
  expect(await slept(bar)).toEqual([]);
});

test("out of sight for ten minutes: the log says so, once, and the wait goes on", async () => {
  const { page } = await waitHalfAnHour();
  await away(10 * MINUTE);
  await page.getByText(said.clock.slept("10 min")).waitFor();
  await page.locator(".run-digits", { hasText: /^(?:20:00|19:\d\d)$/u }).waitFor();
  expect(await sheet(bar).count()).toBe(0);
  await away(5 * MINUTE);
  await page.getByText(said.clock.slept("5 min")).waitFor();
  const gaps = await slept(bar);
  expect(gaps.map((gap) => Math.round(gap.for / MINUTE))).toEqual([10, 5]);
  expect(Math.abs((gaps[0]?.from ?? 0) - NOW)).toBeLessThan(20 * SECOND);
  await page.goto(page.url().replace(/#.*$/u, routes.batch("run-a")));
  await page.getByText(/^The phone was asleep 10 min, from 14:0\d: nothing could ring/u).waitFor();
});

test("out of sight for an hour: it rings on return, says how late, and why", async () => {
  const { page, hands } = await waitHalfAnHour();
  await away(HOUR);
  await sheet(bar).getByText("30 min late").waitFor();
  expect((await slept(bar)).map((gap) => Math.round(gap.for / MINUTE))).toEqual([60]);
  await hands.hold(holdOf(page, said.alarm.heard));
  await sheet(bar).waitFor({ state: "detached" });
  expect((await storedLog(page)).at(-1)?.type).toBe("alarm.heard");
});

test("out of sight with nothing to wait for: no sleep is noted", async () => {
  await bar.afresh(takeSight);
  const wait = { kind: "hands-on", work: "pour", id: "pour" } as const;
  const log = waiting({ runId: "run-a", batch: "PB-1", from: NOW, waitFor: 1000, step: wait });
  await putLog(
    bar,
    log.map((event) =>
      event.type === "run.started"
        ? {
            ...event,
            procedure: {
              ...event.procedure,
              steps: event.procedure.steps.map(({ waitFor: _, ...step }) => step),
            },
          }
        : event,
    ),
    RUN,
    NOW,
  );
  await bar.page.locator(".status-line").waitFor();
  await away(HOUR);
  await bar.page.locator(".run-actions").waitFor();
  expect(await slept(bar)).toEqual([]);
});

test("the clock was put back while nobody looked: it asks, and keeps the wait as long", async () => {
  const { page, hands } = await waitHalfAnHour();
  // This phone writes something at 14:10, so that it knows its own clock.
  await pass(page, 10 * MINUTE);
  await hands.hold(holdOf(page, said.handOver.clockDone));
  await page.getByText(said.handOver.told["phone-clock"]("14:30")).waitFor();
  await setSight(page, "hidden");
  await page.clock.setSystemTime((await clockOf(page)) - HOUR);
  await setSight(page, "visible");
  const question = page.getByRole("alertdialog", { name: said.clock.ask });
  await question.waitFor();
  expect(await question.textContent()).toMatch(/went back: it is (?:59 min|1 h) behind/u);
  // It is asked again until it is answered, even by a page that knows only the log.
  await page.reload();
  await question.waitFor();
  const before = await storedLog(page);
  await hands.hold(holdOf(page, said.clock.keep));
  await question.waitFor({ state: "detached" });
  const [shift, ...rest] = (await storedLog(page)).slice(before.length);
  expect(rest).toEqual([]);
  expect(shift).toMatchObject({ type: "clock.shifted", keepElapsed: true });
  expect(shift?.type === "clock.shifted" && Math.abs(shift.byMs + HOUR)).toBeLessThan(30 * SECOND);
  // Twenty minutes were left, and still are.
  await page.locator(".run-digits", { hasText: /^(?:20:\d\d|19:\d\d)$/u }).waitFor();
  await page.reload();
  await page.locator(".status-line").waitFor();
  expect(await sheet(bar).count()).toBe(0);
});

test("the phone moves to another zone: one line says so, times follow, no wait changes", async () => {
  const { page, phone } = await waitHalfAnHour();
  const session = await phone.context.newCDPSession(page);
  const there = new Intl.DateTimeFormat("en-GB", {
    timeZone: "Asia/Kathmandu",
    hour: "2-digit",
    minute: "2-digit",
  }).format(NOW + 30 * MINUTE);
  await setSight(page, "hidden");
  await session.send("Emulation.setTimezoneOverride", { timezoneId: "Asia/Kathmandu" });
  await setSight(page, "visible");
  await page.getByText(/^The phone now keeps the time of Asia\/Ka/u).waitFor();
  await page.locator(".run-when", { hasText: there }).waitFor();
  await page.locator(".run-digits", { hasText: /^(?:30:00|29:\d\d)$/u }).waitFor();
  expect(await sheet(bar).count()).toBe(0);
  expect((await storedLog(page)).filter(({ type }) => type === "clock.shifted")).toEqual([]);
  await session.send("Emulation.setTimezoneOverride", { timezoneId: "" });
});

test("the browser is killed while it rings: reopened, it rings again", async () => {
  const server = await serveApp();
  const profile = newProfile();
  let own = await openBar({ profile, server, at: NOW, size: "small" });
  onTestFinished(async () => {
    await own.close();
    await server.stop();
    dropProfile(profile);
  });
  const log = waiting({ runId: "run-a", batch: "PB-1003", from: NOW, waitFor: 30 * MINUTE });
  await putLog(own, log, RUN, NOW);
  await pass(own.page, 31 * MINUTE);
  await sheet(own).waitFor();
  await own.phone.kill();
  own = await openBar({ profile, server, at: NOW + 75 * MINUTE, size: "small" });
  await sheet(own).getByText("45 min late").waitFor();
  expect((await storedLog(own.page)).map(({ type }) => type)).toEqual(log.map(({ type }) => type));
  await own.hands.hold(holdOf(own.page, said.alarm.heard));
  await sheet(own).waitFor({ state: "detached" });
  expect((await storedLog(own.page)).at(-1)).toMatchObject({
    type: "alarm.heard",
    dueAt: NOW + 30 * MINUTE,
  });
});
