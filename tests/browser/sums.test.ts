import axe from "axe-core";
import { expect, test } from "vitest";
import { phoneForTests } from "../support/phone/phone-for-tests.ts";

const phone = phoneForTests({ size: "small" });

const field = (name: string, at = 0) => phone.page.getByLabel(name, { exact: true }).nth(at);
const answer = () => phone.page.getByRole("region", { name: "Answer" });
const says = () => expect.poll(() => answer().textContent());

const choose = (name: string) =>
  phone.hands.tap(phone.page.getByRole("radio", { name, exact: true }));

test("two taps from Specs, a spirit is brought down as it is typed, and the working opens", async () => {
  const { page } = phone;
  await phone.goTo("#/specs");
  await page.getByRole("link", { name: "Sums", exact: true }).click();
  await page.getByRole("link", { name: /^Bring a spirit down/u }).click();
  await says().toContain("The answer stands here");

  await field("Spirit, ml").fill("700");
  await field("ABV now, %").fill("57,15");
  await field("ABV wanted, %").fill("40");
  await says().toMatch(/Water\s*308 ml/u);
  await field("Spirit, ml").fill("0.1 l");
  await says().toMatch(/Water\s*44(?:[.]0)? ml/u);
  for (const caution of ["50 % vol or more", "from about 22 °C", "Never heat spirit"]) {
    await expect.poll(() => page.getByText(caution).isVisible(), { message: caution }).toBe(true);
  }

  await answer().getByRole("button").first().click();
  const working = page.getByRole("dialog");
  await expect.poll(() => working.getByText("ABV wanted").isVisible()).toBe(true);
  await expect.poll(() => working.getByText("OIML R 22").first().isVisible()).toBe(true);
  await working.getByRole("button", { name: "Close" }).click();
  await expect.poll(() => working.isVisible()).toBe(false);
});

test("what cannot be gets its sentence, and what was typed stays, even while elsewhere", async () => {
  const { page } = phone;
  await phone.goTo("#/sums/spirit");
  await field("Spirit, ml").fill("lots");
  await field("ABV now, %").fill("40");
  await field("ABV wanted, %").fill("57");
  await field("Sugar, g per litre").focus();
  for (const sentence of ["Type a volume above zero", "type at most 40.0 %"]) {
    await expect.poll(() => page.getByText(sentence).isVisible(), { message: sentence }).toBe(true);
  }
  await says().toContain("The answer stands here");
  await page.getByRole("link", { name: "All sums" }).click();
  await page.getByRole("link", { name: /^Syrup/u }).click();
  await choose("2 : 1");
  await field("Sugar, g").fill("1 kg");
  await says().toMatch(/may crystallise[\s\S]+66[.]7 °Bx/u);
  await page.getByRole("link", { name: "Bench" }).click();
  await page.getByRole("link", { name: "Specs", exact: true }).click();
  await page.getByRole("link", { name: "Sums", exact: true }).click();
  await page.getByRole("link", { name: /^Bring a spirit down/u }).click();
  expect(await field("Spirit, ml").inputValue()).toBe("lots");
  await page.goBack();
  await page.getByRole("link", { name: /^Syrup/u }).click();
  expect(await field("Sugar, g").inputValue()).toBe("1 kg");
  // Nothing is stored: a fresh start knows nothing of it.
  await page.reload();
  expect(await field("Sugar, g").inputValue()).toBe("");
});

test("a figure that stands in a field gives way to the one that is typed", async () => {
  const { page } = phone;
  await phone.goTo("#/sums/saline");
  await field("Saline, ml").fill("100");
  await says().toMatch(/Salt\s*23[.]0 g/u);
  await field("Salt by weight, %").click();
  await page.keyboard.type("10");
  await says().toMatch(/Salt\s*10[.]7 g/u);
  await page.keyboard.press("Enter");
  expect(page.url()).toContain("#/sums/saline");
});

test("juice, freezer, ice and pH answer from a few figures each", async () => {
  const { page } = phone;
  await phone.goTo("#/sums/acid");
  await field("Juice, ml").fill("1000");
  await says().toMatch(/Citric acid\s*32[.]1 g[\s\S]+18[.]9 g/u);

  await phone.goTo("#/sums/freeze");
  await field("ABV, %").fill("40");
  await field("Another temperature, °C").fill("−30");
  await says().toContain("At −18 °C: liquid");
  await expect.poll(() => page.getByText("At −30 °C: slush").isVisible()).toBe(true);

  await phone.goTo("#/sums/ice");
  await field("Drink, ml").fill("90");
  await field("ABV, %").fill("30");
  await says().toMatch(/Water\s*37 ml[\s\S]+21[.]\d %/u);
  await choose("Blended");
  await says().toContain("The answer stands here");
  await field("Ice, g").fill("100");
  await says().toMatch(/Water\s*100 ml/u);

  await phone.goTo("#/sums/ph");
  await field("Juice in it, ml").fill("750");
  await field("Whole mix, ml").fill("4 l");
  await field("ABV of mix, %").fill("15");
  await says().toMatch(/^pH 2[.]\d to \d[.]\d/u);
});

const ROUTES = ["", "/spirit", "/syrup", "/acid", "/saline", "/freeze", "/ice", "/ph"];

for (const theme of ["dark", "light"] as const) {
  test(`nothing for axe to find in ${theme}, nothing wider than the phone or too small to tap`, async () => {
    const { page } = phone;
    await page.emulateMedia({ colorScheme: theme });
    for (const route of ROUTES) {
      await phone.goTo(`#/sums${route}`);
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
