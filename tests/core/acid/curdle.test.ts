import fc from "fast-check";
import { expect, test } from "vitest";
import { type CurdleQuestion, type Curdling, willCurdle } from "../../../core/acid/curdle.ts";
import published from "../../published/milk.json";

const { recipes, alcoholAlone, lemon } = published;
const RANK = { no: 0, borderline: 1, clearly: 2 } as const;
const rank = ({ verdict }: Curdling) => RANK[verdict];

const juice = { acids: { citric: 0.048, malic: 0.002 }, cation: 0.034e-3, strength: 0 };
const base = { acids: {}, cation: 0, strength: 0.42 };

/** Punch holding so many ml of lemon juice. */
const soured = (volume: number, lemonMl: number, strength: number) => ({
  volume,
  acids: { citric: 0.048 * lemonMl, malic: 0.002 * lemonMl },
  cation: 0.034e-3 * lemonMl,
  strength,
});
const asked = (lemonMl: number, strength: number, more: Partial<CurdleQuestion> = {}) =>
  willCurdle({
    punch: soured(800, lemonMl, strength),
    dairy: "whole",
    dairyVolume: 200,
    juice,
    base,
    ...more,
  });

test.each(recipes.rows)("the recipe of $year clearly curdles, milk poured in hot", (row) => {
  const volume = 1000 * (row.spirit + row.water + row.lemon + row.sugar);
  const found = willCurdle({
    punch: soured(volume, 1000 * row.lemon, (500 * row.spirit) / volume),
    dairy: "whole",
    dairyVolume: 1000 * row.milk,
    temperature: 35,
    heated: true,
  });
  expect(found.verdict).toBe("clearly");
});

test.each(lemon.rows)(
  "$share of lemon in a 20 % punch, 1:4: too little acid is rare",
  ({ share }) => {
    // The notes: above 3 to 5 % lemon at 1:4 too little acid is rare.
    expect(asked(800 * share, 0.2).verdict).toBe("clearly");
  },
);

test.each(alcoholAlone.curdlesNot)(
  `alcohol of %s alone does not (${alcoholAlone.source})`,
  (mix) => {
    expect(asked(0, mix / 0.8).verdict).toBe("no");
    expect(asked(0, mix / 0.8).notes).not.toContain("alcohol-may-clot-alone");
  },
);

test.each(alcoholAlone.mayClot)("alcohol of %s in the mix may clot milk by itself", (mix) => {
  expect(asked(0, mix / 0.8).notes).toContain("alcohol-may-clot-alone");
});

test("low pH is no blocker", () => {
  expect(asked(400, 0.2).verdict).toBe("clearly");
});

test("verdict, band, onset and margin agree", () => {
  for (let ml = 0; ml < 60; ml += 2) {
    const { verdict, low, high, pH, onset, margin } = asked(ml, 0.2);
    expect(margin).toBeCloseTo((onset ?? 0) - pH, 9);
    expect(verdict === "clearly").toBe(high <= (onset ?? 0));
    expect(verdict === "no").toBe(low > (onset ?? 0));
  }
});

test("notes say what a person should know", () => {
  expect(asked(80, 0).notes).toEqual([]);
  expect(asked(80, 0.2).notes).toEqual(["alcohol-effect-assumed"]);
  expect(asked(80, 0.3).notes).toEqual(["alcohol-effect-assumed", "beyond-alcohol-data"]);
  expect(asked(80, 0, { temperature: 4 }).notes).toEqual(["cold-and-slow"]);
  expect(asked(80, 0, { temperature: 9.9 }).notes).toEqual(["cold-and-slow"]);
  expect(asked(80, 0, { temperature: 10 }).notes).toEqual([]);
  expect(asked(80, 0, { heated: true }).notes).toEqual(["heated-milk"]);
  expect(asked(80, 0, { dairyVolume: 0 }).notes).toEqual(["no-dairy"]);
  expect(asked(80, 0, { dairy: "goat" }).notes).toEqual(["no-data"]);
});

