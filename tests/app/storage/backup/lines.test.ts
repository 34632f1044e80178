import { createHash } from "node:crypto";
import fc from "fast-check";
import { expect, test } from "vitest";
import { MOST_LINE } from "../../../../app/storage/backup/header.ts";
import { type Line, LineCutter } from "../../../../app/storage/backup/lines.ts";

const encode = (text: string) => new TextEncoder().encode(text);
const decode = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

function cutUp(pieces: readonly Uint8Array[]) {
  const cutter = new LineCutter();
  const lines: Line[] = [];
  for (const piece of pieces) lines.push(...cutter.cut(piece));
  const { last, sha256 } = cutter.finish();
  return { lines: [...lines, ...last], sha256, count: cutter.count };
}

/** What the first version of the app took to be the lines of a text, and their sum. */
function asEver(text: string) {
  const [first = "", ...rest] = text.split(/\r?\n/u);
  while (rest.at(-1) === "") rest.pop();
  const sha256 = createHash("sha256").update(rest.join("\n")).digest("hex");
  return { lines: first === "" && rest.length === 0 ? [] : [first, ...rest], sha256 };
}

const word = fc.constantFrom("", "", "a", "Crème", "{}", "x".repeat(70), " ");
const end = fc.constantFrom("\n", "\r\n");
const text = fc
  .array(fc.tuple(word, end), { maxLength: 12 })
  .map((lines) => `header${lines.map(([one, by]) => by + one).join("")}`);

test("however a text is parted, its lines and their sum are the same, whichever line ends it has", () => {
  fc.assert(
    fc.property(text, fc.integer({ min: 1, max: 9 }), (whole, size) => {
      const bytes = encode(whole);
      const pieces: Uint8Array[] = [];
      for (let at = 0; at < bytes.length; at += size) pieces.push(bytes.slice(at, at + size));
      const { lines, sha256, count } = cutUp(pieces);
      const ever = asEver(whole);
      expect(lines.map((line) => decode(line.bytes))).toEqual(ever.lines);
      expect(lines.map(({ number }) => number)).toEqual(ever.lines.map((_, at) => at + 1));
      expect(sha256).toBe(ever.sha256);
      expect(count).toBe(ever.lines.length - 1);
    }),
    { seed: 2511, numRuns: 400 },
  );
});

test("of a line that is too long nothing is kept, and the lines around it are", () => {
  const long = "y".repeat(MOST_LINE + 1);
  const whole = `header\nbefore\n\n${long}\nafter\n`;
  const { lines, sha256 } = cutUp([
    encode(whole.slice(0, 2_000_000)),
    encode(whole.slice(2_000_000)),
  ]);
  expect(lines.map((line) => [line.number, line.bytes.length, line.tooLong])).toEqual([
    [1, 6, false],
    [2, 6, false],
    [3, 0, false],
    [4, 0, true],
    [5, 5, false],
  ]);
  expect(sha256).toBe(asEver(whole).sha256);
});

test("a line of the greatest length is a line", () => {
  const { lines } = cutUp([encode(`header\n${"y".repeat(MOST_LINE)}`)]);
  expect(lines.at(1)?.tooLong).toBe(false);
});
