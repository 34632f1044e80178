import { expect, test } from "vitest";
import { usageOfFacts } from "../../../../core/board/schedule/insert-job.ts";
import { insertLate, latestOf } from "../../../../core/board/schedule/insert-late.ts";
import type { Job } from "../../../../core/board/schedule/job.ts";
import { networkOf } from "../../../../core/board/schedule/network.ts";
import { unused } from "../../../../core/board/schedule/timeline.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

function placing(one: Job, now: number, away: readonly (readonly [number, number])[] = []) {
  const taken = away.map(([from, to]) => ({ ...use("person", 1), from: at(from), to: at(to) }));
  const network = networkOf([one], { ...limits(), taken }, at(now));
  const [chain] = network.chains;
  if (chain === undefined) throw new RangeError("no chain");
  const starts = Float64Array.from(network.tasks, ({ low }) => low);
  return { network, chain, starts, usage: usageOfFacts(network) };
}

const wash = job("a", 100, [hands("build", 10), wait("rest", 60), hands("bottle", 20)]);

function late(now: number, most: number, away?: readonly (readonly [number, number])[]) {
  const { network, chain, starts, usage } = placing(wash, now, away);
  const found = insertLate(network, chain, usage, starts, most);
  return found && { minutes: found.minutes, starts: [...found.starts.subarray(0, 3)] };
}

// Worked by hand, minutes: 90 of work, ready by 100.
test.each([
  [0, [], 0, [10, 20, 80]],
  [10, [], 0, [10, 20, 80]],
  [25, [], 15, [25, 35, 95]],
  // Nobody is in from 70 to 150: bottled at 150.
  [0, [[70, 150]], 70, [60, 90, 150]],
] as const)("begun at %i it is late by as little as can be", (now, away, minutes, starts) => {
  expect(late(now, 1000, away)).toEqual({ minutes, starts: starts.map(at) });
});

test("later than it may be it is not placed, and nothing is claimed", () => {
  expect(late(25, 14)).toBeUndefined();
  const { network, chain, starts, usage } = placing(wash, 25);
  insertLate(network, chain, usage, starts, 14);
  expect(usage).toEqual([unused()]);
  insertLate(network, chain, usage, starts, 15);
  expect(usage[0]?.times.length).toBeGreaterThan(0);
});

test("the latest starts of one job leave those of others, and tell when time does not reach", () => {
  const other = job("b", 50, [hands("label", 5)]);
  const network = networkOf([wash, other], limits(), at(25));
  const [chain] = network.chains;
  if (chain === undefined) throw new RangeError("no chain");
  const starts = Float64Array.from(network.tasks, () => at(7));
  expect(latestOf(network, chain, starts)).toBeUndefined();
  expect(latestOf(network, chain, starts, 15)).toEqual(
    Float64Array.of(at(25), at(35), at(95), at(7)),
  );
});

test("a last step that has begun is late by when it will be over", () => {
  const cold = job("a", 100, [wait("freeze", 60, { fixedStart: at(70) })]);
  const { network, chain, starts, usage } = placing(cold, 80);
  expect(insertLate(network, chain, usage, starts, 1000)).toEqual({
    minutes: 30,
    starts: Float64Array.of(at(70)),
  });
});
