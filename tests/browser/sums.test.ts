import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { openPhone, type Phone } from "../support/phone/browser.ts";
import { type AppServer, serveApp } from "../support/tool/server.ts";

/** Longer than a splash, as `press.ts`; and past the 350 ms in which everything is deaf. */
const PRESS = { delay: 90 };
const DEAF = 400;

let server: AppServer;
let phone: Phone;

beforeAll(async () => {
  server = await serveApp();
});
afterAll(() => server.stop());
beforeEach(async () => {
  phone = await openPhone({ origin: server.origin, size: "small" });
});
afterEach(async () => {
  expect(phone.complaints).toEqual([]);
  await phone.close();
});

const field = (page: Page, name: string, at = 0) => page.getByLabel(name, { exact: true }).nth(at);
const answer = (page: Page) => page.getByRole("region", { name: "Answer" });
const says = (page: Page) => expect.poll(() => answer(page).textContent());

async function goTo(page: Page, route: string) {
  await page.goto(server.url + route);
  await page.waitForSelector("main h1");
}

async function choose(page: Page, name: string) {
  await page.getByRole("radio", { name, exact: true }).click(PRESS);
  await page.waitForTimeout(DEAF);
}

test("two taps from Specs, a spirit is brought down as it is typed, and the working opens", async () => {
  const { page } = phone;
  await goTo(page, "#/specs");
  await page.getByRole("link", { name: "Sums", exact: true }).click();
  await page.getByRole("link", { name: /^Bring a spirit down/u }).click();
  await says(page).toContain("The answer stands here");

  await field(page, "Spirit, ml").fill("700");
  await field(page, "ABV now, %").fill("57,15");
  await field(page, "ABV wanted, %").fill("40");
  await says(page).toMatch(/Water\s*308 ml/u);
  await field(page, "Spirit, ml").fill("0.1 l");
  await says(page).toMatch(/Water\s*44(?:[.]0)? ml/u);
  for (const caution of ["50 % vol or more", "from about 22 °C", "Never heat spirit"]) {
    await expect.poll(() => page.getByText(caution).isVisible(), { message: caution }).toBe(true);
  }

  await answer(page).getByRole("button").first().click();
  const working = page.getByRole("dialog");
  await expect.poll(() => working.getByText("ABV wanted").isVisible()).toBe(true);
  await expect.poll(() => working.getByText("OIML R 22").first().isVisible()).toBe(true);
  await working.getByRole("button", { name: "Close" }).click();
  await expect.poll(() => working.isVisible()).toBe(false);
});

test("what cannot be gets its sentence, and what was typed stays, even while elsewhere", async () => {
  const { page } = phone;
  await goTo(page, "#/sums/spirit");
  await field(page, "Spirit, ml").fill("lots");
  await field(page, "ABV now, %").fill("40");
  await field(page, "ABV wanted, %").fill("57");
  await field(page, "Sugar, g per litre").focus();
  for (const sentence of ["Type a volume above zero", "type at most 40.0 %"]) {
    await expect.poll(() => page.getByText(sentence).isVisible(), { message: sentence }).toBe(true);
  }
  await says(page).toContain("The answer stands here");
  await page.getByRole("link", { name: "All sums" }).click();
  await page.getByRole("link", { name: /^Syrup/u }).click();
  await choose(page, "2 : 1");
  await field(page, "Sugar, g").fill("1 kg");
  await says(page).toMatch(/may crystallise[\s\S]+66[.]7 °Bx/u);
  await page.getByRole("link", { name: "Bench" }).click();
  await page.getByRole("link", { name: "Specs", exact: true }).click();
  await page.getByRole("link", { name: "Sums", exact: true }).click();
  await page.getByRole("link", { name: /^Bring a spirit down/u }).click();
  expect(await field(page, "Spirit, ml").inputValue()).toBe("lots");
  await page.goBack();
  await page.getByRole("link", { name: /^Syrup/u }).click();
  expect(await field(page, "Sugar, g").inputValue()).toBe("1 kg");
  // Nothing is stored: a fresh start knows nothing of it.
  await page.reload();
  expect(await field(page, "Sugar, g").inputValue()).toBe("");
});

test("a figure that stands in a field gives way to the one that is typed", async () => {
  const { page } = phone;
  await goTo(page, "#/sums/saline");
  await field(page, "Saline, ml").fill("100");
  await says(page).toMatch(/Salt\s*23[.]0 g/u);
  await field(page, "Salt by weight, %").click();
  await page.keyboard.type("10");
  await says(page).toMatch(/Salt\s*10[.]7 g/u);
  await page.keyboard.press("Enter");
  expect(page.url()).toContain("#/sums/saline");
});

test("juice, freezer, ice and pH answer from a few figures each", async () => {
  const { page } = phone;
  await goTo(page, "#/sums/acid");
  await field(page, "Juice, ml").fill("1000");
  await says(page).toMatch(/Citric acid\s*32[.]1 g[\s\S]+18[.]9 g/u);

  await goTo(page, "#/sums/freeze");
  await field(page, "ABV, %").fill("40");
  await field(page, "Another temperature, °C").fill("−30");
  await says(page).toContain("At −18 °C: liquid");
  await expect.poll(() => page.getByText("At −30 °C: slush").isVisible()).toBe(true);

  await goTo(page, "#/sums/ice");
  await field(page, "Drink, ml").fill("90");
  await field(page, "ABV, %").fill("30");
  await says(page).toMatch(/Water\s*37 ml[\s\S]+21[.]\d %/u);
  await choose(page, "Blended");
  await says(page).toContain("The answer stands here");
  await field(page, "Ice, g").fill("100");
  await says(page).toMatch(/Water\s*100 ml/u);

  await goTo(page, "#/sums/ph");
  await field(page, "Juice in it, ml").fill("750");
  await field(page, "Whole mix, ml").fill("4 l");
  await field(page, "ABV of mix, %").fill("15");
  await says(page).toMatch(/^pH 2[.]\d to \d[.]\d/u);
});

const ROUTES = ["", "/spirit", "/syrup", "/acid", "/saline", "/freeze", "/ice", "/ph"];

for (const theme of ["dark", "light"] as const) {
  test(`nothing for axe to find in ${theme}, nothing wider than the phone or too small to tap`, async () => {
    const { page } = phone;
    await page.emulateMedia({ colorScheme: theme });
    for (const route of ROUTES) {
      await goTo(page, `#/sums${route}`);
      await page.evaluate(axe.source);
      const found = await page.evaluate(async () => {
        const { violations } = await Reflect.get(globalThis, "axe").run(document);
        return violations.map((one: { id: string; nodes: { html: string }[] }) => [
          one.id,
          one.nodes[0]?.html,
        ]);
      });
      expect(found, route).toEqual([]);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll("main :is(a, button, input, select)")]
          .filter((one) => one.getBoundingClientRect().height < 48)
          .map((one) => one.outerHTML),
      );
      expect(small, route).toEqual([]);
      const wide = await page.evaluate(() => {
        const screen = document.querySelector(".app-screen");
        return screen === null ? Number.NaN : screen.scrollWidth - screen.clientWidth;
      });
      expect(wide, route).toBe(0);
    }
  });
}
