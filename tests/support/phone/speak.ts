import { routes } from "../../../app/routes.ts";
import { spanish } from "../../../app/words/es.ts";
import { french } from "../../../app/words/fr.ts";
import { ENGLISH, type Tongue, tongue } from "../../../app/words/tongue.ts";
import { said } from "./said.ts";
import { type Bar, goTo } from "./walk-page.ts";

/** Every language that the app speaks. */
export const TONGUES: readonly Tongue[] = [ENGLISH, spanish, french];

const NAMES = { en: "English", es: "Español", fr: "Français" } as const;

/** Chooses a language in Kit; from here on the test reads it too. */
export async function speak({ page, hands }: Bar, next: Tongue): Promise<void> {
  await goTo(page, routes.kit);
  await hands.tap(page.getByRole("radio", { name: NAMES[next.language], exact: true }));
  tongue.value = next;
  await page.locator(`html[lang="${next.language}"]`).waitFor();
  await page.getByRole("heading", { name: said.kit.title, exact: true, level: 1 }).waitFor();
}
