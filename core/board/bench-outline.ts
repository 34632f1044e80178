import { countdown, duration } from "../quantity/time-left.ts";

/** Where the page leaves the Bench's outline for the worker. Both must call it the same. */
export const OUTLINES = "second-pour-outline";

/** The name that it lies there under, below the app's own address. */
export const OUTLINE = "outline/bench";

/** Around a time that is told when the page is asked for: no keyboard types these. */
const [OPENS, CLOSES] = ["\uE000", "\uE001"];
const TOLD_LATER = /\uE000(left|ago) (\d+)\uE001/gu;

/**
 * Stands in an outline for what is left of a wait, or how long something has gone on.
 *
 * @param what - which of them
 * @param at - when the wait ends, or when it began, epoch ms
 */
export const toldLater = (what: "left" | "ago", at: number): string =>
  `${OPENS}${what} ${at}${CLOSES}`;

/**
 * What the Bench shows, with the moments that its times are counted from: what the next start begins
 * with while the phone's storage opens.
 */
export interface BenchOutline {
  /** The file that brings the page to life: an outline fits only the build that drew it. */
  readonly script: string;
  /** The opening tag of the page: its language, theme and hand. */
  readonly page: string;
  /** Links to style sheets that the page does not name itself. */
  readonly sheets: string;
  /** The short word for a day. */
  readonly day: string;
  /** What stands in the app's element now, and after each wait that ends; soonest first. */
  readonly views: readonly BenchView[];
}

/** The Bench as it stands until a wait ends. */
export interface BenchView {
  readonly inside: string;
  /** From then on it looks otherwise, epoch ms. */
  readonly until: number;
}

/** The element of the app as the page is built. */
const EMPTY = '<div id="app"></div>';
const PAGE = /<html[^>]*>/u;
const HEAD_ENDS = "</head>";

/**
 * The page with the Bench's outline in it, or nothing where none fits: drawn by another build, or so
 * long ago that the Bench looks otherwise by now.
 *
 * @param page - the page as it is built
 * @param outline - what the Bench showed
 * @param now - epoch ms
 */
export function withOutline(page: string, outline: BenchOutline, now: number): string | undefined {
  const view = outline.views.find(({ until }) => now < until);
  if (view === undefined || !page.includes(outline.script) || !page.includes(EMPTY)) {
    return undefined;
  }
  const inside = view.inside.replace(TOLD_LATER, (_, what, at) =>
    what === "left" ? countdown(at - now, outline.day) : duration(now - at, outline.day),
  );
  // Given as functions: a name with a $ in it is text, not a pattern.
  return page
    .replace(PAGE, () => outline.page)
    .replace(HEAD_ENDS, () => `${outline.sheets}${HEAD_ENDS}`)
    .replace(EMPTY, () => `<div id="app" data-outline>${inside}</div>`);
}
