import fc from "fast-check";
import { expect, test } from "vitest";
import {
  alcoholRise,
  chargeAt,
  chargesOf,
  pHOf,
  siteOf,
} from "../../../core/acid/charge-balance.ts";
import { DISSOCIATION } from "../../../core/acid/dissociation-table.ts";
import { ACID_NAMES } from "../../../core/quantity/acid-name.ts";
import { ACID_MOLAR_MASS } from "../../../core/quantity/molar-mass-table.ts";
import published from "../../published/acid.json";

const { nbs, mcilvaine, pure, equivalents, alcohol } = published;

test.each(nbs.rows)(`$buffer reads pH $pH (${nbs.source})`, ({ pKa, molar, cation, pH }) => {
  expect(Math.abs(pHOf({ acids: {}, cation, others: [{ pKa, molar }] }) - pH)).toBeLessThan(0.02);
});

test("the named acids carry the constants that the buffers were checked with", () => {
  const citrate = pHOf({ acids: { citric: 0.05 }, cation: 0.05 });
  const phosphate = pHOf({ acids: { phosphoric: 0.05 }, cation: 0.075 });
  const tartrate = pHOf({ acids: { tartaric: 0.034 }, cation: 0.034 });
  const acetate = pHOf({ acids: { acetic: 0.2 }, cation: 0.1 });
  expect(Math.abs(citrate - 3.776)).toBeLessThan(0.02);
  expect(Math.abs(phosphate - 6.865)).toBeLessThan(0.02);
  expect(Math.abs(tartrate - 3.557)).toBeLessThan(0.02);
  expect(Math.abs(acetate - 4.65)).toBeLessThan(0.02);
});

test(`${mcilvaine.rows.length} citrate-phosphate mixtures (${mcilvaine.source})`, () => {
  const errors = mcilvaine.rows.map(({ pH, citricMl, phosphateMl }) => {
    const phosphoric = (0.2 * phosphateMl) / 100;
    const citric = (0.1 * citricMl) / 100;
    return pHOf({ acids: { citric, phosphoric }, cation: 2 * phosphoric }) - pH;
  });
  const bias = errors.reduce((sum, e) => sum + e, 0) / errors.length;
  expect(errors).toHaveLength(20);
  expect(Math.max(...errors.map(Math.abs))).toBeLessThan(0.2);
  // The bias is known (no sodium ion pairs): a change in it is a change in the model.
  expect(bias).toBeCloseTo(0.12, 2);
});

test.each(pure.rows)("$molar M $acid alone reads pH $pH (computed elsewhere)", (row) => {
  const { acid, molar, pH } = row;
  expect(Math.abs(pHOf({ acids: { [acid]: molar }, cation: 0 }) - pH)).toBeLessThan(0.003);
});

test.each(equivalents.rows)(
  "$acid acid weighs $gPerEq g per titratable mol",
  ({ acid, gPerEq }) => {
    const name = ACID_NAMES.find((known) => known === acid) ?? "phosphoric";
    const { titratable } = DISSOCIATION[name];
    expect(Math.abs(ACID_MOLAR_MASS[name] / titratable - gPerEq)).toBeLessThan(0.01);
  },
);

test.each(alcohol.rows)(`12 % vol raises $constant by $rise (${alcohol.source})`, ({ rise }) => {
  expect(Math.abs(alcoholRise(0.12) - rise)).toBeLessThan(0.02);
});

test("a half-neutralised acid shows the whole of alcohol's rise", () => {
  const half = (strength: number) => pHOf({ acids: { lactic: 0.05 }, cation: 0.025, strength });
  expect(half(0.12) - half(0)).toBeCloseTo(0.162, 2);
  expect(half(0.9)).toBe(half(0.5));
});

test("a site is an acid of one proton without activity", () => {
  const sites = [siteOf(5, 0.02)];
  expect(pHOf({ acids: {}, cation: 0.01, sites })).toBeCloseTo(5, 2);
  // Thinned by half, the same cation has used it up.
  expect(pHOf({ acids: {}, cation: 0.005, sites, siteShare: 0.5 })).toBeCloseTo(5, 2);
  expect(pHOf({ acids: {}, cation: 0.01, sites, siteShare: 0.5 })).toBeGreaterThan(8);
});

