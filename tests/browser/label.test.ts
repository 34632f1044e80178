import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { paperOf } from "../../core/label/paper.ts";
import { crowded } from "../support/look/crowded.ts";
import { codesOn, pagesIn, wordsIn } from "../support/look/paper-tools.ts";
import { axeFinds, cutOff, faintWords, sticksOut } from "../support/look/readable.ts";
import { BATCH, labelForTests, RUN } from "../support/phone/label-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { goTo, shot, tapOf } from "../support/phone/walk-page.ts";

const words = said.label;

const { bar, openLabel, choose, kept, printed } = labelForTests();

/** The first place, as the phone has stored it. */
const storedFrom = (page: Page): Promise<unknown> =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open("second-pour");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const stored = db.transaction("settings").objectStore("settings").get("settings");
          stored.onsuccess = () => {
            db.close();
            resolve(stored.result?.labelFrom);
          };
        };
      }),
  );

test("paper, number and first place are remembered, and the sheet begins there", async () => {
  const page = await openLabel();
  const { hands } = bar;
  await choose(page, "a4-3x8");
  await hands.tap(page.getByRole("radio", { name: words.copiesNumber }));
  for (let more = 1; more < 4; more += 1) await hands.tap(tapOf(page, words.more));
  for (let more = 1; more < 23; more += 1) await hands.tap(tapOf(page, words.later));
  await page.getByText(words.sheetMap(4, 2, 23)).waitFor();
  const file = await printed(page, "from-23.pdf");
  expect(pagesIn(file)).toHaveLength(2);
  expect(codesOn(file, paperOf("a4-3x8"), 4, 22)).toEqual(Array.from({ length: 4 }, () => [BATCH]));
  await expect.poll(() => storedFrom(page)).toBe(23);
  await page.reload();
  await page.getByText(words.sheetMap(4, 2, 23)).waitFor();
  // On the first sheet both stand in the last row: nothing above it is printed on.
  const places = wordsIn(file);
  expect(places.length).toBeGreaterThan(10);
  expect(Math.min(...places.map(({ top }) => top))).toBeGreaterThan(0.5 + 7 * 37);
});

test("the serve card prints too: pour, water, glass and garnish", async () => {
  const page = await openLabel();
  await bar.hands.tap(page.getByRole("radio", { name: words.kinds.serve }));
  await choose(page, "roll-62x100");
  expect(await crowded(page)).toEqual([]);
  const file = await kept(page, words.sharePdf, "serve.pdf");
  const text = wordsIn(file)
    .map((one) => one.text)
    .join(" ");
  for (const part of ["Pour 85 ml", "Stir on ice", "Garnish Thin slice of pear", "Contains MILK"]) {
    expect(text).toContain(part);
  }
  expect(codesOn(file, paperOf("roll-62x100"), 1)).toEqual([[BATCH]]);
});

test("readable in both themes, on both phones; nothing is cut", async () => {
  const page = await openLabel();
  const found: Record<string, string[]> = {};
  for (const [width, height] of [
    [360, 640],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const colorScheme of ["dark", "light"] as const) {
      await page.emulateMedia({ colorScheme });
      for (const id of ["roll-62x100", "letter-3x10"]) {
        await choose(page, id);
        await shot(page, `label-${id}-${width}-${colorScheme}`);
        const seen = [
          ...(await sticksOut(page)),
          ...(await cutOff(page)),
          ...(await faintWords(page)),
          ...(await axeFinds(page)),
        ];
        if (seen.length > 0) found[`${id}, ${width}, ${colorScheme}`] = seen;
      }
    }
  }
  expect(found).toEqual({});
});

/** A camera that sees what the test holds before it. */
const withCamera = () => {
  const canvas = document.createElement("canvas");
  canvas.width = 640;
  canvas.height = 480;
  const pen = canvas.getContext("2d");
  pen?.fillRect(0, 0, 640, 480);
  const stream = canvas.captureStream(30);
  Object.defineProperty(navigator, "mediaDevices", {
    value: { getUserMedia: () => Promise.resolve(stream) },
  });
  Reflect.set(globalThis, "seen", async (png: readonly number[]) => {
    const picture = new Image();
    picture.src = URL.createObjectURL(new Blob([Uint8Array.from(png)]));
    await picture.decode();
    pen?.drawImage(picture, 20, 40, 600, (600 * picture.naturalHeight) / picture.naturalWidth);
  });
};

test("held before the camera in Kit, the label opens its batch", async () => {
  const page = await openLabel({ prepare: withCamera });
  await choose(page, "roll-102x51");
  const png = readFileSync(await kept(page, words.sharePng, "seen.png"));
  await goTo(page, routes.kit);
  await bar.hands.tap(tapOf(page, said.handing.take.open));
  await page.getByText(said.handing.take.looking).waitFor();
  await page.evaluate((bytes) => Reflect.get(globalThis, "seen")(bytes), [...png]);
  for (let turn = 0; turn < 100 && !page.url().endsWith(routes.batch(RUN)); turn += 1) {
    await page.clock.runFor(120);
  }
  expect(page.url().endsWith(routes.batch(RUN))).toBe(true);
});
