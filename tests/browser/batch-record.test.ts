import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { mergeEvents } from "../../core/run/order.ts";
import { faultsOf } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { made, runNow } from "../support/phone/made-batch.ts";
import { said } from "../support/phone/said.ts";
import { goTo, HOUR, holdOf, OPENS, putLog, shot, tapOf } from "../support/phone/walk-page.ts";
import { dripped, type Played, started } from "../support/world/play-run.ts";

const words = said.tasting;

const bar = barForTests({ size: "small" });

const waiting = dripped(started("run-a", "PB-1", OPENS - 12 * HOUR));

/** A photograph of what is in sight, with the part named at its top. */
async function shotAt(page: Page, heading: string, name: string): Promise<void> {
  if (process.env.SHOTS !== "1") return;
  const part = page.getByRole("heading", { name: heading, exact: true });
  for (const colorScheme of ["dark", "light"] as const) {
    await page.emulateMedia({ colorScheme });
    await part.evaluate((one) => one.scrollIntoView({ block: "start" }));
    await shot(page, `${name}-${colorScheme}`);
  }
  await page.emulateMedia({ colorScheme: "dark" });
}

test("two people taste it by finger; means, words and who are shown, and all of it is in the log", async () => {
  const { page, hands } = bar;
  await putLog(bar, made.events, routes.batch("run-a"), OPENS);
  await page.getByText(words.none).waitFor();
  await shotAt(page, said.batch.beside.title, "record-beside");
  const sheet = async (who: string, clarity: number, word: string) => {
    await hands.tap(tapOf(page, words.begin));
    // The first tap stands in the middle, from there one at a time.
    const name = clarity >= 5 ? words.more("Clarity") : words.less("Clarity");
    for (let tap = 0; tap <= Math.abs(clarity - 5); tap += 1) await hands.tap(tapOf(page, name));
    await hands.tap(tapOf(page, word));
    await tapOf(page, words.chosen(word)).waitFor();
    const other = tapOf(page, words.another);
    if (await other.isVisible()) await hands.tap(other);
    for (const letter of who) await hands.tap(tapOf(page, letter));
    await hands.hold(holdOf(page, words.padDone));
    await page.locator('[aria-checked="true"]', { hasText: who }).waitFor();
  };
  await sheet("AB", 8, "bright");
  await shotAt(page, words.title, "record-sheet");
  expect(await faultsOf(page)).toEqual([]);
  // Left and come back to, the sheet is as it was.
  await goTo(page, routes.shelf);
  await goTo(page, routes.batch("run-a"));
  await tapOf(page, words.chosen("bright")).waitFor();
  await hands.hold(holdOf(page, words.keep));
  await page.getByText(words.tasters(1)).waitFor();
  await sheet("CD", 5, "silky");
  await hands.hold(holdOf(page, words.keep));
  await page.getByText(words.tasters(2)).waitFor();
  expect(await page.locator(".batch-mean").allTextContents()).toEqual(["Clarity6.5"]);
  await shotAt(page, words.title, "record-means");
  const { tastings } = await runNow(page);
  expect(tastings.map(({ by, scores, words: told }) => [by, scores, told])).toEqual([
    ["AB", { clarity: 8 }, ["bright"]],
    ["CD", { clarity: 5 }, ["silky"]],
  ]);
  await hands.tap(tapOf(page, said.places.undo));
  await page.getByText(words.tasters(1)).waitFor();
});

test("an empty sheet is refused with a sentence, and loses nothing", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await putLog(bar, made.events, routes.batch("run-a"), OPENS);
  await hands.tap(tapOf(page, words.begin));
  await hands.hold(holdOf(page, words.keep));
  await page.getByText(/^Nothing is on the sheet yet/u).waitFor();
  await hands.tap(tapOf(page, "silky"));
  await hands.hold(holdOf(page, words.keep));
  await page.getByText("Say who tasted, by initials.").waitFor();
  await tapOf(page, words.chosen("silky")).waitFor();
  expect((await runNow(page)).tastings).toEqual([]);
});

test("a verdict, whether to repeat, and tags: given, changed, taken off", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await putLog(bar, made.events, routes.batch("run-a"), OPENS);
  const chip = (name: string) => page.getByRole("radio", { name, exact: true });
  await hands.tap(tapOf(page, words.verdict.give));
  await hands.tap(chip(words.verdicts.good));
  await hands.tap(chip(words.verdict.repeat["with-changes"]));
  await page.getByRole("textbox", { name: words.verdict.why, exact: true }).fill("less milk");
  await shotAt(page, words.verdict.title, "record-verdict");
  expect(await faultsOf(page)).toEqual([]);
  await hands.hold(holdOf(page, words.verdict.keep));
  await page.getByText(/make it again with changes$/u).waitFor();
  const tag = page.getByRole("textbox", { name: words.tags.field, exact: true });
  await tag.fill("  summer   menu ");
  await hands.tap(tapOf(page, words.tags.add));
  await tapOf(page, words.tags.takeOff("summer menu")).waitFor();
  expect(await tag.inputValue()).toBe("");
  await hands.tap(tapOf(page, words.tags.add));
  await page.getByText("The tag is empty. Type a word first.").waitFor();
  await shotAt(page, words.tags.title, "record-tags");
  await hands.tap(tapOf(page, words.tags.takeOff("summer menu")));
  await page.getByText(words.tags.none).waitFor();
  const run = await runNow(page);
  expect(run.verdicts).toMatchObject([
    { verdict: "good", repeat: "with-changes", text: "less milk" },
  ]);
  expect(run.tagged.map(({ tag: one, on }) => [one, on])).toEqual([
    ["summer menu", true],
    ["summer menu", false],
  ]);
});

const added = (later: Played): readonly RunEvent[] =>
  later.events
    .slice(waiting.events.length)
    .map((event) => ({ ...event, id: `b-${event.id}`, act: `b-${event.act}` }));

test("two phones, two yields: asked on the run and on its record, answered once, then never again", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  const here = waiting.finish({ answer: { of: "yield", ml: 3700 } }, 5, "phone-a");
  const there = added(waiting.finish({ answer: { of: "yield", ml: 3900 } }, 6, "phone-b"));
  const both = mergeEvents(here.events, there);
  await putLog(bar, both, routes.batch("run-a"), OPENS);
  const question = page.getByRole("heading", { name: said.batch.which.title, exact: true });
  await question.waitFor();
  await shotAt(page, said.batch.which.title, "record-which");
  await goTo(page, routes.run("run-a"));
  await question.waitFor();
  await shot(page, "run-which");
  await hands.hold(holdOf(page, said.batch.which.counts("3,700 ml")));
  await question.waitFor({ state: "detached" });
  const { yields } = await runNow(page);
  expect(yields.at(-1)).toMatchObject({ ml: 3700, settles: true });
  // Taken back it is asked again.
  await hands.tap(tapOf(page, said.places.undo));
  await question.waitFor();
  await hands.hold(holdOf(page, said.batch.which.counts("3,900 ml")));
  await question.waitFor({ state: "detached" });

  // What the other phone logged comes once more, as after a merge.
  await putLog(bar, there, routes.batch("run-a"));
  await page.locator(".batch-facts").waitFor();
  expect(await question.count()).toBe(0);
  expect(await page.locator(".batch-figure").first().textContent()).toBe("3,900 ml");
});
