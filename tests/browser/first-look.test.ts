import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { MINUTE, OPENS, putLog } from "../support/phone/walk-page.ts";
import { allStations } from "../support/world/wash-stations.ts";

const bar = barForTests({ size: "small" });

/** Runs in the page before the app does: sums what moves without a finger on the glass. */
function watchShifts(): void {
  Reflect.set(globalThis, "shifted", 0);
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      const before = Number(Reflect.get(globalThis, "shifted"));
      Reflect.set(globalThis, "shifted", before + Number(Reflect.get(entry, "value")));
    }
  }).observe({ type: "layout-shift", buffered: true });
}

const STATIONS = allStations(OPENS - 10 * MINUTE).filter(({ step }) =>
  ["curdle", "slow-drip", "build"].includes(step),
);

// Web Vitals: a layout shift of 0.1 is still "good"; the project's own target is 0.02.
test.each([routes.bench, routes.run("run-slow-drip")])(
  "%s: what the first look shows does not move when the rest comes",
  async (address) => {
    await bar.afresh(watchShifts);
    // What watches for updates is fetched last of all.
    const last = bar.page.waitForResponse(/\/update-/u);
    const events = STATIONS.flatMap((one) => one.events);
    await putLog(bar, events, address, OPENS - 9 * MINUTE);
    await bar.page.locator(".status-line").waitFor();
    await last;
    // Nothing must move: what came with it is drawn within a few frames, and this is some thirty.
    await bar.page.waitForTimeout(500);
    expect(await bar.page.evaluate(() => Reflect.get(globalThis, "shifted"))).toBeLessThan(0.02);
  },
);
