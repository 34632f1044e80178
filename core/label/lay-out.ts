import { edgeOf, type Paper } from "./paper.ts";
import { type Mark, type Part, setPart } from "./set-part.ts";
import type { Measure } from "./type-width.ts";

/** What is to stand on a label. */
export interface Content {
  readonly parts: readonly Part[];
  /** Modules along a side of the code, its quiet edge among them; nothing where there is no code. */
  readonly code?: number;
}

/** A label as it is drawn. */
export interface LaidOut {
  /** Size of the smallest letters, mm. */
  readonly type: number;
  readonly marks: readonly Mark[];
  /** Keys of the parts that were left out for want of room. */
  readonly left: readonly string[];
  /** Whether it carries the code. */
  readonly coded: boolean;
}

/**
 * The smallest type on a label, mm: its small letters are 1.2 mm high.
 *
 * @source Regulation (EU) No 1169/2011, Article 13(2): mandatory particulars have an x-height of at
 *   least 1.2 mm (from memory). The x-height of these letters is 0.523 of their size, as in the width
 *   tables' own head (from memory)
 * @limits other laws ask for more on what is sold in bottles: the volume's figures in the EU, all
 *   that is mandatory in the US. Follow your local code
 */
export const LEAST_TYPE = 2.3;
/** What may be left out is not worth letters as small as that, mm: judgement. */
const COMFORTABLE = 2.6;
const MOST_TYPE = 6;
const STEP = 0.1;

/**
 * The smallest module of a printed code, mm: three dots of a label printer of 8 dots a mm, and more
 * than the 0.33 mm that a phone reads from a hand's length away.
 *
 * @source judgement
 */
export const LEAST_MODULE = 0.375;
const MODULE_STEP = 0.125;
const MOST_MODULE = 0.625;
/** Most of a label's shorter side that a code larger than the smallest may take: judgement. */
const CODE_SHARE = 0.36;

/** Between two parts, as multiples of the type, usually and at the closest; between the code and what stands beside it, mm. */
const GAP = 0.2;
const CLOSE_GAP = 0.1;
const BESIDE = 0.5;

/** Ranks from here on are notes: welcome where there is room, and the first to go. */
export const NOTE_RANK = 3;
/** The code goes after all that may go, for a number can be typed. */
const CODE_RANK = 1;

