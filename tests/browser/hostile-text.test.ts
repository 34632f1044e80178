import type { Page } from "playwright-core";
import { beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { LAST_MOMENT } from "../../core/run/event.ts";
import { sticksOut } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { chooseFile, goTo, HOUR, holdOf, OPENS, tapOf } from "../support/phone/walk-page.ts";
import { fileOfLines } from "../support/world/backup-file.ts";
import { CASES, fileOf, IMAGE, LONG, PLAIN, SCRIPT } from "../support/world/hostile-file.ts";
import { demoSpec, planned, started } from "../support/world/play-run.ts";

const SCREENS = [
  ...[routes.bench, routes.specs, routes.shelf, routes.logbook, routes.days, routes.procedures],
  ...[routes.cupboard, routes.spec("hostile"), routes.plan("hostile"), routes.services("hostile")],
  ...[routes.ingredient("own-gin"), routes.procedure("own-wash"), routes.run("run-open")],
  ...[routes.vessel("run-open"), routes.dim("run-open"), routes.hand("run~run-open")],
  ...[routes.label("run-made"), routes.sheet("run-made"), routes.batch("run-made")],
  ...[routes.batch("run-ended"), routes.compare(["run-made", "run-ended"]), routes.learnt],
];

const bar = barForTests({ size: "small" });
beforeEach(async () => {
  await bar.afresh();
});

/** What on the page came out of words as something else than words. */
const madeOfWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const strange = [...document.querySelectorAll("#app *")].filter(
      (one) =>
        one.matches("script, iframe, object, embed, style, base, form, meta") ||
        (one instanceof HTMLImageElement && !one.src.startsWith("blob:")) ||
        [...one.attributes].some(({ name }) => name.startsWith("on")) ||
        /^\s*(?:javascript|vbscript):/iu.test(one.getAttribute("href") ?? ""),
    );
    const ran = Reflect.has(globalThis, "ran") ? ["something ran"] : [];
    return [...ran, ...strange.map((one) => one.outerHTML.slice(0, 200))];
  });

/** All that is written on the screen, in fields too. */
const written = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const fields = [...document.querySelectorAll<HTMLInputElement>("main input, main textarea")];
    const main = document.querySelector("main")?.textContent ?? "";
    return [main, ...fields.map(({ value }) => value)].join("\n");
  });

/** Where words stand backwards that were not brought in: figures and our own words must never. */
const turnedRound = (page: Page, brought: readonly string[]): Promise<string[]> =>
  page.evaluate((theirs) => {
    const range = document.createRange();
    const boxOf = (node: Node, at: number): DOMRect => {
      range.setStart(node, at);
      range.setEnd(node, at + 1);
      return range.getBoundingClientRect();
    };
    const isTurned = (node: Node, at: number): boolean => {
      const [one, next] = [boxOf(node, at), boxOf(node, at + 1)];
      return one.width > 0 && next.width > 0 && one.y === next.y && next.x < one.x;
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found: string[] = [];
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const text = node.textContent ?? "";
      const ours = theirs.reduce((so, one) => so.replaceAll(one, "\n".repeat(one.length)), text);
      const at = [...ours.matchAll(/(?=\w\w)/gu)].map(({ index }) => index);
      if (at.some((one) => isTurned(walker.currentNode, one))) found.push(text);
    }
    return found;
  }, brought);

for (const [name, texts] of Object.entries(CASES)) {
  test(`brought in from a file: ${name} is words on every screen, and nothing else`, async () => {
    const { page, hands } = bar;
    const file = fileOf(texts);
    await goTo(page, routes.kit);
    await chooseFile(page, file.text);
    await hands.hold(holdOf(page, said.kit.restore.add(file.count)));
    await page.getByText(said.kit.restore.added(file.count)).waitFor();
    const shown = new Map<string, string>();
    const wrong: string[] = [];
    for (const hash of SCREENS) {
      await goTo(page, hash);
      await page.waitForLoadState("networkidle");
      // Fetched is not drawn yet.
      await page.getByText(said.places.loading).waitFor({ state: "detached" });
      const finds = [
        ...(await madeOfWords(page)),
        ...(await sticksOut(page)).map((one) => `sticks out: ${one}`),
        ...(await turnedRound(page, Object.values(texts))).map((one) => `backwards: ${one}`),
      ];
      wrong.push(...finds.map((one) => `${hash}: ${one}`));
      shown.set(hash, await written(page));
    }
    expect(wrong).toEqual([]);
    // A mark that turns the rest of a line round is not taken over; all else stands as it came.
    const isOn = (hash: string, text: string) => {
      const words = expect.stringContaining(text.replaceAll("\u202E", ""));
      expect([hash, shown.get(hash)]).toEqual([hash, words]);
    };
    isOn(routes.specs, texts.spec);
    isOn(routes.spec("hostile"), texts.note);
    isOn(routes.procedures, texts.procedure);
    isOn(routes.cupboard, texts.ingredient);
    isOn(routes.bench, texts.batch);
    isOn(routes.shelf, texts.batch);
    isOn(routes.logbook, texts.reason);
    isOn(routes.batch("run-ended"), texts.reason);
    for (const text of [texts.note, texts.lot, texts.tag, texts.taste, texts.verdict]) {
      isOn(routes.batch("run-made"), text);
    }
    isOn(routes.batch("run-made"), texts.initials.toUpperCase());
  }, 90_000);
}

