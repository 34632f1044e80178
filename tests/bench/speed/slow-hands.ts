import type { Locator, Page } from "playwright-core";
import { LEAST_CONTACT, QUIET_AFTER_ACTION } from "../../../app/parts/press-rules.ts";
import type { Hands, Place } from "../../support/phone/hands.ts";
import { handsOn } from "../../support/phone/hands.ts";

/** A little longer than a rule asks for. */
const SURELY = 1.2;

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** After a scroll the glass still answers for where things were, until the next picture is out; ms. */
const REDRAWN = 300;

/** The middle of a control, and whether anything lies over it there. */
const lie = (control: Locator) =>
  control.evaluate((one) => {
    const box = one.getBoundingClientRect();
    const place = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    return { place, free: one.contains(document.elementFromPoint(place.x, place.y)) };
  });

/** The same, brought to where nothing covers it. */
async function placeOf(control: Locator): Promise<Place> {
  const first = await lie(control);
  if (first.free) return first.place;
  await control.evaluate((one) => one.scrollIntoView({ block: "center" }));
  await pause(REDRAWN);
  return (await lie(control)).place;
}

/**
 * Hands in real time: a contact lasts as long as it says, and the browser itself stamps it, so that
 * what comes after it can be timed. Only what walks the job is there.
 */
export async function slowHands(page: Page): Promise<Hands> {
  const glass = await page.context().newCDPSession(page);
  const hands = await handsOn(page);
  const press = async (control: Locator, lasts: () => Promise<unknown>) => {
    await pause(QUIET_AFTER_ACTION * SURELY);
    const touchPoints = [await placeOf(control)];
    await glass.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints });
    await lasts();
    await glass.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  };
  const tap = (control: Locator) => press(control, () => pause(LEAST_CONTACT * SURELY));
  const hold = async (control: Locator) => {
    const button = await control.elementHandle();
    await press(control, () =>
      page.waitForFunction(
        (one) => !one?.isConnected || one.getAttribute("data-pressing") === "false",
        button,
      ),
    );
  };
  return { ...hands, tap, hold, holdTruly: hold };
}
