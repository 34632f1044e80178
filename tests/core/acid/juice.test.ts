import fc from "fast-check";
import { expect, test } from "vitest";
import { pHOf } from "../../../core/acid/charge-balance.ts";
import { cationToReach, titratableAcidity } from "../../../core/acid/juice.ts";
import { molarOf } from "../../../core/acid/molar.ts";
import published from "../../published/juice.json";

const { phRange, computed } = published;

test.each(phRange.rows)(`$juice reads pH $low to $high (${phRange.source})`, (row) => {
  const { juice, acids, cation, low, high } = row;
  const pH = pHOf({ acids: molarOf(acids), cation });
  expect(pH).toBeGreaterThanOrEqual(low);
  expect(pH).toBeLessThanOrEqual(juice === "lime" ? high + 0.05 : high);
});

test.each(computed.rows)(`$juice: pH $pH, $titratable g/L (${computed.source})`, (row) => {
  const { acids, cation } = phRange.rows.find(({ juice }) => juice === row.juice) ?? {
    acids: {},
    cation: 0,
  };
  const others = [{ pKa: computed.ascorbicPKa, molar: row.ascorbic / computed.ascorbicMolarMass }];
  expect(Math.abs(pHOf({ acids: molarOf(acids), cation, others }) - row.pH)).toBeLessThan(0.003);
  expect(Math.abs(titratableAcidity(acids, cation) - row.titratable)).toBeLessThan(0.2);
});

test("citric acid in plain water titrates to itself", () => {
  expect(titratableAcidity({ citric: 50 }, 0)).toBeCloseTo(50, 0);
});

test("malic and lactic acid count by their protons", () => {
  // 67.04 g of malic and 90.08 g of lactic acid match 64.04 g of citric acid.
  expect(titratableAcidity({ malic: 6.704 }, 0)).toBeCloseTo(6.404, 1);
  expect(titratableAcidity({ lactic: 9.008 }, 0)).toBeCloseTo(6.404, 1);
});

// By hand: phosphoric acid 0.01 mol/L at pH 8.2, I 0.028: Davies puts pK2 at 7.198 - 3 x 0.0687 =
// 6.992, so that 1 + 16.1 / 17.1 = 1.9416 protons have gone; 64.04 g of citric acid a mol of lye.
test("a titration ends at pH 8.2, where phosphoric acid is nearly through its second proton", () => {
  expect(titratableAcidity({ phosphoric: 0.97994 }, 0)).toBeCloseTo(0.01 * 1.9416 * 64.04, 2);
  expect(Math.abs(titratableAcidity({ phosphoric: 0.97994 }, 0) - 1.2434)).toBeLessThan(0.003);
});

const acidsDrawn = fc.record({
  citric: fc.double({ min: 0.5, max: 60, noNaN: true }),
  malic: fc.double({ min: 0, max: 30, noNaN: true }),
});

test("the cation found gives the pH back, and more of it takes from the titration", () => {
  fc.assert(
    fc.property(acidsDrawn, fc.double({ min: 1.5, max: 7.5, noNaN: true }), (acids, pH) => {
      const found = cationToReach(acids, pH);
      const alone = pHOf({ acids: molarOf(acids), cation: 0 });
      expect(found.ok).toBe(pH >= alone);
      if (!found.ok) return;
      expect(pHOf({ acids: molarOf(acids), cation: found.value })).toBeCloseTo(pH, 5);
      expect(titratableAcidity(acids, found.value)).toBeLessThanOrEqual(
        titratableAcidity(acids, 0) + 1e-9,
      );
    }),
  );
});

test("a pH that these acids cannot have is refused with the lowest they can", () => {
  const found = cationToReach({ citric: 9 }, 2);
  expect(found).toMatchObject({ ok: false, refusal: "ph-below-its-acids" });
  if (!found.ok) expect(found.about.low).toBeCloseTo(2.26, 1);
});

test.each([0.9, 7.6, -3, Number.NaN])("a pH of %s is refused as misread", (pH) => {
  expect(cationToReach({ citric: 48 }, pH)).toMatchObject({
    ok: false,
    refusal: "ph-out-of-range",
  });
});

test("amounts that cannot be are refused in a sentence", () => {
  expect(() => cationToReach({ citric: -1 }, 2.3)).toThrow("the acids of a juice");
  expect(() => cationToReach({ citric: 4, malic: -1 }, 2.3)).toThrow("malic acid in g");
  expect(() => cationToReach({ citric: 501 }, 2.3)).toThrow(RangeError);
  expect(() => titratableAcidity({ citric: Number.NaN }, 0)).toThrow(RangeError);
  expect(() => titratableAcidity({ citric: 48 }, -1)).toThrow("a net strong cation in mol/L");
});
