import fc from "fast-check";
import { expect, test } from "vitest";
import { lastClash } from "../../../../core/board/schedule/clash.ts";
import { networkOf } from "../../../../core/board/schedule/network.ts";
import { latenessOf } from "../../../../core/board/schedule/search.ts";
import { latestUnlimited } from "../../../../core/board/schedule/settle.ts";
import { tryOrders } from "../../../../core/board/schedule/try-orders.ts";
import { anyJob, anyLimits, bruteForce, SLOT } from "./brute-force.ts";
import { at, hands, job, limits } from "./small-days.ts";

const NOW = 3 * SLOT;
const TRIES = { orders: 20, jumps: 5 };

test("what it finds fits, and is hardly ever less than the best there is", () => {
  let [found, best, missed, rescued] = [0, 0, 0, 0];
  fc.assert(
    fc.property(
      fc.tuple(anyJob("a", NOW), anyJob("b", NOW), anyJob("c", NOW)),
      anyLimits(NOW),
      (jobs, within) => {
        const network = networkOf(jobs, within, NOW);
        const latest = latestUnlimited(network);
        const brute = bruteForce(jobs, within, NOW);
        if (latest === undefined || brute === undefined) return;
        const starts = tryOrders(network, latest, "latest", TRIES);
        if (starts === undefined) {
          missed += 1;
          return;
        }
        const noJumps = tryOrders(network, latest, "latest", { ...TRIES, jumps: 0 });
        if (noJumps === undefined) rescued += 1;
        expect(lastClash(network, starts)).toBeUndefined();
        const worth = latenessOf(network, starts) / SLOT;
        expect(worth).toBeLessThanOrEqual(brute.worth);
        found += 1;
        if (worth === brute.worth) best += 1;
      },
    ),
    // How often is counted below: the same days each time.
    { numRuns: 400, seed: 1 },
  );
  expect(found).toBeGreaterThan(40);
  expect(rescued).toBeGreaterThan(0);
  expect(missed / found).toBeLessThan(0.1);
  expect(best / found).toBeGreaterThan(0.9);
});

const label = (id: string, minutes: number, readyBy = 100) =>
  job(id, readyBy, [hands("label", minutes)]);

test("a job that finds no room goes first, as often as may be", () => {
  const jobs = [label("late", 30, 100), label("soon", 30, 40), label("next", 30, 70)];
  const network = networkOf(jobs, limits(), at(10));
  const latest = latestUnlimited(network);
  if (latest === undefined) throw new RangeError("time for each alone");
  const starts = tryOrders(network, latest, "any", { orders: 0, jumps: 2 });
  expect([...(starts ?? [])].map((ms) => ms / at(1))).toEqual([70, 10, 40]);
  const full = networkOf([...jobs, label("more", 30, 90)], limits(), at(10));
  expect(tryOrders(full, latestUnlimited(full) ?? latest, "latest", TRIES)).toBeUndefined();
});

test("nothing to place is placed", () => {
  const over = job("a", 100, [hands("label", 10, { fixedStart: 0 })]);
  const network = networkOf([over], limits(), at(10));
  expect(tryOrders(network, Float64Array.of(0), "latest", TRIES)).toEqual(Float64Array.of(0));
});