test("typed: a tag and a spec's name are kept and shown as they were typed", async () => {
  const { page, hands } = bar;
  const file = fileOf(PLAIN);
  await goTo(page, routes.kit);
  await chooseFile(page, file.text);
  await hands.hold(holdOf(page, said.kit.restore.add(file.count)));
  await page.getByText(said.kit.restore.added(file.count)).waitFor();
  await goTo(page, routes.batch("run-made"));
  const tags = said.tasting.tags;
  await page.getByRole("textbox", { name: tags.field, exact: true }).fill(SCRIPT);
  await hands.tap(tapOf(page, tags.add));
  await tapOf(page, tags.takeOff(SCRIPT)).waitFor();
  expect(await madeOfWords(page)).toEqual([]);
  await goTo(page, routes.spec("hostile"));
  // Marks that turn text round are not taken in, and none of the words beside them is lost.
  await page.getByLabel("Name", { exact: true }).fill(`\u202E${IMAGE}\u2066\u200F`);
  expect(await page.getByLabel("Name", { exact: true }).inputValue()).toBe(IMAGE);
  await hands.tap(tapOf(page, "Save"));
  await goTo(page, routes.specs);
  await page.getByText(IMAGE).first().waitFor();
  expect(await madeOfWords(page)).toEqual([]);
});

test("an address made by somebody else leads to words, not to code", async () => {
  const { page } = bar;
  for (const id of [IMAGE, SCRIPT, "%00", "%", "../../x", LONG.repeat(30)]) {
    for (const place of ["run", "spec", "batch", "sums", "hand", "compare", "nowhere"]) {
      await page.evaluate(
        (to) => {
          location.hash = to;
        },
        `#/${place}/${encodeURIComponent(id)}`,
      );
      await expect.poll(() => page.locator(".app-screen").textContent()).not.toBe("");
      expect([place, id, await madeOfWords(page)]).toEqual([place, id, []]);
    }
  }
});

/** The largest step that a file may say, ms. */
const FAR = Number.MAX_SAFE_INTEGER;

test("moments at the end of time, and a clock set by all of it, leave every screen standing", async () => {
  const { page, hands } = bar;
  const waiting = (id: string, at: number) =>
    started(id, id, at, planned(demoSpec("Pear Beacon")))
      .finish({}, 0)
      .finish({ answer: { of: "milk", ml: 1000 } }, 0)
      .finish({}, 0).events;
  const moved = [FAR, -FAR].flatMap((byMs, at) => {
    const log = waiting(`moved-${at}`, OPENS - HOUR);
    const last = log.at(-1);
    const set = { type: "clock.shifted", byMs, keepElapsed: true };
    const hlc = { ms: OPENS, n: FAR };
    return last === undefined
      ? []
      : [...log, { ...last, ...set, hlc, id: `set-${at}`, act: "set" }];
  });
  const late = waiting("late", OPENS).map((event) => ({ ...event, at: LAST_MOMENT }));
  const lines = [...moved, ...late].map((event) => JSON.stringify({ event }));
  await goTo(page, routes.kit);
  await chooseFile(page, fileOfLines(lines));
  await hands.hold(holdOf(page, said.kit.restore.add(lines.length)));
  await page.getByText(said.kit.restore.added(lines.length)).waitFor();
  for (const place of [routes.bench, routes.days, routes.logbook, routes.kit]) {
    await goTo(page, place);
  }
  for (const id of ["moved-0", "moved-1", "late"]) {
    for (const of of [routes.run, routes.batch, routes.sheet, routes.vessel]) {
      await goTo(page, of(id));
    }
  }
  // What is noted in it afterwards is there again at the next start.
  await goTo(page, routes.batch("moved-0"));
  const { tags } = said.tasting;
  await page.getByRole("textbox", { name: tags.field, exact: true }).fill("kept");
  await hands.tap(tapOf(page, tags.add));
  await tapOf(page, tags.takeOff("kept")).waitFor();
  await page.reload();
  await tapOf(page, tags.takeOff("kept")).waitFor();
});
