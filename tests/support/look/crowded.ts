import type { Page } from "playwright-core";

/** What of a label on the screen sticks out of it or lies on another: by the letters' own boxes. */
export const crowded = (page: Page): Promise<string[]> =>
  page.locator(".label-card").evaluate((card) => {
    if (!(card instanceof SVGSVGElement)) return ["no label"];
    const { width, height } = card.viewBox.baseVal;
    const texts = [...card.querySelectorAll("text")].map((one) => {
      const { x, width: wide } = one.getBBox();
      const size = Number(one.getAttribute("font-size"));
      const foot = Number(one.getAttribute("y"));
      // A line's box has room above it; the letters themselves go from the accents to the tails.
      const box = { left: x, right: x + wide, top: foot - 0.93 * size, foot: foot + 0.21 * size };
      return { says: one.textContent ?? "", ...box };
    });
    const code = card.querySelector(".label-card-code");
    if (code instanceof SVGGraphicsElement) {
      const seen = code.getBoundingClientRect();
      const all = card.getBoundingClientRect();
      const scale = width / all.width;
      texts.push({
        says: "code",
        left: (seen.left - all.left) * scale,
        right: (seen.right - all.left) * scale,
        top: (seen.top - all.top) * scale,
        foot: (seen.bottom - all.top) * scale,
      });
    }
    const hair = 0.5;
    return texts.flatMap((one, at) => [
      ...(one.left < 0 || one.top < 0 || one.right > width || one.foot > height
        ? [`sticks out: ${one.says}`]
        : []),
      ...texts
        .slice(at + 1)
        .filter(
          (other) =>
            one.right > other.left + hair &&
            other.right > one.left + hair &&
            one.foot > other.top + hair &&
            other.foot > one.top + hair,
        )
        .map((other) => `${one.says} lies on ${other.says}`),
    ]);
  });
