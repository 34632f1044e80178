import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { foldRun } from "../../core/run/fold.ts";
import { openVisit } from "../../core/run/run.ts";
import { demoSpec } from "../support/play-run.ts";
import { said } from "../support/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  openBar,
  putOn,
  shot,
  storedLog,
  tapOf,
  untilStep,
} from "../support/walk-page.ts";

const words = said.procedure;
const COPY = said.procedures.copyName("Long infusion");

let bar: Awaited<ReturnType<typeof openBar>>;

beforeAll(async () => {
  bar = await openBar({ size: "small" });
  await putOn(bar.page, "specs", [demoSpec("Smoked Barley")]);
  await bar.page.reload();
  await bar.page.waitForSelector("main");
});
afterAll(() => bar.close());
afterEach(() => expect(bar.phone.complaints).toEqual([]));

const titles = (): Promise<string[]> => bar.page.locator(".procedure-step h3").allTextContents();
const field = (label: string) => bar.page.getByRole("textbox", { name: label, exact: true });

async function openStep(title: string): Promise<void> {
  await bar.hands.tap(tapOf(bar.page, words.changeName(title)));
}

test("a shipped procedure is read, copied and made one's own", async () => {
  const { page, hands } = bar;
  await goTo(page, routes.procedures);
  await shot(page, "procedures");
  await goTo(page, routes.procedure("long-infusion"));
  await page.getByText(words.shipped).waitFor();
  await hands.tap(tapOf(page, words.copyIt));
  await page.getByRole("heading", { name: COPY }).waitFor();
  await openStep("Steep");
  await field(words.firstAsk).fill("10 h");
  await shot(page, "procedure-step");
  await hands.tap(tapOf(page, words.addAt("Steep")));
  await hands.tap(page.getByRole("radio", { name: words.newSteps["by-hand"].label }));
  expect(await titles()).toEqual([
    "1. Build",
    "2. Steep",
    `3. ${words.newTitle}`,
    "4. Strain",
    "5. Paper",
    "6. Yield",
    "7. Bottle",
    "8. Label",
  ]);
});

test("what is missing is said where it is, and nothing typed is lost", async () => {
  const { page, hands } = bar;
  await hands.tap(tapOf(page, words.save));
  await page.getByText(words.faultCount(1)).waitFor();
  await page
    .locator(".procedure-step[data-fault=true]")
    .getByText(words.faults["no-title"])
    .first()
    .waitFor();
  await shot(page, "procedure-fault");
  await field(words.title).fill("Lift out");
  await hands.tap(tapOf(page, words.upName("Paper")));
  expect((await titles()).slice(2, 5)).toEqual(["3. Lift out", "4. Paper", "5. Strain"]);

  await openStep("Steep");
  await field(words.longestFor).fill("half a day");
  await hands.tap(tapOf(page, words.save));
  await page.getByText(words.timeFault).first().waitFor();
  await goTo(page, routes.specs);
  await page.goBack();
  await page.getByRole("heading", { name: COPY }).waitFor();
  await openStep("Steep");
  expect(await field(words.longestFor).inputValue()).toBe("half a day");
  expect(await field(words.firstAsk).inputValue()).toBe("10 h");
  await field(words.longestFor).fill("40 h");
});

test("a way without an end is refused with the step it begins at", async () => {
  const { page, hands } = bar;
  await openStep("Strain");
  const next = page.getByLabel(words.next, { exact: true });
  await next.selectOption({ label: "Paper" });
  await hands.tap(tapOf(page, words.save));
  await page
    .locator(".procedure-step", { hasText: "Strain" })
    .getByText(words.faults.endless)
    .waitFor();
  await next.selectOption({ label: words.nextUsual });
  await hands.tap(tapOf(page, words.save));
  await page.getByText(words.saved("1")).waitFor();
});

test("a spec is made by it, and its run walks the step that was added, offline too", async () => {
  const { page, hands, phone } = bar;
  await goTo(page, routes.spec(demoSpec("Smoked Barley").id));
  await page.getByLabel(said.spec.making.label, { exact: true }).selectOption({ label: COPY });
  await hands.tap(tapOf(page, said.spec.save));
  await page.getByText(said.spec.saved("2")).waitFor();
  await phone.context.setOffline(true);
  await page.reload();
  await page.waitForSelector("main");
  await goTo(page, routes.plan(demoSpec("Smoked Barley").id));
  await hands.holdTruly(holdOf(page, said.plan.start));
  await untilStep(page, "build");
  const run = foldRun(await storedLog(page));
  expect(run?.procedure).toMatchObject({ name: COPY, version: 1 });
  expect(run?.procedure.steps[1]).toMatchObject({ waitFor: 10 * HOUR, longestFor: 40 * HOUR });

  for (const line of await page.locator(".run-lines > li button").all()) await hands.tap(line);
  await page.locator('.run-lines > li:last-child [aria-pressed="true"]').waitFor();
  await hands.hold(holdOf(page, said.run.done.build ?? ""));
  await untilStep(page, "steep");
  await hands.hold(holdOf(page, said.run.outcomes.right));
  await page.getByRole("heading", { name: "Lift out", exact: true }).waitFor();
  await shot(page, "own-step");
  await hands.hold(holdOf(page, said.run.did));
  await untilStep(page, "strain-paper");
  const now = foldRun(await storedLog(page));
  expect(now && openVisit(now)?.step).toBe("strain-paper");
  await phone.context.setOffline(false);
});

test("one that a spec asks for is not removed; its batch keeps its own copy", async () => {
  const { page, hands } = bar;
  await goTo(page, routes.procedures);
  await hands.tap(page.getByRole("link", { name: said.procedures.open(COPY) }));
  await page.getByRole("heading", { name: COPY }).waitFor();
  await hands.hold(holdOf(page, words.removeAll));
  await page.getByText(words.inUse("Smoked Barley")).waitFor();
  await goTo(page, routes.spec(demoSpec("Smoked Barley").id));
  await page.getByLabel(said.spec.making.label, { exact: true }).selectOption("long-infusion");
  await hands.tap(tapOf(page, said.spec.save));
  await page.getByText(said.spec.saved("3")).waitFor();
  await goTo(page, routes.procedures);
  await hands.tap(page.getByRole("link", { name: said.procedures.open(COPY) }));
  await hands.hold(holdOf(page, words.removeAll));
  await page.getByText(words.removed(COPY)).waitFor();
  expect(foldRun(await storedLog(page))?.procedure.name).toBe(COPY);
});
