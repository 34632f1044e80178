import fc from "fast-check";
import { expect, test } from "vitest";
import { type PourDraft, readBlend } from "../../../app/screens/sums/blend.ts";
import { type ReduceDraft, readReduction } from "../../../app/screens/sums/reduce.ts";
import { figureText } from "../../../app/words/format.ts";
import published from "../../published/ethanol-water-mixing.json";
import { IN_ML, sumValue } from "../../support/world/sum-value.ts";

const { ttbTable6, contraction, reduction } = published;

const reduce = (draft: Partial<ReduceDraft>) =>
  readReduction({ volume: "700", now: "57", wanted: "40", sugar: "", ...draft }, IN_ML);
const blend = (...pours: readonly (readonly [volume: number, abv: number])[]) =>
  readBlend(
    pours.map(([volume, abv]) => ({ volume: String(volume), strength: String(abv) })),
    IN_ML,
  );

test.each(ttbTable6.reductions)(
  `100 gallons from $from to $to proof (${ttbTable6.source})`,
  ({ from, to, gallonsWater }) => {
    // Proof is twice the % vol; the law's examples are at 60 F, ours at 20 degrees C.
    const read = reduce({ volume: "100", now: String(from / 2), wanted: String(to / 2) });
    expect(Math.abs(sumValue(read, "Water") - gallonsWater)).toBeLessThan(ttbTable6.tolerance);
  },
);

test.each(ttbTable6.rows)(
  `spirit and water that make 100 parts of $proof proof (${ttbTable6.source})`,
  ({ proof, partsWater }) => {
    const read = blend([proof / 2, 100], [partsWater, 0]);
    // The tables are at 60 F: at 20 degrees C pure ethanol has grown by half a part in a hundred.
    expect(Math.abs(sumValue(read, "Makes") - 100)).toBeLessThan(0.1);
    expect(Math.abs(100 * sumValue(read, "ABV") - proof / 2)).toBeLessThan(0.1);
  },
);

test.each(reduction.rows)(`from %d to %d: %d ml (${reduction.source})`, (from, to, water) => {
  const read = reduce({ volume: "100", now: String(from), wanted: String(to) });
  expect(Math.abs(sumValue(read, "Water") - water)).toBeLessThan(reduction.tolerance);
});

test.each(contraction.rows)(
  `%d ml at %d and %d ml at %d make %d ml at %d (${contraction.source})`,
  (mlA, abvA, mlB, abvB, total, abv) => {
    const read = blend([mlA, abvA], [mlB, abvB]);
    expect(Math.abs(sumValue(read, "Makes") - total)).toBeLessThan(contraction.tolerance);
    expect(Math.abs(100 * sumValue(read, "ABV") - abv)).toBeLessThan(contraction.tolerance);
    const shrunk = read.answer?.more.find((one) => one.name === "Shrinks by");
    expect(shrunk?.value).toBeCloseTo(mlA + mlB - total, 3);
  },
);

test("a liqueur is let down by its masses, sugar and all", () => {
  const sweet = reduce({ now: "24", wanted: "16", sugar: "240" });
  const plain = reduce({ now: "24", wanted: "16" });
  const [water, makes] = [sumValue(sweet, "Water"), sumValue(sweet, "Makes")];
  // Ethanol is kept: 700 ml at 24 % stand in what is made at 16 %.
  expect((700 * 0.24) / makes).toBeCloseTo(0.16, 9);
  expect(water).not.toBeCloseTo(sumValue(plain, "Water"), 1);
  expect(reduce({ now: "25", wanted: "25", sugar: "250" }).answer?.main[0]?.value).toBeCloseTo(0);
});

test("a weak spirit let down far grows, and the row says so", () => {
  const read = reduce({ volume: "1000", now: "10", wanted: "1" });
  expect(sumValue(read, "Grows by")).toBeGreaterThan(0);
  expect(() => sumValue(read, "Shrinks by")).toThrow("Shrinks by");
});

test("the working names what went in, its rule and its source", () => {
  const [water] = reduce({}).answer?.main ?? [];
  expect(water?.from.map((one) => `${one.name} ${figureText(one, IN_ML)}`)).toEqual([
    "Spirit 700 ml",
    "ABV now 57.0 %",
    "ABV wanted 40.0 %",
  ]);
  expect(water?.rule.source).toContain("OIML R 22");
});

test("a third pour counts once it is typed, and then all of it is needed", () => {
  const two: readonly PourDraft[] = [
    { volume: "500", strength: "60" },
    { volume: "500", strength: "40" },
  ];
  const none = { volume: " ", strength: "" };
  expect(100 * sumValue(readBlend([...two, none], IN_ML), "ABV")).toBeCloseTo(50.1, 1);
  const half = readBlend([...two, { volume: "100", strength: "" }], IN_ML);
  expect([...half.faults.keys()]).toEqual(["strength:2"]);
  const third = readBlend([...two, { volume: "500", strength: "0" }], IN_ML);
  expect(sumValue(third, "ABV") * sumValue(third, "Makes")).toBeCloseTo(500, 6);
});

test.each<[Partial<ReduceDraft>, string]>([
  [{ volume: "lots" }, "volume"],
  [{ now: "140" }, "now"],
  [{ now: "" }, "now"],
  [{ wanted: "0" }, "wanted"],
  [{ wanted: "58" }, "wanted"],
  [{ sugar: "x" }, "sugar"],
])("%j gets one sentence, at its own field", (change, key) => {
  const { answer, faults } = reduce(change);
  expect(answer).toBeUndefined();
  expect([...faults.keys()]).toEqual([key]);
  expect(faults.get(key)).toMatch(/^[A-Z].+[.]$/u);
});

test("a strength above what is there is named, whatever else is wrong", () => {
  const { faults } = reduce({ volume: "", wanted: "60" });
  expect(faults.get("wanted")).toContain("at most 57.0 %");
});

test("sugar and spirit that do not fit together are told", () => {
  expect(reduce({ now: "96", wanted: "40", sugar: "900" }).cannot).toContain("does not fit");
});

test("cautions go by the strongest that is handled", () => {
  expect(reduce({}).answer?.cautions).toHaveLength(3);
  expect(blend([500, 40], [100, 96]).answer?.cautions[1]).toContain("At 96.0 %");
  expect(blend([500, 12], [100, 0]).answer?.cautions).toEqual([]);
});

const percent = fc.integer({ min: 1, max: 1000 }).map((n) => n / 10);
const volume = fc.integer({ min: 1, max: 1_000_000 }).map((n) => n / 10);

test("ethanol is kept, and whatever is typed is answered or told", () => {
  fc.assert(
    fc.property(volume, percent, percent, fc.integer({ min: 0, max: 1200 }), (ml, a, b, sugar) => {
      const typed = { volume: String(ml), now: String(a), wanted: String(b), sugar: String(sugar) };
      const { answer, faults, cannot } = reduce(typed);
      expect([answer !== undefined, faults.size > 0, cannot !== undefined]).toContain(true);
      if (answer === undefined) return;
      const makes = answer.main[1]?.value ?? Number.NaN;
      expect((makes * b) / (ml * a)).toBeCloseTo(1, 5);
    }),
  );
});
