import fc from "fast-check";
import { expect, test } from "vitest";
import { chainedPlan } from "../../../../core/board/schedule/chained.ts";
import type { Job, JobStep } from "../../../../core/board/schedule/job.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const NOW = 1_764_000_000_000;
const FRIDAY = NOW + 48 * HOUR;

const hands = (id: string, minutes: number): JobStep => ({
  id,
  kind: "hands-on",
  forMs: minutes * MINUTE,
  uses: [],
});
const wait = (id: string, minutes: number): JobStep => ({
  id,
  kind: "wait",
  forMs: minutes * MINUTE,
  uses: [],
  mayWaitBefore: 0,
});
const job = (id: string, steps: readonly JobStep[], readyBy = FRIDAY): Job => ({
  id,
  name: id,
  readyBy,
  steps,
});

const punch = job("punch", [hands("build", 10), wait("rest", 60), hands("bottle", 10)]);
const tea = job("tea", [hands("brew", 5), wait("steep", 30), hands("strain", 5)]);
const syrup = job("syrup", [hands("stir", 15)]);

function planned(jobs: readonly Job[], pairs: readonly (readonly [string, string])[]) {
  const limits = { capacity: { person: 1 } };
  return chainedPlan(jobs, new Map(pairs), (some) => scheduleJobs(some, limits, NOW));
}

function spanOf({ plan }: ReturnType<typeof planned>, id: string) {
  const day = plan.ok ? plan : plan.least;
  const mine = day.placed.filter((one) => one.job === id);
  return { from: mine[0]?.startAt ?? Number.NaN, to: mine.at(-1)?.endAt ?? Number.NaN };
}

test("the tea is ready when the punch is built, the syrup when the tea is brewed", () => {
  const found = planned(
    [punch, tea, syrup],
    [
      ["tea", "punch"],
      ["syrup", "tea"],
    ],
  );
  expect(found.plan.ok).toBe(true);
  expect(spanOf(found, "punch")).toEqual({ from: FRIDAY - 80 * MINUTE, to: FRIDAY });
  expect(spanOf(found, "tea")).toEqual({ from: FRIDAY - 120 * MINUTE, to: FRIDAY - 80 * MINUTE });
  expect(spanOf(found, "syrup").to).toBe(FRIDAY - 120 * MINUTE);
});

test("one that is made for nothing, or for what is not there, keeps its own moment", () => {
  expect(spanOf(planned([punch, tea], []), "tea").to).toBe(FRIDAY);
  expect(spanOf(planned([tea], [["tea", "punch"]]), "tea").to).toBe(FRIDAY);
});

test("what is made for a batch that has begun is not hurried any more", () => {
  const begun = job("punch", [
    { ...hands("build", 10), fixedStart: NOW - 5 * MINUTE },
    wait("rest", 60),
  ]);
  expect(spanOf(planned([begun, tea], [["tea", "punch"]]), "tea").to).toBe(FRIDAY);
});

test("too late for a part: the plan says so by how much", () => {
  const soon = NOW + 90 * MINUTE;
  const found = planned(
    [job("punch", punch.steps, soon), job("tea", tea.steps, soon)],
    [["tea", "punch"]],
  );
  expect(found.plan).toMatchObject({ ok: false, breaks: "time", by: 30 * MINUTE });
});

test("two that name each other come to an end", () => {
  const found = planned(
    [punch, tea],
    [
      ["tea", "punch"],
      ["punch", "tea"],
    ],
  );
  expect(found.jobs).toHaveLength(2);
});

test("whatever is planned: no part ends after what it is for begins, unless the plan says it is late", () => {
  const minutes = fc.integer({ min: 1, max: 90 });
  fc.assert(
    fc.property(fc.array(minutes, { minLength: 2, maxLength: 5 }), (lengths) => {
      const jobs = lengths.map((length, at) =>
        job(`j${at}`, [hands("do", length), wait("rest", 7)]),
      );
      const pairs = jobs.slice(1).map(({ id }, at) => [id, `j${at}`] as const);
      const found = planned(jobs, pairs);
      expect(found.plan.ok).toBe(true);
      for (const [part, whole] of pairs) {
        expect(spanOf(found, part).to).toBeLessThanOrEqual(spanOf(found, whole).from);
      }
    }),
    { numRuns: 60 },
  );
});

test("beside a batch that keeps the hands busy, a part of a part is still ready in time", () => {
  const minutes = fc.integer({ min: 5, max: 60 });
  fc.assert(
    fc.property(fc.array(minutes, { minLength: 5, maxLength: 5 }), minutes, (lengths, early) => {
      const [a = 5, b = 5, c = 5, d = 5, e = 5] = lengths;
      const jobs = [
        job("whole", [hands("do", a), wait("rest", b), hands("bottle", 5)]),
        job("part", [hands("do", c), wait("rest", 7)]),
        job("its-part", [hands("do", d)]),
        job("rival", [hands("do", e)], FRIDAY - (a + b + early) * MINUTE),
      ];
      const pairs = [
        ["part", "whole"],
        ["its-part", "part"],
      ] as const;
      const found = planned(jobs, pairs);
      expect(found.plan.ok).toBe(true);
      for (const [part, whole] of pairs) {
        expect(spanOf(found, part).to).toBeLessThanOrEqual(spanOf(found, whole).from);
      }
    }),
    { numRuns: 200, seed: 2511 },
  );
});
