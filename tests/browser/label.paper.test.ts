import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { labelsOn, PAPERS, pageOf, paperOf } from "../../core/label/paper.ts";
import { ALLERGENS } from "../../core/spec/allergen-table.ts";
import { crowded } from "../support/look/crowded.ts";
import { codesIn, codesOn, pagesIn, wordsIn } from "../support/look/paper-tools.ts";
import { SIZES } from "../support/phone/browser.ts";
import { BATCH, labelForTests } from "../support/phone/label-for-tests.ts";
import { said } from "../support/phone/said.ts";
import { shot, tapOf } from "../support/phone/walk-page.ts";

const words = said.label;
const LONG = "The Harbour Master's Clarified Pear & Smoked Chamomile Beacon, the Winter Pour";

const { bar, openLabel, choose, kept, printed, pathOf } = labelForTests();

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
      expect(codesOn(pathOf(file), paper, 6)).toEqual(Array.from({ length: 6 }, () => code));
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
    await page.locator(".label-card").screenshot({ path: pathOf(`${id}-screen.png`) });
    expect(codesIn(pathOf(`${id}-screen.png`))).toEqual(code);
    // A phone's screen is narrower than a sheet: it would be shown in small.
    await page.setViewportSize({ width: 1000, height: 1200 });
    await page.emulateMedia({ media: "print" });
    const view = pathOf(`${id}-view.png`);
    await page.locator(".label-card-page g").first().screenshot({ path: view });
    expect(codesIn(view)).toEqual(code);
    await page.setViewportSize(SIZES.small);
    await page.emulateMedia({ media: "screen" });
  },
  120_000,
);

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
