import ICAL from "ical.js";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { foldRun } from "../../core/run/fold.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  MINUTE,
  putLog,
  putOn,
  shot,
  storedLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { HOUSE_MADE } from "../support/world/house-made.ts";
import { plannedBatch } from "../support/world/planned-batch.ts";
import { started } from "../support/world/play-run.ts";
import { fromCupboard, PUNCH } from "../support/world/punch-spec.ts";

// The clocks of this zone go forward on Sunday 29 March 2026 (tz database).
const ZONE = "Europe/Paris";
const TUESDAY = Date.parse("2026-03-24T13:00:00Z");
const DAY = 24 * HOUR;
const words = said.days;

const bar = barForTests({ size: "small", zone: ZONE, at: TUESDAY });

/** Opens the app anew, as after the phone was restarted. */
async function reopen(hash: string): Promise<void> {
  const { page, server } = bar;
  await page.goto("about:blank");
  await page.goto(server.url + hash);
  await page.waitForSelector("main");
}

const text = (selector: string): Promise<string[]> =>
  bar.page.locator(selector).evaluateAll((all) => all.map((one) => one.textContent ?? ""));

test("a plan goes onto the prep list, worked back from service, and starts from there", async () => {
  const { page, hands } = bar;
  await openPlan(bar, "Pear Beacon");
  await page.locator('[data-section="ready"] > summary').click();
  await page.getByLabel(said.plan.ready.date, { exact: true }).fill("2026-03-27");
  await page.getByText(/^Start by Fri/u).waitFor();
  await shot(page, "plan-ready");
  await hands.hold(holdOf(page, words.put));
  await page.getByRole("heading", { name: words.title, exact: true }).waitFor();
  await page.getByText(words.isOn(0)).waitFor();
  const friday = page.locator(".days-day", { hasText: "Fri 27 Mar" });
  expect(await friday.textContent()).toContain(words.readyBy("Pear Beacon", "17:00"));
  await shot(page, "prep-list");

  await reopen(routes.days);
  await page.locator(".days-batch h3", { hasText: "Pear Beacon" }).waitFor();
  await hands.holdTruly(holdOf(page, words.start("Pear Beacon")));
  await untilStep(page, "build");
  const run = foldRun(await storedLog(page));
  expect(run?.readyBy).toBe(Date.parse("2026-03-27T16:00:00Z"));

  await goTo(page, routes.days);
  await page.getByText(words.mustBe("Fri 27 Mar 17:00")).waitFor();
  expect(await text(".days-batch h3")).toEqual([expect.stringContaining("Pear Beacon PB")]);
});

test("a run is promised anew, and the bench says what fits into the next quiet stretch", async () => {
  const { page, hands } = bar;
  const infusion = "Chamomile Dry Vermouth";
  await putOn(page, "planned", [plannedBatch("friday", TUESDAY + 3 * DAY, infusion)]);
  await reopen(routes.bench);
  const quiet = page.locator(".quiet");
  await quiet.waitFor();
  expect(await quiet.textContent()).toContain(infusion);
  await shot(page, "bench-ahead");

  await hands.tap(page.getByRole("link", { name: said.bench.prepList, exact: true }));
  await hands.tap(tapOf(page, words.setReady));
  await page.getByLabel(said.plan.ready.time, { exact: true }).fill("18:30");
  await hands.tap(tapOf(page, words.saveReady));
  await page.getByText(words.mustBe("Fri 27 Mar 18:30")).waitFor();
});

test("days that do not work out say which limit breaks and by how much", async () => {
  const { page } = bar;
  await putOn(page, "planned", [plannedBatch("now-1", TUESDAY + 2 * HOUR, "Pear Beacon")]);
  await reopen(routes.days);
  const say = page.locator(".days-say", { hasText: "There is not enough time" });
  await say.waitFor();
  expect(await say.textContent()).toMatch(/Pear Beacon would be \d+ h( \d\d min)? late/u);
  await shot(page, "prep-list-late");
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        indexedDB.open("second-pour").onsuccess = ({ target }) => {
          const db: IDBDatabase = Reflect.get(target ?? {}, "result");
          const tx = db.transaction("planned", "readwrite");
          tx.objectStore("planned").delete("now-1");
          tx.oncomplete = () => {
            db.close();
            resolve();
          };
        };
      }),
  );
});

