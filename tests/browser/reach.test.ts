import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { SIZES } from "../support/browser.ts";
import type { Place } from "../support/hands.ts";
import { said } from "../support/said.ts";
import {
  goTo,
  HOUR,
  MINUTE,
  OPENS,
  openBar,
  pass,
  putLog,
  startAfresh,
  storedLog,
  tapOf,
  untilStep,
} from "../support/walk-page.ts";
import { finishPlain } from "../support/wash-by-hand.ts";
import { allStations, stationAt } from "../support/wash-stations.ts";

const RUN = routes.run("run-a");

let bar: Awaited<ReturnType<typeof openBar>>;

beforeAll(async () => {
  bar = await openBar({ size: "small" });
});
afterAll(() => bar.close());
afterEach(() => expect(bar.phone.complaints).toEqual([]));

interface Box extends Place {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** How wide and high it is, whether it shows or not, and the least its height may be. */
  readonly whole: { readonly width: number; readonly height: number };
  readonly least: number;
  readonly tab: boolean;
}

/** The least height of each kind of control, the first that fits. */
const LEAST: [string, number][] = [
  ['[data-size="least"]', 48],
  ['.hold-button[data-size="secondary"]', 64],
  ['.hold-button, .tap-button[data-size="primary"]', 96],
  [".tap-button, .chips-option, .link-button", 64],
  ["*", 48],
];

/** Everything that a finger may press now, cut to what shows of it. */
const boxesOf = (page: Page): Promise<Box[]> =>
  page.evaluate((table) => {
    const foot = document.querySelector(".run > .run-actions");
    /** Below this a control is covered: by what stays at the foot of the screen, or by its end. */
    const lowestOf = (one: Element): number => {
      const covers = foot !== null && one.closest(".run") !== null && !foot.contains(one);
      if (covers) return foot.getBoundingClientRect().top;
      return one.closest(".app-screen")?.getBoundingClientRect().bottom ?? innerHeight;
    };
    const over = document.querySelector(".alarm-sheet, .run-pad");
    const all = (over ?? document).querySelectorAll("button, a, input:not([readonly]), select");
    return [...all].map((one) => {
      const { x, y, width, height } = one.getBoundingClientRect();
      const lowest = over === null ? lowestOf(one) : innerHeight;
      return {
        name: one.getAttribute("aria-label") ?? one.textContent ?? "",
        x,
        y,
        width,
        height: Math.min(y + height, lowest) - y,
        whole: { width, height },
        least: table.find(([kind]) => one.matches(kind))?.[1] ?? 0,
        tab: one.matches(".app-place"),
      };
    });
  }, LEAST);

const gapOf = (a: Box, b: Box): number =>
  Math.max(a.x - b.x - b.width, b.x - a.x - a.width, a.y - b.y - b.height, b.y - a.y - a.height);

const isCut = ({ height, whole }: Box): boolean => height < whole.height;

/**
 * Five places with words this large leave no room between them, and a slip there undoes itself; and
 * a list that scrolls away under them is cut anywhere.
 */
const mayTouch = (a: Box, b: Box): boolean => (a.tab && (b.tab || isCut(b))) || (b.tab && isCut(a));

/** What is too small or too near to something else. */
async function faults(page: Page): Promise<string[]> {
  const boxes = await boxesOf(page);
  expect(boxes.length).toBeGreaterThan(0);
  const small = boxes
    .filter(({ whole, least }) => whole.height < least - 0.01 || whole.width < 48)
    .map(({ name, whole, least }) => `${name}: ${whole.width} × ${whole.height}, not ${least}`);
  const shown = boxes.filter(({ y, height }) => height > 0 && y < SIZES.usual.height);
  const near = shown.flatMap((a, at) =>
    shown
      .slice(at + 1)
      .filter((b) => gapOf(a, b) < 11.99 && !mayTouch(a, b))
      .map((b) => `${a.name} | ${b.name}: ${gapOf(a, b).toFixed(1)}`),
  );
  return [...small, ...near];
}

/** At the top of the screen, and scrolled to its end. */
async function faultsThroughout(page: Page): Promise<string[]> {
  const top = await faults(page);
  await page.locator(".app-screen").evaluate((one) => one.scrollTo(0, one.scrollHeight));
  const end = await faults(page);
  await page.locator(".app-screen").evaluate((one) => one.scrollTo(0, 0));
  return [...new Set([...top, ...end])];
}

