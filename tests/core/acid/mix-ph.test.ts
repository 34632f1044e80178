import fc from "fast-check";
import { expect, test } from "vitest";
import { mixPh, mixStrength } from "../../../core/acid/mix-ph.ts";
import published from "../../published/milk.json";

const { lemon, recipes } = published;

/** Punch holding so many ml of a lemon juice with 48 g/L citric, 2 g/L malic acid, 0.034 M cation. */
const soured = (volume: number, juice: number, strength: number) => ({
  volume,
  acids: { citric: 0.048 * juice, malic: 0.002 * juice },
  cation: 0.034e-3 * juice,
  strength,
});

test.each(lemon.rows)(`$share lemon juice, 1:4: pH $pH (${lemon.source})`, ({ share, pH }) => {
  const punch = soured(800, 800 * share, 0);
  const found = mixPh({ punch, dairy: "whole", dairyVolume: 200 });
  expect(Math.abs(found.pH - pH)).toBeLessThan(0.05);
});

test.each(recipes.rows)(`the recipe of $year: pH $pH (${recipes.source})`, (row) => {
  const volume = 1000 * (row.spirit + row.water + row.lemon + row.sugar);
  const punch = soured(volume, 1000 * row.lemon, (500 * row.spirit) / volume);
  const { pH, low, high } = mixPh({ punch, dairy: "whole", dairyVolume: 1000 * row.milk });
  expect(Math.abs(pH - row.pH)).toBeLessThan(0.4);
  expect(low).toBeLessThan(row.pH);
  expect(high).toBeGreaterThan(row.pH);
});

test("the band is 0.3 either way, wider past 20 % vol and where data is wanting", () => {
  const half = (dairy: "whole" | "soy", strength: number) => {
    const { low, high } = mixPh({ punch: soured(800, 80, strength), dairy, dairyVolume: 200 });
    return (high - low) / 2;
  };
  expect(half("whole", 0.25)).toBeCloseTo(0.3, 9);
  expect(half("whole", 0.5)).toBeCloseTo(0.5, 9);
  expect(half("soy", 0.25)).toBeCloseTo(0.5, 9);
});

const mixings = fc.record({
  punch: fc.record({
    volume: fc.double({ min: 10, max: 50_000, noNaN: true }),
    perLitre: fc.double({ min: 0, max: 80, noNaN: true }),
    cation: fc.double({ min: 0, max: 0.05, noNaN: true }),
    strength: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  dairy: fc.constantFrom("whole", "skim", "cream", "goat", "soy", "oat", "almond", "coconut"),
  share: fc.double({ min: 0, max: 4, noNaN: true }),
} as const);
const mixingOf = ({
  punch,
  dairy,
  share,
}: typeof mixings extends fc.Arbitrary<infer M> ? M : never) => ({
  punch: {
    volume: punch.volume,
    acids: { citric: (punch.perLitre * punch.volume) / 1000 },
    cation: (punch.cation * punch.volume) / 1000,
    strength: punch.strength,
  },
  dairy,
  dairyVolume: share * punch.volume,
});

test("any mix has a pH, and more acid lowers it", () => {
  fc.assert(
    fc.property(mixings, fc.double({ min: 0.01, max: 30, noNaN: true }), (drawn, more) => {
      const mixing = mixingOf(drawn);
      const before = mixPh(mixing).pH;
      const citric = mixing.punch.acids.citric + (more * mixing.punch.volume) / 1000;
      const after = mixPh({ ...mixing, punch: { ...mixing.punch, acids: { citric } } }).pH;
      expect(before).toBeGreaterThan(0);
      expect(before).toBeLessThan(14);
      expect(after).toBeLessThan(before);
    }),
  );
});

test("milk raises the pH of a sour punch without alcohol, up to its own and no further", () => {
  fc.assert(
    fc.property(mixings, (drawn) => {
      const mixing = mixingOf({ ...drawn, punch: { ...drawn.punch, strength: 0, cation: 0 } });
      fc.pre(mixing.punch.acids.citric > mixing.punch.volume / 1000);
      const more = { ...mixing, dairyVolume: mixing.dairyVolume * 1.2 + 1 };
      expect(mixPh(more).pH).toBeGreaterThan(mixPh(mixing).pH);
      expect(mixPh(more).pH).toBeLessThan(6.8);
    }),
  );
});

test("doubling everything changes nothing", () => {
  const punch = soured(800, 80, 0.25);
  const twice = soured(1600, 160, 0.25);
  const one = mixPh({ punch, dairy: "whole", dairyVolume: 200 });
  expect(mixPh({ punch: twice, dairy: "whole", dairyVolume: 400 }).pH).toBeCloseTo(one.pH, 6);
  expect(mixStrength({ punch, dairy: "whole", dairyVolume: 200 })).toBeCloseTo(0.2, 9);
});

test("what cannot be is refused in a sentence", () => {
  const good = { punch: soured(800, 80, 0.2), dairy: "whole", dairyVolume: 200 } as const;
  const withPunch = (change: object) => () =>
    mixPh({ ...good, punch: { ...good.punch, ...change } });
  expect(withPunch({ strength: 1.4 })).toThrow("a strength of punch (0 to 1)");
  expect(withPunch({ volume: -1 })).toThrow("a punch in ml");
  expect(withPunch({ volume: Number.NaN })).toThrow(RangeError);
  expect(withPunch({ cation: -0.1 })).toThrow("a net strong cation in mol");
  expect(withPunch({ acids: { citric: -4 } })).toThrow("citric acid in g");
  expect(() => mixPh({ ...good, dairyVolume: -1 })).toThrow("a dairy volume in ml");
  expect(() => mixPh({ punch: soured(0, 0, 0), dairy: "whole", dairyVolume: 0 })).toThrow(
    "punch and dairy together",
  );
});
