import type { Page } from "playwright-core";
import { english } from "../../../app/demo/words/en.ts";
import { routes } from "../../../app/routes.ts";
import { OPENS } from "../../support/phone/walk-page.ts";
import { itRings, quietAfternoon, type World } from "../../support/world/afternoon.ts";
import type { Walker } from "./walker.ts";

/** One job, from the Bench until it is done. Words differ by language, so places are told by what they are. */
export interface Job {
  readonly name: string;
  readonly world: World;
  readonly walk: (walker: Walker, page: Page) => Promise<void>;
}

const place = (page: Page, to: string) => page.locator(`.app-place[href="${to}"]`);
const keyOf = (page: Page, figure: string) =>
  page.locator(".number-pad-keys > button").nth("123456789,0".indexOf(figure));

async function type(walker: Walker, page: Page, figure: string): Promise<void> {
  for (const key of figure) await walker.key(keyOf(page, key));
  await walker.hold(page.locator(".number-pad > .hold-button"));
}

/** A batch that was planned is begun. */
const startPlanned: Job = {
  name: "start a planned batch",
  world: quietAfternoon(OPENS),
  walk: async (walker, page) => {
    await walker.hold(page.locator(".bench .hold-button"));
    await walker.done(page.locator("main.run h1"));
  },
};

const logReading: Job = {
  name: "log a reading",
  world: quietAfternoon(OPENS),
  walk: async (walker, page) => {
    await walker.tap(page.locator(`.bench a[href="${routes.read("run-pear")}"]`));
    await type(walker, page, "2900");
    await walker.done(page.locator(".app-screen:not(:has(.run-pad)) .run-fact").first());
  },
};

const pourBack: Job = {
  name: "acknowledge and pour back",
  world: itRings(OPENS),
  walk: async (walker, page) => {
    await walker.hold(page.locator(".alarm-sheet > .hold-button"));
    await walker.hold(page.locator('[data-asks="look"] > .hold-button').first());
    await type(walker, page, "200");
    await walker.done(page.locator(".run-digits"));
  },
};

/** The invented history says which it is. */
const best = (page: Page) => page.locator(".logbook-row", { hasText: english.history.bestTag });

const findBest: Job = {
  name: "find the best batch",
  world: quietAfternoon(OPENS),
  walk: async (walker, page) => {
    await walker.tap(place(page, routes.logbook));
    await walker.tap(page.locator(".logbook-acts > .tap-button").first());
    await walker.tap(best(page));
    await walker.done(page.locator("main.batch h1"));
  },
};

const printLabel: Job = {
  name: "print a label",
  world: quietAfternoon(OPENS),
  walk: async (walker, page) => {
    await walker.tap(place(page, routes.shelf));
    await walker.tap(page.locator('.shelf-row a[href^="#/label/"]').first());
    await walker.tap(page.locator('.label .tap-button[data-size="primary"]'));
    await page.waitForFunction(() => Reflect.get(globalThis, "printed") === 1);
  },
};

export const JOBS: readonly Job[] = [startPlanned, logReading, pourBack, findBest, printLabel];
