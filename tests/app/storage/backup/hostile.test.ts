import { readFileSync } from "node:fs";
import { afterEach, beforeEach, expect, test } from "vitest";
import { MOST_BYTES, MOST_LINE, MOST_LINES } from "../../../../app/storage/backup/header.ts";
import { openBackup } from "../../../../app/storage/backup/open.ts";
import type { Database } from "../../../../app/storage/database.ts";
import { sentence } from "../../../../app/words/say-later.ts";
import { everything, freshPhone } from "../../../support/phone/phone-storage.ts";
import {
  BEACON,
  bringIn,
  FILLED,
  fileOfLines,
  fill,
  LOG,
  opened,
  textOf,
  unwatched,
} from "../../../support/world/backup-file.ts";

let db: Database;
let text: string;
let before: unknown;

beforeEach(async () => {
  db = await freshPhone();
  await fill(db);
  text = await textOf(db);
  before = await everything(db);
});
// Whatever the file was: only opening it never changes anything.
afterEach(async () => {
  expect(await everything(db)).toEqual(before);
});

const changed = (from: string, to: string) => {
  if (!text.includes(from)) throw new RangeError(`the backup does not hold ${from}`);
  return text.replace(from, to);
};
const latin1 = () => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
function utf16(order: "le" | "be", mark: boolean) {
  const letters = mark ? `\uFEFF${text}` : text;
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
  const read = await openBackup(db, new Blob([file()]), unwatched());
  expect(read).toEqual({ ok: false, refusal, about });
  expect(sentence({ refusal, about: { ...about } })).toMatch(/Nothing was changed\.$/u);
});

test("a file that is too large is not even read", async () => {
  const huge = new Blob([text]);
  Object.defineProperty(huge, "size", { value: MOST_BYTES + 1 });
  Object.defineProperty(huge, "slice", { value: () => expect.unreachable() });
  expect(await openBackup(db, huge, unwatched())).toMatchObject({ refusal: "backup-too-large" });
});

test("a file that the phone stops giving out is said to be unreadable", async () => {
  const gone = new Blob([text]);
  Object.defineProperty(gone, "slice", {
    value: () => ({ arrayBuffer: () => Promise.reject(new DOMException("", "NotReadableError")) }),
  });
  expect(await openBackup(db, gone, unwatched())).toMatchObject({ refusal: "backup-unreadable" });
});

/** Much work: a busy machine takes its time, ms. */
const SLOW = 60_000;