/** The inside of a label, mm. */
interface Inside {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function insideOf(paper: Paper): Inside {
  const { x, y } = edgeOf(paper);
  return { x, y, width: paper.width - 2 * x, height: paper.height - 2 * y };
}

/** How large a code of so many modules is drawn; nothing where even the smallest has no room. */
function codeSide(modules: number, { width, height }: Inside): number | undefined {
  const most = CODE_SHARE * Math.min(width, height);
  const steps = Math.floor(most / modules / MODULE_STEP);
  const module = Math.min(MOST_MODULE, Math.max(LEAST_MODULE, steps * MODULE_STEP));
  const side = module * modules;
  return side <= height && side <= width / 2 ? side : undefined;
}

interface Attempt {
  readonly marks: readonly Mark[];
  readonly tidy: boolean;
}

/** A way of laying out: where the code stands, and whether the parts move closer together. */
interface Way {
  readonly code: { readonly side: number; readonly at: "beside" | "below" } | undefined;
  readonly close: boolean;
}

/** Parts that may share a line with the one before them do; the dot goes with what follows it. */
function joined(parts: readonly Part[]): readonly Part[] {
  const lines: Part[] = [];
  for (const part of parts) {
    const before = lines.at(-1);
    if (before === undefined || part.joins !== true) lines.push(part);
    else {
      const said = part.lead === undefined ? part.text : `${part.lead} ${part.text}`;
      lines[lines.length - 1] = { ...before, text: `${before.text} ·\u00a0${said}` };
    }
  }
  return lines;
}

/** Where the code stands, what it takes from the lines beside it, and where what it is above ends. */
function codeRoom(code: Way["code"], inside: Inside) {
  const foot = inside.y + inside.height;
  if (code === undefined) return { marks: [], narrowTo: inside.y, taken: 0, foot };
  const { side, at } = code;
  const x = inside.x + inside.width - side;
  const y = at === "beside" ? inside.y : foot - side;
  const marks: readonly Mark[] = [{ type: "code", x, y, side }];
  return at === "beside"
    ? { marks, narrowTo: inside.y + side, taken: side + BESIDE, foot }
    : { marks, narrowTo: inside.y, taken: 0, foot: y - BESIDE };
}

/** The parts one below the other, beside or above the code; nothing where they do not fit. */
function attempt(
  parts: readonly Part[],
  { code, close }: Way,
  inside: Inside,
  type: number,
  measure: Measure,
): Attempt | undefined {
  const { marks: first, narrowTo, taken, foot } = codeRoom(code, inside);
  const gap = (close ? CLOSE_GAP : GAP) * type;
  const marks: Mark[] = [...first];
  let tidy = true;
  let { y } = inside;
  for (const part of close ? joined(parts) : parts) {
    const width = inside.width - (y < narrowTo ? taken : 0);
    const set = setPart(part, { x: inside.x, y, width }, { type, close }, measure);
    marks.push(...set.marks);
    y += set.height + gap;
    tidy &&= set.tidy;
  }
  return y - gap <= foot ? { marks, tidy } : undefined;
}

/** What is on the label when everything above a rank is left out, the fullest first. */
function choices({ parts, code }: Content): readonly { parts: readonly Part[]; code: boolean }[] {
  const ranks = new Set([0, ...parts.map(({ rank }) => rank), ...(code ? [CODE_RANK] : [])]);
  return [...ranks]
    .sort((a, b) => b - a)
    .map((most) => ({
      parts: parts.filter(({ rank }) => rank <= most),
      code: code !== undefined && CODE_RANK <= most,
    }));
}

type Sized = Attempt & { readonly type: number };

/** The largest type at which it all fits, tidily where that can be had. */
function largest(
  inside: Inside,
  least: number,
  tryAt: (type: number) => Attempt | undefined,
): Sized | undefined {
  const smallest = tryAt(least);
  if (smallest === undefined) return undefined;
  const most = Math.min(MOST_TYPE, inside.height / 8, inside.width / 12);
  let untidy: Sized | undefined;
  for (let step = Math.floor((most - least) / STEP); step > 0; step -= 1) {
    const type = least + step * STEP;
    const found = tryAt(type);
    if (found?.tidy) return { ...found, type };
    if (found !== undefined) untidy ??= { ...found, type };
  }
  return smallest.tidy || untidy === undefined ? { ...smallest, type: least } : untidy;
}

/** The ways to try with the code or without it, and without a note for the sake of which all shrinks. */
function waysOf(side: number | undefined, noted: boolean): readonly (readonly Way[])[] {
  const codes: readonly Way["code"][] =
    side === undefined
      ? [undefined]
      : [
          { side, at: "beside" },
          { side, at: "below" },
        ];
  const loose = codes.map((code) => ({ code, close: false }));
  return noted ? [loose] : [loose, codes.map((code) => ({ code, close: true }))];
}

/** The better of two: the tidy one, then the larger; the first of equals. */
const better = (a: Sized | undefined, b: Sized | undefined): Sized | undefined => {
  if (a === undefined || b === undefined) return a ?? b;
  if (a.tidy !== b.tidy) return a.tidy ? a : b;
  return b.type > a.type ? b : a;
};

/** Such a choice of parts and code in the best of its ways. */
function bestOf(
  { parts, code }: ReturnType<typeof choices>[number],
  side: number | undefined,
  inside: Inside,
  measure: Measure,
): Sized | undefined {
  const noted = parts.some(({ rank }) => rank >= NOTE_RANK);
  const least = noted ? COMFORTABLE : LEAST_TYPE;
  for (const ways of waysOf(code ? side : undefined, noted)) {
    const found = ways
      .map((way) => largest(inside, least, (type) => attempt(parts, way, inside, type, measure)))
      .reduce(better);
    if (found !== undefined) return found;
  }
  return undefined;
}

/**
 * Lays out a label: all that must stand on it, and of the rest what finds room. Nothing is ever cut.
 *
 * @param content - in the order in which it stands
 * @returns nothing where what must stand on it does not fit at the smallest type
 */
export function layOut(content: Content, paper: Paper, measure: Measure): LaidOut | undefined {
  const inside = insideOf(paper);
  const side = content.code === undefined ? undefined : codeSide(content.code, inside);
  const all = side === undefined ? { parts: content.parts } : content;
  for (const choice of choices(all)) {
    const found = bestOf(choice, side, inside, measure);
    if (found === undefined) continue;
    const { type, marks } = found;
    const left = content.parts.filter((part) => !choice.parts.includes(part));
    return { type, marks, left: left.map(({ key }) => key), coded: choice.code };
  }
  return undefined;
}
