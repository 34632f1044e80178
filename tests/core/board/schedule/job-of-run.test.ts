import { expect, test } from "vitest";
import { jobOfRun } from "../../../../core/board/schedule/job-of-run.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { FAT_WASH, LONG_INFUSION } from "../../../../core/method/infusions.ts";
import type { Procedure } from "../../../../core/method/procedure.ts";
import { ACID_JUICE } from "../../../../core/method/syrups.ts";
import { dripOutlook } from "../../../../core/run/drip-outlook.ts";
import { foldRun } from "../../../../core/run/fold.ts";
import type { Run } from "../../../../core/run/run.ts";
import { planOf, runOf, TestBench } from "../../../support/world/run-events.ts";
import { stationAt } from "../../../support/world/wash-stations.ts";

const HOUR = 3_600_000;
const MINUTE = 60_000;
const START = 1_764_000_000_000;
const FRIDAY = START + 72 * HOUR;
const STAND = { resource: "filter-stand", amount: 1 };
const facts = { id: "run", name: "Run", readyBy: FRIDAY };

function begun(procedure: Procedure, finished: readonly string[]): Run {
  const bench = new TestBench(START);
  bench.order({ type: "start-run", batch: "X-1", plan: planOf(), procedure, appVersion: "0" });
  for (const step of finished) {
    bench.now += 10 * MINUTE;
    expect(bench.order({ type: "finish-step", visit: `${step}#1` })).toBeUndefined();
  }
  const { run } = bench;
  if (run === undefined) throw new RangeError("no run");
  return run;
}

const doneIn = (run: Run): number =>
  run.visits.filter(({ finishedAt }) => finishedAt !== undefined).length;
const openOf = (run: Run, now: number) => jobOfRun(run, facts, now)?.steps[doneIn(run)];

/** The bench's run; throws where there is none. */
test("a timed wait goes on until it is due, or a minute more where it is overdue", () => {
  const run = begun(FAT_WASH, ["build", "melt"]);
  const from = START + 20 * MINUTE;
  expect(openOf(run, from + HOUR)).toMatchObject({
    id: "mingle",
    fixedStart: from,
    forMs: 3 * HOUR,
  });
  expect(openOf(run, from + 5 * HOUR)).toMatchObject({ forMs: 5 * HOUR + MINUTE });
});

test("a tasted wait goes on to its hard stop", () => {
  const run = begun(LONG_INFUSION, ["build"]);
  expect(openOf(run, START + HOUR)).toMatchObject({ id: "steep", forMs: 36 * HOUR });
});

test("a drip goes on as its readings forecast it", () => {
  const { events, since } = stationAt("run", "PB", START, "slow-drip");
  const bench = new TestBench(since);
  bench.events = events;
  for (const [hours, ml] of [
    [1, 1500],
    [2, 2600],
    [3, 3200],
  ] as const) {
    bench.now = since + hours * HOUR;
    const reading = { what: "collected", value: ml, unit: "ml" } as const;
    expect(bench.order({ type: "log-reading", visit: "slow-drip#1", ...reading })).toBeUndefined();
  }
  const run = foldRun(bench.events);
  if (run === undefined) throw new RangeError("no run");
  const outlook = dripOutlook(run);
  if (outlook?.type !== "forecast") throw new RangeError("no forecast");
  const open = openOf(run, since + 3 * HOUR);
  expect(open?.forMs).toBeCloseTo(Math.max(outlook.throughAt.p50, 3 * HOUR + MINUTE), -1);
});

test("hands-on work that waits is still to be done, and an ended run is no job", () => {
  const run = begun(FAT_WASH, ["build"]);
  expect(openOf(run, START + HOUR)).toEqual(
    expect.not.objectContaining({ fixedStart: expect.anything() }),
  );
  const bench = new TestBench(START);
  bench.start();
  expect(jobOfRun(runOf(bench), facts, START)?.steps).not.toHaveLength(0);
  bench.order({ type: "abandon", reason: "dropped" });
  expect(jobOfRun(runOf(bench), facts, START)).toBeUndefined();
  expect(jobOfRun(begun(ACID_JUICE, ["build", "stir"]), facts, START)).toBeDefined();
});

