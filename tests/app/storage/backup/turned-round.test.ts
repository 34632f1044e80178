import { expect, test } from "vitest";
import { entryOf } from "../../../../app/storage/backup/entry.ts";
import { demoSpec } from "../../../support/world/play-run.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const line = (name: string) => JSON.stringify({ spec: { ...demoSpec("Pear Beacon"), name } });
const nameIn = (text: string): unknown => {
  const read = entryOf(bytes(text));
  return read.ok && "name" in read.value.record ? read.value.record.name : read;
};
const escaped = (text: string) =>
  text.replace(/[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu, (mark) => {
    const code = mark.codePointAt(0)?.toString(16).padStart(4, "0") ?? "";
    return `\\u${code}`;
  });

// Directional formatting characters.
// @source Unicode Standard Annex #9, section 2 (from memory): ALM, LRM, RLM, LRE, RLE, PDF, LRO, RLO,
// LRI, RLI, FSI, PDI
const MARKS = [..."\u061C\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069"];

test.each(MARKS)(
  "a mark that turns text round is not taken over, written out or by its number",
  (mark) => {
    const text = line(`Pear ${mark}Beacon`);
    expect(nameIn(text)).toBe("Pear Beacon");
    expect(escaped(text)).not.toBe(text);
    expect(nameIn(escaped(text))).toBe("Pear Beacon");
  },
);

test("names in any script, and what joins their letters, stay as they are", () => {
  for (const name of ["אגס", "كمثرى", "ナシ", "a\u200Db\u200C", "back\\slash u202e"]) {
    expect(nameIn(line(name))).toBe(name);
  }
});

test("a name of such marks alone is no name", () => {
  expect(nameIn(line("\u202E\u202E"))).toMatchObject({ ok: false, refusal: "line-field" });
});
