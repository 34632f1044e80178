import { expect, test } from "vitest";
import type { PlacedStep } from "../../../../core/board/schedule/day-plan.ts";
import type { Job, Limits } from "../../../../core/board/schedule/job.ts";
import { pushedBy } from "../../../../core/board/schedule/pushed-by.ts";
import { stepKey } from "../../../../core/board/schedule/step-key.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

type Times = Readonly<Record<string, readonly [from: number, to: number]>>;

const placed = (times: Times): readonly PlacedStep[] =>
  Object.entries(times).map(([name, [from, to]]) => {
    const [job = "", step = ""] = name.split(" ");
    return { job, step, startAt: at(from), endAt: at(to) };
  });

/** Causes by "job step", of all that is still to begin and is elsewhere than before. */
function causes(
  jobs: readonly Job[],
  before: Times,
  after: Times,
  now: number,
  within: Limits = limits(),
): Readonly<Record<string, string>> {
  const moved = Object.entries(after)
    .filter(([name, [from]]) => from > now && before[name]?.[0] !== from)
    .map(([name]) => name);
  const key = (name: string): string => stepKey(...split(name));
  const found = pushedBy(
    { jobs, limits: within, now: at(now) },
    placed(before),
    placed(after),
    new Set(moved.map(key)),
  );
  return Object.fromEntries(
    moved.flatMap((name) => {
      const cause = found.get(key(name));
      return cause === undefined ? [] : [[name, `${cause.job} ${cause.step}`]];
    }),
  );
}

function split(name: string): [string, string] {
  const [job = "", step = ""] = name.split(" ");
  return [job, step];
}

const drip = (id: string, forMs: number, rest: readonly ReturnType<typeof hands>[]): Job =>
  job(
    id,
    1000,
    [wait("drip", forMs, { fixedStart: at(0) }), ...rest],
    [{ ...use("stand", 1), fromStep: "drip", toStep: "drip" }],
  );
const filtered = job(
  "b",
  1000,
  [hands("filter", 10), wait("drip", 100, { mayWaitBefore: 0 }), hands("bottle", 20)],
  [{ ...use("stand", 1), fromStep: "filter", toStep: "drip" }],
);

test("a slow drip pushes its own work, step by step", () => {
  const jobs = [drip("a", 90, [hands("yield", 5), hands("bottle", 20)])];
  const before = { "a drip": [0, 60], "a yield": [60, 65], "a bottle": [65, 85] } as const;
  const after = { "a drip": [0, 90], "a yield": [90, 95], "a bottle": [95, 115] } as const;
  expect(causes(jobs, before, after, 30)).toEqual({ "a yield": "a drip", "a bottle": "a drip" });
});

test("and whatever else was to have its stand, with all that follows there", () => {
  const jobs = [drip("a", 90, []), filtered];
  const before = {
    "a drip": [0, 60],
    "b filter": [60, 70],
    "b drip": [70, 170],
    "b bottle": [170, 190],
  } as const;
  const after = {
    "a drip": [0, 90],
    "b filter": [90, 100],
    "b drip": [100, 200],
    "b bottle": [200, 220],
  } as const;
  expect(causes(jobs, before, after, 30, limits({ stand: 1 }))).toEqual({
    "b filter": "a drip",
    "b drip": "a drip",
    "b bottle": "a drip",
  });
  // With a second stand nothing was in its way: why it moved cannot be told.
  expect(causes(jobs, before, after, 30, limits({ stand: 2 }))).toEqual({});
  // Nor is its own stand in its way, where it has it now.
  const little = {
    ...before,
    "a drip": [0, 90],
    "b filter": [80, 90],
    "b drip": [90, 190],
  } as const;
  expect(causes(jobs, before, little, 30, limits({ stand: 2 }))).toEqual({});
});

test("what held its stand before was not in the way", () => {
  const jobs = [drip("a", 110, []), drip("c", 90, []), filtered];
  const before = {
    "a drip": [0, 100],
    "c drip": [0, 40],
    "b filter": [50, 60],
    "b drip": [60, 160],
    "b bottle": [160, 180],
  } as const;
  const after = {
    "a drip": [0, 110],
    "c drip": [0, 90],
    "b filter": [90, 100],
    "b drip": [100, 200],
    "b bottle": [200, 220],
  } as const;
  expect(causes(jobs, before, after, 30, limits({ stand: 2 }))["b filter"]).toBe("c drip");
});