const SIZES_SHOWN = ["small", "usual"] as const;

test("at every step, on both sizes of phone, controls are large enough and far enough apart", async () => {
  bar = await startAfresh(bar);
  const { page, hands } = bar;
  const found: Record<string, string[]> = {};
  const note = async (where: string) => {
    for (const size of SIZES_SHOWN) {
      await page.setViewportSize(SIZES[size]);
      const seen = await faultsThroughout(page);
      if (seen.length > 0) found[`${where}, ${SIZES[size].width}`] = seen;
    }
  };
  const stations = allStations(OPENS + 10 * MINUTE);
  await putLog(
    bar,
    stations.flatMap(({ events }) => events),
    routes.bench,
    OPENS,
  );
  await page.locator(".bench-row").first().waitFor();
  await note("Bench");
  for (const { step, runId } of stations) {
    await goTo(page, routes.run(runId));
    await note(step);
    const pad = page.locator(".run-actions .tap-button");
    if (step === "build" || (await pad.count()) !== 1) continue;
    await hands.tap(pad);
    await page.locator(".run-pad").waitFor();
    await note(`${step}, the pad`);
  }
  await goTo(page, routes.run("run-curdle"));
  await hands.tap(tapOf(page, said.handOver.others));
  const { ways, anotherName } = said.handOver;
  for (const way of [ways["phone-clock"], ways.vessel, ways.person]) {
    await hands.tap(page.getByRole("radio", { name: way, exact: true }));
    await note(`hand-over: ${way}`);
  }
  await hands.tap(tapOf(page, anotherName));
  await note("the letters");
  await hands.tap(tapOf(page, said.run.backToStep));
  await goTo(page, routes.vessel("run-curdle"));
  await note("the vessel's label");
  await goTo(page, routes.run("run-pour"));
  await finishPlain(bar, "pour");
  await untilStep(page, "curdle");
  await page.locator(".notices-line").waitFor();
  await note("with the offer to take back");
  await hands.tap(tapOf(page, said.run.more));
  await hands.tap(tapOf(page, said.run.abandon));
  await note("More, abandoning");
  await pass(page, 2 * HOUR);
  await page.locator(".alarm-sheet").waitFor();
  await note("an alarm");
  expect(found).toEqual({});
});

/** Small whole numbers that look like chance and are the same each time. */
function chance(seed: number) {
  let state = seed;
  return (below: number): number => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

test("three hundred drops on the run screen do nothing at all", async () => {
  const roll = chance(20_260_310);
  const { width, height } = SIZES.small;
  /** One to three contacts, together, too short for a finger. */
  const drop = () =>
    bar.hands.touch(
      Array.from({ length: Math.max(1, roll(5) - 1) }, () => ({ x: roll(width), y: roll(height) })),
      roll(59),
      roll(400),
    );
  for (const [step, opener] of [
    ["build"],
    ["check-clear"],
    ["slow-drip"],
    ["slow-drip", said.run.collected],
    ["top-up"],
    ["bottle"],
  ] as const) {
    const { events, since } = stationAt("run-a", "PB-1003", OPENS, step);
    bar = await startAfresh(bar);
    const { page, hands } = bar;
    await page.setViewportSize(SIZES.small);
    await putLog(bar, events, RUN, since);
    await page.locator("h1").waitFor();
    if (opener !== undefined) {
      await hands.tap(tapOf(page, opener));
      await hands.tap(tapOf(page, "7"));
    }
    const chosen = async () => ({
      hash: new URL(page.url()).hash,
      heading: await page.locator("h1").textContent(),
      typed: await page
        .locator(".number-pad-field")
        .evaluateAll((fields) => fields.map((field) => field.getAttribute("value"))),
      counts: await page.locator(".stepper-value").allTextContents(),
      chips: await page.locator('[aria-checked="true"]').allTextContents(),
      more: await page.locator(".run-more").count(),
    });
    const before = await chosen();
    await Promise.all(Array.from({ length: 50 }, drop));
    expect(await chosen()).toEqual(before);
    expect(await storedLog(page)).toEqual(events);
    // The screen is not deaf: the next finger counts.
    await hands.tap(tapOf(page, opener === undefined ? said.run.more : said.run.backToStep));
    await page.locator(opener === undefined ? ".run-more" : ".run-actions").waitFor();
    // Nor does the finger that closed the pad go on to what lay beneath it.
    expect((await chosen()).hash).toBe(RUN);
  }
});
