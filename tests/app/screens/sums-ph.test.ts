import fc from "fast-check";
import { expect, test } from "vitest";
import { NO_JUICE, OWN_JUICE } from "../../../app/screens/sums/juice.ts";
import { type PhDraft, readPh } from "../../../app/screens/sums/ph.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import published from "../../published/juice.json";
import { IN_ML, sumValue } from "../../support/world/sum-value.ts";

const { phRange } = published;
const cupboard = new Map(CUPBOARD.map((one) => [one.id, one]));

const BLANK: PhDraft = {
  juice: { ...NO_JUICE, juice: "lemon-juice" },
  volume: "1000",
  total: "1000",
  strength: "0",
  added: NO_JUICE.acids,
};
const read = (change: Partial<PhDraft>) => readPh({ ...BLANK, ...change }, cupboard, IN_ML);
const own = (citric: string, malic: string, pH: string) => ({
  juice: OWN_JUICE,
  acids: { ...NO_JUICE.acids, citric, malic },
  pH,
});
const PH = "Likeliest";

test.each(phRange.rows)(`$juice by itself is within $low to $high (${phRange.source})`, (row) => {
  const got = read({ juice: { ...NO_JUICE, juice: `${row.juice}-juice` } });
  const slack = row.juice === "lime" ? 0.05 : 0;
  expect(sumValue(got, PH)).toBeGreaterThanOrEqual(row.low - slack);
  expect(sumValue(got, PH)).toBeLessThanOrEqual(row.high + slack);
});

test.each(["2.2", "2.4", "2.6"])("a juice typed with pH %s comes back at that pH", (pH) => {
  expect(sumValue(read({ juice: own("48", "2", pH) }), PH)).toBeCloseTo(Number(pH), 3);
});

test("water and spirit raise it, acid lowers it", () => {
  const neat = sumValue(read({}), PH);
  const thin = sumValue(read({ total: "4000" }), PH);
  const strong = sumValue(read({ total: "4000", strength: "20" }), PH);
  const sour = sumValue(read({ total: "4000", added: { ...NO_JUICE.acids, citric: "40" } }), PH);
  expect(thin).toBeGreaterThan(neat);
  expect(strong).toBeGreaterThan(thin);
  expect(sour).toBeLessThan(thin);
  expect(sumValue(read({ total: "4000" }), "Acid per litre")).toBeCloseTo(12.5, 9);
});

test("twice as much of the same has the same pH", () => {
  const once = read({ volume: "250", total: "1000", strength: "12" });
  const twice = read({ volume: "500", total: "2 l", strength: "12" });
  expect(sumValue(twice, PH)).toBeCloseTo(sumValue(once, PH), 6);
});

test("the answer is a band, wider above 20 %", () => {
  const weak = read({ total: "4000", strength: "15" }).answer;
  const strong = read({ total: "4000", strength: "40" }).answer;
  expect(weak?.headline).toMatch(/^pH \d\.\d to \d\.\d$/u);
  expect(weak?.main[0]?.within).toBeCloseTo(0.3, 9);
  expect(strong?.main[0]?.within).toBeCloseTo(0.5, 9);
  expect(strong?.says).toHaveLength(1);
  expect(weak?.cautions.join(" ")).toContain("local code");
});

test.each<[Partial<PhDraft>, string]>([
  [{ volume: "" }, "volume"],
  [{ total: "500" }, "total"],
  [{ strength: "" }, "strength"],
  [{ added: { ...NO_JUICE.acids, malic: "lots" } }, "added:malic"],
  [{ juice: own("48", "2", "") }, "pH"],
  [{ juice: own("48", "2", "1.2") }, "pH"],
  [{ juice: own("sour", "2", "2.3") }, "citric"],
])("%j gets one sentence, at its own field", (change, key) => {
  const { answer, faults } = read(change);
  expect(answer).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
  expect(faults.get(key)).toMatch(/^[A-Z].+[.]$/u);
});

test("no acid, and more than dissolves, are told", () => {
  expect(read({ juice: own("", "", "7") }).cannot).toContain("no acid in it yet");
  const added = { ...NO_JUICE.acids, citric: "900" };
  expect(read({ added }).cannot).toContain("500 g per litre");
});

test("whatever is typed within bounds is answered or told", () => {
  const drawn = fc.record({
    volume: fc.integer({ min: 1, max: 5000 }).map(String),
    total: fc.integer({ min: 1, max: 100_000 }).map(String),
    strength: fc.integer({ min: 0, max: 100 }).map(String),
    citric: fc.integer({ min: 0, max: 2000 }).map(String),
  });
  fc.assert(
    fc.property(drawn, ({ volume, total, strength, citric }) => {
      const added = { ...NO_JUICE.acids, citric };
      const { answer, cannot, faults } = read({ volume, total, strength, added });
      expect(answer !== undefined || cannot !== undefined || faults.size > 0).toBe(true);
    }),
    { numRuns: 60 },
  );
});
