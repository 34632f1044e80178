/** A sheet that carries several labels; all lengths in mm. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly across: number;
  readonly down: number;
  /** Between two columns and between two rows. */
  readonly gapX: number;
  readonly gapY: number;
}

/** What a label is printed on; all lengths in mm. */
export interface Paper {
  readonly id: string;
  /** Of one label. */
  readonly width: number;
  readonly height: number;
  /** Nothing on a roll, where each label is a page of its own. */
  readonly sheet?: Sheet;
}

const INCH = 25.4;
const A4 = { width: 210, height: 297 } as const;
const LETTER = { width: 8.5 * INCH, height: 11 * INCH } as const;

/**
 * The sizes of paper that labels are printed on.
 *
 * @source A4 is ISO 216; the letter sheet, and the label sizes in inches, by the inch of 25.4 mm.
 *   Which sizes are common, and the gaps between the labels of a sheet: common practice, no source
 * @limits sheets are taken to be centred on their page, as those here are; a printer may be out by
 *   a millimetre or two, which the edge left free on each label allows for
 */
export const PAPERS: readonly [Paper, ...Paper[]] = [
  { id: "roll-62x100", width: 62, height: 100 },
  { id: "roll-102x152", width: 4 * INCH, height: 6 * INCH },
  { id: "roll-102x51", width: 4 * INCH, height: 2 * INCH },
  { id: "roll-57x32", width: 57, height: 32 },
  { id: "roll-50x25", width: 50, height: 25 },
  {
    id: "a4-2x7",
    width: 99.1,
    height: 38.1,
    sheet: { ...A4, across: 2, down: 7, gapX: 2.5, gapY: 0 },
  },
  { id: "a4-3x8", width: 70, height: 37, sheet: { ...A4, across: 3, down: 8, gapX: 0, gapY: 0 } },
  {
    id: "letter-2x5",
    width: 4 * INCH,
    height: 2 * INCH,
    sheet: { ...LETTER, across: 2, down: 5, gapX: INCH * (3 / 16), gapY: 0 },
  },
  {
    id: "letter-3x10",
    width: INCH * 2.625,
    height: INCH,
    sheet: { ...LETTER, across: 3, down: 10, gapX: INCH / 8, gapY: 0 },
  },
];

/** The paper with an id; the first where there is none of that id. */
export const paperOf = (id: string): Paper => PAPERS.find((paper) => paper.id === id) ?? PAPERS[0];

/** How many labels a page carries. */
export const labelsOn = ({ sheet }: Paper): number =>
  sheet === undefined ? 1 : sheet.across * sheet.down;

/** The page that a printer is given, mm. */
export const pageOf = ({ sheet, width, height }: Paper) => ({
  width: sheet?.width ?? width,
  height: sheet?.height ?? height,
});

const marginOf = (page: number, count: number, size: number, gap: number): number =>
  (page - count * size - (count - 1) * gap) / 2;

/**
 * Where a label of a sheet stands.
 *
 * @param at - from 0, along the first row, then the next
 * @returns its corner from the page's top and inline start, mm
 * @throws RangeError when the page has no such place
 * @example
 * placeOf(paperOf("a4-2x7"), 3).y // => 53.25 ± 0.001
 */
export function placeOf(paper: Paper, at: number): { readonly x: number; readonly y: number } {
  if (!Number.isInteger(at) || at < 0 || at >= labelsOn(paper)) {
    throw new RangeError(`place must be one of ${labelsOn(paper)}, from 0, got ${at}`);
  }
  const { sheet, width, height } = paper;
  if (sheet === undefined) return { x: 0, y: 0 };
  const left = marginOf(sheet.width, sheet.across, width, sheet.gapX);
  const top = marginOf(sheet.height, sheet.down, height, sheet.gapY);
  return {
    x: left + (at % sheet.across) * (width + sheet.gapX),
    y: top + Math.floor(at / sheet.across) * (height + sheet.gapY),
  };
}

/** What printers leave free at the edge of a roll's label and of a sheet, mm: judgement. */
const ROLL_EDGE = 1.5;
const SHEET_EDGE = 4.3;

/**
 * The edge of each label that stays free, mm: what a printer cannot reach or may be out by.
 *
 * @source judgement: desk printers leave 3 to 4.2 mm of a sheet free, label printers 1 to 2 mm
 */
export function edgeOf(paper: Paper): { readonly x: number; readonly y: number } {
  const corner = placeOf(paper, 0);
  if (paper.sheet === undefined) return { x: ROLL_EDGE, y: ROLL_EDGE };
  return {
    x: Math.max(ROLL_EDGE, SHEET_EDGE - corner.x),
    y: Math.max(ROLL_EDGE, SHEET_EDGE - corner.y),
  };
}

/** A place on a page; both from 0. */
export interface Placed {
  readonly page: number;
  readonly at: number;
}

/**
 * Where so many labels go, one after another, on as many pages as they take.
 *
 * @param first - place of the first one on its sheet, from 0; the ones before it were used up. A
 *   place that the sheet does not have counts as the first
 */
export function places(paper: Paper, count: number, first: number): readonly Placed[] {
  const each = labelsOn(paper);
  const from = first >= 0 && first < each ? Math.floor(first) : 0;
  return Array.from({ length: count }, (_, index) => ({
    page: Math.floor((from + index) / each),
    at: (from + index) % each,
  }));
}
