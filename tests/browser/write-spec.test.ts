import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { DEMO_SPECS } from "../../app/demo/specs.ts";
import {
  dropProfile,
  newProfile,
  openPhone,
  type Phone,
  untilStored,
} from "../support/phone/browser.ts";
import { type AppServer, serveApp } from "../support/tool/server.ts";

/** Longer than a splash, as `press.ts`; and past the 350 ms in which everything is deaf. */
const PRESS = { delay: 90 };
const HELD = { delay: 800 };
const DEAF = 400;

let server: AppServer;
let profile: string;
let phone: Phone;

const openHere = () => openPhone({ origin: server.origin, profile, size: "small" });

beforeAll(async () => {
  server = await serveApp();
});
afterAll(() => server.stop());
beforeEach(async () => {
  profile = newProfile();
  phone = await openHere();
});
afterEach(async () => {
  expect(phone.complaints).toEqual([]);
  await phone.close();
  dropProfile(profile);
});

async function press(page: Page, name: string | RegExp, how: { delay: number } = PRESS) {
  await page.getByRole("button", { name }).first().click(how);
  await page.waitForTimeout(DEAF);
}

const field = (page: Page, name: string) => page.getByLabel(name, { exact: true });
const says = (page: Page) => page.locator(".save-bar-says");

/** What the phone keeps in one of its stores, read past the app. */
const kept = (page: Page, store: "specs" | "ingredients"): Promise<readonly unknown[]> =>
  page.evaluate(
    (name) =>
      new Promise<unknown[]>((resolve, reject) => {
        const open = indexedDB.open("second-pour");
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const all = open.result.transaction(name).objectStore(name).getAll();
          all.onerror = () => reject(all.error);
          all.onsuccess = () => {
            open.result.close();
            resolve(all.result);
          };
        };
      }),
    store,
  );

async function goTo(page: Page, route: string) {
  await page.goto(server.url + route);
  await page.waitForSelector("main h1");
}

test("a spec is written line by line, with a new ingredient on the way, and survives a flat battery", async () => {
  const { page } = phone;
  await goTo(page, "#/specs");
  await untilStored(page);
  await page.getByRole("link", { name: "New spec" }).click();
  await field(page, "Name").fill("Quince Tide");

  const add = field(page, "Add an ingredient");
  await add.fill("1 1/2 oz gin");
  await press(page, "Add 1½ oz Gin 43 %");
  await add.fill("20 ml rum");
  await expect.poll(() => page.getByText("Which one is “rum”?").isVisible()).toBe(true);
  await press(page, "Add 20 ml Aged rum 40 %");
  await add.fill("22,5 ml lemon");
  await add.press("Enter");
  await add.fill("15 ml quince cordial");
  await press(page, "New ingredient “quince cordial”");

  expect(await field(page, "Name").inputValue()).toBe("quince cordial");
  await field(page, "What it is").selectOption("syrup");
  await field(page, "Sugar, g per litre").fill("600");
  await press(page, "Save");

  await expect.poll(() => field(page, "quince cordial").inputValue()).toBe("15 ml");
  expect(await field(page, "Name").inputValue()).toBe("Quince Tide");
  await press(page, "Change Gin 43 %");
  for (let step = 0; step < 2; step += 1) await press(page, "Hold back 10 % more");
  await press(page, "Move Gin 43 % down");
  expect(await kept(page, "specs")).toEqual([]);
  await press(page, "Save");
  await expect.poll(() => says(page).textContent()).toBe("Saved, version 1");

  const [spec] = await kept(page, "specs");
  const [cordial] = await kept(page, "ingredients");
  expect(cordial).toMatchObject({ name: "quince cordial", kind: "syrup" });
  expect(spec).toMatchObject({
    name: "Quince Tide",
    version: 1,
    wash: { dairyId: "milk-whole", ratio: 0.25 },
    lines: [
      { ingredientId: "aged-rum-40", amount: { value: 20, unit: "ml" }, heldBack: 0 },
      { ingredientId: "gin-43", amount: { value: 1.5, unit: "oz" }, heldBack: 0.2 },
      { ingredientId: "lemon-juice", amount: { value: 22.5, unit: "ml" } },
      { amount: { value: 15, unit: "ml" } },
    ],
  });
  expect(phone.complaints).toEqual([]);

  await phone.kill();
  phone = await openHere();
  await goTo(phone.page, "#/specs");
  await expect.poll(() => phone.page.getByText("Quince Tide").isVisible()).toBe(true);
});

