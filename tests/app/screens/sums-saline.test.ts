import { expect, test } from "vitest";
import { readSaline } from "../../../app/screens/sums/saline.ts";
import published from "../../published/juice.json";
import { IN_ML, sumValue } from "../../support/world/sum-value.ts";

const { salt } = published;

test.each(salt.rows)(`a litre at $percent % holds $gPerL g (${salt.source})`, (row) => {
  const read = readSaline({ volume: "1 l", percent: `${row.percent} %` }, IN_ML);
  expect(Math.abs(sumValue(read, "Salt") / row.gPerL - 1)).toBeLessThan(0.001);
  expect(sumValue(read, "Salt per litre")).toBeCloseTo(sumValue(read, "Salt"), 9);
  const mass = sumValue(read, "Salt") + sumValue(read, "Water");
  expect(Math.abs(mass - row.kgPerM3)).toBeLessThan(0.4);
});

test("a dropper bottle takes its share of that", () => {
  const read = readSaline({ volume: "100", percent: "20" }, IN_ML);
  expect(sumValue(read, "Salt")).toBeCloseTo(22.96, 1);
  expect(sumValue(read, "Salt per litre")).toBeCloseTo(229.6, 0);
});

test.each([
  [{ volume: "", percent: "20" }, "volume"],
  [{ volume: "100", percent: "" }, "percent"],
  [{ volume: "100", percent: "0" }, "percent"],
  [{ volume: "100", percent: "27" }, "percent"],
  [{ volume: "100", percent: "salty" }, "percent"],
])("%j gets one sentence, at its own field", (draft, key) => {
  const { answer, faults } = readSaline(draft, IN_ML);
  expect(answer).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
  expect(faults.get(key)).toMatch(/^[A-Z].+[.]$/u);
});

test("more salt than dissolves is told with how much does", () => {
  const { faults } = readSaline({ volume: "100", percent: "30" }, IN_ML);
  expect(faults.get("percent")).toContain("26 %");
});
