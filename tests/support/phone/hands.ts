import type { CDPSession, Locator, Page } from "playwright-core";
import { HOLD_FOR, LEAST_CONTACT, QUIET_AFTER_ACTION } from "../../../app/parts/press-rules.ts";

/** A place on the glass, CSS px. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Fingers, or water, on the glass of a phone. */
export interface Hands {
  /** Lays a finger on a control for just long enough to count. */
  readonly tap: (control: Locator) => Promise<void>;
  /** Lays a finger on a control for as long as a hold takes. */
  readonly hold: (control: Locator) => Promise<void>;
  /** The same in real time: the finger is lifted only once the control has filled and acted. */
  readonly holdTruly: (control: Locator) => Promise<void>;
  /** Contacts that begin and end together, so many ms later; `after` the ones before, ms. */
  readonly touch: (places: readonly Place[], lasts: number, after?: number) => Promise<void>;
  /** Two contacts that overlap: the second begins at half of what each lasts, ms. */
  readonly splash: (places: readonly [Place, Place], lasts: number, after: number) => Promise<void>;
  /** Presses a key for so long; one that is kept down repeats, as keyboards do. */
  readonly key: (name: string, lasts: number, after?: number) => Promise<void>;
}

/** When a key that is kept down begins to repeat, and how often it does, ms. From memory. */
const REPEATS_AFTER = 500;
const REPEATS_EVERY = 33;

/** A little longer than a rule asks for. */
const SURELY = 1.1;

/** The middle of a control, and what lies over it there. */
const lie = (control: Locator) =>
  control.evaluate((one) => {
    const box = one.getBoundingClientRect();
    const place = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    // A finger's tip is broader than a point: half on what lies beside, it may press that.
    const tops = [-4, 0, 4].map((by) => document.elementFromPoint(place.x, place.y + by));
    const over = tops.find((top) => !one.contains(top));
    return {
      place,
      over: over === undefined ? null : (over?.outerHTML ?? "the edge of the screen"),
    };
  });

/** The middle of a control, scrolled to where it must be: a finger cannot press what is covered. */
async function placeOf(control: Locator): Promise<Place> {
  let { place, over } = await lie(control);
  // What is pinned at the foot may be taller than half of the screen: then it is scrolled further up.
  for (const block of ["center", "start"] as const) {
    if (over === null) return place;
    await control.evaluate((one, to) => one.scrollIntoView({ block: to }), block);
    ({ place, over } = await lie(control));
  }
  if (over !== null) throw new RangeError(`${control} lies under ${over.slice(0, 200)}`);
  return place;
}

/**
 * Touches with stamps of their own, epoch ms: a hold need not be waited for, and no result hangs
 * on how busy the machine is.
 */
class Fingers {
  readonly #glass: CDPSession;
  #last = 0;

  constructor(glass: CDPSession) {
    this.#glass = glass;
  }

  /** The moment of the next contact. */
  next(after: number): number {
    return Math.max(Date.now(), this.#last + after);
  }

  async down(places: readonly Place[], at: number): Promise<void> {
    const touchPoints = places.map((place, id) => ({ ...place, id }));
    await this.#send("touchStart", touchPoints, at);
  }

  async up(at: number): Promise<void> {
    await this.#send("touchEnd", [], at);
  }

  /** One after the other, each for so long; the first lifts while the second lies there. */
  async overlap([first, second]: readonly [Place, Place], lasts: number, at: number) {
    const [one, two] = [
      { ...first, id: 0 },
      { ...second, id: 1 },
    ];
    await Promise.all([
      this.#send("touchStart", [one], at),
      this.#send("touchStart", [one, two], at + lasts / 2),
      this.#send("touchMove", [two], at + lasts),
      this.#send("touchEnd", [], at + lasts * 1.5),
    ]);
  }

  async key(name: string, lasts: number, at: number): Promise<void> {
    const send = (type: "rawKeyDown" | "keyUp", late: number, autoRepeat = false) => {
      this.#last = at + late;
      const timestamp = (at + late) / 1000;
      return this.#glass.send("Input.dispatchKeyEvent", { type, key: name, timestamp, autoRepeat });
    };
    const sent = [send("rawKeyDown", 0)];
    for (let late = REPEATS_AFTER; late < lasts; late += REPEATS_EVERY) {
      sent.push(send("rawKeyDown", late, true));
    }
    await Promise.all([...sent, send("keyUp", lasts)]);
  }

  async #send(
    type: "touchStart" | "touchMove" | "touchEnd",
    touchPoints: Place[],
    at: number,
  ): Promise<void> {
    this.#last = at;
    await this.#glass.send("Input.dispatchTouchEvent", { type, touchPoints, timestamp: at / 1000 });
  }
}

/** Puts hands on the glass of a page. */
export async function handsOn(page: Page): Promise<Hands> {
  const fingers = new Fingers(await page.context().newCDPSession(page));
  const touch: Hands["touch"] = async (places, lasts, after = QUIET_AFTER_ACTION * SURELY) => {
    const at = fingers.next(after);
    // Sent together: waiting for the page between them would only make the tests slow.
    await Promise.all([fingers.down(places, at), fingers.up(at + lasts)]);
  };
  return {
    touch,
    splash: (places, lasts, after) => fingers.overlap(places, lasts, fingers.next(after)),
    key: async (name, lasts, after = QUIET_AFTER_ACTION * SURELY) => {
      const at = fingers.next(after);
      // What a key sets off is stamped by the page itself, so the press must begin in real time.
      await page.waitForTimeout(Math.max(0, at - Date.now()));
      await fingers.key(name, lasts, at);
    },
    tap: async (control) => touch([await placeOf(control)], LEAST_CONTACT * SURELY),
    hold: async (control) => touch([await placeOf(control)], HOLD_FOR * SURELY),
    holdTruly: async (control) => {
      const button = await control.elementHandle();
      const at = fingers.next(QUIET_AFTER_ACTION * SURELY);
      // The fill is drawn in real time, so the contact must begin in it.
      await page.waitForTimeout(Math.max(0, at - Date.now()));
      await fingers.down([await placeOf(control)], Date.now());
      await page.waitForFunction(
        (one) => !one?.isConnected || one.getAttribute("data-pressing") === "false",
        button,
      );
      await fingers.up(Date.now());
    },
  };
}
