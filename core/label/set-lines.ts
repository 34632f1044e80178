import type { Measure } from "./type-width.ts";

/** Some words set alike; x and width as multiples of the type size. */
export interface Stretch {
  readonly text: string;
  readonly strong: boolean;
  readonly x: number;
  readonly width: number;
}

/** Lines as they are set; `broken` where a word was too long for one. */
export interface Lines {
  readonly lines: readonly (readonly Stretch[])[];
  readonly broken: boolean;
}

interface Word {
  readonly text: string;
  readonly strong: boolean;
}

/** A letter with the marks on it is never taken apart. */
const LETTERS = /\P{Mark}\p{Mark}*/gu;

/** A word cut into pieces that fit a line; a single letter always counts as fitting. */
function piecesOf(word: Word, width: number, measure: Measure): readonly Word[] {
  if (measure(word.text, word.strong) <= width) return [word];
  const pieces: Word[] = [];
  let text = "";
  for (const letter of word.text.match(LETTERS) ?? []) {
    if (text !== "" && measure(text + letter, word.strong) > width) {
      pieces.push({ ...word, text });
      text = "";
    }
    text += letter;
  }
  return [...pieces, { ...word, text }];
}

/** Neighbours that are set alike become one stretch, so that a reader finds whole phrases. */
function stretchesOf(words: readonly Word[], measure: Measure): readonly Stretch[] {
  const joined: Word[] = [];
  for (const word of words) {
    const last = joined.at(-1);
    if (last?.strong === word.strong) {
      joined[joined.length - 1] = { ...last, text: `${last.text} ${word.text}` };
    } else joined.push(word);
  }
  let x = 0;
  return joined.map(({ text, strong }) => {
    const width = measure(text, strong);
    const stretch = { text, strong, x, width };
    x += width + measure(" ", strong);
    return stretch;
  });
}

const widthOf = (words: readonly Word[], measure: Measure): number => {
  const last = stretchesOf(words, measure).at(-1);
  return last === undefined ? 0 : last.x + last.width;
};

const wordsOf = (text: string, strong: boolean): readonly Word[] =>
  text
    .split(" ")
    .filter((word) => word !== "")
    .map((word) => ({ text: word, strong }));

/**
 * Sets a text in lines, broken at spaces; a word longer than a line is broken between letters, and
 * nothing is ever left out.
 *
 * @param lead - set plainly before the text
 * @param width - of a line, as a multiple of the type size
 */
export function setLines(
  { lead = "", text, strong }: { lead?: string | undefined; text: string; strong: boolean },
  width: number,
  measure: Measure,
): Lines {
  const words = [...wordsOf(lead, false), ...wordsOf(text, strong)];
  const lines: Word[][] = [];
  let broken = false;
  for (const word of words) {
    const pieces = piecesOf(word, width, measure);
    if (pieces.length > 1) broken = true;
    for (const [index, piece] of pieces.entries()) {
      const line = lines.at(-1);
      const joins = index === 0 && line !== undefined;
      if (joins && widthOf([...line, piece], measure) <= width) line.push(piece);
      else lines.push([piece]);
    }
  }
  return { lines: lines.map((line) => stretchesOf(line, measure)), broken };
}
