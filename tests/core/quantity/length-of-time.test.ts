import fc from "fast-check";
import { expect, test } from "vitest";
import { readLengthOfTime } from "../../../core/quantity/length-of-time.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

test.each([
  ["45 min", 45 * MINUTE],
  ["45min", 45 * MINUTE],
  ["1 h 30 min", 90 * MINUTE],
  ["1h30min", 90 * MINUTE],
  ["1 1/2 h", 90 * MINUTE],
  ["½ h", 30 * MINUTE],
  ["36h", 36 * HOUR],
  ["2 days", 48 * HOUR],
  ["0,5 h", 30 * MINUTE],
  ["90 s", 90_000],
  ["1 s", 1000],
  ["90 d", 90 * 24 * HOUR],
  ["1h30", 90 * MINUTE],
  ["1 h 30", 90 * MINUTE],
  ["1 hora 05", 65 * MINUTE],
  ["2 h 5", 125 * MINUTE],
  ["1 j 3h15", 27 * HOUR + 15 * MINUTE],
  ["2 min 30", 150_000],
  ["1h00", HOUR],
] as const)("%s", (text, ms) => {
  expect(readLengthOfTime(text)).toBe(ms);
});

test.each([
  "",
  "45",
  "soon",
  "-3 h",
  "0 min",
  "91 d",
  "90 d 1 s",
  "0.9 s",
  "3 weeks",
  "1 h soon",
  "__proto__",
  "5 constructor",
  "1h60",
  "1h030",
  "1h30,5",
  "1 h 30 20",
  "30 s 20",
  "1 d 12",
  "30 1h",
])("%s is no length of time", (text) => {
  expect(readLengthOfTime(text)).toBeUndefined();
});

test("property: never throws, and what it reads lies between a second and ninety days", () => {
  const piece = fc.oneof(
    fc.string({ maxLength: 4 }),
    fc.constantFrom("0.5 s", "45 min", "1,5 h", "2 days", "89 d", " ", "-", "12", "min"),
  );
  let read = 0;
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 4 }), (pieces) => {
      const ms = readLengthOfTime(pieces.join(" "));
      if (ms === undefined) return;
      read += 1;
      expect(ms).toBeGreaterThanOrEqual(1000);
      expect(ms).toBeLessThanOrEqual(90 * 24 * HOUR);
    }),
    { numRuns: 500 },
  );
  expect(read).toBeGreaterThan(20);
});

test("lengths in Spanish and French, with or without their accents", () => {
  const texts = [
    "2 días",
    "2 dias",
    "1,5 horas",
    "1 j 3 h",
    "2 jours",
    "45 minutos",
    "90 secondes",
  ];
  const hours = [48, 48, 1.5, 27, 48, 0.75, 0.025];
  expect(texts.map((text) => readLengthOfTime(text, "1 000,5"))).toEqual(
    hours.map((one) => one * 3_600_000),
  );
});
