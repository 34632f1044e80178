import { MOST_LINE } from "./header.ts";
import { Sha256 } from "./sha256.ts";

const FEED = 0x0a;
const RETURN = 0x0d;
const FEED_ALONE = Uint8Array.of(FEED);
const NOTHING = new Uint8Array();

/** A line of a file. */
export interface Line {
  /** As an editor counts them, from 1. */
  readonly number: number;
  /** Without its end; nothing of a line that is longer than a line may be. */
  readonly bytes: Uint8Array;
  readonly tooLong: boolean;
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const [only] = parts;
  if (parts.length === 1 && only !== undefined) return only;
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/**
 * Cuts bytes that come in pieces into lines and sums up all after the first. However long a line is,
 * no more of it is kept than a line may have. Empty lines at the end are no lines.
 */
export class LineCutter {
  readonly #sum = new Sha256();
  #number = 0;
  #begun: Uint8Array[] = [];
  #length = 0;
  #empty = 0;

  /** Lines after the first, so far. */
  get count(): number {
    return Math.max(0, this.#number - 1);
  }

  /** Line ends so far, those of empty lines that may turn out to be no lines among them. */
  get ends(): number {
    return this.#number + this.#empty;
  }

  /** The lines that end in a piece. */
  cut(piece: Uint8Array): readonly Line[] {
    const lines: Line[] = [];
    let from = 0;
    for (;;) {
      const end = piece.indexOf(FEED, from);
      if (end < 0) break;
      this.#add(piece.subarray(from, end));
      this.#end(lines);
      from = end + 1;
    }
    if (from < piece.length) this.#add(piece.slice(from));
    return lines;
  }

  /** What is left when there are no more pieces, and the sum of all lines after the first. */
  finish(): { readonly last: readonly Line[]; readonly sha256: string } {
    const last: Line[] = [];
    if (this.#length > 0) this.#end(last);
    return { last, sha256: this.#sum.sum() };
  }

  #add(part: Uint8Array): void {
    const before = this.#length;
    this.#length += part.length;
    if (this.#length <= MOST_LINE) {
      this.#begun.push(part);
      return;
    }
    // Of a line that is too long only the sum still wants to know.
    if (before <= MOST_LINE) this.#sumUp(joined(this.#begun));
    this.#begun = [];
    this.#sum.take(part);
  }

  /** Lines are joined by line feeds: none before the second of the file. */
  #sumUp(bytes: Uint8Array): void {
    for (let at = 0; at < this.#empty; at += 1) this.#sum.take(FEED_ALONE);
    if (this.#number > 1) this.#sum.take(FEED_ALONE);
    if (this.#number > 0) this.#sum.take(bytes);
  }

  #end(into: Line[]): void {
    const tooLong = this.#length > MOST_LINE;
    let bytes = joined(this.#begun);
    this.#begun = [];
    this.#length = 0;
    if (bytes.at(-1) === RETURN) bytes = bytes.subarray(0, -1);
    if (!tooLong && bytes.length === 0 && this.#number > 0) {
      this.#empty += 1;
      return;
    }
    if (!tooLong) this.#sumUp(bytes);
    for (; this.#empty > 0; this.#empty -= 1) into.push(this.#next(NOTHING, false));
    into.push(this.#next(bytes, tooLong));
  }

  #next(bytes: Uint8Array, tooLong: boolean): Line {
    this.#number += 1;
    return { number: this.#number, bytes, tooLong };
  }
}