test("what is made in the house comes first, and comes along", async () => {
  const { page, hands } = bar;
  const [punch = PUNCH] = HOUSE_MADE;
  await putOn(
    page,
    "specs",
    HOUSE_MADE.map((spec) => ({ ...spec })),
  );
  await putOn(page, "ingredients", [
    { ...fromCupboard("black-tea"), id: "house-tea", name: "House tea", madeFrom: "tea-spec" },
    {
      ...fromCupboard("syrup-1-1"),
      id: "house-syrup",
      name: "House syrup",
      madeFrom: "syrup-spec",
    },
  ]);
  await reopen(routes.plan(punch.id));
  await page.locator('[data-section="ready"] > summary').click();
  await page.getByLabel(said.plan.ready.date, { exact: true }).fill("2026-03-28");
  await page.getByRole("heading", { name: words.parts.title }).waitFor();
  await hands.hold(holdOf(page, words.put));
  await page.getByText(words.isOn(2)).waitFor();
  const entries = page.locator(".days-batch");
  await entries.filter({ hasText: words.madeFor("House tea") }).waitFor();
  expect(
    await entries
      .filter({ hasText: words.madeFor("Punch") })
      .locator("h3")
      .allTextContents(),
  ).toEqual(["House tea"]);
});

test("the calendar file holds every hands-on step at its moment", async () => {
  const { page, hands } = bar;
  const download = page.waitForEvent("download");
  await hands.tap(tapOf(page, words.calendar));
  const stream = await (await download).createReadStream();
  let file = "";
  for await (const chunk of stream) file += String(chunk);
  const events = new ICAL.Component(ICAL.parse(file))
    .getAllSubcomponents("vevent")
    .map((one) => new ICAL.Event(one));
  expect(events.length).toBeGreaterThan(8);
  const punch = events.filter(({ summary }) => summary === "Punch: Label");
  // By half past six on the Friday, and by five on the Saturday before the clocks go forward.
  expect(punch.map(({ endDate }) => endDate.toUnixTime() * 1000)).toEqual([
    Date.parse("2026-03-28T16:00:00Z"),
  ]);
});

test("a drip that is slower than was thought moves what comes after it, and the list says why", async () => {
  const { page, hands } = bar;
  const at = TUESDAY + 10 * MINUTE;
  const drip = started("run-wash", "PB-9", at - 195 * MINUTE)
    .finish({}, 5)
    .finish({ answer: { of: "milk", ml: 1000 } }, 2)
    .finish({}, 1)
    .finish({}, 60)
    .then({ type: "set-ready", by: at + 9 * HOUR }, 1)
    .finish({}, 120)
    .finish({}, 2)
    .finish({ answer: { of: "cloudy-run", ml: 200 } }, 2)
    .finish({ look: "clear" }, 1);
  await putLog(bar, drip.events, routes.days, at);
  await page.locator(".days-batch h3", { hasText: "Pear Beacon PB-9" }).waitFor();
  const moved = page.locator(".days-say", { hasText: words.moved.title });
  // What was moved by hand is seen first.
  if ((await moved.count()) > 0) await hands.tap(tapOf(page, words.moved.seen));
  await moved.waitFor({ state: "detached" });

  const visit = "slow-drip#1";
  const reading = { type: "log-reading", visit, what: "collected", unit: "ml" } as const;
  const slow = drip
    .then({ ...reading, value: 500 }, 60)
    .then({ ...reading, value: 900 }, 60)
    .then({ ...reading, value: 1250 }, 60);
  await putLog(bar, slow.events, routes.days, at + 3 * HOUR + MINUTE);
  await moved.waitFor();
  expect(await moved.textContent()).toContain("Pear Beacon PB-9, from “Yield” on:");
  expect(await moved.textContent()).toContain(words.moved.because("Pear Beacon PB-9", "Slow drip"));
  await shot(page, "prep-list-moved");
  await hands.tap(tapOf(page, words.moved.seen));
  await moved.waitFor({ state: "detached" });
  await reopen(routes.days);
  await page.locator(".days-batch").first().waitFor();
  expect(await moved.count()).toBe(0);
});
