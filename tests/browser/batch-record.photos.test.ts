import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import { barForTests } from "../support/phone/bar-for-tests.ts";
import { made, runNow } from "../support/phone/made-batch.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  holdOf,
  OPENS,
  pass,
  putLog,
  shot,
  tapOf,
} from "../support/phone/walk-page.ts";

const bar = barForTests({ size: "small" });

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
  await shot(page, "record-photos");
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
