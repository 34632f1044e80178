import { expect, test } from "vitest";
import {
  bottlesSchema,
  type Draft,
  draftSchema,
  eventSchema,
  READING_UNITS,
  stampSchema,
  WATCHERS,
} from "../../../core/run/event.ts";
import { DRAFTS } from "../../support/world/every-draft.ts";

const STAMP = {
  id: "event-1",
  runId: "run-1",
  device: "phone-a",
  act: "act-1",
  at: 1_000_000_000_000,
  hlc: { ms: 1_000_000_000_000, n: 0 },
  v: 1,
} as const;

const all = Object.entries(DRAFTS);
const reads = (event: unknown): boolean => eventSchema.safeParse(event).success;

/** A copy in which one thing, given by its path, is something else. */
function withAt(value: unknown, path: readonly string[], other: unknown): unknown {
  const [first, ...rest] = path;
  if (first === undefined) return other;
  if (Array.isArray(value)) {
    return value.map((one, at) => (String(at) === first ? withAt(one, rest, other) : one));
  }
  const entries = Object.entries(value ?? {});
  return Object.fromEntries(
    entries.map(([key, one]) => [key, key === first ? withAt(one, rest, other) : one]),
  );
}

/** Every number and every text inside a value, by its path. */
function leavesOf(value: unknown, path: readonly string[] = []): [readonly string[], unknown][] {
  if (value === null || typeof value !== "object") return [[path, value]];
  return Object.entries(value).flatMap(([key, one]) => leavesOf(one, [...path, key]));
}

/** Deep inside a plan or a procedure the first will do: there are some hundred places. */
const worst = (wrongs: readonly unknown[], { length }: readonly string[]): readonly unknown[] =>
  length > 2 ? wrongs.slice(0, 1) : wrongs;

test.each(all)("%s reads back as it was stored", (_, draft) => {
  const event = { ...STAMP, ...draft };
  expect(draftSchema.parse(draft)).toEqual(draft);
  expect(eventSchema.parse(JSON.parse(JSON.stringify(event)))).toEqual(event);
});

test.each(all)("%s: no number may be none, endless, or written out", (_, draft) => {
  const event = { ...STAMP, ...draft };
  const numbers = leavesOf(event).filter(([, leaf]) => typeof leaf === "number");
  expect(numbers.length).toBeGreaterThanOrEqual(4);
  for (const [path] of numbers) {
    for (const wrong of worst([Number.NaN, Number.POSITIVE_INFINITY, "12", null], path)) {
      expect(reads(withAt(event, path, wrong)), `${path.join(".")} = ${wrong}`).toBe(false);
    }
  }
});

test.each(all)("%s: no text is huge, and none is a number", (_, draft) => {
  const event = { ...STAMP, ...draft };
  for (const [path] of leavesOf(event).filter(([, leaf]) => typeof leaf === "string")) {
    for (const wrong of worst(["x".repeat(100_000), 12, null], path)) {
      expect(reads(withAt(event, path, wrong)), path.join(".")).toBe(false);
    }
  }
});

test.each(all)("%s: nothing may be missing, and nothing more is taken in", (_, draft) => {
  const event = { ...STAMP, ...draft };
  for (const key of Object.keys(event)) {
    const rest = Object.fromEntries(Object.entries(event).filter(([name]) => name !== key));
    // The use-by of a lot need not be said, nor who watches, nor a weight where none was weighed,
    // nor that a yield settles a question where there is none.
    const mayLack =
      key === "weighed" || key === "who" || (draft.type === "lot.noted" && key === "useBy");
    expect(reads(rest), key).toBe(mayLack);
  }
  const stray = JSON.parse('{"__proto__": {"ml": 1}, "constructor": {"a": 1}, "extra": 1}');
  const parsed = eventSchema.parse({ ...event, ...stray });
  expect(parsed).toEqual(event);
  expect(Object.getPrototypeOf(parsed)).toBe(Object.prototype);
  expect(Object.keys(parsed)).not.toContain("extra");
});