test("what is over has its true start and length", () => {
  const job = jobOfRun(begun(FAT_WASH, ["build", "melt"]), facts, START + HOUR);
  expect(job?.steps.slice(0, 3)).toMatchObject([
    { id: "build", fixedStart: START, forMs: 10 * MINUTE },
    { id: "melt", fixedStart: START + 10 * MINUTE, forMs: 10 * MINUTE },
    { id: "mingle", fixedStart: START + 20 * MINUTE },
  ]);
  expect(job?.steps.slice(3).every(({ fixedStart }) => fixedStart === undefined)).toBe(true);
});

test("a stand is held from the wet filter on, in a rescue too, and free once all has dripped", () => {
  const at = (step: string) => {
    const { events, since } = stationAt("run", "PB", START, step);
    const run = foldRun(events);
    return run && scheduleJobs(jobsOf(run, since), { capacity: { "filter-stand": 1 } }, since);
  };
  const jobsOf = (run: Run, now: number) => {
    const job = jobOfRun(run, facts, now);
    const next = { id: "next", name: "next", readyBy: now + 3 * MINUTE };
    const filter = { id: "filter", kind: "hands-on", forMs: MINUTE, uses: [STAND] } as const;
    return job === undefined ? [] : [job, { ...next, steps: [filter] }];
  };
  expect(at("curdle")?.ok).toBe(true);
  expect(at("re-pour, again")).toMatchObject({ ok: false });
  expect(at("slow-drip")).toMatchObject({ ok: false });
  expect(at("yield")?.ok).toBe(true);
});

test("what stands longer than it may is to be done now, unless somebody paused it", () => {
  const { events, since } = stationAt("run", "PB", START, "re-pour");
  const bench = new TestBench(since);
  bench.events = events;
  const open = (minutes: number) => openOf(runOf(bench), since + minutes * MINUTE);
  // A cloudy run is poured back at once: since it began to stand that is so many minutes.
  expect(open(0)).toMatchObject({ id: "re-pour", mayWaitBefore: 0 });
  expect(open(7)).toMatchObject({ mayWaitBefore: 7 * MINUTE });
  const plan = (minutes: number) => {
    const now = since + minutes * MINUTE;
    const job = jobOfRun(runOf(bench), facts, now);
    const day = scheduleJobs(job === undefined ? [] : [job], { capacity: { person: 1 } }, now);
    return day.ok ? day.latestStart[0]?.startAt : undefined;
  };
  expect(plan(7)).toBe(since + 7 * MINUTE);
  bench.order({ type: "pause" });
  expect(open(7)).not.toHaveProperty("mayWaitBefore");
  expect(open(7)).not.toHaveProperty("fixedStart");
  expect(plan(7)).toBeGreaterThan(since + 7 * MINUTE);
});

test("a wait that began after now, by a clock put back, still takes a minute", () => {
  const bench = new TestBench(START);
  bench.order({
    type: "start-run",
    batch: "X-1",
    plan: planOf(),
    procedure: FAT_WASH,
    appVersion: "0",
  });
  bench.order({ type: "finish-step", visit: "build#1" });
  bench.order({ type: "finish-step", visit: "melt#1" });
  bench.order({ type: "move-due", visit: "mingle#1", dueAt: START - HOUR });
  expect(openOf(runOf(bench), START - 2 * HOUR)).toMatchObject({
    id: "mingle",
    fixedStart: START,
    forMs: MINUTE,
  });
});

test("what may stand after a tasted wait goes by how long that took", () => {
  const bench = new TestBench(START);
  bench.order({
    type: "start-run",
    batch: "X-1",
    plan: planOf(),
    procedure: LONG_INFUSION,
    appVersion: "0",
  });
  bench.order({ type: "finish-step", visit: "build#1" });
  bench.now += 30 * HOUR;
  bench.order({ type: "finish-step", visit: "steep#1", look: "right" });
  // Right after 30 of at most 36 hours: it may stand for the other 6.
  expect(openOf(runOf(bench), bench.now)).toMatchObject({
    id: "strain-mesh",
    mayWaitBefore: 6 * HOUR,
  });
});
