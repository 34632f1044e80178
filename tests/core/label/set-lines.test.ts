import fc from "fast-check";
import { expect, test } from "vitest";
import { setLines } from "../../../core/label/set-lines.ts";
import { typeWidth } from "../../../core/label/type-width.ts";

/** Each letter one wide, so that lines can be counted by hand. */
const square = (text: string): number => [...text].length;

const textOf = (lines: ReturnType<typeof setLines>): readonly string[] =>
  lines.lines.map((line) => line.map(({ text }) => text).join(" "));

test.each([
  ["one line", "Pear Beacon", 11, ["Pear Beacon"], false],
  ["at the space", "Pear Beacon", 10, ["Pear", "Beacon"], false],
  [
    "inside a word only where it is longer than a line",
    "a Marmalade",
    4,
    ["a", "Marm", "alad", "e"],
    true,
  ],
  ["what is tied is not parted", "700\u00a0ml of it", 7, ["700\u00a0ml", "of it"], false],
  ["nothing", "", 5, [], false],
])("%s", (_, text, width, lines, broken) => {
  const set = setLines({ text, strong: false }, width, square);
  expect(textOf(set)).toEqual(lines);
  expect(set.broken).toBe(broken);
});

test("the lead is plain, and what follows stands a space after it", () => {
  const { lines } = setLines({ lead: "Use by", text: "1 Dec 2025", strong: true }, 20, square);
  expect(lines).toEqual([
    [
      { text: "Use by", strong: false, x: 0, width: 6 },
      { text: "1 Dec 2025", strong: true, x: 7, width: 10 },
    ],
  ]);
});

test("an accent stays on its letter", () => {
  const set = setLines({ text: "o\u0323\u0301o\u0323\u0301", strong: false }, 3, square);
  expect(textOf(set)).toEqual(["o\u0323\u0301", "o\u0323\u0301"]);
});

test("whatever the text and the width: nothing is lost, and no line is wider", () => {
  const text = fc
    .array(fc.string({ maxLength: 25 }), { maxLength: 12 })
    .map((all) => all.join(" "));
  fc.assert(
    fc.property(text, text, fc.double({ min: 1.1, max: 40, noNaN: true }), (lead, said, width) => {
      const { lines } = setLines({ lead, text: said, strong: true }, width, typeWidth);
      const kept = lines
        .flat()
        .map((one) => one.text)
        .join("");
      expect(kept.replaceAll(" ", "")).toBe((lead + said).replaceAll(" ", ""));
      for (const line of lines) {
        const last = line.at(-1);
        expect((last?.x ?? Number.NaN) + (last?.width ?? Number.NaN)).toBeLessThanOrEqual(
          width + 1e-9,
        );
      }
    }),
  );
});
