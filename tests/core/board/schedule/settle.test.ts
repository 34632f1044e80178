import fc from "fast-check";
import { expect, test } from "vitest";
import { networkOf, startIn } from "../../../../core/board/schedule/network.ts";
import { latestUnlimited, settle } from "../../../../core/board/schedule/settle.ts";
import { anyJob, bruteForce, SLOT } from "./brute-force.ts";
import { at, hands, job, limits, wait } from "./small-days.ts";

const steps = [hands("a", 5), wait("b", 20, { mayWaitBefore: at(3) }), hands("c", 10)];

test("pulls back what comes before, and what may not stand", () => {
  const { tasks } = networkOf([job("j", 100, steps)], limits(), 0);
  const starts = Float64Array.of(at(70), at(75), at(90));
  const [first, , last] = tasks;
  if (first === undefined || last === undefined) throw new RangeError("no tasks");
  expect(settle(tasks, starts, tasks)).toBe(true);
  expect([...starts]).toEqual([at(65), at(70), at(90)].map((ms) => ms));
  starts[0] = at(40);
  expect(settle(tasks, starts, [first])).toBe(true);
  expect([...starts]).toEqual([at(40), at(48), at(90)]);
});

test("says when something would have to begin before it can", () => {
  const early = networkOf([job("j", 34, steps)], limits(), 0);
  expect(latestUnlimited(early)).toBeUndefined();
  const just = networkOf([job("j", 35, steps)], limits(), 0);
  expect([...(latestUnlimited(just) ?? [])]).toEqual([0, at(5), at(25)]);
});

test("ends where bounds chase each other, though it is long until anything is too early", () => {
  const { tasks } = networkOf([job("j", 1e6, [hands("a", 5), hands("b", 5)])], limits(), 0);
  const [a, b] = tasks;
  if (a === undefined || b === undefined) throw new RangeError("no tasks");
  a.bounds.push({ to: b, plus: at(5) - 1 });
  expect(settle(tasks, Float64Array.of(at(1e6), at(1e6)), tasks)).toBe(false);
});

test("nothing short: as late as brute force", () => {
  fc.assert(
    fc.property(anyJob("j", 3 * SLOT), (one) => {
      const network = networkOf([one], { capacity: {} }, 3 * SLOT);
      const best = bruteForce([one], { capacity: {} }, 3 * SLOT);
      const starts = latestUnlimited(network);
      expect(starts !== undefined).toBe(best !== undefined);
      const [todo] = network.chains.map((chain) => chain.todo);
      if (starts === undefined || todo === undefined) return;
      expect(startIn(starts, todo) / SLOT).toBe(best?.worth);
    }),
  );
});
