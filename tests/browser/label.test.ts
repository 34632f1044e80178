import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { routes } from "../../app/routes.ts";
import {
  labelsOn,
  PAPERS,
  type Paper,
  pageOf,
  paperOf,
  placeOf,
  places,
} from "../../core/label/paper.ts";
import { ALLERGENS } from "../../core/spec/allergen-table.ts";
import {
  codesIn,
  drawPiece,
  needPaperTools,
  pagesIn,
  wordsIn,
} from "../support/look/paper-tools.ts";
import { axeFinds, cutOff, faintWords, sticksOut } from "../support/look/readable.ts";
import { SIZES } from "../support/phone/browser.ts";
import { said } from "../support/phone/said.ts";
import {
  goTo,
  HOUR,
  OPENS,
  openBar,
  putLog,
  shot,
  startAfresh,
  tapOf,
} from "../support/phone/walk-page.ts";
import { demoSpec, madeWhole, planned, started } from "../support/world/play-run.ts";

const words = said.label;
const BATCH = "PB-1003";
const RUN = "run-label";
const LONG = "The Harbour Master's Clarified Pear & Smoked Chamomile Beacon, the Winter Pour";

let bar: Awaited<ReturnType<typeof openBar>>;
let folder = "";

beforeAll(async () => {
  needPaperTools();
  folder = mkdtempSync(join(tmpdir(), "second-pour-label-"));
  bar = await openBar({ size: "small" });
}, 300_000);
afterAll(async () => {
  await bar.close();
  rmSync(folder, { recursive: true, force: true });
});
afterEach(() => expect(bar.phone.complaints).toEqual([]));

/** A bottled batch on an empty phone, at its label. */
async function openLabel({
  name = "Pear Beacon",
  allergens = false,
  prepare = () => undefined,
}: {
  readonly name?: string;
  readonly allergens?: boolean;
  readonly prepare?: () => void;
} = {}): Promise<Page> {
  bar = await startAfresh(bar, prepare);
  const plan = planned({ ...demoSpec("Pear Beacon"), name });
  const ingredients = plan.ingredients.map((one, at) =>
    allergens && at === 0 ? { ...one, allergens: [...ALLERGENS] } : one,
  );
  const { events } = madeWhole(started(RUN, BATCH, OPENS - 12 * HOUR, { ...plan, ingredients }), {
    yield: 3700,
    topUp: 450,
    useBy: OPENS + 6 * 24 * HOUR,
  });
  await putLog(bar, events, routes.label(RUN), OPENS);
  await bar.page.locator(".label-acts").waitFor();
  return bar.page;
}

async function choose(page: Page, id: string): Promise<void> {
  const field = page.getByLabel(words.paper, { exact: true });
  await field.selectOption(id);
  const { width, height } = paperOf(id);
  await page
    .locator(`.label-card[viewBox="0 0 ${width * 10} ${height * 10}"], .label [role="alert"]`)
    .first()
    .waitFor();
}

/** Presses a button that hands over a file, and keeps the file. */
async function kept(page: Page, button: string, as: string): Promise<string> {
  const coming = page.waitForEvent("download");
  await bar.hands.tap(tapOf(page, button));
  const path = join(folder, as);
  await (await coming).saveAs(path);
  return path;
}

async function printed(page: Page, as: string): Promise<string> {
  const path = join(folder, as);
  await page.pdf({ path, preferCSSPageSize: true });
  return path;
}

/** The size of a PNG and its dots a metre, read as the PNG specification lays them down. */
function pngHead(path: string) {
  const bytes = readFileSync(path);
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const letters = [...bytes.subarray(0, 200)].map((byte) => String.fromCharCode(byte)).join("");
  const at = letters.indexOf("pHYs");
  return {
    width: view.getUint32(16),
    height: view.getUint32(20),
    dots: [view.getUint32(at + 4), view.getUint32(at + 8)],
    unit: bytes[at + 12],
    beforeData: at > 0 && at < letters.indexOf("IDAT"),
  };
}

