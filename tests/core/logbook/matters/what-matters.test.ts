import fc from "fast-check";
import { expect, test } from "vitest";
import type { Side } from "../../../../core/logbook/compare/inputs.ts";
import { FEWEST_TO_SAY, whatMatters } from "../../../../core/logbook/matters/what-matters.ts";
import { normals, seeded } from "../../../support/world/simulated-batches.ts";

/** Batches whose yield follows the cold of the drip, more or less, and nothing else anything. */
function bar(seed: number, batches: number, noise: number): readonly Side[] {
  const normal = normals(seeded(seed));
  return Array.from({ length: batches }, () => {
    const degrees = 4 + 2 * normal();
    return {
      inputs: {
        "degrees-drip": degrees,
        "milk-ratio": 0.25 + 0.02 * normal(),
        "rest-time": 3_600_000 * (1 + 0.2 * normal()),
        filters: 2,
      },
      choices: { order: normal() > 0 ? "punch-into-milk" : "milk-into-punch" },
      results: {
        "yield-share": 0.93 - 0.01 * degrees + noise * normal(),
        clarity: 7 + normal(),
        "drip-time": 3_600_000 * (6 + normal()),
      },
    };
  });
}

test("below eight batches it says that they are too few", () => {
  expect(whatMatters(bar(1, FEWEST_TO_SAY - 1, 0))).toEqual({ type: "too-few", batches: 7 });
});

test("what goes together stands out first; what is always the same is not looked at", () => {
  const found = whatMatters(bar(2, 20, 0.004));
  if (found.type !== "found") throw new RangeError("twenty batches are enough");
  expect(found.together[0]).toMatchObject({
    input: "degrees-drip",
    result: "yield-share",
    standsOut: true,
    n: 20,
  });
  expect(found.together[0]?.rho).toBeLessThan(-0.8);
  expect(found.together.some(({ input }) => input === "filters")).toBe(false);
  // Four inputs that vary, three results.
  expect(found.together).toHaveLength(12);
});

test("where nothing hangs together, 1 list in 20 at most names something", () => {
  let named = 0;
  const lists = 300;
  for (let seed = 0; seed < lists; seed += 1) {
    const found = whatMatters(bar(1000 + seed, 14, 50));
    if (found.type === "found" && found.together.some(({ standsOut }) => standsOut)) named += 1;
  }
  expect(named / lists).toBeLessThan(0.08);
});

test("a figure that fewer than eight batches noted is left out", () => {
  const sides = bar(3, 12, 0.004).map((side, at): Side => {
    const { clarity: _, ...results } = side.results;
    return at < 7 ? side : { ...side, results };
  });
  const found = whatMatters(sides);
  if (found.type !== "found") throw new RangeError("twelve batches are enough");
  expect(found.together.some(({ result }) => result === "clarity")).toBe(false);
});

test("the order of the batches changes nothing, and p only rises when corrected", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 500 }), (seed) => {
      const sides = bar(seed, 10, 0.01);
      const [one, other] = [whatMatters(sides), whatMatters(sides.toReversed())];
      if (one.type !== "found" || other.type !== "found") throw new RangeError("ten are enough");
      for (const [at, { p, corrected, rho }] of one.together.entries()) {
        expect(corrected).toBeGreaterThanOrEqual(p);
        expect(other.together[at]?.p).toBeCloseTo(p, 9);
        expect(Math.abs(rho)).toBeLessThanOrEqual(1);
      }
    }),
    { numRuns: 30 },
  );
});
