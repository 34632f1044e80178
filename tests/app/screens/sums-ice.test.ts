import fc from "fast-check";
import { expect, test } from "vitest";
import { type IceDraft, METHODS, readIce } from "../../../app/screens/sums/ice.ts";
import published from "../../published/ice.json";
import { IN_ML, sumValue } from "../../support/world/sum-value.ts";

const { fit, balance } = published;

const BLANK: IceDraft = {
  method: "stirred",
  volume: "100",
  strength: "28",
  sugar: "60",
  start: "22",
  ice: "120",
  iceTemperature: "0",
};
const read = (change: Partial<IceDraft>) => readIce({ ...BLANK, ...change }, IN_ML);

test.each(fit.rows)(
  `%d %%: stirred %d, shaken %d per volume (${fit.source})`,
  (abv, stirred, shaken) => {
    const strength = String(abv);
    const water = (method: IceDraft["method"]) =>
      sumValue(read({ method, strength, volume: "1000" }), "Water") / 1000;
    expect(Math.abs(water("stirred") - stirred)).toBeLessThan(fit.tolerance);
    expect(Math.abs(water("shaken") - shaken)).toBeLessThan(fit.tolerance);
  },
);

test.each(balance.rows)(`%d %% settled on wet ice (${balance.source})`, (abv, water) => {
  const got = read({ method: "settled", strength: String(abv), volume: "1000" });
  expect(Math.abs(sumValue(got, "Water") / 1000 - water)).toBeLessThan(
    balance.tolerance.withMixing,
  );
});

test("the fits carry their width, the balances none of their own", () => {
  expect(read({ volume: "200" }).answer?.main[0]?.within).toBeCloseTo(10, 9);
  expect(read({ method: "settled" }).answer?.main[0]?.within).toBeUndefined();
});

test("ethanol and sugar are kept in the glass", () => {
  for (const method of METHODS) {
    const got = read({ method });
    const volume = sumValue(got, "Volume at 20 °C");
    expect(sumValue(got, "ABV") * volume).toBeCloseTo(28, 6);
    expect((sumValue(got, "Sugar") * volume) / 1000).toBeCloseTo(6, 6);
  }
});

test("cold, it takes up a little less room and weighs a little more", () => {
  const got = read({});
  const [warm, cold] = [sumValue(got, "Volume at 20 °C"), sumValue(got, "Volume in the glass")];
  expect(cold).toBeLessThan(warm);
  expect(cold / warm).toBeGreaterThan(0.98);
  const mass = (sumValue(got, "Density in the glass") * cold) / 1000;
  expect(mass).toBeGreaterThan(120);
  expect(mass).toBeLessThan(140);
});

test("blended ice is all drunk, part of it still ice, and no cold volume is shown for it", () => {
  const got = read({
    method: "blended",
    strength: "20",
    sugar: "100",
    start: "4",
    iceTemperature: "-10",
  });
  // The example of the core's own docstring, computed once by an independent program.
  expect(sumValue(got, "Still ice")).toBeCloseTo(0.476, 2);
  expect(sumValue(got, "Water")).toBeCloseTo(120 / 0.9982, 1);
  expect(() => sumValue(got, "Volume in the glass")).toThrow("Volume in the glass");
  expect(read({ method: "blended", ice: "2 kg", iceTemperature: "-18" }).answer?.says).toEqual([
    expect.stringContaining("More ice than the drink can carry"),
  ]);
});

test("a drink outside what was measured is called a guess", () => {
  const says = (strength: string) => read({ strength }).answer?.says.join(" ") ?? "";
  expect(says("28")).toBe("");
  expect(says("12")).toContain("take it as a guess");
  expect(says("40")).toContain("take it as a guess");
});

test.each<[Partial<IceDraft>, string]>([
  [{ volume: "" }, "volume"],
  [{ strength: "80" }, "strength"],
  [{ sugar: "sweet" }, "sugar"],
  [{ start: "60" }, "start"],
  [{ method: "blended", ice: "" }, "ice"],
  [{ method: "blended", iceTemperature: "3" }, "iceTemperature"],
  [{ method: "settled", iceTemperature: "" }, "iceTemperature"],
])("%j gets one sentence, at its own field", (change, key) => {
  const { answer, faults } = read(change);
  expect(answer).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
  expect(faults.get(key)).toMatch(/^[A-Z].+[.]$/u);
});

test("ice that is not weighed is not asked for", () => {
  expect(read({ ice: "x", iceTemperature: "x" }).faults.size).toBe(0);
  expect(read({ method: "settled", ice: "x" }).faults.size).toBe(0);
});

test("whatever is typed within bounds is answered or told", () => {
  const drawn = fc.record({
    method: fc.constantFrom(...METHODS),
    volume: fc.integer({ min: 1, max: 100_000 }).map(String),
    strength: fc.integer({ min: 0, max: 750 }).map((n) => String(n / 10)),
    sugar: fc.integer({ min: 0, max: 1200 }).map(String),
    start: fc.integer({ min: -20, max: 40 }).map(String),
    ice: fc.integer({ min: 1, max: 100_000 }).map(String),
    iceTemperature: fc.integer({ min: -40, max: 0 }).map(String),
  });
  fc.assert(
    fc.property(drawn, (draft) => {
      const { answer, cannot } = readIce(draft, IN_ML);
      expect(answer !== undefined || cannot !== undefined).toBe(true);
      const all = [...(answer?.main ?? []), ...(answer?.more ?? [])];
      expect(all.every((one) => Number.isFinite(one.value))).toBe(true);
    }),
    { numRuns: 300 },
  );
});
