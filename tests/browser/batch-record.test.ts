import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import { mergeEvents } from "../../core/run/order.ts";
import { faultsOf } from "../support/look/readable.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  OPENS,
  pass,
  putLog,
  shot,
  storedLog,
  tapOf,
} from "../support/phone/walk-page.ts";
import { dripped, madeWhole, type Played, started } from "../support/world/play-run.ts";

const words = said.tasting;

const bar = barForTests({ size: "small" });

const waiting = dripped(started("run-a", "PB-1", OPENS - 12 * HOUR));
const made = madeWhole(started("run-a", "PB-1", OPENS - 12 * HOUR), {
  yield: 3700,
  topUp: 450,
  useBy: OPENS + 6 * 24 * HOUR,
});

const runNow = async (page: Page) => {
  const run = foldRun(await storedLog(page));
  if (run === undefined) throw new RangeError("the run is stored");
  return run;
};

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

/**
 * Hands a picture to a chooser as a camera would: 2,400 by 1,200, its left half red, held so that it
 * is to be turned by a quarter (Exif orientation 6), with a place written into it.
 */
async function giveCameraPicture(page: Page, nth: number): Promise<void> {
  await page
    .locator(".batch-pick input")
    .nth(nth)
    .evaluate(async (input) => {
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [2400, 1200];
      const pen = canvas.getContext("2d");
      if (pen === null || !(input instanceof HTMLInputElement)) throw new RangeError("no canvas");
      pen.fillStyle = "white";
      pen.fillRect(0, 0, 2400, 1200);
      pen.fillStyle = "red";
      pen.fillRect(0, 0, 1200, 1200);
      const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg"));
      const plain = new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0));
      const text = (words: string) => [...words].map((letter) => letter.charCodeAt(0));
      // Big-endian TIFF with one entry: tag 0x0112, a short, once, 6.
      const exif = [
        ...text("Exif\0\0MM\0*"),
        ...[0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0],
        ...text("PLACE 51.5N 0.1W"),
      ];
      const length = exif.length + 2;
      const head = [0xff, 0xd8, 0xff, 0xe1, length >> 8, length & 255, ...exif];
      const whole = new File([new Uint8Array(head), plain.slice(2)], "IMG_1.jpg", {
        type: "image/jpeg",
      });
      const hand = new DataTransfer();
      hand.items.add(whole);
      input.files = hand.files;
      input.dispatchEvent(new Event("change", { bubbles: true }));
    });
}

/** What is stored of pictures: size, whether camera words are in it, and the colour at its top. */
const storedPhotos = (page: Page) =>
  page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open("second-pour");
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => resolve(opening.result);
    });
    const all = await new Promise<
      { bytes: ArrayBuffer; type: string; width: number; height: number }[]
    >((resolve, reject) => {
      const asked = db.transaction("photos").objectStore("photos").getAll();
      asked.onerror = () => reject(asked.error);
      asked.onsuccess = () => resolve(asked.result);
    });
    db.close();
    return Promise.all(
      all.map(async ({ bytes, type, width, height }) => {
        const bitmap = await createImageBitmap(new Blob([bytes], { type }));
        const canvas = document.createElement("canvas");
        [canvas.width, canvas.height] = [bitmap.width, bitmap.height];
        const pen = canvas.getContext("2d");
        pen?.drawImage(bitmap, 0, 0);
        const at = (y: number) => [...(pen?.getImageData(bitmap.width / 2, y, 1, 1).data ?? [])];
        const text = new TextDecoder("latin1").decode(bytes);
        return {
          type,
          size: [width, height],
          drawn: [bitmap.width, bitmap.height],
          camera: text.includes("Exif") || text.includes("PLACE"),
          redAtTop: (at(20)[1] ?? 255) < 60,
          redAtFoot: (at(bitmap.height - 20)[1] ?? 255) < 60,
        };
      }),
    );
  });

test("a photo is made small and upright, loses its place, is shown large, removed and brought back", async () => {
  await bar.afresh();
  const { page, hands } = bar;
  await putLog(bar, made.events, routes.batch("run-a"), OPENS);
  await page.getByText(said.photos.none).waitFor();
  const inputs = page.locator(".batch-pick input");
  expect(await inputs.evaluateAll((all) => all.map((one) => one.getAttribute("capture")))).toEqual([
    "environment",
    null,
  ]);
  await giveCameraPicture(page, 0);
  await page.locator(".batch-photo img").waitFor();
  expect(await storedPhotos(page)).toEqual([
    {
      type: "image/jpeg",
      size: [800, 1600],
      drawn: [800, 1600],
      camera: false,
      redAtTop: true,
      redAtFoot: false,
    },
  ]);
  const run = await runNow(page);
  expect(run.photos).toMatchObject([{ width: 800, height: 1600, media: "image/jpeg" }]);
  await page.locator(".batch-photo").click();
  await page.locator(".batch-large img").waitFor();
  await shotAt(page, said.photos.title, "record-photos");
  await goTo(page, routes.kit);
  await page.getByText(/^1 photo, \d+ kB$/u).waitFor();
  await goTo(page, routes.batch("run-a"));
  await page.locator(".batch-photo img").waitFor();
  await page.locator(".batch-photo").click();
  await hands.hold(holdOf(page, said.photos.remove));
  await page.getByText(said.photos.none).waitFor();
  await hands.tap(tapOf(page, said.places.undo));
  await page.locator(".batch-photo img").waitFor();

  // Removed for good: an hour later the picture itself is gone.
  await page.locator(".batch-photo").click();
  await hands.hold(holdOf(page, said.photos.remove));
  await page.getByText(said.photos.none).waitFor();
  await pass(page, 2 * HOUR);
  await goTo(page, routes.shelf);
  await goTo(page, routes.batch("run-a"));
  await page.waitForFunction(
    () =>
      new Promise((resolve) => {
        const opening = indexedDB.open("second-pour");
        opening.onsuccess = () => {
          const count = opening.result.transaction("photos").objectStore("photos").count();
          count.onsuccess = () => {
            opening.result.close();
            resolve(count.result === 0);
          };
        };
      }),
  );
});

test("what is no picture is refused, and changes nothing", async () => {
  await bar.afresh();
  const { page } = bar;
  await putLog(bar, made.events, routes.batch("run-a"), OPENS);
  await page.getByText(said.photos.none).waitFor();
  await page
    .locator(".batch-pick input")
    .nth(1)
    .evaluate((input) => {
      const hand = new DataTransfer();
      hand.items.add(new File(["no picture"], "a.jpg", { type: "image/jpeg" }));
      if (input instanceof HTMLInputElement) input.files = hand.files;
      input.dispatchEvent(new Event("change", { bubbles: true }));
    });
  await page.getByText(/^This file is not a picture/u).waitFor();
  expect(await storedPhotos(page)).toEqual([]);
  expect((await runNow(page)).photos).toEqual([]);
});