test("pure water is neutral", () => {
  expect(pHOf({ acids: {}, cation: 0 })).toBeCloseTo(7, 2);
});

const amounts = fc.record({
  citric: fc.double({ min: 0, max: 3, noNaN: true }),
  malic: fc.double({ min: 0, max: 3, noNaN: true }),
  phosphoric: fc.double({ min: 0, max: 3, noNaN: true }),
  acetic: fc.double({ min: 0, max: 3, noNaN: true }),
});
const solutions = fc.record({
  acids: amounts,
  cation: fc.double({ min: -9, max: 9, noNaN: true }),
  strength: fc.double({ min: 0, max: 1, noNaN: true }),
});

test("every solution has a pH at which its charges cancel", () => {
  fc.assert(
    fc.property(solutions, (solution) => {
      const pH = pHOf(solution);
      expect(pH).toBeGreaterThan(-1);
      expect(pH).toBeLessThan(15);
      const near = chargesOf(solution);
      expect(chargeAt(near, pH - 1e-6)).toBeGreaterThanOrEqual(0);
      expect(chargeAt(near, pH + 1e-6)).toBeLessThanOrEqual(0);
    }),
  );
});

test("pH falls with every acid added and rises with every cation", () => {
  fc.assert(
    fc.property(solutions, fc.constantFrom(...ACID_NAMES), (solution, name) => {
      const before = pHOf(solution);
      const acids = { ...solution.acids, [name]: (molesIn(solution.acids, name) + 0.01) * 1.1 };
      expect(pHOf({ ...solution, acids })).toBeLessThan(before + 1e-6);
      expect(pHOf({ ...solution, cation: solution.cation + 0.01 })).toBeGreaterThan(before - 1e-6);
    }),
  );
});

function molesIn(acids: Readonly<Record<string, number>>, name: string): number {
  return acids[name] ?? 0;
}

// Davies by hand with A 0.509, b 0.3 at I 0.5: log10 of 1/γ is 0.509 (0.41421 - 0.15) = 0.13448.
test("above half a mole of ions per litre activities are held", () => {
  expect(pHOf({ acids: {}, cation: -1 })).toBeCloseTo(0.13448, 4);
  expect(pHOf({ acids: {}, cation: -2 })).toBeCloseTo(0.13448 - Math.log10(2), 4);
});

// aqion.de and 3rd1000.com, tables of organic acids (opened), two decimals; citric pK3 of an
// encyclopedia (opened). L-tartaric there; ours lies between it and the racemic 3.03 and 4.37.
test.each([
  ["citric", [3.13, 4.757, 6.395]],
  ["malic", [3.4, 5.2]],
  ["tartaric", [2.98, 4.34]],
  ["lactic", [3.86]],
  ["acetic", [4.76]],
  ["phosphoric", [2.148, 7.206, 12.342]],
] as const)("%s acid's constants are the published ones, to less than a tenth", (name, pKa) => {
  expect(DISSOCIATION[name].pKa).toHaveLength(pKa.length);
  for (const [at, value] of pKa.entries()) {
    expect(Math.abs((DISSOCIATION[name].pKa[at] ?? 0) - value)).toBeLessThan(0.095);
  }
});

test("what cannot be is refused in a sentence", () => {
  expect(() => pHOf({ acids: { citric: -1 }, cation: 0 })).toThrow("an acid in mol/L");
  expect(() => pHOf({ acids: { citric: Number.NaN }, cation: 0 })).toThrow(RangeError);
  expect(() => pHOf({ acids: {}, cation: Number.NaN })).toThrow("a net strong cation in mol/L");
  expect(() => pHOf({ acids: {}, cation: 0, strength: 1.4 })).toThrow("a strength (0 to 1)");
  expect(() => siteOf(5, -1)).toThrow("a titratable site in mol/L");
  expect(() => pHOf({ acids: {}, cation: 0, siteShare: 2 })).toThrow("a share of titratable sites");
});