test("plants without casein never curdle and are offered no fix; soy may, without data", () => {
  for (const dairy of ["oat", "almond", "coconut"] as const) {
    const found = asked(80, 0, { dairy });
    expect(found).toMatchObject({ verdict: "no", onset: null, margin: null, fixes: {} });
    expect(found.notes).toEqual(["no-casein", "no-data"]);
  }
  expect(asked(80, 0, { dairy: "soy" }).verdict).toBe("clearly");
  expect(asked(80, 0, { dairy: "soy" }).notes).toEqual(["no-casein", "no-data"]);
});

test("hot and strong is never called clear, and only weaker helps", () => {
  const found = asked(80, 0.6, { temperature: 40 });
  expect(found.verdict).toBe("borderline");
  expect(found.notes).toContain("hot-and-strong");
  expect(found.fixes).toMatchObject({
    moreJuiceMl: expect.any(Number),
    lessDairyMl: "cannot-reach",
    moreBaseMl: "cannot-reach",
    moreAcidG: "cannot-reach",
  });
});

test("nothing but what was asked about is offered", () => {
  const { fixes } = willCurdle({
    punch: soured(800, 5, 0.2),
    dairy: "whole",
    dairyVolume: 200,
  });
  expect(Object.keys(fixes)).toEqual(["lessDairyMl", "moreAcidG"]);
});

const drawn = fc.record({
  volume: fc.double({ min: 50, max: 50_000, noNaN: true }),
  citric: fc.double({ min: 0, max: 60, noNaN: true }),
  cation: fc.double({ min: 0, max: 0.05, noNaN: true }),
  strength: fc.double({ min: 0, max: 1, noNaN: true }),
  dairy: fc.constantFrom("whole", "skim", "cream", "goat", "soy", "oat", "almond", "coconut"),
  share: fc.double({ min: 0, max: 2, noNaN: true }),
  temperature: fc.double({ min: -5, max: 80, noNaN: true }),
  heated: fc.boolean(),
} as const);
type Drawn = typeof drawn extends fc.Arbitrary<infer Value> ? Value : never;

const questionOf = (d: Drawn, acidShare = 1): CurdleQuestion => ({
  punch: {
    volume: d.volume,
    acids: { citric: (d.citric * d.volume * acidShare) / 1000 },
    cation: (d.cation * d.volume) / 1000,
    strength: d.strength,
  },
  dairy: d.dairy,
  dairyVolume: d.share * d.volume,
  temperature: d.temperature,
  heated: d.heated,
  juice,
  base,
});

test("any question in range gets finite numbers", () => {
  fc.assert(
    fc.property(drawn, (d) => {
      const { pH, low, high, onset, margin, fixes } = willCurdle(questionOf(d));
      for (const value of [pH, low, high, onset ?? 0, margin ?? 0]) {
        expect(Number.isFinite(value)).toBe(true);
      }
      for (const fix of Object.values(fixes)) {
        expect(fix === "cannot-reach" || (Number.isFinite(fix) && fix > 0)).toBe(true);
      }
    }),
    { numRuns: 150 },
  );
});

test("taking acid away never betters the verdict", () => {
  fc.assert(
    fc.property(drawn, fc.double({ min: 0, max: 1, noNaN: true }), (d, left) => {
      expect(rank(willCurdle(questionOf(d, left)))).toBeLessThanOrEqual(
        rank(willCurdle(questionOf(d))),
      );
    }),
    { numRuns: 100 },
  );
});

test("what cannot be is refused in a sentence", () => {
  expect(() => asked(80, 1.4)).toThrow("a strength of punch (0 to 1)");
  expect(() => asked(80, 0.2, { temperature: 140 })).toThrow("a temperature of the mix");
  expect(() => asked(80, 0.2, { dairyVolume: -1 })).toThrow("a dairy volume in ml");
  expect(() => asked(80, 0.2, { juice: { ...juice, strength: 1.4 } })).toThrow(
    "the strength of the juice (0 to 1)",
  );
  expect(() => asked(80, 0.2, { base: { ...base, cation: -1 } })).toThrow(
    "the net strong cation of the base",
  );
  expect(() => asked(80, 0.2, { juice: { ...juice, acids: { citric: -1 } } })).toThrow(
    "the citric acid of the juice in g per ml",
  );
});