/** What the codes of so many labels say, each looked at by itself, the first at a place from 0. */
const codesOn = (file: string, paper: Paper, count: number, first = 0): readonly string[][] =>
  places(paper, count, first).map(({ page, at }) => {
    const piece = { ...placeOf(paper, at), width: paper.width, height: paper.height };
    return [...codesIn(drawPiece(file, page + 1, piece))];
  });

/** The smallest has room for what it must say, and none for a code. */
const coded = (id: string): boolean => id !== "roll-50x25";

test.each(PAPERS.map(({ id }) => id))(
  "%s: printed, as a PDF and as a picture it is that large, and the code says the batch",
  async (id) => {
    const page = await openLabel();
    await choose(page, id);
    const paper = paperOf(id);
    const each = Math.min(6, labelsOn(paper));
    const count = 6 / each;
    const code = coded(id) ? [BATCH] : [];

    const print = pagesIn(await printed(page, `${id}-print.pdf`));
    const pdf = pagesIn(await kept(page, words.sharePdf, `${id}.pdf`));
    for (const [pages, near] of [
      [print, 0.3],
      [pdf, 0.01],
    ] as const) {
      expect(pages).toHaveLength(count);
      for (const { width, height } of pages) {
        // A browser rounds a page to its own dots.
        expect(Math.abs(width - pageOf(paper).width)).toBeLessThan(near);
        expect(Math.abs(height - pageOf(paper).height)).toBeLessThan(near);
      }
    }
    for (const file of [`${id}-print.pdf`, `${id}.pdf`]) {
      expect(codesOn(join(folder, file), paper, 6)).toEqual(Array.from({ length: 6 }, () => code));
    }

    const png = await kept(page, words.sharePng, `${id}.png`);
    const head = pngHead(png);
    expect(head).toMatchObject({ dots: [11811, 11811], unit: 1, beforeData: true });
    expect(Math.abs(head.width / 11.811 - paper.width)).toBeLessThan(0.05);
    expect(Math.abs(head.height / 11.811 - paper.height)).toBeLessThan(0.05);
    expect(codesIn(png)).toEqual(code);

    // What is seen on the screen, and what the print view shows, is the same label.
    // On a short screen its foot lies under what is pinned there, until it is scrolled up.
    await page.setViewportSize({ ...SIZES.small, height: 1400 });
    await page.locator(".label-card").screenshot({ path: join(folder, `${id}-screen.png`) });
    expect(codesIn(join(folder, `${id}-screen.png`))).toEqual(code);
    // A phone's screen is narrower than a sheet: it would be shown in small.
    await page.setViewportSize({ width: 1000, height: 1200 });
    await page.emulateMedia({ media: "print" });
    const view = join(folder, `${id}-view.png`);
    await page.locator(".label-card-page g").first().screenshot({ path: view });
    expect(codesIn(view)).toEqual(code);
    await page.setViewportSize(SIZES.small);
    await page.emulateMedia({ media: "screen" });
  },
  120_000,
);

/** What of a label on the screen sticks out of it or lies on another: by the letters' own boxes. */
const crowded = (page: Page): Promise<string[]> =>
  page.locator(".label-card").evaluate((card) => {
    if (!(card instanceof SVGSVGElement)) return ["no label"];
    const { width, height } = card.viewBox.baseVal;
    const texts = [...card.querySelectorAll("text")].map((one) => {
      const { x, width: wide } = one.getBBox();
      const size = Number(one.getAttribute("font-size"));
      const foot = Number(one.getAttribute("y"));
      // A line's box has room above it; the letters themselves go from the accents to the tails.
      const box = { left: x, right: x + wide, top: foot - 0.93 * size, foot: foot + 0.21 * size };
      return { says: one.textContent ?? "", ...box };
    });
    const code = card.querySelector(".label-card-code");
    if (code instanceof SVGGraphicsElement) {
      const seen = code.getBoundingClientRect();
      const all = card.getBoundingClientRect();
      const scale = width / all.width;
      texts.push({
        says: "code",
        left: (seen.left - all.left) * scale,
        right: (seen.right - all.left) * scale,
        top: (seen.top - all.top) * scale,
        foot: (seen.bottom - all.top) * scale,
      });
    }
    const hair = 0.5;
    return texts.flatMap((one, at) => [
      ...(one.left < 0 || one.top < 0 || one.right > width || one.foot > height
        ? [`sticks out: ${one.says}`]
        : []),
      ...texts
        .slice(at + 1)
        .filter(
          (other) =>
            one.right > other.left + hair &&
            other.right > one.left + hair &&
            one.foot > other.top + hair &&
            other.foot > one.top + hair,
        )
        .map((other) => `${one.says} lies on ${other.says}`),
    ]);
  });