test("rubbish gets a sentence and stays, and nothing is stored until it makes sense", async () => {
  const { page } = phone;
  await goTo(page, "#/specs");
  await press(page, "Put the demo specs in");
  await page.getByRole("link", { name: "Open Pear Beacon" }).click();
  await field(page, "Milk to punch").fill("lots");
  await field(page, "Lemon juice, fresh").fill("45");
  await field(page, "Filters").fill("-2");
  await press(page, "Save");
  expect(await says(page).textContent()).toBe("Not saved. 3 fields need another look.");
  for (const sentence of ["“45” has no unit", "Type it like 1 : 4", "whole number from 1 to 50"]) {
    await expect.poll(() => page.getByText(sentence).isVisible(), { message: sentence }).toBe(true);
  }
  expect(await field(page, "Lemon juice, fresh").inputValue()).toBe("45");
  // The first field that needs a look has the focus, so that it stands in sight.
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-invalid"))).toBe(
    "true",
  );
  expect(await kept(page, "specs")).not.toContainEqual(expect.objectContaining({ version: 2 }));

  await field(page, "Milk to punch").fill("300 ml");
  await field(page, "Lemon juice, fresh").fill("¾ oz");
  await field(page, "Filters").fill("3");
  await press(page, "Save");
  await expect.poll(() => says(page).textContent()).toBe("Saved, version 2");
  expect(await kept(page, "specs")).toContainEqual(
    expect.objectContaining({
      id: "demo-pear-beacon",
      version: 2,
      wash: expect.objectContaining({ ratio: 0.3, filters: 3 }),
    }),
  );
});

test("unsaved changes wait while other places are looked at, and can be dropped with a hold", async () => {
  const { page } = phone;
  await goTo(page, "#/specs");
  await press(page, "Put the demo specs in");
  await page.getByRole("link", { name: "Open Pear Beacon" }).click();
  await field(page, "Name").fill("Pear Lantern");
  await page.getByRole("link", { name: "Bench" }).click();
  await page.getByRole("link", { name: "Specs", exact: true }).click();
  await page.getByRole("link", { name: "Open Pear Beacon" }).click();
  expect(await field(page, "Name").inputValue()).toBe("Pear Lantern");
  expect(await says(page).textContent()).toContain("not saved");

  await press(page, "Drop my changes");
  expect(await field(page, "Name").inputValue()).toBe("Pear Lantern");
  await press(page, "Drop my changes", HELD);
  expect(await field(page, "Name").inputValue()).toBe("Pear Beacon");
  expect(await says(page).textContent()).toBe("Saved, version 1");

  await press(page, "Copy it");
  expect(await field(page, "Name").inputValue()).toBe("Pear Beacon (copy)");
  await press(page, "Save");
  await expect.poll(() => says(page).textContent()).toBe("Saved, version 1");
  await press(page, "Remove this spec", HELD);
  await expect.poll(() => page.getByRole("heading", { name: "Specs" }).isVisible()).toBe(true);
  expect(await kept(page, "specs")).toHaveLength(DEMO_SPECS.length);
});

test("the house's own figures replace the typical ones, and give way to them again", async () => {
  const { page } = phone;
  await goTo(page, "#/cupboard");
  await field(page, "Find an ingredient").fill("lemn juice");
  await page.getByRole("link", { name: /Lemon juice/ }).click();
  await field(page, "Citric").fill("140000");
  await press(page, "Save");
  await expect.poll(() => page.getByText("Type grams from 0 to 500").isVisible()).toBe(true);
  await field(page, "Citric").fill("52");
  await field(page, "pH, measured or typical").fill("2,4");
  await press(page, "Save");
  await expect.poll(() => says(page).textContent()).toBe("Your figures");
  expect(await kept(page, "ingredients")).toMatchObject([
    { id: "lemon-juice", acids: { citric: 52, malic: 2 } },
  ]);
  await expect.poll(() => page.getByText("it stands at about pH 2.4").isVisible()).toBe(true);

  await press(page, /^Back to the typical figures/, HELD);
  await expect.poll(() => field(page, "Citric").inputValue()).toBe("48");
  expect(await says(page).textContent()).toContain("Typical figures");
});
