import { openPhone } from "../support/phone/browser.ts";
import type { Place } from "../support/phone/hands.ts";
import { type Glass, pause } from "./webdriver.ts";

/** Chromium by its own protocol, as the other tests drive it. */
export async function openChromium(origin: string): Promise<Glass> {
  const { page, context, close } = await openPhone({ origin });
  const glass = await context.newCDPSession(page);
  const version = context.browser()?.version() ?? "of an unknown version";
  const touch = (type: "touchStart" | "touchEnd", touchPoints: Place[]) =>
    glass.send("Input.dispatchTouchEvent", { type, touchPoints });
  return {
    name: `Chromium ${version}`,
    goTo: async (url) => void (await page.goto(url)),
    reload: async () => void (await page.reload()),
    evaluate: async (expression) =>
      String(
        await page.evaluate(`(async () => JSON.stringify(await (${expression})) ?? "null")()`),
      ),
    press: async (place, lasts) => {
      await touch("touchStart", [place]);
      await pause(lasts);
      await touch("touchEnd", []);
    },
    type: (text) => page.keyboard.type(text),
    close,
  };
}
