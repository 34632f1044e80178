import fc from "fast-check";
import { expect, test } from "vitest";
import { lastClash, peakOn } from "../../../../core/board/schedule/clash.ts";
import { networkOf } from "../../../../core/board/schedule/network.ts";
import { anyJob, anyLimits, fitsTogether, SLOT } from "./brute-force.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const chilled = (id: string, litres: number) =>
  job(id, 100, [wait("chill", 60, { uses: [use("fridge", litres)] })]);

test("the clash is as small as can be, and the latest", () => {
  const jobs = [chilled("a", 25), chilled("b", 14), chilled("c", 4), chilled("d", 2)];
  const network = networkOf(jobs, limits({ fridge: 40 }), 0);
  const clash = lastClash(network, Float64Array.of(at(0), at(10), at(20), at(30)));
  expect(clash?.before).toBe(at(60));
  expect(clash?.claims.map(({ first }) => network.chains[first.chain]?.job?.id).sort()).toEqual([
    "a",
    "b",
    "c",
  ]);
  expect(lastClash(network, Float64Array.of(at(0), at(10), at(60), at(70)))).toBeUndefined();
});

test("what ends as the other begins does not clash, nor do sums that are right but for noise", () => {
  const two = networkOf([chilled("a", 40), chilled("b", 40)], limits({ fridge: 40 }), 0);
  expect(lastClash(two, Float64Array.of(at(0), at(60)))).toBeUndefined();
  expect(lastClash(two, Float64Array.of(at(0), at(60) - 1))).toBeDefined();
  const noisy = networkOf([chilled("a", 0.1), chilled("b", 0.2)], limits({ fridge: 0.3 }), 0);
  expect(lastClash(noisy, Float64Array.of(0, 0))).toBeUndefined();
});

test("what has begun together has fitted", () => {
  const begun = (id: string) =>
    job(id, 99, [wait("chill", 60, { fixedStart: 0, uses: [use("fridge", 3)] }), hands("x", 1)]);
  const network = networkOf([begun("a"), begun("b")], limits({ fridge: 4 }), at(5));
  expect(lastClash(network, Float64Array.of(0, at(60), 0, at(61)))).toBeUndefined();
  expect(peakOn(network, 1, Float64Array.of(0, at(60), 0, at(61))).amount).toBe(0);
});

test("the peak is the fullest moment, with all that runs then", () => {
  const jobs = [chilled("a", 25), chilled("b", 14), chilled("c", 4)];
  const network = networkOf(jobs, limits({ fridge: 40 }), 0);
  const peak = peakOn(network, 1, Float64Array.of(at(0), at(50), at(59)));
  expect(peak.amount).toBe(43);
  expect(peak.claims).toHaveLength(3);
  expect(peakOn(network, 1, Float64Array.of(at(0), at(60), at(60))).amount).toBe(25);
  expect(peakOn(network, 0, Float64Array.of(0, 0, 0))).toEqual({ amount: 0, claims: [] });
});

const NOW = 3 * SLOT;

test("there is a clash where slots are counted too full, and nowhere else", () => {
  let clashes = 0;
  fc.assert(
    fc.property(
      fc.tuple(anyJob("a", NOW), anyJob("b", NOW), anyJob("c", NOW)),
      anyLimits(NOW),
      fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 12, maxLength: 12 }),
      (jobs, within, idle) => {
        const network = networkOf(jobs, within, NOW);
        let next = 0;
        const starts = jobs.map(({ steps }) => {
          let slot = NOW / SLOT + (idle[next++] ?? 0);
          return steps.map(({ fixedStart, forMs }) => {
            const start = fixedStart === undefined ? slot : fixedStart / SLOT;
            slot = Math.max(slot, start + forMs / SLOT) + (idle[next++] ?? 0);
            return start;
          });
        });
        const taken = (within.taken ?? []).map(({ from }) => from);
        const ms = Float64Array.from([...starts.flat().map((slot) => slot * SLOT), ...taken]);
        const clash = lastClash(network, ms);
        expect(clash === undefined).toBe(fitsTogether(jobs, starts, within, NOW));
        if (clash !== undefined) clashes += 1;
      },
    ),
    { numRuns: 300 },
  );
  expect(clashes).toBeGreaterThan(60);
});
