import { afterEach, beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { ENGLISH, type Tongue, tongue } from "../../app/words/tongue.ts";
import { brokenWords, cutOff, sticksOut } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { speak } from "../support/phone/speak.ts";
import {
  goTo,
  HOUR,
  MINUTE,
  OPENS,
  pass,
  putLog,
  shot,
  tapOf,
} from "../support/phone/walk-page.ts";
import { openPlan } from "../support/phone/wash-by-hand.ts";
import { demoHistory } from "../support/world/demo-bar.ts";
import { madeWhole, started } from "../support/world/play-run.ts";
import { OTHER_TONGUES } from "../support/world/tongues.ts";
import { allStations } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});
afterEach(() => {
  tongue.value = ENGLISH;
});

const STATIONS = allStations(OPENS + 10 * MINUTE);
const STEPS = STATIONS.map(({ runId }) => routes.run(runId));
const PLACES = [
  ...[routes.bench, routes.specs, routes.shelf, routes.logbook, routes.kit, routes.cupboard],
  ...[routes.sums, routes.days, routes.procedures, routes.procedure("dairy-wash")],
  ...[routes.spec("demo-pear-beacon"), routes.plan("demo-pear-beacon")],
  ...[routes.ingredient("lemon-juice"), routes.hand("run~run-curdle"), routes.dim("run-curdle")],
  ...[routes.vessel("run-curdle"), routes.label("run-finished"), routes.sheet("run-finished")],
  routes.batch("run-finished"),
];

/** A bench with a batch at every step, and the demo's specs. */
async function furnish(): Promise<void> {
  await openPlan(bar, "Pear Beacon");
  const events = STATIONS.flatMap((one) => one.events);
  await putLog(bar, events, routes.bench, OPENS);
  await bar.page.locator(".bench-row").first().waitFor();
}

/** Words of the bottom bar that are wider than their place. */
const tightTabs = (): Promise<string[]> =>
  bar.page.evaluate(() =>
    [...document.querySelectorAll("nav a")].flatMap((tab) => {
      const words = document.createRange();
      words.selectNodeContents(tab);
      return words.getBoundingClientRect().width > tab.getBoundingClientRect().width - 2
        ? [tab.textContent ?? ""]
        : [];
    }),
  );

/** Collects what is cut off or sticks out, screen by screen, with a picture of each. */
function lookOut({ language }: Tongue) {
  const { page } = bar;
  const found: Record<string, string[]> = {};
  const look = async (place: string) => {
    const seen = [
      ...(await sticksOut(page)).map((one) => `sticks out: ${one}`),
      ...(await cutOff(page)).map((one) => `cut off: ${one}`),
      ...(await brokenWords(page)).map((one) => `broken: ${one}`),
      ...(await tightTabs()).map((one) => `tab: ${one}`),
    ];
    if (seen.length > 0) found[place] = seen;
    await shot(page, `${language}-${place.replace(/\W+/gu, "-")}`);
  };
  return { found, look };
}

test.each(OTHER_TONGUES)(
  "%s at 360 × 640: no word is cut, nothing sticks out, on any screen",
  async (_, next) => {
    await furnish();
    await speak(bar, next);
    const { page } = bar;
    const { found, look } = lookOut(next);
    for (const place of [...PLACES, ...STEPS]) {
      await goTo(page, place);
      expect(await page.evaluate(() => document.documentElement.lang)).toBe(next.language);
      await look(place);
    }
    await goTo(page, routes.plan("demo-pear-beacon"));
    const folded = page.locator("details:not([open]) > summary");
    while ((await folded.count()) > 0) await folded.first().click();
    await look("plan unfolded");
    await goTo(page, routes.run("run-curdle"));
    await pass(page, 2 * HOUR);
    await page.locator(".alarm-sheet").waitFor();
    await look("alarm");
    expect(found).toEqual({});
  },
  120_000,
);

const HISTORY = demoHistory(OPENS);
const PEARS = HISTORY.filter((log) =>
  log.some((event) => event.type === "run.started" && event.plan.spec.name === "Pear Beacon"),
).flatMap((log) => log[0]?.runId ?? []);

/** A made batch that stands on the Shelf, beside half a year of invented ones. */
function stocked() {
  const at = OPENS - 2 * 24 * HOUR;
  const useBy = at + 7 * 24 * HOUR;
  return madeWhole(started("stocked", "PB-3", at), { yield: 3700, topUp: 450, useBy }).events;
}

test.each(OTHER_TONGUES)(
  "%s at 360 × 640: the same of what batches tell, how a drink is served, what stands on the Shelf",
  async (_, next) => {
    await openPlan(bar, "Pear Beacon");
    await putLog(bar, [...HISTORY.flat(), ...stocked()], routes.bench, OPENS);
    await speak(bar, next);
    const { page, hands } = bar;
    const { found, look } = lookOut(next);
    const [failed = "", , , best = ""] = PEARS;
    const screens = {
      "compare-pick": routes.compare([]),
      "compare-plan": routes.compare([best]),
      "compare-three": routes.compare([best, failed, PEARS.at(-1) ?? ""]),
      learnt: routes.learnt,
      "learnt-drink": routes.learntOf("demo-pear-beacon"),
      services: routes.services("demo-pear-beacon"),
    };
    for (const [name, route] of Object.entries(screens)) {
      await goTo(page, route);
      await page.locator("section h2, .compare-picks li").first().waitFor();
      for (const details of await page.locator("summary").all()) await details.click();
      await look(name);
    }
    await goTo(page, routes.batch("stocked"));
    await hands.tap(tapOf(page, said.tasting.begin));
    await tapOf(page, said.tasting.close).waitFor();
    await look("tasting");
    for (const [name, open] of [
      ["shelf-pour", said.shelf.pour.open("PB-3")],
      ["shelf-end", said.shelf.end.open("PB-3")],
    ] as const) {
      await goTo(page, routes.bench);
      await goTo(page, routes.shelf);
      await hands.tap(tapOf(page, open));
      await look(name);
    }
    await goTo(page, routes.label("stocked"));
    await look("label-stocked");
    await goTo(page, routes.kit);
    await hands.tap(tapOf(page, said.kit.backup.download));
    await page.getByText(said.kit.backup.saved("second-pour-2026-03-10.txt")).waitFor();
    await look("kit-backup");
    expect(found).toEqual({});
  },
  120_000,
);
