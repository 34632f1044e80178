import { expect, test } from "vitest";
import { phoneForTests } from "../support/phone/phone-for-tests.ts";
import { storedIn } from "../support/phone/walk-page.ts";
import { DEMO_SPECS } from "../support/world/demo-bar.ts";

const phone = phoneForTests({ size: "small" });

const button = (name: string | RegExp) => phone.page.getByRole("button", { name }).first();
const press = (name: string | RegExp) => phone.hands.tap(button(name));
const hold = (name: string | RegExp) => phone.hands.hold(button(name));
const field = (name: string) => phone.page.getByLabel(name, { exact: true });
const says = () => phone.page.locator(".save-bar-says");

const kept = (store: "specs" | "ingredients") => storedIn(phone.page, store);

test("a spec is written line by line, with a new ingredient on the way, and survives a flat battery", async () => {
  const { page } = phone;
  await phone.goTo("#/specs");
  await page.getByRole("link", { name: "New spec" }).click();
  await field("Name").fill("Quince Tide");

  const add = field("Add an ingredient");
  await add.fill("1 1/2 oz gin");
  await press("Add 1½ oz Gin 43 %");
  await add.fill("20 ml rum");
  await expect.poll(() => page.getByText("Which one is “rum”?").isVisible()).toBe(true);
  await press("Add 20 ml Aged rum 40 %");
  await add.fill("22,5 ml lemon");
  await add.press("Enter");
  await add.fill("15 ml quince cordial");
  await press("New ingredient “quince cordial”");

  await expect.poll(() => field("Name").inputValue()).toBe("quince cordial");
  await field("What it is").selectOption("syrup");
  await field("Sugar, g per litre").fill("600");
  await press("Save");

  await expect.poll(() => field("quince cordial").inputValue()).toBe("15 ml");
  expect(await field("Name").inputValue()).toBe("Quince Tide");
  await press("Change Gin 43 %");
  for (let step = 0; step < 2; step += 1) await press("Hold back 10 % more");
  await press("Move Gin 43 % down");
  expect(await kept("specs")).toEqual([]);
  await press("Save");
  await expect.poll(() => says().textContent()).toBe("Saved, version 1");

  const [spec] = await kept("specs");
  const [cordial] = await kept("ingredients");
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

  await phone.kill();
  await phone.openAgain();
  await phone.goTo("#/specs");
  await expect.poll(() => phone.page.getByText("Quince Tide").isVisible()).toBe(true);
});

test("rubbish gets a sentence and stays, and nothing is stored until it makes sense", async () => {
  const { page } = phone;
  await phone.goTo("#/specs");
  await press("Put the demo specs in");
  await page.getByRole("link", { name: "Open Pear Beacon" }).click();
  await field("Milk to punch").fill("lots");
  await field("Lemon juice, fresh").fill("45");
  await field("Filters").fill("-2");
  await press("Save");
  await expect.poll(() => says().textContent()).toBe("Not saved. 3 fields need another look.");
  for (const sentence of ["“45” has no unit", "Type it like 1 : 4", "whole number from 1 to 50"]) {
    await expect.poll(() => page.getByText(sentence).isVisible(), { message: sentence }).toBe(true);
  }
  expect(await field("Lemon juice, fresh").inputValue()).toBe("45");
  // The first field that needs a look has the focus, so that it stands in sight.
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-invalid"))).toBe(
    "true",
  );
  expect(await kept("specs")).not.toContainEqual(expect.objectContaining({ version: 2 }));

  await field("Milk to punch").fill("300 ml");
  await field("Lemon juice, fresh").fill("¾ oz");
  await field("Filters").fill("3");
  await press("Save");
  await expect.poll(() => says().textContent()).toBe("Saved, version 2");
  expect(await kept("specs")).toContainEqual(
    expect.objectContaining({
      id: "demo-pear-beacon",
      version: 2,
      wash: expect.objectContaining({ ratio: 0.3, filters: 3 }),
    }),
  );
});

test("unsaved changes wait while other places are looked at, and can be dropped with a hold", async () => {
  const { page } = phone;
  await phone.goTo("#/specs");
  await press("Put the demo specs in");
  await page.getByRole("link", { name: "Open Pear Beacon" }).click();
  await field("Name").fill("Pear Lantern");
  await page.getByRole("link", { name: "Bench" }).click();
  await page.getByRole("link", { name: "Specs", exact: true }).click();
  await page.getByRole("link", { name: "Open Pear Beacon" }).click();
  expect(await field("Name").inputValue()).toBe("Pear Lantern");
  expect(await says().textContent()).toContain("not saved");

  await press("Drop my changes");
  await button("Drop my changes")
    .getByText(/^Hold longer/u)
    .waitFor();
  expect(await field("Name").inputValue()).toBe("Pear Lantern");
  await hold("Drop my changes");
  await expect.poll(() => field("Name").inputValue()).toBe("Pear Beacon");
  expect(await says().textContent()).toBe("Saved, version 1");

  await press("Copy it");
  await expect.poll(() => field("Name").inputValue()).toBe("Pear Beacon (copy)");
  await press("Save");
  await expect.poll(() => says().textContent()).toBe("Saved, version 1");
  await hold("Remove this spec");
  await expect.poll(() => page.getByRole("heading", { name: "Specs" }).isVisible()).toBe(true);
  expect(await kept("specs")).toHaveLength(DEMO_SPECS.length);
});

test("the house's own figures replace the typical ones, and give way to them again", async () => {
  const { page } = phone;
  await phone.goTo("#/cupboard");
  await field("Find an ingredient").fill("lemn juice");
  await page.getByRole("link", { name: /Lemon juice/ }).click();
  await field("Citric").fill("140000");
  await press("Save");
  await expect.poll(() => page.getByText("Type grams from 0 to 500").isVisible()).toBe(true);
  await field("Citric").fill("52");
  await field("pH, measured or typical").fill("2,4");
  await press("Save");
  await expect.poll(() => says().textContent()).toBe("Your figures");
  expect(await kept("ingredients")).toMatchObject([
    { id: "lemon-juice", acids: { citric: 52, malic: 2 } },
  ]);
  await expect.poll(() => page.getByText("it stands at about pH 2.4").isVisible()).toBe(true);

  await hold(/^Back to the typical figures/);
  await expect.poll(() => field("Citric").inputValue()).toBe("48");
  expect(await says().textContent()).toContain("Typical figures");
});
