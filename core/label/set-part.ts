import { type Lines, setLines } from "./set-lines.ts";
import { type Measure, setText } from "./type-width.ts";

/** Something drawn on a label; lengths in mm from the label's top and inline start. */
export type Mark =
  | {
      readonly type: "text";
      readonly x: number;
      /** Of the line the letters stand on. */
      readonly y: number;
      readonly size: number;
      readonly width: number;
      readonly strong: boolean;
      readonly text: string;
    }
  | {
      readonly type: "box" | "rule";
      readonly x: number;
      readonly y: number;
      readonly width: number;
      /** 0 for a rule. */
      readonly height: number;
      /** How thick its line is. */
      readonly line: number;
    }
  | { readonly type: "code"; readonly x: number; readonly y: number; readonly side: number };

/** How a part stands out: the name, a box, rules above and below it, letters alone. */
export type Look = "title" | "boxed" | "barred" | "strong" | "plain";

/** Something a label says. */
export interface Part {
  /** Tells the parts of a label from one another. */
  readonly key: string;
  readonly look: Look;
  /** Said plainly before the text. */
  readonly lead?: string;
  readonly text: string;
  /** Where room is short it may share the line of the part before it. */
  readonly joins?: boolean;
  /** 0 for what may never be left out; of the others the highest goes first. */
  readonly rank: number;
}

/** A part with its place. */
export interface SetPart {
  readonly marks: readonly Mark[];
  readonly height: number;
  /** No word broken, and what is boxed on one line. */
  readonly tidy: boolean;
}

/** What a part is set into: its corner and how wide it is, mm. */
export interface Space {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** How parts are set: the type in mm, and whether nothing is enlarged beyond what it must be. */
export interface Setting {
  readonly type: number;
  readonly close: boolean;
}

/** Multiples of the type size: a line, usually and at the closest, and where its letters stand, capitals with accents above. */
const LINE = 1.2;
const CLOSE_LINE = 1.15;
const FOOT = 0.94;
/** Smallest and largest size of each look, as multiples of the type: one line where it can be. */
const SIZES: Readonly<Record<Look, readonly [least: number, most: number]>> = {
  title: [1.25, 1.8],
  boxed: [1, 1.35],
  barred: [1, 1.1],
  strong: [1, 1],
  plain: [1, 1],
};
const PADDING = 0.3;
const HEAVY = 0.5;
const FINE = 0.25;

/** Its line lies inside what it takes up. */
const boxAround = ({ x, y, width }: Space, height: number): Mark => ({
  type: "box",
  x: x + HEAVY / 2,
  y: y + HEAVY / 2,
  width: width - HEAVY,
  height: height - HEAVY,
  line: HEAVY,
});

function linesAt(part: Part, size: number, width: number, measure: Measure): Lines {
  const { lead, text, look } = part;
  return setLines(
    {
      lead: setText(lead ?? ""),
      text: setText(text),
      strong: look !== "plain" || lead !== undefined,
    },
    width / size,
    measure,
  );
}

/** The largest size at which it stays on one line, within what its look allows. */
function sizeOf(part: Part, { type, close }: Setting, width: number, measure: Measure): number {
  const [least, usual] = SIZES[part.look];
  const most = close ? least : usual;
  const one = linesAt(part, 1, Number.POSITIVE_INFINITY, measure).lines[0]?.at(-1);
  const wide = one === undefined ? 0 : one.x + one.width;
  // A hair less, so that no rounding breaks the line that it was made for.
  const fits = wide === 0 ? most * type : (width / wide) * 0.9999;
  return Math.min(most * type, Math.max(least * type, fits));
}

const marksOf = ({ lines }: Lines, size: number, step: number, { x, y }: Space): readonly Mark[] =>
  lines.flatMap((line, index) =>
    line.map(
      (one): Mark => ({
        type: "text",
        x: x + one.x * size,
        y: y + (index * step + FOOT) * size,
        size,
        width: one.width * size,
        strong: one.strong,
        text: one.text,
      }),
    ),
  );

/** Sets a part: what its look enlarges shrinks to the least that it may be before it is broken. */
export function setPart(part: Part, room: Space, setting: Setting, measure: Measure): SetPart {
  const { x, y, width } = room;
  const { type } = setting;
  const framed = part.look === "boxed";
  const padX = framed ? PADDING * type + HEAVY : 0;
  const padY = (part.look === "barred" ? 0.6 * PADDING * type : 0) + (framed ? padX / 2 : 0);
  const inner = { x: x + padX, y: y + padY, width: width - 2 * padX };
  const size = sizeOf(part, setting, inner.width, measure);
  const lines = linesAt(part, size, inner.width, measure);
  const step = setting.close ? CLOSE_LINE : LINE;
  const height = lines.lines.length * step * size + 2 * padY;
  const rule = (at: number): Mark => ({ type: "rule", x, y: at, width, height: 0, line: FINE });
  const frame: readonly Mark[] =
    part.look === "barred"
      ? [rule(y), rule(y + height)]
      : framed
        ? [boxAround({ x, y, width }, height)]
        : [];
  return {
    marks: [...frame, ...marksOf(lines, size, step, inner)],
    height,
    tidy: !lines.broken && (!framed || lines.lines.length === 1),
  };
}
