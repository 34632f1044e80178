// Photographs the built app over an invented afternoon: npm run shots
// Only some screens: npm run shots -- '#/bench' '#/run/run-pear'; each to its end: add `long`
// One picture a screen, phone size, theme and language, in tests/shots (not committed).
import { mkdirSync } from "node:fs";
import { LANGUAGES } from "../../../app/words/tongue.ts";
import { SIZES } from "../phone/browser.ts";
import { MAIN_SCREENS } from "../phone/main-screens.ts";
import { openBench } from "../phone/open-bench.ts";
import { goTo, OPENS, openBar } from "../phone/walk-page.ts";
import { itRings, quietAfternoon } from "../world/afternoon.ts";
import { setup } from "./build.ts";

const FOLDER = "tests/shots";
const asked = process.argv.slice(2);
const long = asked.includes("long");
const only = (kind: string): readonly string[] => asked.filter((word) => word.startsWith(kind));
const routes = only("#").length > 0 ? only("#") : MAIN_SCREENS;
const sizes = ["small", "usual"] as const;
const themes = ["dark", "light"] as const;
const languages = LANGUAGES.filter(
  (one) => !asked.some((w) => w.length === 2) || asked.includes(one),
);

type Bar = Awaited<ReturnType<typeof openBar>>;

/** As high as what stands on it, so that all of it is seen at once. */
async function stretch({ page }: Bar, { width, height }: { width: number; height: number }) {
  await page.setViewportSize({ width, height });
  if (!long) return;
  const more = await page
    .locator(".app-screen")
    .evaluate((one) => one.scrollHeight - one.clientHeight);
  await page.setViewportSize({ width, height: height + more });
}

async function photograph(bar: Bar, size: (typeof sizes)[number], name: string): Promise<void> {
  await stretch(bar, SIZES[size]);
  const path = `${FOLDER}/${name}.png`;
  await bar.page.screenshot({ path });
  console.log(path);
}

setup();
mkdirSync(FOLDER, { recursive: true });
for (const size of sizes) {
  const bar = await openBar({ size, reducedMotion: true, pixelsPerPoint: 1 });
  for (const language of languages) {
    for (const theme of themes) {
      const where = (route: string) =>
        `${language}-${SIZES[size].width}-${theme}-${route.replace(/[^a-z0-9]+/gi, "-").slice(1)}`;
      await openBench(bar, quietAfternoon(OPENS), { language, theme });
      for (const route of routes) {
        await goTo(bar.page, route);
        await photograph(bar, size, where(route));
      }
      if (only("#").length > 0) continue;
      await openBench(bar, itRings(OPENS), { language, theme });
      await bar.page.locator(".alarm-sheet").waitFor();
      await photograph(bar, size, where("#alarm"));
      await bar.hands.hold(bar.page.locator(".alarm-sheet > .hold-button"));
      const looks = bar.page.locator('[data-asks="look"] > .hold-button');
      await looks.first().waitFor();
      await photograph(bar, size, where("#look"));
      await bar.hands.hold(looks.first());
      await bar.page.locator(".run-pad").waitFor();
      await photograph(bar, size, where("#pad"));
    }
  }
  for (const complaint of bar.phone.complaints) console.error(`${size}: ${complaint}`);
  await bar.close();
}
