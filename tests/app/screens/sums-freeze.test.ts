import fc from "fast-check";
import { afterEach, expect, test } from "vitest";
import { type FreezeDraft, readFreeze } from "../../../app/screens/sums/freeze.ts";
import { degreesChosen } from "../../../app/words/house-units.ts";
import { strengthOfMassFraction } from "../../../core/liquid/ethanol-water.ts";
import published from "../../published/freezing.json";
import { IN_ML, sumValue } from "../../support/world/sum-value.ts";

afterEach(() => {
  degreesChosen.value = "C";
});

const POINT = "Begins to freeze at";
const read = (strength: number | string, sugar: number | string = "", temperature = "") =>
  readFreeze({ strength: `${strength}`, sugar: `${sugar}`, temperature }, IN_ML);
const point = (abv: number, sugar = 0) => sumValue(read(abv, sugar), POINT);

test(`ethanol in water (${published.ethanol.source})`, () => {
  // The sum ends at 75 % vol, before the table's last row.
  const rows = published.ethanol.rows.filter(([percent = 0]) => percent < 68);
  expect(rows).toHaveLength(published.ethanol.rows.length - 1);
  for (const [percent = Number.NaN, degrees = Number.NaN] of rows) {
    const abv = 100 * strengthOfMassFraction(percent / 100);
    expect(Math.abs(point(abv) - degrees), `${percent} %`).toBeLessThan(0.01);
  }
});

test.each(published.byVolume.rows)(`%d % vol at %d °C (${published.byVolume.source})`, (abv, t) => {
  // The page's 60 % vol looks like the point of 50 % by weight.
  expect(Math.abs(point(abv) - t)).toBeLessThanOrEqual(
    abv === 60 ? 2.5 : published.byVolume.tolerance,
  );
});

test.each(published.ternary.rows)(
  `%d %% and %d g/L at %d °C (${published.ternary.source})`,
  (abv, sugar, t) => {
    expect(Math.abs(point(abv, sugar) - t)).toBeLessThan(published.ternary.tolerance);
  },
);

test.each(published.iceFraction.rows)(
  `%d %% and %d g/L at %d °C hold %d ice (${published.iceFraction.source})`,
  (abv, sugar, t, ice) => {
    const got = sumValue(read(abv, sugar, String(t)), `Ice at ${t} °C`.replace("-", "−"));
    expect(Math.abs(got - ice)).toBeLessThan(published.iceFraction.tolerance);
  },
);

test.each([
  [40, "liquid"],
  [30, "some ice"],
  [15, "slush"],
  [2, "spoonable or hard"],
])("%d %% in a freezer: %s", (abv, state) => {
  expect(read(abv).answer?.headline).toBe(`At −18 °C: ${state}`);
});

test("another temperature has its own line, and the freezer's is not said twice", () => {
  const { answer } = read(12, 100, "-6");
  expect(answer?.says[0]).toBe("At −6 °C: some ice");
  expect(read(12, 100, "-18").answer?.more).toHaveLength(1);
});

test("a point within three degrees of the freezer is called close", () => {
  const says = (abv: number) => read(abv).answer?.says.join(" ") ?? "";
  expect(says(33.5)).toMatch(/Leave 3\s°C of room/u);
  expect(point(36)).toBeGreaterThan(-21);
  expect(says(36)).toMatch(/Leave 3\s°C of room/u);
  expect(says(40)).not.toContain("of room");
  // A house that reads °F is told a step of its own degrees.
  degreesChosen.value = "F";
  expect(says(36)).toMatch(/Leave 5\s°F of room/u);
});

test("what freezes may burst its bottle, what is overproof may burn", () => {
  expect(read(10).answer?.cautions.join(" ")).toContain("burst");
  expect(read(40).answer?.cautions).toEqual([]);
  expect(read(60).answer?.cautions.join(" ")).toContain("from about 22 °C");
});

test("past the tables no figure is made up", () => {
  for (const abv of [75.1, 80, 96, 100]) {
    const { answer } = read(abv);
    expect(answer?.main).toEqual([]);
    expect(answer?.headline).toBe("No bar freezer freezes it");
    expect(answer?.cautions).toHaveLength(3);
  }
  expect(point(75)).toBeGreaterThan(-50);
});

test.each<[FreezeDraft, string]>([
  [{ strength: "", sugar: "", temperature: "" }, "strength"],
  [{ strength: "101", sugar: "", temperature: "" }, "strength"],
  [{ strength: "20", sugar: "1201", temperature: "" }, "sugar"],
  [{ strength: "20", sugar: "", temperature: "-50" }, "temperature"],
  [{ strength: "20", sugar: "", temperature: "cold" }, "temperature"],
])("%j gets one sentence, at its own field", (draft, key) => {
  const { answer, faults } = readFreeze(draft, IN_ML);
  expect(answer).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
});

test("whatever is typed within bounds is answered or told", () => {
  const strengths = fc.integer({ min: 0, max: 1000 }).map((n) => n / 10);
  const sugars = fc.integer({ min: 0, max: 1200 });
  fc.assert(
    fc.property(strengths, sugars, fc.integer({ min: -40, max: 20 }), (abv, sugar, t) => {
      const { answer, cannot } = read(abv, sugar, String(t));
      expect(answer !== undefined || cannot !== undefined).toBe(true);
      for (const one of answer?.more ?? []) {
        expect(one.value).toBeGreaterThanOrEqual(0);
        expect(one.value).toBeLessThanOrEqual(1);
      }
    }),
  );
});
