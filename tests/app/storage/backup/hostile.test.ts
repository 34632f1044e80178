import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { MOST_BYTES, MOST_LINES } from "../../../../app/storage/backup/header.ts";
import { openBackup } from "../../../../app/storage/backup/open.ts";
import { sentence } from "../../../../app/words/say-later.ts";
import { filledPhone } from "../../../support/phone/filled-phone.ts";
import { freshPhone } from "../../../support/phone/phone-storage.ts";
import {
  bringIn,
  FILLED,
  fileOfLines,
  LOG,
  opened,
  unwatched,
} from "../../../support/world/backup-file.ts";

const phone = filledPhone();

const changed = (from: string, to: string) => {
  if (!phone.text.includes(from)) throw new RangeError(`the backup does not hold ${from}`);
  return phone.text.replace(from, to);
};
const latin1 = () => Uint8Array.from(phone.text, (letter) => letter.charCodeAt(0));
function utf16(order: "le" | "be", mark: boolean) {
  const letters = mark ? `\uFEFF${phone.text}` : phone.text;
  const view = new DataView(new ArrayBuffer(letters.length * 2));
  for (let at = 0; at < letters.length; at += 1) {
    view.setUint16(at * 2, letters.charCodeAt(at), order === "le");
  }
  return new Uint8Array(view.buffer);
}
const picture = new Uint8Array(readFileSync("app/public/icon-192.png"));

test.each<[string, () => BlobPart, string, object]>([
  ["an empty file", () => "", "backup-empty", {}],
  ["a file of line ends alone", () => "\n\n\r\n", "backup-not-ours", {}],
  ["a note", () => "2 oz gin\n1 oz lemon", "backup-not-ours", {}],
  ["another program's file", () => '{"format":"diary","version":1}', "backup-not-ours", {}],
  ["a header that is null", () => "null", "backup-not-ours", {}],
  [
    "a header that only inherits",
    () => '{"__proto__":{"format":"second-pour-backup","version":1}}',
    "backup-not-ours",
    {},
  ],
  ["a header without a version", () => changed('"version":1,', ""), "backup-not-ours", {}],
  ["a version in words", () => changed('"version":1', '"version":"one"'), "backup-not-ours", {}],
  ["a newer format", () => changed('"version":1', '"version":2'), "backup-newer", { version: 2 }],
  ["a picture", () => picture, "backup-not-text", {}],
  ["a file of NULs", () => new Uint8Array(5000), "backup-not-text", {}],
  ["one in UTF-16, low byte first", () => utf16("le", true), "backup-encoding", {}],
  ["one in UTF-16, high byte first", () => utf16("be", true), "backup-encoding", {}],
  ["one in UTF-16 without a mark", () => utf16("le", false), "backup-encoding", {}],
  ["the same, high byte first", () => utf16("be", false), "backup-encoding", {}],
  ["one line of 50 MB", () => "x".repeat(50_000_000), "backup-not-ours", {}],
  ["100,000 brackets", () => "[".repeat(100_000), "backup-not-ours", {}],
  [
    "a header that promises too much",
    () => changed(`"lines":${FILLED}`, `"lines":${MOST_LINES + 1}`),
    "backup-too-many-lines",
    { most: MOST_LINES },
  ],
])("%s is refused as a whole, in a sentence", async (_, file, refusal, about) => {
  const read = await openBackup(phone.db, new Blob([file()]), unwatched());
  expect(read).toEqual({ ok: false, refusal, about });
  expect(sentence({ refusal, about: { ...about } })).toMatch(/Nothing was changed\.$/u);
});

test("a file that is too large is not even read", async () => {
  const huge = new Blob([phone.text]);
  Object.defineProperty(huge, "size", { value: MOST_BYTES + 1 });
  Object.defineProperty(huge, "slice", { value: () => expect.unreachable() });
  expect(await openBackup(phone.db, huge, unwatched())).toMatchObject({
    refusal: "backup-too-large",
  });
});

