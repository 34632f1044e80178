import axe from "axe-core";
import type { Page } from "playwright-core";

/** What an automatic reader has against the page as it stands. */
export async function axeFinds(page: Page): Promise<string[]> {
  // Through the debugger: the page's policy forbids added scripts, and must go on doing so.
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await Reflect.get(globalThis, "axe").run(document, {
      // The same as for the parts. Contrast is measured below: axe cannot see through the columns.
      runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"],
    });
    return violations.map((one: { id: string; nodes: { html: string }[] }) =>
      [one.id, ...one.nodes.map((node) => node.html)].join("\n"),
    );
  });
}

/**
 * Words whose contrast with what lies behind them is below 7 : 1.
 *
 * @source WCAG 2.2, "relative luminance" and "contrast ratio"; 1.4.6 (enhanced). Formulas from
 *   memory: the channel threshold is the standard's 0.04045.
 */
export const faintWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    type Colour = readonly [red: number, green: number, blue: number, alpha: number];
    const brush = new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true });
    const colourOf = (css: string): Colour => {
      if (brush === null) throw new RangeError("expected a canvas");
      brush.clearRect(0, 0, 1, 1);
      brush.fillStyle = css;
      brush.fillRect(0, 0, 1, 1);
      const [red = 0, green = 0, blue = 0, alpha = 0] = brush.getImageData(0, 0, 1, 1).data;
      return [red, green, blue, alpha / 255];
    };
    const channel = (value: number): number =>
      value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
    const light = ([red, green, blue]: Colour): number =>
      0.2126 * channel(red) + 0.7152 * channel(green) + 0.0722 * channel(blue);
    const ratio = (a: Colour, b: Colour): number => {
      const [low = 0, high = 0] = [light(a), light(b)].sort((x, y) => x - y);
      return (high + 0.05) / (low + 0.05);
    };
    const behind = (one: Element | null): Colour => {
      if (one === null) return [255, 255, 255, 1];
      const colour = colourOf(getComputedStyle(one).backgroundColor);
      return colour[3] > 0 ? colour : behind(one.parentElement);
    };
    const isSeen = (one: Element): boolean =>
      one.checkVisibility() && one.closest(".visually-hidden") === null;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const faint: string[] = [];
    let seen = 0;
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const words = node.textContent?.trim() ?? "";
      const holder = node.parentElement;
      if (words === "" || holder === null || !isSeen(holder)) continue;
      seen += 1;
      const found = ratio(colourOf(getComputedStyle(holder).color), behind(holder));
      if (found < 7) faint.push(`${words}: ${found.toFixed(2)}`);
    }
    return seen === 0 ? ["no words at all"] : faint;
  });

/** What sticks out of the screen sideways, but for what `may`. */
export const sticksOut = (page: Page, may = "_"): Promise<string[]> =>
  page.evaluate((allowed) => {
    const scrolls = (one: Element): boolean =>
      one.closest(".plan-scroll, .visually-hidden, .hold-button-fill, svg") !== null;
    const out = [...document.querySelectorAll("#app *")].filter((one) => {
      const { left, right, width } = one.getBoundingClientRect();
      return (
        width > 0 &&
        (left < -0.5 || right > innerWidth + 0.5) &&
        !scrolls(one) &&
        !one.matches(allowed)
      );
    });
    const wide = document.documentElement.scrollWidth > innerWidth ? ["the whole page"] : [];
    return [...wide, ...out.map((one) => one.outerHTML.slice(0, 120))];
  }, may);

/** Words that are cut off by the box they stand in. */
export const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const cuts = (one: Element): boolean => {
      const { overflowX, overflowY } = getComputedStyle(one);
      const wide = overflowX !== "visible" && overflowX !== "auto" && overflowX !== "scroll";
      const high = overflowY !== "visible" && overflowY !== "auto" && overflowY !== "scroll";
      // A figure's line is lower than its letters: what hangs out of that is no loss.
      const line = Number.parseFloat(getComputedStyle(one).fontSize) / 4;
      return (
        ((wide || one.matches("a, button")) && one.scrollWidth > one.clientWidth + 1) ||
        (high && one.scrollHeight > one.clientHeight + line)
      );
    };
    return [...document.querySelectorAll("#app *:not(svg, svg *)")]
      .filter((one) => one.checkVisibility() && one.textContent?.trim() !== "")
      .filter((one) => one.closest(".visually-hidden") === null && cuts(one))
      .map((one) => one.outerHTML.slice(0, 160));
  });

/** Words that go on in the next line other than where they may: at a hyphen, soft or hard. */
export const brokenWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const shown = (node: Node): boolean =>
      node.parentElement?.checkVisibility() === true &&
      node.parentElement.closest(".visually-hidden, svg") === null;
    const topAt = (node: Node, at: number): number | undefined => {
      const letter = document.createRange();
      letter.setStart(node, at);
      letter.setEnd(node, at + 1);
      // The first one may be of the hyphen at the end of the line before.
      const box = [...letter.getClientRects()].at(-1);
      return box !== undefined && box.width > 0 ? Math.round(box.top) : undefined;
    };
    const broken = (node: Node): string[] =>
      [...(node.textContent ?? "").matchAll(/[\p{L}\p{N}’']{3,}/gu)]
        .filter(({ 0: word, index }) => {
          const tops = Array.from(word, (_, at) => topAt(node, index + at));
          return new Set(tops.filter((top) => top !== undefined)).size > 1;
        })
        .map(([word]) => word);
    const found: string[] = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node !== null; node = walk.nextNode()) {
      if (shown(node)) found.push(...broken(node));
    }
    return found;
  });

/** What moves on the page now. */
export const moving = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    document
      .getAnimations()
      .filter(
        (one) => one.playState === "running" && one.effect?.getComputedTiming().progress !== 1,
      )
      .map((one) => (one instanceof CSSAnimation ? one.animationName : "a transition")),
  );

/** What is wrong with a screen as it stands, in both themes: too wide, too faint, or against axe's rules. */
export async function faultsOf(page: Page): Promise<readonly string[]> {
  const found: string[] = [];
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    found.push(...(await sticksOut(page)), ...(await faintWords(page)), ...(await axeFinds(page)));
  }
  return found;
}