test.each<[Draft["type"], readonly string[], unknown]>([
  ["run.repoured", ["ml"], -1],
  ["run.repoured", ["ml"], 10_000_001],
  ["yield.logged", ["ml"], -0.1],
  ["topup.poured", ["ml"], -1],
  ["topup.poured", ["advised"], -1],
  ["topup.poured", ["planned"], -1],
  ["run.repoured", ["weighed", "tare"], -1],
  ["yield.logged", ["weighed"], { gross: 5000 }],
  ["tare.noted", ["grams"], -1],
  ["tare.noted", ["grams"], 10_000_001],
  ["tare.noted", ["vessel"], "bucket"],
  ["shape.noted", ["shape"], "round"],
  ["reading.logged", ["weighed", "gross"], 10_000_001],
  ["reading.logged", ["value"], -51],
  ["reading.logged", ["unit"], "cups"],
  ["reading.logged", ["what"], "__proto__"],
  ["look.noted", ["look"], "brilliant"],
  ["alarm.handed", ["to"], "nobody"],
  ["alarm.handed", ["who"], ""],
  ["phone.slept", ["forMs"], -1],
  ["phone.slept", ["fromMs"], 0.5],
  ["alarm.heard", ["dueAt"], -1],
  ["alarm.heard", ["dueAt"], 0.5],
  ["due.moved", ["dueAt"], 8_640_000_000_000_001],
  ["clock.shifted", ["byMs"], 0.5],
  ["clock.shifted", ["keepElapsed"], "yes"],
  ["run.bottled", ["useBy"], -1],
  ["run.bottled", ["bottles", "0", "count"], 0],
  ["run.bottled", ["bottles", "0", "size"], 0],
  ["run.bottled", ["bottles"], "seven"],
  ["step.started", ["visit"], ""],
  ["taste.noted", ["scores", "clarity"], 11],
  ["taste.noted", ["scores", "clarity"], -1],
  ["taste.noted", ["scores", "finish"], 0.5],
  ["taste.noted", ["words", "0"], ""],
  ["taste.noted", ["words"], Array.from({ length: 25 }, () => "dry")],
  ["verdict.given", ["verdict"], "superb"],
  ["verdict.given", ["repeat"], "perhaps"],
  ["tag.added", ["tag"], ""],
  ["tag.added", ["tag"], "x".repeat(41)],
  ["photo.added", ["width"], 0],
  ["photo.added", ["height"], 1.5],
  ["stock.poured", ["ml"], 0],
  ["stock.poured", ["count"], -1],
  ["stock.poured", ["unit"], "jugs"],
  ["stock.ended", ["how"], "lost"],
  ["run.started", ["plan"], {}],
  ["run.started", ["plan", "finalMl"], -1],
  ["run.started", ["procedure", "steps"], []],
  ["run.started", ["batch"], ""],
])("%s with %j = %j is refused", (type, path, wrong) => {
  expect(reads(withAt({ ...STAMP, ...DRAFTS[type] }, path, wrong))).toBe(false);
});

test.each(["run.exploded", "__proto__", "constructor", "toString", "", null, 7])(
  "nobody knows an event of type %s",
  (type) => {
    expect(reads({ ...STAMP, type, text: "x", visit: "a#1" })).toBe(false);
  },
);

test.each<[string, object]>([
  ["an id of nothing", { id: "" }],
  ["a moment before 1970", { at: -1 }],
  ["half a millisecond", { at: 0.5 }],
  ["a clock without a count", { hlc: { ms: 1 } }],
  ["a count below nothing", { hlc: { ms: 1, n: -1 } }],
  ["a shape of another version", { v: 2 }],
])("a stamp with %s is refused", (_, wrong) => {
  expect(stampSchema.safeParse(STAMP).success).toBe(true);
  expect(stampSchema.safeParse({ ...STAMP, ...wrong }).success).toBe(false);
});

test("bottles are counted whole; what else watches and measures is named", () => {
  expect(bottlesSchema.safeParse({ count: 10_000, size: 0.5 }).success).toBe(true);
  expect(bottlesSchema.safeParse({ count: 10_001, size: 700 }).success).toBe(false);
  expect(WATCHERS).toEqual(["phone-clock", "person", "vessel"]);
  expect(READING_UNITS).toEqual(["ml", "g", "degC", "count", "brix"]);
});

test("a yield settles the question or says nothing of it", () => {
  const settling = (settles: unknown) => ({ ...STAMP, ...DRAFTS["yield.logged"], settles });
  expect(eventSchema.parse(settling(true))).toEqual(settling(true));
  expect(reads(settling(false))).toBe(false);
  expect(reads(settling("yes"))).toBe(false);
});

test("what is no event at all is refused, not thrown at", () => {
  for (const wrong of [null, undefined, 7, "event", [], {}, [STAMP]])
    expect(reads(wrong)).toBe(false);
});
