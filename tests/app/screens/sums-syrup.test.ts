import { expect, test } from "vitest";
import { readParts } from "../../../app/screens/sums/read-parts.ts";
import { readSyrup, type SyrupDraft } from "../../../app/screens/sums/syrup.ts";
import sucrose from "../../published/sucrose.json";
import syrups from "../../published/sucrose-syrups.json";
import { IN_ML, sumValue } from "../../support/world/sum-value.ts";

const { crc } = sucrose;

const BLANK: SyrupDraft = {
  by: "weight",
  of: "sugar",
  ratio: "1 : 1",
  own: "",
  amount: "1000",
  gum: "",
};
const syrup = (change: Partial<SyrupDraft>) => readSyrup({ ...BLANK, ...change }, IN_ML);
const own = (sweet: number, water: number, change: Partial<SyrupDraft> = {}) =>
  syrup({ ratio: "own", own: `${sweet} : ${water}`, ...change });

/** kg/m3, as the file words it: 1.6e-4 g/mL to 50 wt%, 3e-4 to 70, 8.5e-4 to 84. */
const allowed = (percent: number): number => (percent <= 50 ? 0.16 : percent <= 70 ? 0.3 : 0.85);

test(`density of sugar in water (${crc.source})`, () => {
  const rows = crc.rows.filter(([percent = 0]) => percent >= 10 && percent <= 80);
  expect(rows.length).toBeGreaterThan(20);
  for (const [percent = Number.NaN, density = Number.NaN] of rows) {
    const read = own(percent, 100 - percent);
    expect(sumValue(read, "°Brix")).toBeCloseTo(percent, 9);
    const off = Math.abs(sumValue(read, "Density") - 1000 * density);
    expect(off, `${percent} %`).toBeLessThanOrEqual(allowed(percent));
  }
});

test.each(
  syrups.rows.filter(({ parts }) => parts.sugarG !== undefined && parts.waterG !== undefined),
)(
  `$parts by weight (${syrups.source})`,
  ({ parts, brix, density_g_mL, sugar_g_per_L, yield_mL }) => {
    const { sugarG = Number.NaN, waterG = Number.NaN } = parts;
    const read = own(sugarG, waterG, { amount: `${sugarG}` });
    const { tolerance } = syrups;
    expect(Math.abs(sumValue(read, "°Brix") - brix)).toBeLessThanOrEqual(tolerance.brix);
    expect(Math.abs(sumValue(read, "Density") / 1000 - density_g_mL)).toBeLessThanOrEqual(
      tolerance.density_g_mL,
    );
    expect(Math.abs(sumValue(read, "Sugar per litre") - sugar_g_per_L)).toBeLessThanOrEqual(
      tolerance.sugar_g_per_L,
    );
    expect(Math.abs(sumValue(read, "Makes") - yield_mL)).toBeLessThanOrEqual(tolerance.yield_mL);
  },
);

test.each(syrups.rows.filter(({ parts }) => parts.bulk === 0.8454))(
  `$parts by the cup (${syrups.source})`,
  ({ parts, brix, yield_mL }) => {
    const { sugarMl = Number.NaN, waterMl = Number.NaN } = parts;
    const read = own(sugarMl, waterMl, { by: "volume", amount: `${sugarMl}` });
    expect(Math.abs(sumValue(read, "°Brix") - brix)).toBeLessThanOrEqual(syrups.tolerance.brix);
    expect(Math.abs(sumValue(read, "Makes") - yield_mL)).toBeLessThanOrEqual(
      syrups.tolerance.yield_mL,
    );
    // 200 g to the US cup of 236.588 ml.
    expect(sumValue(read, "Sugar, weighed")).toBeCloseTo((200 * sugarMl) / 236.588, 1);
  },
);

test("two to one is past what water holds cold, one to one is not", () => {
  expect(syrup({ ratio: "2 : 1" }).answer?.headline).toBe("Fridge: may crystallise");
  expect(syrup({}).answer?.headline).toBe("Fridge: should stay dissolved");
  expect(own(3, 1).answer?.headline).toBe("Crystallises even at 20 °C");
  // Sugar Technologists Manual: 66.72 % at 20 degrees C, just above the 66.67 of two to one.
  expect(sumValue(syrup({}), "Most that 4 °C holds")).toBeCloseTo(64.8, 1);
});

test("honey by the jug weighs what its own density says", () => {
  const byWeight = syrup({ of: "honey", amount: "500" });
  expect(sumValue(byWeight, "°Brix")).toBeCloseTo(40, 6);
  const byVolume = syrup({ of: "honey", by: "volume", amount: "500" });
  // Honey of 17.5 % water weighs about 1.42 g/ml: from memory of food tables.
  expect(sumValue(byVolume, "Honey, weighed") / 500).toBeCloseTo(1.42, 1);
  expect(sumValue(byVolume, "Water, weighed")).toBeCloseTo(499.1, 1);
});

test("gum adds to what a gomme makes and takes its share of the °Brix", () => {
  const plain = syrup({ ratio: "2 : 1" });
  for (const by of ["weight", "volume"] as const) {
    const gomme = syrup({ of: "gomme", ratio: "2 : 1", by, gum: "50" });
    const sugar = syrup({ ratio: "2 : 1", by });
    expect(sumValue(gomme, "Makes")).toBeGreaterThan(sumValue(sugar, "Makes"));
    expect(sumValue(gomme, "°Brix")).toBeLessThan(sumValue(sugar, "°Brix"));
  }
  const none = syrup({ of: "gomme", ratio: "2 : 1", gum: "0" });
  expect(sumValue(none, "Makes")).toBeCloseTo(sumValue(plain, "Makes"), 9);
});

test.each([
  ["3 : 2", 1.5],
  ["3/2", 1.5],
  ["1,5", 1.5],
  ["1:10", 0.1],
  ["5 : 1", 5],
])("parts typed as %s are %d", (text, parts) => {
  expect(readParts(text)).toBeCloseTo(parts, 12);
});

test.each<[Partial<SyrupDraft>, string]>([
  [{ amount: "" }, "amount"],
  [{ amount: "1 l" }, "amount"],
  [{ by: "volume", amount: "1 kg" }, "amount"],
  [{ ratio: "own", own: "" }, "own"],
  [{ ratio: "own", own: "6 : 1" }, "own"],
  [{ ratio: "own", own: "1 : 0" }, "own"],
  [{ ratio: "own", own: "1 : 2 : 3" }, "own"],
  [{ of: "gomme", gum: "" }, "gum"],
  [{ of: "gomme", gum: "501" }, "gum"],
])("%j gets one sentence, at its own field", (change, key) => {
  const { answer, faults } = syrup(change);
  expect(answer).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
  expect(faults.get(key)).toMatch(/^[A-Z].+[.]$/u);
});

test("hot syrup and its keeping are always cautioned", () => {
  expect(syrup({}).answer?.cautions.join(" ")).toMatch(/burns.+local code/u);
});
