import { expect, test } from "vitest";
import { readerOf } from "../../../app/screens/sums/read-sum.ts";
import { IN_ML } from "../../support/world/sum-value.ts";

const IN_OZ = { volumes: "oz", ounce: "bar" } as const;

test.each([
  ["700", IN_ML, 700],
  ["1.5 l", IN_ML, 1500],
  ["22,5", IN_ML, 22.5],
  ["1,500", IN_ML, 1500],
  ["24 oz", IN_ML, 720],
  ["24", IN_OZ, 720],
  ["1 1/2", IN_OZ, 45],
  ["45 ml", IN_OZ, 45],
])("a volume typed as %j in a house of %j is %d ml", (text, style, ml) => {
  expect(readerOf(style).volume("volume", text)).toBeCloseTo(ml, 9);
});

test.each([
  ["500", 500],
  ["1.5 kg", 1500],
  ["12,5 g", 12.5],
])("a weight typed as %j is %d g", (text, g) => {
  expect(readerOf(IN_ML).mass("mass", text)).toBeCloseTo(g, 9);
});

test.each([
  ["4", 4],
  ["-18", -18],
  ["−6,5 °C", -6.5],
  ["– 3", -3],
  ["0", 0],
  ["-0", 0],
])("a temperature typed as %j is %d", (text, degrees) => {
  const bounds = { low: -40, high: 40 };
  expect(readerOf(IN_ML).temperature("t", text, bounds)).toBe(degrees);
});

// Each row: a kind of field, rubbish in it.
const RUBBISH = [
  ["volume", ""],
  ["volume", "lots"],
  ["volume", "0"],
  ["volume", "500 g"],
  ["volume", "700 ml gin"],
  ["volume", "200 l"],
  ["mass", "1 l"],
  ["mass", "-5"],
  ["sugar", "1300"],
  ["sugar", "sweet"],
  ["acid", "161"],
  ["grams", "5 ml"],
] as const;

test.each(RUBBISH)("%s %j gets a sentence at its own field", (kind, text) => {
  const read = readerOf(IN_ML);
  expect(read[kind]("here", text)).toBeUndefined();
  expect([...read.faults.keys()]).toEqual(["here"]);
  expect(read.faults.get("here")).toMatch(/^[A-Z].+[.]$/u);
});

test.each(["", "-41", "41", "cold", "--4", "4 K"])("a temperature of %j gets one too", (text) => {
  const read = readerOf(IN_ML);
  expect(read.temperature("t", text, { low: -40, high: 40 })).toBeUndefined();
  expect(read.faults.get("t")).toContain("from −40 to 40 °C");
});

test("what may be left empty counts as none", () => {
  const read = readerOf(IN_ML);
  expect([read.sugar("s", " "), read.acid("a", ""), read.grams("g", "")]).toEqual([0, 0, 0]);
  expect(read.faults.size).toBe(0);
});

test("a strength is typed in per cent, within what the sum can use", () => {
  const read = readerOf(IN_ML);
  expect(read.strength("a", "57 % ABV", { low: 0, high: 100 })).toBeCloseTo(0.57, 12);
  expect(read.strength("b", "80", { low: 0, high: 75 })).toBeUndefined();
  expect(read.faults.get("b")).toContain("from 0 to 75 %");
});
