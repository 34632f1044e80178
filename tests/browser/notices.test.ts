import type { Page } from "playwright-core";
import { expect, onTestFinished, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { setSight, takeSight } from "../support/phone/sight.ts";
import { holdOf, MINUTE, OPENS, pass, putLog, storedLog } from "../support/phone/walk-page.ts";
import { waiting } from "../support/world/waiting.ts";

const bar = barForTests({ size: "small" });

/** A worker may take its time. */
const PATIENT = { timeout: 10_000 };
/**
 * Counts the notices that the worker has shown. Chromium forgets a notice for good when it is asked
 * which there are while that one is between being written down and being shown (98 of 100 were lost to
 * questions asked meanwhile, none without), so nothing may ask before.
 */
const countNotices = () => {
  // An empty page in between has no worker.
  if (!("serviceWorker" in navigator)) return;
  Reflect.set(globalThis, "noticesShown", 0);
  const { showNotification } = ServiceWorkerRegistration.prototype;
  ServiceWorkerRegistration.prototype.showNotification = async function (...notice) {
    await showNotification.apply(this, notice);
    Reflect.set(globalThis, "noticesShown", Reflect.get(globalThis, "noticesShown") + 1);
  };
};
const untilShown = (page: Page, count: number) =>
  page.waitForFunction((wanted) => Reflect.get(globalThis, "noticesShown") === wanted, count);
const noticesOf = (page: Page) =>
  page.evaluate(async () => {
    const worker = await navigator.serviceWorker.ready;
    return (await worker.getNotifications()).map(({ title, body }) => ({ title, body }));
  });

/** A phone that lets the page show notices, and whose sight is ours. */
async function phoneWithNotices(log = wait("run-a", 30 * MINUTE)) {
  const { context } = bar.phone;
  await context.grantPermissions(["notifications"], { origin: bar.server.origin });
  onTestFinished(() => context.clearPermissions());
  await bar.afresh(takeSight);
  await bar.page.addInitScript(countNotices);
  await putLog(bar, log, routes.bench, OPENS);
  await bar.page.locator(".status-line").waitFor();
  return bar;
}

const wait = (runId: string, waitFor: number, batch = runId) =>
  waiting({ runId, batch, from: OPENS, waitFor });

test("left while it rings, the phone is asked to show a notice, and answered it is taken back", async () => {
  const { page, hands } = await phoneWithNotices();
  await pass(page, 30 * MINUTE);
  await page.locator(".alarm-sheet").waitFor();
  expect(await noticesOf(page)).toEqual([]);
  await setSight(page, "hidden");
  await untilShown(page, 1);
  expect(await noticesOf(page)).toEqual([{ title: "Pear Beacon: Rest", body: said.alarm.dueNow }]);
  await setSight(page, "visible");
  await hands.hold(holdOf(page, said.alarm.heard));
  await expect.poll(() => noticesOf(page), PATIENT).toEqual([]);
});

test("it falls due just after the page was left: a notice, where code still runs", async () => {
  const { page } = await phoneWithNotices();
  await setSight(page, "hidden");
  await pass(page, 30 * MINUTE);
  await untilShown(page, 1);
  expect((await noticesOf(page)).map(({ title }) => title)).toEqual(["Pear Beacon: Rest"]);
  expect((await storedLog(page)).some(({ type }) => type === "alarm.heard")).toBe(false);
});

/** Two waits, of which the second falls due ten minutes after the first. */
const TWO = [
  ...wait("run-a", 30 * MINUTE),
  ...waiting({ runId: "run-b", batch: "PB-2", from: OPENS, waitFor: 40 * MINUTE }),
];
const tagsOf = (page: Page) =>
  page.evaluate(async () => {
    const worker = await navigator.serviceWorker.ready;
    return (await worker.getNotifications()).map(({ tag }) => tag.slice(2, 7)).toSorted();
  });

test("each that rings has a notice of its own, which goes when that one is answered", async () => {
  const { page, hands } = await phoneWithNotices(TWO);
  await setSight(page, "hidden");
  await pass(page, 30 * MINUTE);
  await untilShown(page, 1);
  await pass(page, 10 * MINUTE);
  await untilShown(page, 2);
  expect(await tagsOf(page)).toEqual(["run-a", "run-b"]);
  await setSight(page, "visible");
  await hands.hold(holdOf(page, said.alarm.heard));
  await expect.poll(() => tagsOf(page), PATIENT).toEqual(["run-b"]);
  await hands.hold(holdOf(page, said.alarm.heard));
  await expect.poll(() => tagsOf(page), PATIENT).toEqual([]);
});

test("a notice that another page left behind goes once its alarm is answered, or is none any more", async () => {
  const { page, hands } = await phoneWithNotices(TWO);
  await setSight(page, "hidden");
  await pass(page, 40 * MINUTE);
  await untilShown(page, 2);
  await page.evaluate(async () => {
    const worker = await navigator.serviceWorker.ready;
    await worker.showNotification("Of a batch that is over", { tag: '["over","x",1]' });
  });
  await untilShown(page, 3);
  // The page ended and began anew, as when a phone ran out of memory.
  await page.reload();
  await page.locator(".alarm-sheet").waitFor();
  await expect.poll(() => tagsOf(page), PATIENT).toEqual(["run-a", "run-b"]);
  await hands.hold(holdOf(page, said.alarm.heard));
  await expect.poll(() => tagsOf(page), PATIENT).toEqual(["run-b"]);
  await hands.hold(holdOf(page, said.alarm.heard));
  await expect.poll(() => tagsOf(page), PATIENT).toEqual([]);
});

test("a phone that forbids notices meanwhile rings all the same", async () => {
  const { page } = await phoneWithNotices();
  await bar.phone.context.clearPermissions();
  await setSight(page, "hidden");
  await pass(page, 30 * MINUTE);
  await setSight(page, "visible");
  await page.locator(".alarm-sheet").waitFor();
  expect(await noticesOf(page)).toEqual([]);
});
