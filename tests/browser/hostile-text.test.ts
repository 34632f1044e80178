import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { DAIRY_WASH } from "../../core/method/dairy-wash.ts";
import { CUPBOARD } from "../../core/spec/cupboard-table.ts";
import type { Ingredient } from "../../core/spec/ingredient.ts";
import type { Spec } from "../../core/spec/spec.ts";
import { sticksOut } from "../support/look/readable.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  OPENS,
  openBar,
  startAfresh,
  tapOf,
} from "../support/phone/walk-page.ts";
import { fileOfLines } from "../support/world/backup-file.ts";
import { plannedBatch } from "../support/world/planned-batch.ts";
import { demoSpec, madeWhole, planned, started } from "../support/world/play-run.ts";

const RUNS = "globalThis.ran=1";
const IMAGE = `<img src=x onerror="${RUNS}">`;
const SCRIPT = `<script>${RUNS}</script>`;
const LINK = `javascript:${RUNS}`;
const ENTITY = "&lt;b&gt;&amp;&#60;";
/** Shows what follows it backwards, up to its end; here nothing ends it. */
const BACKWARDS = "\u202Eturned";
const NOTHING = "nul\u0000end";
const LONG = "W".repeat(36);

/** Every string that somebody may bring in, as it stands in a backup: none is longer than it may be. */
interface Texts {
  readonly spec: string;
  readonly ingredient: string;
  readonly procedure: string;
  readonly batch: string;
  readonly glass: string;
  readonly garnish: string;
  readonly note: string;
  readonly reason: string;
  readonly lot: string;
  readonly initials: string;
  readonly tag: string;
  readonly taste: string;
  readonly verdict: string;
}

const all = (text: string, short = "<b>x</b>"): Texts => ({
  ...{ spec: text, ingredient: text, procedure: text, batch: text.slice(0, 40), glass: text },
  ...{ garnish: text, note: text, reason: text, lot: text.slice(0, 60), initials: short },
  ...{ tag: text.slice(0, 40), taste: text.slice(0, 40), verdict: text },
});

const CASES: Readonly<Record<string, Texts>> = {
  "a picture that runs code": all(IMAGE),
  "a script": all(SCRIPT),
  "an address that runs code": all(LINK),
  "markup already made harmless": all(ENTITY, "&amp;"),
  "a word turned round": all(BACKWARDS, "\u202EAB"),
  "a character that ends strings": all(NOTHING, "A\u0000B"),
  "one word without a gap": all(LONG, "W".repeat(8)),
};

const line = (record: object) => JSON.stringify(record);
const gin = CUPBOARD.find(({ id }) => id === "gin-43");

/** A backup with hostile words wherever words may stand: two batches, their spec and all that is its. */
function fileOf(texts: Texts): { readonly text: string; readonly count: number } {
  if (gin === undefined) throw new RangeError("the cupboard has no gin");
  const own: Ingredient = { ...gin, id: "own-gin", name: texts.ingredient };
  const base = demoSpec("Pear Beacon");
  const spec: Spec = {
    ...base,
    id: "hostile",
    name: texts.spec,
    notes: texts.note,
    serve: { ...base.serve, glass: texts.glass, garnish: texts.garnish },
    lines: base.lines.map((one, at) => (at === 0 ? { ...one, ingredientId: own.id } : one)),
    demo: false,
  };
  const plan = planned(spec, undefined, [own]);
  const begun = started("run-made", texts.batch, OPENS - 12 * HOUR, plan)
    .then({ type: "change-hands", initials: texts.initials })
    .then({ type: "note-lot", ingredient: own.id, lot: texts.lot })
    .then({ type: "add-note", text: texts.note });
  const made = madeWhole(begun, { yield: 3700, topUp: 450, useBy: OPENS + 144 * HOUR })
    .then({ type: "note-taste", scores: { clarity: 8 }, words: [texts.taste], by: texts.initials })
    .then({ type: "give-verdict", verdict: "good", repeat: "yes", text: texts.verdict })
    .then({ type: "add-tag", tag: texts.tag });
  const ended = started("run-ended", texts.batch, OPENS - 5 * HOUR, plan).then({
    type: "abandon",
    reason: texts.reason,
  });
  const open = started("run-open", texts.batch, OPENS - HOUR, plan).then({
    type: "add-note",
    text: texts.note,
  });
  const events = [...made.events, ...ended.events, ...open.events];
  const others = [
    { spec },
    { ingredient: own },
    { procedure: { ...DAIRY_WASH, id: "own-wash", name: texts.procedure } },
    { planned: { ...plannedBatch("planned-one", OPENS + 30 * HOUR), plan } },
  ];
  const lines = [...events.map((event) => line({ event })), ...others.map(line)];
  return { text: fileOfLines(lines), count: lines.length };
}

const SCREENS = [
  ...[routes.bench, routes.specs, routes.shelf, routes.logbook, routes.days, routes.procedures],
  ...[routes.cupboard, routes.spec("hostile"), routes.plan("hostile"), routes.services("hostile")],
  ...[routes.ingredient("own-gin"), routes.procedure("own-wash"), routes.run("run-open")],
  ...[routes.vessel("run-open"), routes.dim("run-open"), routes.hand("run~run-open")],
  ...[routes.label("run-made"), routes.sheet("run-made"), routes.batch("run-made")],
  ...[routes.batch("run-ended"), routes.compare(["run-made", "run-ended"]), routes.learnt],
];

let bar: Awaited<ReturnType<typeof openBar>>;
const folder = mkdtempSync(join(tmpdir(), "second-pour-hostile-"));

beforeAll(async () => {
  bar = await openBar({ size: "small" });
});
afterAll(async () => {
  rmSync(folder, { recursive: true });
  await bar.close();
});
beforeEach(async () => {
  bar = await startAfresh(bar);
});
afterEach(() => expect(bar.phone.complaints).toEqual([]));

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
    const path = join(folder, "backup.txt");
    writeFileSync(path, file.text);
    await goTo(page, routes.kit);
    await page.locator('input[type="file"]').setInputFiles(path);
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
  const file = fileOf(all("plain", "AB"));
  const path = join(folder, "backup.txt");
  writeFileSync(path, file.text);
  await goTo(page, routes.kit);
  await page.locator('input[type="file"]').setInputFiles(path);
  await hands.hold(holdOf(page, said.kit.restore.add(file.count)));
  await page.getByText(said.kit.restore.added(file.count)).waitFor();
  await goTo(page, routes.batch("run-made"));
  const tags = said.tasting.tags;
  await page.getByRole("textbox", { name: tags.field, exact: true }).fill(SCRIPT);
  await hands.tap(tapOf(page, tags.add));
  await tapOf(page, tags.takeOff(SCRIPT)).waitFor();
  expect(await madeOfWords(page)).toEqual([]);
  await goTo(page, routes.spec("hostile"));
  await page.getByLabel("Name", { exact: true }).fill(IMAGE);
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