test("a file that the phone stops giving out is said to be unreadable", async () => {
  const gone = new Blob([phone.text]);
  Object.defineProperty(gone, "slice", {
    value: () => ({ arrayBuffer: () => Promise.reject(new DOMException("", "NotReadableError")) }),
  });
  expect(await openBackup(phone.db, gone, unwatched())).toMatchObject({
    refusal: "backup-unreadable",
  });
});

/** Much work: a busy machine takes its time, ms. */
const SLOW = 60_000;

test(
  "more line ends than a backup has lines are refused, though every line is empty",
  async () => {
    const header = phone.text.split("\n")[0] ?? "";
    const file = new Blob([`${header}\n`, "\n".repeat(MOST_LINES + 2)]);
    expect(await openBackup(phone.db, file, unwatched())).toMatchObject({
      refusal: "backup-too-many-lines",
    });
  },
  SLOW,
);

test(
  "a million lines of nothing are read with turns for the page, and ten of them are listed",
  async () => {
    const lines = Array<string>(MOST_LINES).fill("{}");
    const turns: number[] = [];
    const work = { ...unwatched(), onPart: (done: number) => turns.push(done) };
    const read = await openBackup(phone.db, new Blob([fileOfLines(lines)]), work);
    if (!read.ok) throw new RangeError(read.refusal);
    expect(read.value.left.count).toBe(MOST_LINES);
    expect(read.value.left.first.map(({ number }) => number)).toEqual(
      Array.from({ length: 10 }, (_, at) => at + 2),
    );
    expect(turns.length).toBeGreaterThan(10);
  },
  SLOW,
);

const event = JSON.stringify({ event: { ...LOG[1], id: "fresh", runId: "run-a" } });

test.each<[string, () => BlobPart[]]>([
  ["with the line ends of another system", () => [phone.text.replaceAll("\n", "\r\n")]],
  ["with a byte order mark", () => ["\uFEFF", phone.text]],
  ["without its last line end", () => [phone.text.trimEnd()]],
  ["with empty lines at its end", () => [phone.text, "\n\r\n\n"]],
])("a file saved again %s is whole", async (_, file) => {
  const read = await opened(phone.db, ...file());
  expect(read).toMatchObject({ known: FILLED, freshCount: 0, left: { count: 0 } });
  expect(read.damage).toBeUndefined();
});

test.each<[string, () => BlobPart, object, number]>([
  ["its header alone", () => phone.text.split("\n")[0] ?? "", { lines: FILLED, found: 0 }, 0],
  [
    "one cut at the end of a line",
    () => `${phone.text.split("\n").slice(0, 4).join("\n")}\n`,
    { lines: FILLED, found: 3 },
    0,
  ],
  [
    "one that lost a line",
    () => phone.text.split("\n").toSpliced(2, 1).join("\n"),
    { lines: FILLED, found: FILLED - 1 },
    0,
  ],
  [
    "one with a line too many",
    () => `${phone.text}${event}\n`,
    { lines: FILLED, found: FILLED + 1 },
    0,
  ],
  ["one cut in a line", () => phone.text.slice(0, -30), { lines: FILLED, found: FILLED }, 1],
  [
    "one whose count was altered",
    () => changed(`"lines":${FILLED}`, `"lines":${FILLED + 1}`),
    { lines: FILLED + 1, found: FILLED },
    0,
  ],
  [
    "one whose sum was altered",
    () => changed('"sha256":"', '"sha256":"0'),
    { lines: FILLED, found: FILLED },
    0,
  ],
  [
    "one whose lines stand in another order",
    () =>
      [phone.text.split("\n")[0], ...phone.text.trimEnd().split("\n").slice(1).reverse()].join(
        "\n",
      ),
    { lines: FILLED, found: FILLED },
    0,
  ],
  ["one that another program saved in Latin-1", latin1, { lines: FILLED, found: FILLED }, 1],
])("%s says that it is damaged, and brings what can be read", async (_, file, damage, left) => {
  const there = await freshPhone();
  const read = await opened(there, file());
  expect(read.damage).toEqual(damage);
  expect(read.left.count).toBe(left);
  const { added } = await bringIn(there, file());
  expect(added).toBe(read.freshCount);
});
