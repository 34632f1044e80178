// The browser's own digest wants the whole text at once, which a phone may not have room for beside
// the file; this one takes it in parts.

/** The first 32 bits of the fractional part of a root. */
const fraction = (root: number): number => Math.floor((root - Math.floor(root)) * 2 ** 32);

function firstPrimes(count: number): readonly number[] {
  const found: number[] = [];
  for (let one = 2; found.length < count; one += 1) {
    if (found.every((prime) => one % prime !== 0)) found.push(one);
  }
  return found;
}

const PRIMES = firstPrimes(64);
const ROUNDS = Int32Array.from(PRIMES, (prime) => fraction(Math.cbrt(prime)));
const START = PRIMES.slice(0, 8).map((prime) => fraction(Math.sqrt(prime)));
const BLOCK = 64;

const turned = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

/** The words of a block, drawn out to 64. */
function drawOut(words: Int32Array, view: DataView, from: number): void {
  for (let at = 0; at < 16; at += 1) words[at] = view.getInt32(from + at * 4);
  for (let at = 16; at < BLOCK; at += 1) {
    const early = words[at - 15] ?? 0;
    const late = words[at - 2] ?? 0;
    const low = turned(early, 7) ^ turned(early, 18) ^ (early >>> 3);
    const high = turned(late, 17) ^ turned(late, 19) ^ (late >>> 10);
    words[at] = (words[at - 16] ?? 0) + low + (words[at - 7] ?? 0) + high;
  }
}

/**
 * SHA-256 of bytes that come in parts.
 *
 * @source FIPS 180-4, Secure Hash Standard (2015), sections 4.1.2, 4.2.2, 5.3.3 and 6.2.2
 */
export class Sha256 {
  readonly #state = Int32Array.from(START);
  readonly #words = new Int32Array(BLOCK);
  readonly #rest = new Uint8Array(BLOCK);
  readonly #restView = new DataView(this.#rest.buffer);
  #held = 0;
  #length = 0;

  /** Takes the next bytes. */
  take(bytes: Uint8Array): void {
    this.#length += bytes.length;
    let from = 0;
    if (this.#held > 0) {
      from = Math.min(BLOCK - this.#held, bytes.length);
      this.#rest.set(bytes.subarray(0, from), this.#held);
      this.#held += from;
      if (this.#held < BLOCK) return;
      this.#block(this.#restView, 0);
      this.#held = 0;
    }
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    for (; from + BLOCK <= bytes.length; from += BLOCK) this.#block(view, from);
    this.#rest.set(bytes.subarray(from));
    this.#held = bytes.length - from;
  }

  /** The sum of all that was taken, as 64 hexadecimal digits; nothing can be taken after it. */
  sum(): string {
    const bits = this.#length * 8;
    const zeros = (BLOCK * 2 - 9 - this.#held) % BLOCK;
    const end = new Uint8Array(1 + zeros + 8);
    end[0] = 0x80;
    const view = new DataView(end.buffer);
    view.setUint32(end.length - 8, Math.floor(bits / 2 ** 32));
    view.setUint32(end.length - 4, bits >>> 0);
    this.take(end);
    return [...this.#state].map((word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
  }

  #block(view: DataView, from: number): void {
    const words = this.#words;
    drawOut(words, view, from);
    let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = this.#state;
    for (let at = 0; at < BLOCK; at += 1) {
      const one =
        h +
        (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) +
        ((e & f) ^ (~e & g)) +
        (ROUNDS[at] ?? 0) +
        (words[at] ?? 0);
      const two = (turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + ((a & b) ^ (a & c) ^ (b & c));
      h = g;
      g = f;
      f = e;
      e = (d + one) | 0;
      d = c;
      c = b;
      b = a;
      a = (one + two) | 0;
    }
    const round = [a, b, c, d, e, f, g, h];
    for (let at = 0; at < 8; at += 1) this.#state[at] = (this.#state[at] ?? 0) + (round[at] ?? 0);
  }
}
