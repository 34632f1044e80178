import fc from "fast-check";
import { expect, test } from "vitest";
import { type CurdleQuestion, willCurdle } from "../../../core/acid/curdle.ts";
import { curdleFixes, type Fix, type Pourable } from "../../../core/acid/curdle-fix.ts";

const juice = { acids: { citric: 0.048, malic: 0.002 }, cation: 0.034e-3, strength: 0 };
const base = { acids: {}, cation: 0, strength: 0.42 };
const sherry = { acids: { tartaric: 0.005 }, cation: 0.03e-3, strength: 0.17 };

const poured = (q: CurdleQuestion, more: Pourable, ml: number): CurdleQuestion => {
  const { punch } = q;
  const sum = (name: "citric" | "malic" | "tartaric") =>
    (punch.acids[name] ?? 0) + ml * (more.acids[name] ?? 0);
  const volume = punch.volume + ml;
  return {
    ...q,
    punch: {
      volume,
      acids: { citric: sum("citric"), malic: sum("malic"), tartaric: sum("tartaric") },
      cation: punch.cation + ml * more.cation,
      strength: (punch.volume * punch.strength + ml * more.strength) / volume,
    },
  };
};

/** Carries out one fix, written apart from the code that solved it. */
const CARRIED_OUT: Readonly<Record<string, (q: CurdleQuestion, amount: number) => CurdleQuestion>> =
  {
    moreJuiceMl: (q, ml) => poured(q, q.juice ?? juice, ml),
    moreBaseMl: (q, ml) => poured(q, q.base ?? base, ml),
    lessDairyMl: (q, ml) => ({ ...q, dairyVolume: q.dairyVolume - ml }),
    moreAcidG: (q, g) => {
      const citric = (q.punch.acids.citric ?? 0) + g;
      return { ...q, punch: { ...q.punch, acids: { ...q.punch.acids, citric } } };
    },
  };

const carriedOut = (q: CurdleQuestion, name: string, amount: number) =>
  willCurdle(CARRIED_OUT[name]?.(q, amount) ?? q).verdict;

const drawn = fc
  .record({
    volume: fc.double({ min: 200, max: 20_000, noNaN: true }),
    citric: fc.double({ min: 0, max: 6, noNaN: true }),
    cation: fc.double({ min: 0, max: 0.02, noNaN: true }),
    strength: fc.double({ min: 0, max: 0.6, noNaN: true }),
    dairy: fc.constantFrom("whole", "skim", "cream", "goat", "soy"),
    share: fc.double({ min: 0.06, max: 1, noNaN: true }),
    temperature: fc.double({ min: 0, max: 60, noNaN: true }),
    base: fc.constantFrom(base, sherry),
  } as const)
  .map(
    (d): CurdleQuestion => ({
      punch: {
        volume: d.volume,
        acids: { citric: (d.citric * d.volume) / 1000 },
        cation: (d.cation * d.volume) / 1000,
        strength: d.strength,
      },
      dairy: d.dairy,
      dairyVolume: d.share * d.volume,
      temperature: d.temperature,
      juice,
      base: d.base,
    }),
  );

/** Below this a fix is a trifle (a drop in a litre) and is not solved any finer. */
const TRIFLE = 1e-3;

test("every fix, carried out, curdles clearly, and 2 % less of it does not", () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(drawn, (q) => {
      const least = TRIFLE * (q.punch.volume + q.dairyVolume);
      for (const [name, fix] of Object.entries(willCurdle(q).fixes)) {
        if (fix === "cannot-reach") continue;
        expect(carriedOut(q, name, fix), name).toBe("clearly");
        if (fix < (name === "moreAcidG" ? least * 0.05 : least)) continue;
        expect(carriedOut(q, name, 0.98 * fix), name).not.toBe("clearly");
        seen.add(name);
      }
    }),
    { numRuns: 200, seed: 20261125 },
  );
  // Fails when the draw no longer meets each kind of fix.
  expect([...seen].sort()).toEqual(["lessDairyMl", "moreAcidG", "moreBaseMl", "moreJuiceMl"]);
});

