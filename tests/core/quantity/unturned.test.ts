import fc from "fast-check";
import { expect, test } from "vitest";
import { unturned } from "../../../core/quantity/unturned.ts";

// Characters of directional formatting, implicit and explicit, by their numbers.
// @source Unicode Standard Annex #9, section 2 (from memory): ALM, LRM, RLM, LRE, RLE, PDF, LRO, RLO,
// LRI, RLI, FSI, PDI
const MARKS = [
  0x061c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2066, 0x2067, 0x2068, 0x2069,
].map((code) => String.fromCodePoint(code));

test.each(MARKS)("no mark that turns text round stays, wherever it stands", (mark) => {
  expect(unturned(`${mark}Pear ${mark}${mark}Beacon${mark}`)).toBe("Pear Beacon");
});

test.each([
  "אגס",
  "كمثرى",
  "ナシ",
  "Crème brûlée",
  "a\u200Db\u200Cc",
  "\u2028",
  "back\\slash u202e",
  "",
])("a name in any script stays as it is: %s", (name) => {
  expect(unturned(name)).toBe(name);
});

test("property: what it leaves holds none of them, and nothing else is gone", () => {
  const letter = fc.oneof(fc.string({ unit: "grapheme", maxLength: 2 }), fc.constantFrom(...MARKS));
  fc.assert(
    fc.property(fc.array(letter), (letters) => {
      const text = letters.join("");
      expect(unturned(text)).toBe([...text].filter((one) => !MARKS.includes(one)).join(""));
    }),
  );
});
