import type { Locator, Page } from "playwright-core";
import { routes } from "../../../app/routes.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { demoSpec } from "../world/play-run.ts";
import { said } from "./said.ts";
import { type Bar, putOn, storedLog } from "./walk-page.ts";

/** A spec of the demo, and what is asked of it. */
export const PEAR = demoSpec("Pear Beacon");
export const SIXTY = { by: "serves", serves: 60 } as const;
/** How a new phone shows figures, in euros. */
export const STYLE = { volumes: "ml", ounce: "bar", currency: "€" } as const;

/** What is written, without the marks that only say where a line may break. */
export const plain = (text: string | null): string =>
  (text ?? "").replaceAll("\u00a0", " ").replaceAll("\u00ad", "");
export const textOf = async (one: Locator): Promise<string> => plain(await one.textContent());

/** A section of the plan. */
export const section = (page: Page, name: string): Locator =>
  page.locator(`[data-section="${name}"]`);

/** Unfolds a section and waits for what is in it. */
export async function unfold(page: Page, name: string): Promise<void> {
  await section(page, name).locator("summary").first().click();
  await section(page, name).locator(".plan-section-body").waitFor();
}

/** Moves the dial that is being tried. */
export const slide = (page: Page, to: number): Promise<void> =>
  page.locator(".plan-dial-range").fill(String(to));

/** Puts a spec into the phone's book past the app, and shows its plan. */
export async function planOwn({ page, server }: Bar, spec: Spec): Promise<void> {
  await putOn(page, "specs", [spec]);
  await page.goto("about:blank");
  await page.goto(server.url + routes.plan(spec.id));
  await page.getByRole("heading", { name: said.plan.title(spec.name) }).waitFor();
}

/** The plan that the first batch in the log began with. */
export async function frozenPlan(page: Page): Promise<Plan> {
  const [begun] = await storedLog(page);
  if (begun?.type !== "run.started") throw new RangeError("expected the log to begin with a start");
  return begun.plan;
}
