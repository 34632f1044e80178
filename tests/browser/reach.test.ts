import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { SIZES } from "../support/phone/browser.ts";
import type { Place } from "../support/phone/hands.ts";
import { said } from "../support/phone/said.ts";
import {
  type Bar,
  goTo,
  HOUR,
  MINUTE,
  OPENS,
  pass,
  putLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { finishPlain } from "../support/phone/wash-by-hand.ts";
import { allStations, stationAt } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });

interface Box extends Place {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** How wide and high it is, whether it shows or not, and the least its height may be. */
  readonly whole: { readonly width: number; readonly height: number };
  readonly least: number;
  readonly tab: boolean;
}

/** The least height of each kind of control, the first that fits: for a finger, and for a glove. */
const LEAST: [string, finger: number, glove: number][] = [
  // Five across, and a slip on them undoes itself.
  [".app-place", 48, 48],
  ['[data-size="least"], .link-button[data-tone="quiet"]', 48, 64],
  // On a low screen the pad gives up height before it scrolls.
  [".number-pad-keys > *", 64, 64],
  ['.hold-button[data-size="secondary"]', 64, 88],
  ['.hold-button, .tap-button[data-size="primary"]', 96, 128],
  [".tap-button, .chips-option, .link-button", 64, 88],
  ["*", 48, 64],
];

/** How near two controls may be, CSS px. */
const GAP = { finger: 12, glove: 20 };
type Size = keyof typeof GAP;

/** Everything that a finger may press now, cut to what shows of it. */
const boxesOf = (page: Page, size: Size): Promise<Box[]> =>
  page.evaluate(
    ([table, glove]) => {
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
          least: table.find(([kind]) => one.matches(kind))?.[glove ? 2 : 1] ?? 0,
          tab: one.matches(".app-place"),
        };
      });
    },
    [LEAST, size === "glove"] as const,
  );

const gapOf = (a: Box, b: Box): number =>
  Math.max(a.x - b.x - b.width, b.x - a.x - a.width, a.y - b.y - b.height, b.y - a.y - a.height);

const isCut = ({ height, whole }: Box): boolean => height < whole.height;

/**
 * Five places with words this large leave no room between them, and a slip there undoes itself; and
 * a list that scrolls away under them is cut anywhere.
 */
const mayTouch = (a: Box, b: Box): boolean => (a.tab && (b.tab || isCut(b))) || (b.tab && isCut(a));

/** What is too small or too near to something else. */
async function faults(page: Page, size: Size): Promise<string[]> {
  const boxes = await boxesOf(page, size);
  expect(boxes.length).toBeGreaterThan(0);
  const small = boxes
    .filter(({ whole, least }) => whole.height < least - 0.01 || whole.width < 48)
    .map(({ name, whole, least }) => `${name}: ${whole.width} × ${whole.height}, not ${least}`);
  // What scrolls on under the places may lie anywhere before them; at its end it is looked at too.
  const goesOn = await page
    .locator(".app-screen")
    .evaluate((one) => one.scrollHeight - one.scrollTop - one.clientHeight > 1);
  const shown = boxes.filter(({ y, height }) => height > 0 && y < SIZES.usual.height);
  const near = shown.flatMap((a, at) =>
    shown
      .slice(at + 1)
      .filter((b) => gapOf(a, b) < GAP[size] - 0.01 && !mayTouch(a, b))
      .filter((b) => !goesOn || a.tab === b.tab)
      .map((b) => `${a.name} | ${b.name}: ${gapOf(a, b).toFixed(1)}`),
  );
  return [...small, ...near];
}

/** At the top of the screen, and scrolled to its end. */
async function faultsThroughout(page: Page, size: Size): Promise<string[]> {
  const top = await faults(page, size);
  await page.locator(".app-screen").evaluate((one) => one.scrollTo(0, one.scrollHeight));
  const end = await faults(page, size);
  await page.locator(".app-screen").evaluate((one) => one.scrollTo(0, 0));
  return [...new Set([...top, ...end])];
}

const SIZES_SHOWN = ["small", "usual"] as const;

const HANDS = [
  ["right", false],
  ["left", false],
  ["right", true],
  ["left", true],
] as const;

/** What the choices in Kit do, without going there. */
const wear = (page: Page, hand: string, glove: boolean): Promise<void> =>
  page.evaluate(
    ([side, large]) => {
      document.documentElement.dataset.hand = side;
      document.documentElement.toggleAttribute("data-glove", large);
    },
    [hand, glove] as const,
  );

const WORN = SIZES_SHOWN.flatMap((size) =>
  HANDS.map(([hand, glove]) => ({ size, hand, glove, kind: glove ? "glove" : "finger" }) as const),
);

/** Measures a screen as it stands, on both phones, for either hand, bare and gloved. */
const noteInto = (found: Record<string, string[]>, page: Page) => async (where: string) => {
  for (const { size, hand, glove, kind } of WORN) {
    await page.setViewportSize(SIZES[size]);
    await wear(page, hand, glove);
    const seen = await faultsThroughout(page, kind);
    if (seen.length > 0) found[`${where}, ${size}, ${hand}, ${kind}`] = seen;
  }
  await wear(page, "right", false);
};

/** The ways to hand a wait over, each in turn, and the letters of a name. */
async function handOver({ page, hands }: Bar, note: (where: string) => Promise<void>) {
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
}

test("at every step, on both sizes of phone, controls are large enough and far enough apart", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  const found: Record<string, string[]> = {};
  const note = noteInto(found, page);
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
  await handOver(bar, note);
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
}, 120_000);

test("hand and glove are chosen in Kit, stay chosen, and mirror the screen", async () => {
  await bar.afresh();
  const { page } = bar;
  await page.setViewportSize(SIZES.small);
  await goTo(page, routes.kit);
  const words = said.kit.hands;
  const choose = async (name: string) => {
    const chip = page.getByRole("radio", { name });
    await bar.hands.tap(chip);
    await page.locator('[aria-checked="true"]', { hasText: name }).waitFor();
  };
  await choose(words.left);
  await choose(words.glove);
  const root = page.locator("html");
  expect(await root.getAttribute("data-hand")).toBe("left");
  expect(await root.getAttribute("data-glove")).toBe("");
  const { events, since } = stationAt("run-a", "PB-1003", OPENS, "check-clear");
  await putLog(bar, events, routes.run("run-a"), since);
  await page.locator('html[data-hand="left"][data-glove]').waitFor();
  const startOf = async (one: Locator) => (await one.boundingBox())?.x ?? Number.NaN;
  const less = page.locator(".run-back");
  expect(await startOf(less)).toBeGreaterThan(await startOf(tapOf(page, said.run.more)));
  const looks = page.locator(".run-actions .hold-button");
  expect(await startOf(looks.nth(0))).toBeGreaterThan(await startOf(looks.nth(1)));
});