/** Some papers have no room for so much. */
const TOO_SMALL = ["roll-50x25", "roll-57x32", "letter-3x10"];

test("a long name and every allergen: whole on each paper, or refused with one that has room", async () => {
  const page = await openLabel({ name: LONG, allergens: true });
  const spoken = words.contains(ALLERGENS).replace(/[,\s]/gu, "");
  const refused: string[] = [];
  for (const paper of PAPERS) {
    await choose(page, paper.id);
    if ((await page.locator(".label-card").count()) === 0) {
      refused.push(paper.id);
      expect(await tapOf(page, words.print).count()).toBe(0);
      continue;
    }
    expect([paper.id, await crowded(page)]).toEqual([paper.id, []]);
    const shown = (await page.locator(".label-card").textContent()) ?? "";
    const bare = shown.replace(/[,\s]/gu, "");
    expect(bare).toContain(spoken);
    expect(bare).toContain(LONG.replace(/[,\s]/gu, ""));

    const file = await kept(page, words.sharePdf, `long-${paper.id}.pdf`);
    const found = wordsIn(file);
    const page1 = pageOf(paper);
    const out = found.filter(
      (one) => one.left < 0 || one.top < 0 || one.right > page1.width || one.foot > page1.height,
    );
    expect(out).toEqual([]);
    const text = found
      .map((one) => one.text)
      .join("")
      .replace(/[,\s]/gu, "");
    expect(text).toContain(spoken);
    expect(text).toContain(LONG.replace(/[,\s]/gu, ""));
  }
  expect(refused.sort()).toEqual([...TOO_SMALL].sort());

  // Refused, it offers one that has room, and keeps what was chosen otherwise.
  await choose(page, "roll-50x25");
  await page.getByText(words.tooSmall(words.papers["roll-50x25"] ?? "")).waitFor();
  await shot(page, "label-refused");
  await bar.hands.tap(page.locator(".label-one .tap-button").first());
  await page.locator(".label-card").waitFor();
}, 120_000);

test("letters that no PDF's own fonts have: the label is held as a picture, at the same size", async () => {
  const page = await openLabel({ name: "梨の灯 ½ Łódź" });
  await choose(page, "a4-2x7");
  await page.getByText(words.asPicture).waitFor();
  const file = await kept(page, words.sharePdf, "picture.pdf");
  const [only] = pagesIn(file);
  expect(only?.width).toBeCloseTo(210, 1);
  expect(only?.height).toBeCloseTo(297, 1);
  expect(wordsIn(file)).toEqual([]);
  expect(codesOn(file, paperOf("a4-2x7"), 6)).toEqual(Array.from({ length: 6 }, () => [BATCH]));
});

test("é, ñ, ½, ° and µ are text in the PDF", async () => {
  const page = await openLabel({ name: "Crème de Piña ½ 20 °C 5 µm (é\\n)" });
  await choose(page, "roll-102x152");
  expect(await page.getByText(words.asPicture).count()).toBe(0);
  const found = wordsIn(await kept(page, words.sharePdf, "accents.pdf"));
  const text = found.map((one) => one.text).join(" ");
  expect(text).toContain("Crème de Piña ½ 20 °C 5 µm (é\\n)");
});

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
