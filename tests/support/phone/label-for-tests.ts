import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { routes } from "../../../app/routes.ts";
import { paperOf } from "../../../core/label/paper.ts";
import { ALLERGENS } from "../../../core/spec/allergen-table.ts";
import { needPaperTools } from "../look/paper-tools.ts";
import { demoSpec, madeWhole, planned, started } from "../world/play-run.ts";
import { type BarForTests, barForTests } from "./bar-for-tests.ts";
import { said } from "./said.ts";
import { HOUR, OPENS, putLog, tapOf } from "./walk-page.ts";

/** The batch whose label it is. */
export const BATCH = "PB-1003";
export const RUN = "run-label";

interface Bottled {
  readonly name?: string;
  /** Whether it contains every allergen there is. */
  readonly allergens?: boolean;
  /** Runs in the page before the app does. */
  readonly prepare?: () => void;
}

/** A bar at which labels are made, and a folder for what is printed. */
export interface LabelForTests {
  readonly bar: BarForTests;
  /** A bottled batch on an empty phone, at its label. */
  readonly openLabel: (bottled?: Bottled) => Promise<Page>;
  readonly choose: (page: Page, paper: string) => Promise<void>;
  /** Presses a button that hands over a file, and keeps the file. */
  readonly kept: (page: Page, button: string, as: string) => Promise<string>;
  readonly printed: (page: Page, as: string) => Promise<string>;
  /** Where a file of that name lies in the folder. */
  readonly pathOf: (name: string) => string;
}

function madeOf({ name = "Pear Beacon", allergens = false }: Bottled) {
  const plan = planned({ ...demoSpec("Pear Beacon"), name });
  const ingredients = plan.ingredients.map((one, at) =>
    allergens && at === 0 ? { ...one, allergens: [...ALLERGENS] } : one,
  );
  return madeWhole(started(RUN, BATCH, OPENS - 12 * HOUR, { ...plan, ingredients }), {
    yield: 3700,
    topUp: 450,
    useBy: OPENS + 6 * 24 * HOUR,
  });
}

async function choose(page: Page, id: string): Promise<void> {
  const field = page.getByLabel(said.label.paper, { exact: true });
  await field.selectOption(id);
  const { width, height } = paperOf(id);
  await page
    .locator(`.label-card[viewBox="0 0 ${width * 10} ${height * 10}"], .label [role="alert"]`)
    .first()
    .waitFor();
}

/** Opens the app for a file of tests of labels; the programs that read paper are there by then. */
export function labelForTests(): LabelForTests {
  let folder = "";
  const pathOf = (name: string) => join(folder, name);
  beforeAll(() => {
    needPaperTools();
    folder = mkdtempSync(join(tmpdir(), "second-pour-label-"));
  }, 300_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const bar = barForTests({ size: "small" });
  return {
    bar,
    openLabel: async (bottled = {}) => {
      await bar.afresh(bottled.prepare);
      await putLog(bar, madeOf(bottled).events, routes.label(RUN), OPENS);
      await bar.page.locator(".label-acts").waitFor();
      return bar.page;
    },
    choose,
    kept: async (page, button, as) => {
      const coming = page.waitForEvent("download");
      await bar.hands.tap(tapOf(page, button));
      await (await coming).saveAs(pathOf(as));
      return pathOf(as);
    },
    printed: async (page, as) => {
      await page.pdf({ path: pathOf(as), preferCSSPageSize: true });
      return pathOf(as);
    },
    pathOf,
  };
}
