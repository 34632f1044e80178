import type { Locator, Page } from "playwright-core";
import type { Hands } from "../../support/phone/hands.ts";
import { slowHands } from "../speed/slow-hands.ts";
import type { Walked } from "./keystroke-level.ts";

/** How far one flick of a thumb takes a page, as a share of its height. Judgement. */
const FLICK = 0.6;

/** Somebody who does a job with their fingers, and is watched. */
export interface Walker {
  readonly tap: (control: Locator) => Promise<void>;
  readonly hold: (control: Locator) => Promise<void>;
  readonly key: (control: Locator) => Promise<void>;
  /** The job is done once this stands there. */
  readonly done: (what: Locator) => Promise<void>;
  readonly walked: () => Walked;
}

/** Whether the whole of it can be seen: nothing lies over its upper, middle or lower edge. */
const inSight = (control: Locator): Promise<boolean> =>
  control.evaluate((one) => {
    const { left, right, top, bottom } = one.getBoundingClientRect();
    const x = (left + right) / 2;
    return [top + 4, (top + bottom) / 2, bottom - 4].every((y) =>
      one.contains(document.elementFromPoint(x, y)),
    );
  });

/** Scrolls what it stands in until it is in sight. @returns how far, as a share of the height */
const bringInSight = (control: Locator, block: "nearest" | "center"): Promise<number> =>
  control.evaluate((one, to) => {
    const port = one.closest(".run-pad, .app-screen");
    if (port === null) throw new RangeError("it stands in nothing that scrolls");
    const before = port.scrollTop;
    one.scrollIntoView({ block: to });
    return Math.abs(port.scrollTop - before) / port.clientHeight;
  }, block);

async function flicksTo(control: Locator): Promise<number> {
  if (await inSight(control)) return 0;
  let far = 0;
  // What is pinned at the foot covers what is only just in: then it is taken further up.
  for (const block of ["nearest", "center"] as const) {
    far += await bringInSight(control, block);
    if (await inSight(control)) break;
  }
  return Math.max(1, Math.ceil(far / FLICK));
}

/** What the screen is, apart from what runs on it. */
const screenOf = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const over = document.querySelector(".alarm-sheet, .run-pad")?.className ?? "";
    return [location.hash, document.querySelector("main h1")?.textContent, over].join(" | ");
  });

/** Runs in the page: how long each contact lay on the glass, ms. */
function watchGlass(): void {
  const contacts: number[] = [];
  Reflect.set(globalThis, "contacts", contacts);
  let since = 0;
  const noted = { capture: true, passive: true };
  document.addEventListener("pointerdown", ({ timeStamp }) => (since = timeStamp), noted);
  document.addEventListener(
    "pointerup",
    ({ timeStamp }) => contacts.push(timeStamp - since),
    noted,
  );
}

const lastContact = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const contacts: readonly number[] = Reflect.get(globalThis, "contacts");
    return contacts.at(-1) ?? Number.NaN;
  });

/** Puts somebody in front of the screen that stands there. */
export async function walkerAt(page: Page): Promise<Walker> {
  const hands = await slowHands(page);
  await page.evaluate(watchGlass);
  const done = { taps: 0, holds: 0, keys: 0, scrolls: 0, screens: 0, heldMs: 0, appMs: 0 };
  let screen = await screenOf(page);
  let lifted: number | undefined;
  const come = async (target: Locator) => {
    await target.waitFor();
    if (lifted !== undefined) done.appMs += Date.now() - lifted;
    lifted = undefined;
    const now = await screenOf(page);
    if (now !== screen) done.screens += 1;
    screen = now;
  };
  const press =
    (what: "taps" | "holds" | "keys", how: Hands["tap"]) => async (control: Locator) => {
      await come(control);
      done.scrolls += await flicksTo(control);
      await how(control);
      lifted = Date.now();
      done[what] += 1;
      if (what === "holds") done.heldMs += await lastContact(page);
    };
  return {
    tap: press("taps", hands.tap),
    key: press("keys", hands.tap),
    hold: press("holds", hands.hold),
    done: come,
    walked: () => ({ ...done }),
  };
}