test("of one batch what goes on is the cause, not what is over", () => {
  const late = job(
    "a",
    1000,
    [hands("filter", 12, { fixedStart: at(0) }), wait("drip", 78, { fixedStart: at(12) })],
    [{ ...use("stand", 1), fromStep: "filter", toStep: "drip" }],
  );
  const before = { "a filter": [0, 10], "a drip": [10, 60], "b filter": [60, 70] } as const;
  const after = { "a filter": [0, 12], "a drip": [12, 90], "b filter": [90, 100] } as const;
  const next = job("b", 1000, [hands("filter", 10, { uses: [use("stand", 1)] })]);
  expect(causes([late, next], before, after, 30, limits({ stand: 1 }))).toEqual({
    "b filter": "a drip",
  });
});

test("work that was moved pushes other work of the same hands", () => {
  const jobs = [drip("a", 90, [hands("bottle", 20)]), job("c", 1000, [hands("label", 10)])];
  const before = { "a drip": [0, 60], "a bottle": [60, 80], "c label": [95, 105] } as const;
  const after = { "a drip": [0, 90], "a bottle": [90, 110], "c label": [110, 120] } as const;
  expect(causes(jobs, before, after, 30)).toEqual({ "a bottle": "a drip", "c label": "a drip" });
  expect(causes(jobs, before, after, 30, limits({ person: 2 }))).toEqual({ "a bottle": "a drip" });
});

test("what ended sooner pulls along what must not stand", () => {
  const jobs = [drip("a", 30, [hands("bottle", 20, { mayWaitBefore: at(5) })])];
  const before = { "a drip": [0, 60], "a bottle": [62, 82] } as const;
  const after = { "a drip": [0, 30], "a bottle": [35, 55] } as const;
  expect(causes(jobs, before, after, 20)).toEqual({ "a bottle": "a drip" });
});

test("what is not begun in time pushes the rest, unless something kept it from beginning", () => {
  const jobs = [filtered];
  const before = {
    "b filter": [60, 70],
    "b drip": [70, 170],
    "b bottle": [170, 190],
  } as const;
  const after = {
    "b filter": [90, 100],
    "b drip": [100, 200],
    "b bottle": [200, 220],
  } as const;
  expect(causes(jobs, before, after, 80, limits({ stand: 1 }))).toEqual({
    "b drip": "b filter",
    "b bottle": "b filter",
  });
  const kept = [drip("a", 90, []), filtered];
  const busy = { "a drip": [0, 60] } as const;
  const slow = { "a drip": [0, 90] } as const;
  expect(
    causes(kept, { ...busy, ...before }, { ...slow, ...after }, 80, limits({ stand: 1 })),
  ).toEqual({ "b filter": "a drip", "b drip": "a drip", "b bottle": "a drip" });
});

test("what is gone for good is no cause, nor what goes as it was planned to", () => {
  const jobs = [drip("a", 60, [hands("bottle", 20)]), job("c", 1000, [hands("label", 10)])];
  const before = { "a drip": [0, 60], "a bottle": [60, 80], "c label": [95, 105] } as const;
  const after = { "a drip": [0, 60], "a bottle": [70, 90], "c label": [100, 110] } as const;
  expect(causes(jobs, before, after, 30)).toEqual({});
});

test("what is taken leaves less room, though it is nobody's doing", () => {
  const within = {
    ...limits({ person: 2 }),
    taken: [{ ...use("person", 1), from: at(90), to: at(120) }],
  };
  const jobs = [drip("a", 90, [hands("bottle", 20)]), job("c", 1000, [hands("label", 10)])];
  const before = { "a drip": [0, 60], "a bottle": [60, 80], "c label": [95, 105] } as const;
  const after = { "a drip": [0, 90], "a bottle": [90, 110], "c label": [110, 120] } as const;
  expect(causes(jobs, before, after, 30, within)).toEqual({
    "a bottle": "a drip",
    "c label": "a drip",
  });
});
