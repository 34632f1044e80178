// Photographs the built app over an invented afternoon: npm run shots
// Only some screens: npm run shots -- '#/bench' '#/run/run-pear'; each to its end: add `long`
// Every step of every procedure: add `steps`; some of them: their addresses, as '#/run/wash-milk'
// Some languages: en es fr. One phone or theme: small, usual, dark, light. Held otherwise: wet, glove,
// left, ounces
// One picture a screen, phone size, theme and language, in tests/shots (not committed).
import { mkdirSync } from "node:fs";
import { routes } from "../../../app/routes.ts";
import type { Settings } from "../../../app/storage/settings.ts";
import { LANGUAGES } from "../../../app/words/tongue.ts";
import { SIZES } from "../phone/browser.ts";
import { MAIN_SCREENS } from "../phone/main-screens.ts";
import { openBench } from "../phone/open-bench.ts";
import { goTo, OPENS, openBar } from "../phone/walk-page.ts";
import { itRings, quietAfternoon } from "../world/afternoon.ts";
import { everyStep } from "../world/every-step.ts";
import { setup } from "./build.ts";

const FOLDER = "tests/shots";
const asked = process.argv.slice(2);
const long = asked.includes("long");
/** Those of a kind that were asked for, or all where none was. */
const chosen = <One extends string>(all: readonly One[]): readonly One[] =>
  all.some((one) => asked.includes(one)) ? all.filter((one) => asked.includes(one)) : all;
const sizes = chosen(["small", "usual"]);
const themes = chosen(["dark", "light"]);
const languages = chosen(LANGUAGES);
const steps = asked.includes("steps") ? everyStep(OPENS) : [];
const routesAsked = asked.filter((word) => word.startsWith("#"));
const screens = steps.length > 0 ? steps.map(({ runId }) => routes.run(runId)) : MAIN_SCREENS;
const shown = routesAsked.length > 0 ? routesAsked : screens;
/** How it is held, and the word that stands for it in a picture's name. */
const HELD: Readonly<Record<string, Partial<Settings>>> = {
  wet: { wetHands: "always" },
  glove: { glove: true },
  left: { hand: "left" },
  ounces: { volumes: "oz", degrees: "F" },
};
const held = Object.keys(HELD).filter((one) => asked.includes(one));
const house: Partial<Settings> = Object.assign({}, ...held.map((one) => HELD[one]));

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
        `${[language, SIZES[size].width, theme, ...held].join("-")}-${route.replace(/[^a-z0-9]+/gi, "-").slice(1)}`;
      const chose = { ...house, language, theme };
      const quiet = quietAfternoon(OPENS);
      const events = [...quiet.events, ...steps.flatMap((one) => one.events)];
      await openBench(bar, { ...quiet, events }, chose);
      for (const route of shown) {
        await goTo(bar.page, route);
        await photograph(bar, size, where(route));
      }
      if (shown !== MAIN_SCREENS) continue;
      await openBench(bar, itRings(OPENS), chose);
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