test(
  "more line ends than a backup has lines are refused, though every line is empty",
  async () => {
    const header = text.split("\n")[0] ?? "";
    const file = new Blob([`${header}\n`, "\n".repeat(MOST_LINES + 2)]);
    expect(await openBackup(db, file, unwatched())).toMatchObject({
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
    const read = await openBackup(db, new Blob([fileOfLines(lines)]), work);
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
const note = { ...LOG[1], id: "note", type: "note.added", text: "" };

test.each<[string, string, string, object]>([
  ["no JSON", "{", "line-not-json", {}],
  ["an empty line", "", "line-not-json", {}],
  ["a NUL", '{"event":"\0"}', "line-not-json", {}],
  ["a program", "alert(1)", "line-not-json", {}],
  ["JSON that is no record", "17", "line-no-record", {}],
  ["a list", `[${event}]`, "line-no-record", {}],
  ["an empty record", "{}", "line-no-record", {}],
  ["null", "null", "line-no-record", {}],
  ["an unknown kind", '{"moon":{"id":"m"}}', "line-unknown-kind", { kind: "moon" }],
  [
    "a kind that is inherited",
    `{"__proto__":${event}}`,
    "line-unknown-kind",
    { kind: "__proto__" },
  ],
  ["a constructor", `{"constructor":${event}}`, "line-unknown-kind", { kind: "constructor" }],
  [
    "a kind in marks of its own",
    '{"<img src=x onerror=alert(1)>\\u0000\\n":1}',
    "line-unknown-kind",
    { kind: "<img src=x onerror=alert(1)> " },
  ],
  [
    "a kind that goes on and on",
    `{"${"k".repeat(5000)}":1}`,
    "line-unknown-kind",
    { kind: `${"k".repeat(40)}…` },
  ],
  [
    "an event of a newer version",
    JSON.stringify({ event: { ...note, type: "moon.waxed" } }),
    "line-unknown-event",
    { type: "moon.waxed" },
  ],
  [
    "an event without a text",
    JSON.stringify({ event: { ...note, text: 5 } }),
    "line-field",
    { kind: "event", field: "text" },
  ],
  [
    "a time that no calendar has",
    JSON.stringify({ event: { ...note, hlc: { ms: 1e300, n: 0 } } }),
    "line-field",
    { kind: "event", field: "hlc.ms" },
  ],
  [
    "a note of a megabyte",
    JSON.stringify({ event: { ...note, text: "n".repeat(1_000_000) } }),
    "line-field",
    { kind: "event", field: "text" },
  ],
  [
    "an event whose fields are inherited",
    `{"event":{"__proto__":${JSON.stringify(note)}}}`,
    "line-field",
    { kind: "event", field: "id" },
  ],
  [
    "an event that is a text",
    '{"event":"run.started"}',
    "line-field",
    { kind: "event", field: "" },
  ],
  ["100,000 brackets", `{"event":${"[".repeat(100_000)}`, "line-too-deep", { most: 64 }],
  [
    "brackets that close again",
    `{"event":${"[".repeat(70)}${"]".repeat(70)}}`,
    "line-too-deep",
    { most: 64 },
  ],
  [
    "a line that is too long",
    `{"event":"${"x".repeat(MOST_LINE)}"}`,
    "line-too-long",
    { most: MOST_LINE },
  ],
  [
    "an id of this phone with other content",
    JSON.stringify({ spec: { ...BEACON, name: "Another" } }),
    "line-differs-here",
    {},
  ],
])(
  "of a whole file with %s that line alone is left out, in a sentence",
  async (_, line, refusal, about) => {
    const read = await opened(db, fileOfLines([event, line, event]));
    expect(read).toMatchObject({
      freshCount: 1,
      known: 0,
      left: { count: 1, first: [{ number: 3, refusal, about }] },
    });
    expect(read.damage).toBeUndefined();
    expect([...read.fresh.events.keys()]).toEqual(["fresh"]);
    expect(sentence({ refusal, about: { ...about } })).toMatch(/^.{8,120}\.$/u);
  },
);

test.each([
  ["a quote", '"'],
  ["a backslash and a quote", '\\"'],
  ["nothing", ""],
])("brackets inside a text do not count, though %s stands before them", async (_, start) => {
  const deep = { ...note, text: `${start}${"[{".repeat(500)}` };
  expect(await opened(db, fileOfLines([JSON.stringify({ event: deep })]))).toMatchObject({
    freshCount: 1,
    left: { count: 0 },
  });
});

test("own keys called as prototypes' are neither kept nor taken for anything else", async () => {
  const record = `{"spec":{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},${JSON.stringify(
    { ...BEACON, id: "proto" },
  ).slice(1)}}`;
  const there = await freshPhone();
  await bringIn(there, fileOfLines([record]));
  const [kept] = await there.getAll("specs");
  expect(kept).toEqual({ ...BEACON, id: "proto" });
  expect(Object.keys(kept ?? {})).not.toContain("constructor");
  expect(Object.getOwnPropertyNames(Object.prototype)).not.toContain("polluted");
});

test("two entries of one id: the same twice is one, another is left out with the reason", async () => {
  const other = JSON.stringify({ event: { ...LOG[1], id: "fresh", act: "another" } });
  const read = await opened(db, fileOfLines([event, event, other, other]));
  expect(read).toMatchObject({
    freshCount: 1,
    left: {
      count: 2,
      first: [
        { number: 4, refusal: "line-differs-above" },
        { number: 5, refusal: "line-differs-above" },
      ],
    },
  });
  expect(read.fresh.events.get("fresh")).toMatchObject({ act: LOG[1]?.act });
});

test("events of a run that never began are kept, counted, and wait for their beginning", async () => {
  const lost = { ...note, runId: "run-lost", text: "to the cellar" };
  const read = await opened(db, fileOfLines([JSON.stringify({ event: lost }), event]));
  expect(read).toMatchObject({ freshCount: 2, startless: 1 });
  const there = await freshPhone();
  // Here the other run has no beginning either.
  expect(await opened(there, fileOfLines([event]))).toMatchObject({ startless: 1 });
  expect(await bringIn(there, fileOfLines([event]))).toMatchObject({ added: 1 });
  expect((await opened(there, text)).startless).toBe(0);
});

test.each<[string, () => BlobPart[]]>([
  ["with the line ends of another system", () => [text.replaceAll("\n", "\r\n")]],
  ["with a byte order mark", () => ["\uFEFF", text]],
  ["without its last line end", () => [text.trimEnd()]],
  ["with empty lines at its end", () => [text, "\n\r\n\n"]],
])("a file saved again %s is whole", async (_, file) => {
  const read = await opened(db, ...file());
  expect(read).toMatchObject({ known: FILLED, freshCount: 0, left: { count: 0 } });
  expect(read.damage).toBeUndefined();
});

test.each<[string, () => BlobPart, object, number]>([
  ["its header alone", () => text.split("\n")[0] ?? "", { lines: FILLED, found: 0 }, 0],
  [
    "one cut at the end of a line",
    () => `${text.split("\n").slice(0, 4).join("\n")}\n`,
    { lines: FILLED, found: 3 },
    0,
  ],
  [
    "one that lost a line",
    () => text.split("\n").toSpliced(2, 1).join("\n"),
    { lines: FILLED, found: FILLED - 1 },
    0,
  ],
  ["one with a line too many", () => `${text}${event}\n`, { lines: FILLED, found: FILLED + 1 }, 0],
  ["one cut in a line", () => text.slice(0, -30), { lines: FILLED, found: FILLED }, 1],
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
    () => [text.split("\n")[0], ...text.trimEnd().split("\n").slice(1).reverse()].join("\n"),
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
