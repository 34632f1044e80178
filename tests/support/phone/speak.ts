import { routes } from "../../../app/routes.ts";
import { type Tongue, tongue } from "../../../app/words/tongue.ts";
import { said } from "./said.ts";
import { type Bar, goTo } from "./walk-page.ts";

const NAMES = { en: "English", es: "Español", fr: "Français" } as const;

/** Chooses a language in Kit; from here on the test reads it too. */
export async function speak({ page, hands }: Bar, next: Tongue): Promise<void> {
  await goTo(page, routes.kit);
  await hands.tap(page.getByRole("radio", { name: NAMES[next.language], exact: true }));
  tongue.value = next;
  await page.locator(`html[lang="${next.language}"]`).waitFor();
  await page.getByRole("heading", { name: said.kit.title, exact: true, level: 1 }).waitFor();
}
