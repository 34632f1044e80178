import type { CDPSession, Locator, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";
import { openPhone, type Phone } from "./browser.ts";
import { pageOfParts } from "./page-of-parts.ts";

/** A finger or a drop on the glass, CSS px. */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly radiusX?: number;
}

/** Now, epoch s, as contacts are stamped. */
export const seconds = (): number => Date.now() / 1000;

/** A page with the parts on it, new for each test. */
export class PartsForTests {
  #opened: { readonly phone: Phone; readonly glass: CDPSession } | undefined;

  constructor() {
    let html = "";
    beforeAll(async () => {
      html = await pageOfParts();
      const phone = await openPhone({ origin: "null", size: "small" });
      this.#opened = { phone, glass: await phone.context.newCDPSession(phone.page) };
    });
    afterAll(() => this.#opened?.phone.close());
    beforeEach(async () => {
      await this.page.setContent(html);
      await this.page.waitForSelector(".hold-button");
    });
    afterEach(() => expect(this.#there.phone.complaints).toEqual([]));
  }

  get #there() {
    if (this.#opened === undefined) throw new RangeError("the page opens with the first test");
    return this.#opened;
  }

  get page(): Page {
    return this.#there.phone.page;
  }

  /** What the parts did so far. */
  done(): Promise<string[]> {
    return this.page.evaluate<string[]>("globalThis.done");
  }

  untilDone(what: string): Promise<unknown> {
    return this.page.waitForFunction(
      (wanted) => Reflect.get(globalThis, "done").includes(wanted),
      what,
    );
  }

  /** A button by its name, a hold by its first line. */
  named(name: string): Locator {
    const line = this.page.getByText(name, { exact: true });
    return this.page
      .getByRole("button", { name, exact: true })
      .or(this.page.locator(".hold-button").filter({ has: line }));
  }

  hintOf(name: string): Promise<string | null> {
    return this.named(name).locator(".hold-button-hint").textContent();
  }

  async middleOf(name: string): Promise<Point> {
    await this.named(name).scrollIntoViewIfNeeded();
    const box = await this.named(name).boundingBox();
    if (!box) throw new RangeError(`expected ${name} on the page`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  /** Contacts now on the glass, stamped `at` (epoch s): a stamp makes a contact as short as wanted. */
  async touch(
    type: "touchStart" | "touchMove" | "touchEnd",
    points: readonly Point[],
    at: number,
  ): Promise<void> {
    await this.#there.glass.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: points.map((point, id) => ({ ...point, id })),
      timestamp: at,
    });
  }

  async press(point: Point, lasts: number, from = seconds()): Promise<void> {
    await this.touch("touchStart", [point], from);
    await this.touch("touchEnd", [], from + lasts);
  }
}
