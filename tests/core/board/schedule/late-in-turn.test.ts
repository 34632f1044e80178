import fc from "fast-check";
import { expect, test } from "vitest";
import { lateInTurn } from "../../../../core/board/schedule/late-in-turn.ts";
import { anyJob, anyLimits, fitsTogether, SLOT } from "./brute-force.ts";
import { at, hands, job, limits, wait } from "./small-days.ts";

const NOW = 3 * SLOT;

// Worked by hand: 30 minutes each, one person, now is 0.
test("one after another, each as little late as it can be then", () => {
  const jobs = [30, 30, 100].map((by, i) => job(String(i), by, [hands("label", 30)]));
  const { late } = lateInTurn({ jobs, limits: limits(), now: 0 }, 1000) ?? { late: new Map() };
  expect([...late.values()].toSorted()).toEqual([0, 0, 30]);
  expect(late.get("2")).toBe(0);
});

test("of several turns it keeps the one that is least late in all", () => {
  const long = job("long", 100, [hands("chop", 90)]);
  const short = [1, 2, 3].map((i) => job(`short-${i}`, 90, [hands("label", 20)]));
  const day = { jobs: [...short, long], limits: limits({ person: 1 }), now: 0 };
  const found = lateInTurn(day, 1000);
  const total = [...(found?.late.values() ?? [])].reduce((sum, one) => sum + one, 0);
  // The short ones end by 90, then the long one goes on to 180. The long one first, from 10 to 100,
  // would make the short ones late by 30, 50 and 70.
  expect(total).toBe(80);
});

test("a run that has begun goes first", () => {
  const run = job("run", 20, [wait("rest", 10, { fixedStart: at(0) }), hands("filter", 10)]);
  const other = job("other", 18, [hands("label", 18)]);
  const found = lateInTurn({ jobs: [other, run], limits: limits(), now: at(0) }, 1000);
  expect([found?.late.get("run"), found?.late.get("other")]).toEqual([0, 20]);
});

test("a job for which there never is enough finds no room", () => {
  const big = job("big", 100, [hands("lift", 10, { uses: [{ resource: "person", amount: 2 }] })]);
  expect(lateInTurn({ jobs: [big], limits: limits(), now: 0 }, 1000)).toBeUndefined();
});

test("what it places fits together, late by what it says", () => {
  let placed = 0;
  fc.assert(
    fc.property(
      fc.tuple(anyJob("a", NOW), anyJob("b", NOW), anyJob("c", NOW)),
      anyLimits(NOW),
      (jobs, within) => {
        const found = lateInTurn({ jobs, limits: within, now: NOW }, 200);
        if (found === undefined) return;
        placed += 1;
        let from = 0;
        const starts = jobs.map(({ steps }) => {
          from += steps.length;
          return [...found.starts.subarray(from - steps.length, from)].map((ms) => ms / SLOT);
        });
        expect(fitsTogether(jobs, starts, within, NOW)).toBe(true);
        for (const [i, { id, readyBy, steps }] of jobs.entries()) {
          const last = (starts[i]?.at(-1) ?? 0) * SLOT + (steps.at(-1)?.forMs ?? 0);
          const over = last <= NOW && steps.at(-1)?.fixedStart !== undefined;
          if (!over) expect(last).toBeLessThanOrEqual(readyBy + (found.late.get(id) ?? 0) * SLOT);
        }
      },
    ),
    { numRuns: 200 },
  );
  expect(placed).toBeGreaterThan(80);
});
