import { beforeAll, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { sentence } from "../../app/words/say-later.ts";
import { LONG_INFUSION } from "../../core/method/infusions.ts";
import { foldRun } from "../../core/run/fold.ts";
import { openVisit } from "../../core/run/run.ts";
import { everyLook } from "../support/look/every-look.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  putOn,
  storedLog,
  tapOf,
  untilStep,
} from "../support/phone/walk-page.ts";
import { demoSpec } from "../support/world/play-run.ts";

const words = said.procedure;
const COPY = said.procedures.copyName("Long infusion");

const bar = barForTests({ size: "small" });
beforeAll(async () => {
  await putOn(bar.page, "specs", [demoSpec("Smoked Barley")]);
  await bar.page.reload();
  await bar.page.waitForSelector("main");
});

const look = async (where: string) => expect(await everyLook(bar.page, where)).toEqual({});

const titles = (): Promise<string[]> => bar.page.locator(".procedure-step h3").allTextContents();
const field = (label: string) => bar.page.getByRole("textbox", { name: label, exact: true });

async function openStep(title: string): Promise<void> {
  await bar.hands.tap(tapOf(bar.page, words.changeName(title)));
}

test("a shipped procedure is read, copied and made one's own", async () => {
  const { page, hands } = bar;
  await goTo(page, routes.procedures);
  await look("procedures");
  await goTo(page, routes.procedure("long-infusion"));
  await page.getByText(words.shipped).waitFor();
  await look("procedure-shipped");
  await hands.tap(tapOf(page, words.copyIt));
  await page.getByRole("heading", { name: COPY }).waitFor();
  await openStep("Steep");
  await field(words.firstAsk).fill("10 h");
  await look("procedure-step");
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
  await look("procedure-fault");
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

test("an answer leads elsewhere from a later round on, and a step that is led to stays", async () => {
  const { page, hands } = bar;
  await hands.tap(tapOf(page, words.wayAdd));
  await page.getByLabel(words.wayAnswer, { exact: true }).selectOption(words.answers["too-far"]);
  await page.getByLabel(words.wayTo, { exact: true }).selectOption("Label");
  await page.getByText(words.laterWay(words.answers["too-far"], 2)).scrollIntoViewIfNeeded();
  await look("procedure-ways");
  await openStep("Label");
  await hands.hold(holdOf(page, words.remove("Label")));
  await page.getByText(words.keeps["step-is-led-to"]("Steep")).waitFor();
  await openStep("Steep");
  const name = words.wayRemoveName(words.answers["too-far"], 2);
  await hands.tap(tapOf(page, name));
  await page.getByText(words.laterWay(words.answers["too-far"], 2)).waitFor({ state: "detached" });
});

test("a reading of its own is put in, and what keeps somebody busy is counted", async () => {
  const { page, hands } = bar;
  await hands.tap(tapOf(page, words.addAt("Lift out")));
  await hands.tap(page.getByRole("radio", { name: words.newSteps.reading.label }));
  await field(words.title).fill("Cold?");
  await field(words.detail).fill("Read it in the middle of the jar.");
  await hands.tap(tapOf(page, words.moreOf(words.resources.person)));
  await look("procedure-reading");
  expect((await titles()).slice(2, 5)).toEqual(["3. Lift out", "4. Cold?", "5. Paper"]);
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
  expect(run?.procedure.steps[3]?.uses).toEqual([{ resource: "person", amount: 2 }]);

  for (const line of await page.locator(".run-lines > li button").all()) await hands.tap(line);
  await page.locator('.run-lines > li:last-child [aria-pressed="true"]').waitFor();
  await hands.hold(holdOf(page, said.run.done.build ?? ""));
  await untilStep(page, "steep");
  await hands.hold(holdOf(page, said.run.outcomes.right));
  await page.getByRole("heading", { name: "Lift out", exact: true }).waitFor();
  await look("own-step");
  await hands.hold(holdOf(page, said.run.did));
  await page.getByRole("heading", { name: "Cold?", exact: true }).waitFor();
  await page.getByText("Read it in the middle of the jar.").waitFor();
  await look("own-reading");
  await hands.tap(tapOf(page, said.run.typeFigure));
  for (const key of ["1", "8"]) await hands.tap(tapOf(page, key));
  await hands.tap(tapOf(page, said.run.belowName));
  await look("own-reading-pad");
  await hands.hold(holdOf(page, said.run.take));
  await untilStep(page, "strain-paper");
  expect(foldRun(await storedLog(page))?.readings).toMatchObject([
    { what: "temperature", value: -18, unit: "degC" },
  ]);
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

test("a spec whose procedure is gone says so in its form, and is not begun", async () => {
  const { page, hands } = bar;
  const lost = { ...demoSpec("Smoked Barley"), id: "lost", procedure: { id: "gone", times: {} } };
  await putOn(page, "specs", [lost]);
  await page.reload();
  await goTo(page, routes.spec("lost"));
  await page.getByText(said.spec.making.gone).waitFor();
  await goTo(page, routes.plan("lost"));
  await hands.holdTruly(holdOf(page, said.plan.start));
  await page.getByText(said.plan.noProcedure).first().waitFor();
  await goTo(page, routes.procedures);
  await hands.tap(tapOf(page, said.procedures.copyOf("Saline")));
  await page.getByRole("heading", { name: said.procedures.copyName("Saline") }).waitFor();
});

test("a procedure without an end, as a file may bring one, is not begun", async () => {
  const { page, hands } = bar;
  const [first] = LONG_INFUSION.steps;
  const steps = LONG_INFUSION.steps.map((step) =>
    step.id === "label" ? { ...step, next: first?.id ?? "" } : step,
  );
  await putOn(page, "procedures", [{ ...LONG_INFUSION, id: "round", name: "Round", steps }]);
  const spec = {
    ...demoSpec("Smoked Barley"),
    id: "rounds",
    procedure: { id: "round", times: {} },
  };
  await putOn(page, "specs", [spec]);
  await page.reload();
  const before = (await storedLog(page)).length;
  await goTo(page, routes.plan("rounds"));
  await hands.holdTruly(holdOf(page, said.plan.start));
  await page
    .getByText(sentence({ refusal: "procedure-without-end", about: {} }))
    .first()
    .waitFor();
  expect((await storedLog(page)).length).toBe(before);
});
