import type { Page } from "playwright-core";
import { SIZES } from "../phone/browser.ts";
import { shot } from "../phone/walk-page.ts";
import { axeFinds, cutOff, faintWords, sticksOut } from "./readable.ts";

/** What is wrong with a screen as it stands, on both phones and in both themes, by where it was seen. */
export async function everyLook(page: Page, name: string): Promise<Record<string, string[]>> {
  const found: Record<string, string[]> = {};
  for (const size of ["small", "usual"] as const) {
    await page.setViewportSize(SIZES[size]);
    for (const colorScheme of ["dark", "light"] as const) {
      await page.emulateMedia({ colorScheme });
      const where = `${name}-${size}-${colorScheme}`;
      await shot(page, where);
      const seen = [
        ...(await sticksOut(page)),
        ...(await cutOff(page)),
        ...(await faintWords(page)),
        ...(await axeFinds(page)),
      ];
      if (seen.length > 0) found[where] = seen;
    }
  }
  await page.setViewportSize(SIZES.small);
  return found;
}