test("a direction that cannot reach says so, and half of what was allowed does not either", () => {
  fc.assert(
    fc.property(drawn, (q) => {
      const total = q.punch.volume + q.dairyVolume;
      const most: Readonly<Record<string, number>> = {
        moreJuiceMl: total,
        moreBaseMl: total,
        lessDairyMl: q.dairyVolume - 0.05 * q.punch.volume,
        moreAcidG: 0.05 * total,
      };
      for (const [name, fix] of Object.entries(willCurdle(q).fixes)) {
        if (fix !== "cannot-reach") continue;
        expect(carriedOut(q, name, most[name] ?? 0), name).not.toBe("clearly");
        expect(carriedOut(q, name, (most[name] ?? 0) / 2), name).not.toBe("clearly");
      }
    }),
    { numRuns: 60 },
  );
});

const meeting = (citric: number, strength: number, dairyVolume = 200) =>
  ({
    punch: { volume: 800, acids: { citric }, cation: 0, strength },
    dairy: "whole",
    dairyVolume,
    temperature: 20,
    heated: false,
  }) as const;

test("without any acid, less milk or more spirit cannot reach, juice and acid can", () => {
  const fixes = curdleFixes(meeting(0, 0.2), juice, base);
  expect(fixes.lessDairyMl).toBe("cannot-reach");
  expect(fixes.moreBaseMl).toBe("cannot-reach");
  const numbers: readonly (Fix | undefined)[] = [fixes.moreJuiceMl, fixes.moreAcidG];
  expect(numbers.every((fix) => typeof fix === "number" && fix > 0)).toBe(true);
});

test("the stronger the punch, the less acid it wants, by the assumed effect of alcohol", () => {
  const wanted = (strength: number) => Number(curdleFixes(meeting(0, strength)).moreAcidG);
  expect(wanted(0.2)).toBeLessThan(wanted(0.1));
  expect(wanted(0.1)).toBeLessThan(wanted(0));
});

test("a dairy already at 5 % of the punch is not to be made less", () => {
  expect(curdleFixes(meeting(0.01, 0.2, 40)).lessDairyMl).toBe("cannot-reach");
});

test("twice the batch wants twice the fix", () => {
  const one = curdleFixes(meeting(0.5, 0.2), juice);
  const two = curdleFixes(
    {
      ...meeting(1, 0.2, 400),
      punch: { volume: 1600, acids: { citric: 1 }, cation: 0, strength: 0.2 },
    },
    juice,
  );
  expect(Number(two.moreJuiceMl) / Number(one.moreJuiceMl)).toBeCloseTo(2, 3);
  expect(Number(two.lessDairyMl) / Number(one.lessDairyMl)).toBeCloseTo(2, 3);
  expect(Number(two.moreAcidG) / Number(one.moreAcidG)).toBeCloseTo(2, 3);
});

/** The largest of some fixes that reach, as a share of what each may be at most. */
const largest = (fixes: readonly (Fix | undefined)[], most: number): number =>
  Math.max(...fixes.map((fix) => (typeof fix === "number" ? fix / most : 0)));

// At most the batch again, 50 g of citric acid a litre, and milk down to a twentieth of the punch.
test("a fix goes to the limits that are stated, and never past them", () => {
  const steps = Array.from({ length: 200 }, (_, at) => at / 200);
  const weakJuices = steps.map((at) => ({
    acids: { citric: 0.001 + 0.001 * at },
    cation: 0,
    strength: 0,
  }));
  const juices = weakJuices.map((weak) => curdleFixes(meeting(0, 0.2), weak).moreJuiceMl);
  const lessMilk = steps.map((at) => curdleFixes(meeting(0.8 * at, 0.2)).lessDairyMl);
  const acids = steps.map((at) => {
    const alkaline = { ...meeting(0, 0).punch, cation: 0.6 * at };
    return curdleFixes({ ...meeting(0, 0), punch: alkaline }).moreAcidG;
  });
  for (const [fixes, most] of [
    [juices, 1000],
    [lessMilk, 200 - 0.05 * 800],
    [acids, 0.05 * 1000],
  ] as const) {
    expect(largest(fixes, most)).toBeLessThanOrEqual(1);
    expect(largest(fixes, most)).toBeGreaterThan(0.95);
    expect(fixes).toContain("cannot-reach");
  }
});
