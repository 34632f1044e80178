import type { Locator, Page } from "playwright-core";
import { afterEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { ENGLISH, tongue } from "../../app/words/tongue.ts";
import { everyLook } from "../support/look/every-look.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { speak } from "../support/phone/speak.ts";
import { goTo, OPENS, putLog, putOn, tapOf } from "../support/phone/walk-page.ts";
import { demoSpec, madeWhole, started } from "../support/world/play-run.ts";
import { TONGUES } from "../support/world/tongues.ts";

const bar = barForTests({ size: "small" });

afterEach(() => {
  tongue.value = ENGLISH;
});

const link = (page: Page, name: string): Locator =>
  page.locator("main").getByRole("link", { name, exact: true });

interface Empty {
  readonly name: string;
  readonly at: string;
  /** Read when it is looked at: the language may have changed. */
  readonly says: () => string;
  /** What leads on from here, and where to; nothing where it is the field below. */
  readonly way?: () => string;
  readonly to?: string;
}

/** Every screen that has nothing to show on a new phone. */
const EMPTY: readonly Empty[] = [
  {
    name: "bench",
    at: routes.bench,
    says: () => said.bench.empty,
    way: () => said.bench.toSpecs,
    to: routes.specs,
  },
  {
    name: "specs",
    at: routes.specs,
    says: () => said.specs.empty,
    way: () => said.specs.newSpec,
    to: routes.spec("new"),
  },
  { name: "lines", at: routes.spec("new"), says: () => said.empty.lines },
  {
    name: "days",
    at: routes.days,
    says: () => said.days.empty,
    way: () => said.days.toSpecs,
    to: routes.specs,
  },
  {
    name: "shelf",
    at: routes.shelf,
    says: () => said.shelf.empty,
    way: () => said.logbook.toSpecs,
    to: routes.specs,
  },
  {
    name: "logbook",
    at: routes.logbook,
    says: () => said.logbook.empty,
    way: () => said.logbook.toSpecs,
    to: routes.specs,
  },
  {
    name: "compare",
    at: routes.compare([]),
    says: () => said.empty.compare(0),
    way: () => said.logbook.toSpecs,
    to: routes.specs,
  },
  {
    name: "learnt",
    at: routes.learnt,
    says: () => said.learnt.none,
    way: () => said.logbook.toSpecs,
    to: routes.specs,
  },
];

test("an empty screen says what will stand there, and leads to filling it", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  for (const { at, says, way, to } of EMPTY) {
    await goTo(page, at);
    await page.getByText(says(), { exact: true }).waitFor();
    if (way === undefined || to === undefined) continue;
    await hands.tap(link(page, way()));
    await expect.poll(() => new URL(page.url()).hash).toBe(to);
  }
  await goTo(page, routes.kit);
  await page.getByText(said.kit.backup.never, { exact: true }).waitFor();
});

test("while a batch is being made, they lead to it instead", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await putLog(bar, started("run-a", "PB-1003", OPENS).events, routes.shelf, OPENS);
  for (const at of [routes.shelf, routes.logbook, routes.compare([]), routes.learnt]) {
    await goTo(page, at);
    await hands.tap(link(page, said.logbook.toBench));
    await page.locator(".bench-row").waitFor();
  }
});

test("one batch alone is nothing to compare: it says so, and asks for a second", async () => {
  await bar.afresh();
  const { page } = bar;
  const whole = madeWhole(started("run-a", "PB-1003", OPENS), {
    yield: 3700,
    topUp: 450,
    useBy: OPENS + 7 * 86_400_000,
  });
  await putLog(bar, whole.events, routes.compare([]));
  await page.getByText(said.empty.compare(1), { exact: true }).waitFor();
  expect(await page.locator(".compare-picks").count()).toBe(0);
  await goTo(page, routes.batch("run-a"));
  for (const says of [said.tasting.none, said.tasting.verdict.none, said.photos.none]) {
    await page.getByText(says, { exact: true }).waitFor();
  }
});

test("a search that finds nothing has a way back to everything", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  // As many as make a search worth its place.
  const book = Array.from({ length: 9 }, (_, at) => ({
    ...demoSpec("Pear Beacon"),
    id: `spec-${at}`,
    name: `Pear ${at}`,
  }));
  await putOn(page, "specs", book);
  await page.goto(bar.server.url + routes.specs);
  await page.reload();
  await page.getByRole("textbox", { name: said.specs.search }).fill("zzz");
  await page.getByText(said.specs.noneFound("zzz"), { exact: true }).waitFor();
  await hands.tap(tapOf(page, said.empty.allSpecs));
  await expect.poll(() => page.locator(".specs-entry").count()).toBe(book.length);
});

test("readable on both phones, in both themes and every language; nothing is cut", async () => {
  const found: Record<string, string[]> = {};
  await bar.afresh();
  const { page } = bar;
  for (const [, spoken] of TONGUES) {
    await speak(bar, spoken);
    for (const { name, at, says } of EMPTY) {
      await goTo(page, at);
      await page.getByText(says(), { exact: true }).waitFor();
      Object.assign(found, await everyLook(page, `empty-${name}-${spoken.language}`));
    }
  }
  expect(found).toEqual({});
}, 300_000);
