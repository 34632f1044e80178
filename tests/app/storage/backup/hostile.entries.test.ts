import { expect, test } from "vitest";
import { MOST_LINE } from "../../../../app/storage/backup/header.ts";
import { sentence } from "../../../../app/words/say-later.ts";
import { filledPhone } from "../../../support/phone/filled-phone.ts";
import { freshPhone } from "../../../support/phone/phone-storage.ts";
import { BEACON, bringIn, fileOfLines, LOG, opened } from "../../../support/world/backup-file.ts";

const phone = filledPhone();

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
    const read = await opened(phone.db, fileOfLines([event, line, event]));
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
  expect(await opened(phone.db, fileOfLines([JSON.stringify({ event: deep })]))).toMatchObject({
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
  const read = await opened(phone.db, fileOfLines([event, event, other, other]));
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
  const read = await opened(phone.db, fileOfLines([JSON.stringify({ event: lost }), event]));
  expect(read).toMatchObject({ freshCount: 2, startless: 1 });
  const there = await freshPhone();
  // Here the other run has no beginning either.
  expect(await opened(there, fileOfLines([event]))).toMatchObject({ startless: 1 });
  expect(await bringIn(there, fileOfLines([event]))).toMatchObject({ added: 1 });
  expect((await opened(there, phone.text)).startless).toBe(0);
});
