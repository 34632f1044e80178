import type { Page } from "playwright-core";
import { beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  type Bar,
  goTo,
  OPENS,
  openBar,
  putLog,
  shot,
  storedLog,
  tapOf,
  typeOnPad,
  untilStep,
} from "../support/phone/walk-page.ts";
import { stationAt } from "../support/world/wash-stations.ts";

const RUN = routes.run("run-a");

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

async function choose({ page, hands }: Bar, ...names: readonly string[]): Promise<void> {
  await goTo(page, routes.kit);
  for (const name of names) {
    const chip = { name: new RegExp(`^${name}`, "u") };
    await hands.tap(page.getByRole("radio", chip));
    await page.getByRole("radio", { ...chip, checked: true }).waitFor();
  }
}

// 33 oz by the bar's jigger of 30 ml; by the US fluid ounce of 29.5735 ml (NIST Handbook 44).
for (const [ounce, ml] of [
  [said.kit.units.bar, 990],
  [said.kit.units.exact, 975.9],
] as const) {
  test(`a house that pours ounces of ${ounce} types ounces; the log holds ml`, async () => {
    const { events, since } = stationAt("run-a", "PB-1003", OPENS, "milk");
    await putLog(bar, events, routes.kit, since);
    await choose(bar, said.kit.units.oz, ounce);
    const { page, hands } = bar;
    await goTo(page, RUN);
    await page.locator(".run-detail", { hasText: / oz \(/u }).waitFor();
    await hands.tap(tapOf(page, said.run.otherAmount));
    expect(await page.locator(".number-pad-unit").textContent()).toBe(said.run.ozUnit);
    await typeOnPad(bar, "33");
    await untilStep(page, "pour");
    expect(await page.locator(".notices-line").textContent()).toContain("33.0 oz");
    const read = (await storedLog(page)).findLast((event) => event.type === "reading.logged");
    expect(read).toMatchObject({ what: "milk", unit: "ml" });
    expect(read?.type === "reading.logged" && read.value).toBeCloseTo(ml, 0);
    // Shown in ml again, it is what was poured.
    await choose(bar, said.kit.units.ml);
    await page.reload();
    await goTo(page, RUN);
    await page.locator(".run-detail", { hasText: / ml/u }).waitFor();
  });
}

/** A phone of another country, opened for one test. */
async function abroad(locale: string, job: (away: Bar) => Promise<void>): Promise<void> {
  const away = await openBar({ size: "small", server: bar.server, locale });
  try {
    await job(away);
    expect(away.phone.complaints).toEqual([]);
  } finally {
    await away.close();
  }
}

const radio = (page: Page, name: string) =>
  page.getByRole("radio", { name: new RegExp(`^${name}`, "u") });

test("a new phone of the United States measures in oz and °F, stores ml and °C; what is chosen comes first", async () => {
  await abroad("en-US", async (away) => {
    const { page, hands } = away;
    const { kit, sheet } = said;
    const { events, since } = stationAt("run-a", "PB-1003", OPENS, "milk");
    await putLog(away, events, RUN, since);
    await page.locator(".run-detail", { hasText: / oz \(/u }).waitFor();
    await goTo(page, routes.sheet("run-a"));
    await page.getByText("Time above 41 °F").waitFor();
    const field = page.getByRole("textbox", { name: "Temperature now, °F", exact: true });
    await field.fill("38.3");
    await hands.tap(tapOf(page, sheet.noteTemperature));
    await page.getByText(/: 38\.3 °F$/u).waitFor();
    const read = (await storedLog(page)).findLast((event) => event.type === "reading.logged");
    expect(read).toMatchObject({ what: "temperature", value: 3.5, unit: "degC" });
    await field.fill("4000");
    await hands.tap(tapOf(page, sheet.noteTemperature));
    await page.getByText("Type a temperature from −40 to 392, such as 40.1.").waitFor();
    expect(await field.inputValue()).toBe("4000");

    await goTo(page, routes.kit);
    await page.getByRole("radio", { name: /^By country\s*oz$/u, checked: true }).waitFor();
    await page.getByRole("radio", { name: /^By country\s*°F$/u, checked: true }).waitFor();
    await page.getByRole("heading", { name: kit.units.title }).scrollIntoViewIfNeeded();
    await shot(page, "units-us");
    await choose(away, kit.units.C);
    await goTo(page, routes.sheet("run-a"));
    await page.getByText(/: 3\.5 °C$/u).waitFor();
    // Kept over a restart, and the volumes go on by the country.
    await page.reload();
    await page.getByText(/: 3\.5 °C$/u).waitFor();
    await goTo(page, RUN);
    await page.locator(".run-detail", { hasText: / oz \(/u }).waitFor();
  });
});

test("a phone that stored its settings before there was a choice by country goes on in ml and °C", async () => {
  await abroad("en-US", async (away) => {
    const { page } = away;
    const { events, since } = stationAt("run-a", "PB-1003", OPENS, "milk");
    await putLog(away, events, routes.kit, since);
    // What the app wrote then: every field, and no word of degrees.
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          indexedDB.open("second-pour").onsuccess = ({ target }) => {
            if (!(target instanceof IDBOpenDBRequest)) return;
            const tx = target.result.transaction("settings", "readwrite");
            tx.objectStore("settings").put(
              { volumes: "ml", ounce: "bar", theme: "auto" },
              "settings",
            );
            tx.oncomplete = () => {
              target.result.close();
              resolve();
            };
          };
        }),
    );
    await page.reload();
    await radio(page, said.kit.units.ml).and(page.locator("[aria-checked=true]")).waitFor();
    await radio(page, said.kit.units.C).and(page.locator("[aria-checked=true]")).waitFor();
    await goTo(page, RUN);
    await page.locator(".run-detail", { hasText: / ml/u }).waitFor();
  });
});

test("light or dark stays as chosen, whatever the phone says, and after a restart", async () => {
  const ground = () =>
    bar.page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const { page } = bar;
  await page.emulateMedia({ colorScheme: "dark" });
  const dark = await ground();
  await choose(bar, said.kit.theme.light);
  const light = await ground();
  expect(light).not.toBe(dark);
  await page.reload();
  await page.locator("main").waitFor();
  expect(await ground()).toBe(light);
  await choose(bar, said.kit.theme.dark);
  await page.emulateMedia({ colorScheme: "light" });
  expect(await ground()).toBe(dark);
  await choose(bar, said.kit.theme.auto);
  expect(await ground()).toBe(light);
});
