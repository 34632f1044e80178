import fc from "fast-check";
import { expect, test } from "vitest";
import { type AcidDraft, readAcidAdjust } from "../../../app/screens/sums/acid.ts";
import { NO_JUICE, OWN_JUICE, soursOf } from "../../../app/screens/sums/juice.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import published from "../../published/juice.json";
import { IN_ML, sumValue } from "../../support/world/sum-value.ts";

const { adjust, computed } = published;
const cupboard = new Map(CUPBOARD.map((one) => [one.id, one]));

const read = (draft: Partial<AcidDraft>) =>
  readAcidAdjust({ juice: NO_JUICE, volume: "1000", to: "lime", ...draft }, cupboard, IN_ML);
const own = (acids: Partial<AcidDraft["juice"]["acids"]>, pH = "") => ({
  juice: OWN_JUICE,
  acids: { ...NO_JUICE.acids, ...acids },
  pH,
});

test.each(adjust.rows)(`a litre of $from to $to (${adjust.source})`, ({ has, to, add }) => {
  const juice = own({ citric: `${has.citric}`, malic: `${has.malic ?? ""}` });
  const got = read({ juice, to: to === "lime" ? "lime" : "lemon" });
  expect(Math.abs(sumValue(got, "Citric acid") / add.citric - 1)).toBeLessThan(0.05);
  if (add.malic === undefined) return;
  expect(Math.abs(sumValue(got, "Malic acid") / add.malic - 1)).toBeLessThan(0.05);
});

test.each(computed.rows.filter(({ juice }) => juice === "orange" || juice === "grapefruit"))(
  `titratable acidity of $juice from the cupboard (${computed.source})`,
  ({ juice, titratable }) => {
    const got = read({ juice: { ...NO_JUICE, juice: `${juice}-juice` } });
    expect(Math.abs(sumValue(got, "Titratable acidity now") - titratable)).toBeLessThan(0.2);
    expect(sumValue(got, "Titratable acidity then")).toBeGreaterThan(50);
  },
);

test("what was aimed at can be titrated, less what the juice's own potassium already holds", () => {
  const { cation = Number.NaN } = cupboard.get("orange-juice") ?? {};
  const got = read({});
  const litres = sumValue(got, "Makes") / 1000;
  // 64.04 g of citric and 67.04 g of malic acid take a mol of lye each.
  const expected = 40 + (20 * 64.04) / 67.04 - (64.04 * cation) / litres;
  expect(Math.abs(sumValue(got, "Titratable acidity then") - expected)).toBeLessThan(0.2);
});

test("half the juice takes half the acid, and makes a little more than it was", () => {
  const [litre, half] = [read({}), read({ volume: "500" })];
  for (const name of ["Citric acid", "Malic acid", "Makes"]) {
    expect(sumValue(half, name)).toBeCloseTo(sumValue(litre, name) / 2, 9);
  }
  const added = sumValue(litre, "Citric acid") + sumValue(litre, "Malic acid");
  expect(sumValue(litre, "Makes")).toBeCloseTo(1000 + 0.598 * added, 6);
});

test("without a pH there is no titratable acidity, with one there is", () => {
  const without = read({ juice: own({ citric: "9" }) });
  expect(() => sumValue(without, "Titratable acidity now")).toThrow("Titratable");
  expect(sumValue(without, "Citric acid")).toBeGreaterThan(30);
  const withPh = read({ juice: own({ citric: "9" }, "3,6") });
  expect(sumValue(withPh, "Titratable acidity now")).toBeLessThan(9);
});

test("a juice that is sour enough already is told so, by its acid", () => {
  const got = read({ juice: own({ malic: "25" }) });
  expect(got.answer).toBeUndefined();
  expect(got.cannot).toContain("25.0 g/L of malic acid");
});

test("cautions of the juice itself are kept", () => {
  const { cautions = [] } =
    read({ juice: { ...NO_JUICE, juice: "grapefruit-juice" } }).answer ?? {};
  expect(cautions.join(" ")).toContain("Grapefruit changes how some medicines act");
  expect(cautions[0]).toContain("Acid powder");
});

test("powders, milks and what is not sour cannot stand for a juice", () => {
  const ids = soursOf(cupboard).map(({ id }) => id);
  expect(ids).toEqual(expect.arrayContaining(["orange-juice", "red-wine-13"]));
  const [orange] = soursOf(cupboard);
  if (orange === undefined) throw new RangeError("expected something sour, got none");
  const powderInWater = { ...orange, acids: { citric: 600 } };
  expect(soursOf(new Map([["strong", powderInWater]]))).toEqual([]);
  for (const id of ["citric-acid", "milk-whole", "vodka-40"]) expect(ids).not.toContain(id);
});

test.each<[Partial<AcidDraft>, string]>([
  [{ volume: "" }, "volume"],
  [{ juice: own({ citric: "sour" }) }, "citric"],
  [{ juice: own({ tartaric: "300" }) }, "tartaric"],
  [{ juice: own({ citric: "9" }, "9") }, "pH"],
  [{ juice: own({ citric: "9" }, "acid") }, "pH"],
  [{ juice: own({ citric: "9" }, "1.2") }, "pH"],
])("%j gets one sentence, at its own field", (change, key) => {
  const { answer, faults } = read(change);
  expect(answer).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
  expect(faults.get(key)).toMatch(/^[A-Z].+[.]$/u);
});

const typed = fc.integer({ min: 0, max: 160 }).map(String);

test("whatever acids are typed are answered or told", () => {
  fc.assert(
    fc.property(typed, typed, typed, fc.constantFrom("", "3.4"), (citric, malic, tartaric, pH) => {
      const got = read({ juice: own({ citric, malic, tartaric }, pH), to: "lemon" });
      expect([got.answer, got.cannot, got.faults.get("pH")].some(Boolean)).toBe(true);
    }),
    { numRuns: 50 },
  );
});
