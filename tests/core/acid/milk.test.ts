import { expect, test } from "vitest";
import { chargeAt, chargesOf, pHOf } from "../../../core/acid/charge-balance.ts";
import type { DairyKind } from "../../../core/acid/dairy-kind-table.ts";
import { DAIRIES } from "../../../core/acid/dairy-table.ts";
import { acidDemand, dairyOf, milkBufferOf } from "../../../core/acid/milk.ts";
import { molarOf } from "../../../core/acid/molar.ts";
import { rootBetween } from "../../../core/quantity/solve.ts";
import published from "../../published/milk.json";

const { buffer, peak, fresh, demand, citric, yoghurt } = published;
const KINDS: readonly DairyKind[] = [
  "whole",
  "skim",
  "cream",
  "goat",
  "soy",
  "oat",
  "almond",
  "coconut",
];

const bufferIndex = (kind: DairyKind, pH: number) =>
  (acidDemand(kind, pH - 0.02) - acidDemand(kind, pH + 0.02)) / 0.04;

const steps = Array.from({ length: 151 }, (_, i) => 4.5 + i / 100);
const strongest = (kind: DairyKind) =>
  steps.reduce((best, pH) => (bufferIndex(kind, pH) > bufferIndex(kind, best) ? pH : best));

test.each(buffer.rows)(`$dairy milk buffers at most $max mmol/L/pH (${buffer.source})`, (row) => {
  const kind = row.dairy === "skim" ? "skim" : "whole";
  expect(Math.abs(bufferIndex(kind, strongest(kind)) - row.max)).toBeLessThan(0.5);
});

test(`the buffering peak lies at pH ${peak.low} to ${peak.high} (${peak.source})`, () => {
  expect(strongest("whole")).toBeGreaterThanOrEqual(peak.low);
  expect(strongest("whole")).toBeLessThanOrEqual(peak.high);
});

test(`fresh milk reads pH ${fresh.pH} (${fresh.source})`, () => {
  expect(pHOf({ acids: {}, ...milkBufferOf("whole") })).toBeCloseTo(fresh.pH, 5);
});

test.each(demand.rows)(
  `$mmolPerKg mmol/kg bring whole milk to pH $pH (${demand.source})`,
  (row) => {
    const perKg = acidDemand("whole", row.pH) / DAIRIES.whole.densityKgPerL;
    expect(Math.abs(perKg / row.mmolPerKg - 1)).toBeLessThan(0.1);
  },
);

test.each(citric.rows)(
  `$g g/L of citric acid bring whole milk to pH $pH (${citric.source})`,
  (row) => {
    const reached = pHOf({ acids: molarOf({ citric: row.g }), ...milkBufferOf("whole") });
    expect(Math.abs(reached - row.pH)).toBeLessThan(0.1);
  },
);

test(`yoghurt of pH ${yoghurt.pH} titrates to ${yoghurt.dornic} Dornic (${yoghurt.source})`, () => {
  const milk = milkBufferOf("whole");
  const soured = (lactic: number) => ({ acids: { lactic }, ...milk });
  const lactic = rootBetween((mol) => pHOf(soured(mol)) - yoghurt.pH, 0, 0.2, 1e-6);
  const lye = -chargeAt(chargesOf(soured(lactic)), yoghurt.titrationEnd);
  const dornic = (lye * 90.08) / 0.1;
  expect(Math.abs(dornic / yoghurt.dornic - 1)).toBeLessThan(0.2);
  // Known to read low: a change in it is a change in the model.
  expect(dornic).toBeCloseTo(65.1, 0);
});

test.each(KINDS)("a litre of %s weighs what its parts weigh", (kind) => {
  const { fat, casein, lactose, otherSolids, water, densityKgPerL } = dairyOf(kind);
  expect(fat + casein + lactose + otherSolids + water).toBeCloseTo(1000 * densityKgPerL, 6);
});

test.each(KINDS)(
  "%s says whether it has casein, and names no onset without protein to curdle",
  (k) => {
    const { casein, hasCasein, onset, allergen, lactose } = dairyOf(k);
    expect(casein > 0).toBe(hasCasein);
    expect(lactose > 0).toBe(allergen === "milk");
    expect(onset !== null).toBe(hasCasein || k === "soy");
  },
);

test.each(KINDS)("%s takes up acid all the way down", (kind) => {
  for (let pH = 2; pH < 7; pH += 0.1) {
    expect(acidDemand(kind, pH)).toBeGreaterThan(acidDemand(kind, pH + 0.1));
  }
});

test("a pH no milk has is refused", () => {
  expect(() => acidDemand("whole", 1.9)).toThrow("a pH of milk");
  expect(() => acidDemand("whole", Number.NaN)).toThrow(RangeError);
});
