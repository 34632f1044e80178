import type { Page } from "playwright-core";
import { said } from "./said.ts";
import { answerAlarm, type Bar, holdOf, pass, tapOf, untilStep } from "./walk-page.ts";

const link = (page: Page, name: string) => page.getByRole("link", { name, exact: true });

/** From any screen to the plan of a demo spec. */
export async function openPlan({ page, hands }: Bar, spec: string): Promise<void> {
  await hands.tap(link(page, said.places.specs));
  await page.getByRole("heading", { name: said.specs.title }).waitFor();
  const way = link(page, said.specs.planName(spec));
  if ((await way.count()) === 0) await hands.tap(tapOf(page, said.specs.putDemo));
  await way.waitFor();
  await hands.tap(way);
  await page.getByRole("heading", { name: said.plan.title(spec) }).waitFor();
}

/** Ticks every line of the build as it goes in. */
export async function tickAll({ page, hands }: Bar): Promise<void> {
  const lines = await page.locator(".run-lines > li").count();
  for (let at = 1; at <= lines; at += 1) {
    const line = page.locator(`.run-lines > li:nth-child(${at}) button`);
    await hands.tap(line);
    await page.locator(`.run-lines > li:nth-child(${at}) [aria-pressed="true"]`).waitFor();
  }
}

/** Holds the button that ends a step which is simply done. */
export async function finishPlain({ page, hands }: Bar, step: string): Promise<void> {
  const done = said.run.done[step];
  if (done === undefined) throw new RangeError(`no word for the end of ${step}`);
  await hands.hold(holdOf(page, done));
}

/** Lets a wait go by, and answers it when it rings. */
export async function waitOut(bar: Bar, ms: number): Promise<void> {
  await pass(bar.page, ms);
  await answerAlarm(bar);
  await bar.page.locator(".alarm-sheet").waitFor({ state: "detached" });
}
