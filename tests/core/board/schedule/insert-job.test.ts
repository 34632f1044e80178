import fc from "fast-check";
import { expect, test } from "vitest";
import {
  copyOfUsage,
  insertJob,
  usageOfFacts,
} from "../../../../core/board/schedule/insert-job.ts";
import { networkOf, startIn } from "../../../../core/board/schedule/network.ts";
import { latestUnlimited } from "../../../../core/board/schedule/settle.ts";
import { anyJob, anyLimits, bruteForce, SLOT } from "./brute-force.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const NOW = 3 * SLOT;

// Beside what is taken one job has one latest placing: the same as the best of all of them.
test("one job beside what is taken starts as late as brute force", () => {
  let found = 0;
  fc.assert(
    fc.property(anyJob("j", NOW), anyLimits(NOW), anyLimits(NOW), (one, within, more) => {
      const taken = [...(within.taken ?? []), ...(more.taken ?? [])];
      const limited = { ...within, taken };
      const network = networkOf([one], limited, NOW);
      const [chain] = network.chains;
      const latest = latestUnlimited(network);
      const best = bruteForce([one], limited, NOW);
      if (chain === undefined || latest === undefined) return;
      // What has begun is never too much for an insertion: the facts are taken as they are.
      if (chain.tasks[0]?.pinned === true) return;
      const starts = insertJob(network, chain, usageOfFacts(network), latest);
      expect(starts !== undefined).toBe(best !== undefined);
      if (starts === undefined || chain.todo === undefined) return;
      found += 1;
      expect(startIn(starts, chain.todo) / SLOT).toBe(best?.worth);
    }),
    { numRuns: 500 },
  );
  expect(found).toBeGreaterThan(30);
});

test("adds what the job claims, and nothing where it finds no room", () => {
  const hold = [{ ...use("stand", 1), fromStep: "filter", toStep: "drip" }];
  const drip = (id: string, readyBy: number) =>
    job(id, readyBy, [hands("filter", 5), wait("drip", 20)], hold);
  const network = networkOf([drip("a", 50), drip("b", 50), drip("c", 50)], limits({ stand: 1 }), 0);
  const [a, b, c] = network.chains;
  const latest = latestUnlimited(network);
  if (!a || !b || !c || latest === undefined) throw new RangeError("three jobs");
  const usage = usageOfFacts(network);
  const first = insertJob(network, a, usage, latest);
  if (first === undefined) throw new RangeError("room");
  const second = insertJob(network, b, usage, first);
  expect([...(second ?? [])].map((ms) => ms / at(1))).toEqual([25, 30, 0, 5, 25, 30]);
  const before = JSON.stringify(usage);
  expect(insertJob(network, c, usage, second ?? first)).toBeUndefined();
  expect(JSON.stringify(usage)).toBe(before);
});

test("what runs is in use from the outset, with what it holds until it goes on", () => {
  const hold = [{ ...use("stand", 1), fromStep: "drip", toStep: "take-off" }];
  const steps = [wait("drip", 20, { fixedStart: at(0) }), hands("take-off", 5)];
  const network = networkOf([job("a", 50, steps, hold)], limits({ stand: 2 }), at(5));
  const facts = usageOfFacts(network);
  expect(facts[1]).toEqual({ times: [at(0), at(20)], levels: [1, 0] });
  const usage = copyOfUsage(facts);
  const [a] = network.chains;
  const latest = latestUnlimited(network);
  if (a === undefined || latest === undefined) throw new RangeError("one job");
  insertJob(network, a, usage, latest);
  expect(usage[1]).toEqual({ times: [at(0), at(20), at(50)], levels: [1, 1, 0] });
  expect(facts[1]?.times).toHaveLength(2);
});
