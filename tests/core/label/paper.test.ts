import { expect, test } from "vitest";
import {
  edgeOf,
  labelsOn,
  PAPERS,
  pageOf,
  paperOf,
  placeOf,
  places,
} from "../../../core/label/paper.ts";

const all = PAPERS.map((paper) => [paper.id, paper] as const);

// ISO 216: A4 is 210 mm × 297 mm. The letter sheet is 8.5 in × 11 in of 25.4 mm.
test.each(all)("%s: its page is a roll's label, an A4 or a letter sheet", (id, paper) => {
  const page = pageOf(paper);
  if (id.startsWith("a4")) expect(page).toEqual({ width: 210, height: 297 });
  else if (id.startsWith("letter")) {
    expect(page.width).toBeCloseTo(215.9, 9);
    expect(page.height).toBeCloseTo(279.4, 9);
  } else expect(page).toEqual({ width: paper.width, height: paper.height });
});

test.each(all)("%s: the labels lie on the page, none on another", (_, paper) => {
  const page = pageOf(paper);
  const boxes = Array.from({ length: labelsOn(paper) }, (_, at) => placeOf(paper, at));
  for (const [index, { x, y }] of boxes.entries()) {
    expect(x).toBeGreaterThanOrEqual(-1e-9);
    expect(y).toBeGreaterThanOrEqual(-1e-9);
    expect(x + paper.width).toBeLessThanOrEqual(page.width + 1e-9);
    expect(y + paper.height).toBeLessThanOrEqual(page.height + 1e-9);
    for (const other of boxes.slice(index + 1)) {
      const apart =
        Math.abs(other.x - x) >= paper.width - 1e-9 || Math.abs(other.y - y) >= paper.height - 1e-9;
      expect(apart).toBe(true);
    }
  }
});

// By hand: A4 less seven rows of 38.1 mm leaves 30.3 mm; less two of 99.1 mm and 2.5 mm, 9.3 mm.
// The letter sheets in inches: margins of 1/2 in above, 3/16 in and 5/32 in beside.
test.each([
  ["a4-2x7", 4.65, 15.15],
  ["a4-3x8", 0, 0.5],
  ["letter-2x5", 25.4 * (5 / 32), 12.7],
  ["letter-3x10", 25.4 * (3 / 16), 12.7],
])("%s begins %f mm from the side and %f mm from the top", (id, x, y) => {
  const first = placeOf(paperOf(id), 0);
  expect(first.x).toBeCloseTo(x, 6);
  expect(first.y).toBeCloseTo(y, 6);
});

test.each(all)(
  "%s: what is printed stays 4.3 mm inside a sheet, 1.5 mm inside a roll",
  (_, paper) => {
    const edge = edgeOf(paper);
    const page = pageOf(paper);
    const free = paper.sheet === undefined ? 1.5 : 4.3;
    const [first, last] = [placeOf(paper, 0), placeOf(paper, labelsOn(paper) - 1)];
    for (const room of [
      first.x + edge.x,
      first.y + edge.y,
      page.width - last.x - paper.width + edge.x,
      page.height - last.y - paper.height + edge.y,
    ]) {
      expect(room).toBeGreaterThanOrEqual(free - 1e-9);
    }
  },
);

test("labels go on from the first free place, then on the next sheet", () => {
  const sheet = paperOf("letter-2x5");
  expect(places(sheet, 3, 8)).toEqual([
    { page: 0, at: 8 },
    { page: 0, at: 9 },
    { page: 1, at: 0 },
  ]);
  expect(places(paperOf("roll-50x25"), 2, 5)).toEqual([
    { page: 0, at: 0 },
    { page: 1, at: 0 },
  ]);
  expect(places(sheet, 1, 99)).toEqual([{ page: 0, at: 0 }]);
  expect(places(sheet, 0, 0)).toEqual([]);
});

test("a paper that is not known counts as the first", () => {
  expect(paperOf("from-elsewhere")).toBe(PAPERS[0]);
  expect(new Set(PAPERS.map(({ id }) => id)).size).toBe(PAPERS.length);
});

test.each([-1, 10, 0.5])("place %f of ten is refused", (at) => {
  expect(() => placeOf(paperOf("letter-2x5"), at)).toThrow(RangeError);
});
