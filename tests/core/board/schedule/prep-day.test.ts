import { expect, test } from "vitest";
import { partsOf } from "../../../../core/board/plan-ahead.ts";
import type { Limits } from "../../../../core/board/schedule/job.ts";
import { batchFacts, notBegun, prepDay } from "../../../../core/board/schedule/prep-day.ts";
import { usualDrip } from "../../../../core/method/drip/usual-drip.ts";
import { foldRun } from "../../../../core/run/fold.ts";
import { NEW_HOUSE } from "../../../../core/spec/house-rules.ts";
import { HOUSE_CUPBOARD, HOUSE_MADE, houseMadePlan } from "../../../support/world/house-made.ts";
import { plannedBatch } from "../../../support/world/planned-batch.ts";
import { PUNCH } from "../../../support/world/punch-spec.ts";
import { planOf, TestBench } from "../../../support/world/run-events.ts";
import { stationAt } from "../../../support/world/wash-stations.ts";

const HOUR = 3_600_000;
const MINUTE = 60_000;
const NOW = 1_764_000_000_000;
const FRIDAY = NOW + 72 * HOUR;
const ROOM: Limits = { capacity: { person: 1, "filter-stand": 2, fridge: 60, freezer: 20 } };
const daysOf = (...args: Parameters<typeof prepDay>) => {
  const found = prepDay(...args);
  return { ...found, day: found.plan.ok ? found.plan : found.plan.least };
};

test("a wash: its drip by volume and filters, its room in the fridge by what is poured", () => {
  const wash = plannedBatch("wash", FRIDAY);
  const facts = batchFacts(wash, FRIDAY);
  const coming = wash.plan.yield;
  expect(facts.expected?.["slow-drip"]).toBe(usualDrip(coming?.expected ?? 0, 2));
  expect(facts.uses?.["slow-drip"]).toEqual([
    { resource: "fridge", amount: (coming?.poured ?? 0) / 1000 },
  ]);
});

test("a drip that the house has learnt takes as many times the usual one", () => {
  const wash = plannedBatch("wash", FRIDAY);
  const { yield: coming } = wash.plan;
  if (coming === undefined) throw new RangeError("the batch is washed");
  const drip = { times: 1.4, low: 1, high: 2, batches: 6 };
  const learnt = { ...wash, plan: { ...wash.plan, yield: { ...coming, drip } } };
  const usual = usualDrip(coming.expected, 2);
  expect(batchFacts(learnt, FRIDAY).expected?.["slow-drip"]).toBeCloseTo(1.4 * usual, 6);
});

test("an infusion takes its whole time; a fat wash takes litres of the freezer, not a place", () => {
  const infusion = batchFacts(plannedBatch("i", FRIDAY, "Smoked Barley"), FRIDAY);
  expect(infusion.expected?.steep).toBe(36 * HOUR);
  const fat = plannedBatch("f", FRIDAY, "Brown-Butter Rye");
  expect(batchFacts(fat, FRIDAY).uses?.freeze).toEqual([
    { resource: "freezer", amount: fat.plan.finalMl / 1000 },
  ]);
});

test("several batches are planned together, each ready by its moment", () => {
  const planned = [
    plannedBatch("a", FRIDAY),
    plannedBatch("b", FRIDAY, "Smoked Barley"),
    plannedBatch("c", FRIDAY, "Brown-Butter Rye"),
  ];
  const { plan, day } = daysOf([], planned, ROOM, NOW);
  expect(plan.ok).toBe(true);
  for (const { id } of planned) {
    const last = day.placed.filter(({ job }) => job === id).at(-1);
    expect(last?.endAt).toBeLessThanOrEqual(FRIDAY);
    expect(last?.endAt).toBeGreaterThan(FRIDAY - 2 * HOUR);
  }
});

test("a fridge that is too small is named with the litres that lack", () => {
  const planned = [plannedBatch("a", FRIDAY), plannedBatch("b", FRIDAY)];
  const each = (planned[0]?.plan.yield?.poured ?? 0) / 1000;
  const small = { capacity: { ...ROOM.capacity, fridge: each - 1 } };
  const { plan } = daysOf([], planned, small, NOW);
  expect(plan).toMatchObject({ ok: false, breaks: "fridge" });
  if (!plan.ok) expect(plan.by).toBeCloseTo(1, 1);
});

test("what a batch is made from is ready when it is built", () => {
  const [punch = PUNCH] = HOUSE_MADE;
  const whole = { ...plannedBatch("punch", FRIDAY), plan: houseMadePlan(punch, 5000) };
  let made = 0;
  const { planned } = partsOf(whole, {
    cupboard: HOUSE_CUPBOARD,
    specs: new Map(HOUSE_MADE.map((spec) => [spec.id, spec])),
    rules: NEW_HOUSE,
    procedures: [],
    newId: () => `part-${++made}`,
  });
  const { plan, day } = daysOf([], [whole, ...planned], ROOM, NOW);
  expect(plan.ok).toBe(true);
  const from = (id: string) => day.placed.find(({ job }) => job === id)?.startAt ?? 0;
  const to = (id: string) => day.placed.filter(({ job }) => job === id).at(-1)?.endAt ?? 0;
  expect(to("part-1")).toBeLessThanOrEqual(from("punch"));
  expect(to("part-2")).toBeLessThanOrEqual(from("part-1"));
});

/** A wash at its slow drip. */
function dripping(readyBy?: number): TestBench {
  const bench = new TestBench(NOW - 6 * HOUR);
  bench.start(planOf(), readyBy);
  const steps = ["build", "milk", "pour", "curdle", "wet-filter", "first-pass", "re-pour"];
  for (const step of [...steps, "check-clear"]) {
    const visit = `${step}#1`;
    bench.now += 20 * MINUTE;
    const answer =
      step === "milk"
        ? { answer: { of: "milk", ml: 1000 } as const }
        : step === "re-pour"
          ? { answer: { of: "cloudy-run", ml: 300 } as const }
          : {};
    const look = step === "check-clear" ? { look: "clear" as const } : {};
    expect(bench.order({ type: "finish-step", visit, ...answer, ...look })).toBeUndefined();
  }
  return bench;
}

test("a run that was promised goes on to its end; its drip holds a stand and the fridge", () => {
  const { run } = dripping(FRIDAY);
  if (run === undefined) throw new RangeError("no run");
  const { jobs, day } = daysOf([run], [], ROOM, NOW);
  const toDo = jobs[0]?.steps.filter(({ fixedStart }) => fixedStart === undefined);
  expect(toDo?.map(({ id }) => id)).toEqual(["yield", "top-up", "bottle", "label"]);
  expect(jobs[0]?.holds).toContainEqual(
    expect.objectContaining({
      resource: "filter-stand",
      fromStep: "wet-filter",
      toStep: "slow-drip",
    }),
  );
  expect(day.placed.at(-1)?.endAt).toBe(FRIDAY);
});

test("a run that was promised to nobody only keeps what it uses now", () => {
  const { run } = dripping();
  if (run === undefined) throw new RangeError("no run");
  const { jobs, plan, promised } = daysOf([run], [], ROOM, NOW);
  expect(jobs.map(({ steps }) => steps.at(-1)?.id)).toEqual(["slow-drip"]);
  expect(plan).toMatchObject({ ok: true, late: [], handsOnWindows: [], latestStart: [] });
  expect(promised).toEqual({});
});

/** A wash that was promised to nobody, at one of its steps. */
function unpromised(step: string) {
  const { events, since } = stationAt("run", "PB", NOW, step);
  const run = foldRun(events);
  if (run === undefined) throw new RangeError("no run");
  return { run, since };
}

test("a run that has been put on a stand keeps it until its drip is through", () => {
  const { run, since } = unpromised("re-pour");
  const one = { capacity: { ...ROOM.capacity, "filter-stand": 1 } };
  const { jobs, day } = daysOf([run], [plannedBatch("a", since + 20 * HOUR)], one, since);
  expect(jobs[0]?.steps.at(-1)?.id).toBe("slow-drip");
  const drip = day.placed.find(({ job, step }) => job === "run" && step === "slow-drip");
  const filter = day.placed.find(({ job, step }) => job === "a" && step === "wet-filter");
  expect(filter?.startAt).toBeGreaterThanOrEqual(drip?.endAt ?? Number.POSITIVE_INFINITY);
  expect(day.late.filter(({ job }) => job === "run")).toEqual([]);
});

test("a run promised to nobody that has not come to a stand keeps none", () => {
  const { run, since } = unpromised("curdle");
  const { jobs } = daysOf([run], [], ROOM, since);
  expect(jobs[0]?.steps.at(-1)?.id).toBe("curdle");
  expect(jobs[0]?.holds).toEqual([]);
  const later = unpromised("bottle");
  expect(daysOf([later.run], [], ROOM, later.since).jobs).toEqual([]);
});

test("what was announced stays, and what moved is told with what pushed it", () => {
  const { run } = dripping(FRIDAY - 60 * HOUR);
  if (run === undefined) throw new RangeError("no run");
  const planned = [plannedBatch("a", FRIDAY), plannedBatch("b", FRIDAY - 20 * HOUR)];
  const first = daysOf([run], planned, ROOM, NOW);
  expect(first.moved).toEqual([]);
  expect(first.promised).toEqual({
    "run-1": FRIDAY - 60 * HOUR,
    a: FRIDAY,
    b: FRIDAY - 20 * HOUR,
  });
  const before = { placed: first.day.placed, readyBy: first.promised };
  expect(daysOf([run], planned, ROOM, NOW + 5 * MINUTE, before).moved).toEqual([]);
  // Batch a has a day more: it is planned afresh, b stays where it was told.
  const later = [plannedBatch("a", FRIDAY + 24 * HOUR), plannedBatch("b", FRIDAY - 20 * HOUR)];
  const { moved } = daysOf([run], later, ROOM, NOW, before);
  expect(new Set(moved.map(({ job }) => job))).toEqual(new Set(["a"]));
  expect(moved[0]?.byMs).toBeGreaterThan(20 * HOUR);
});

test("a run whose step waits for hands is still to do, from now on", () => {
  const bench = new TestBench(NOW - HOUR);
  bench.start(planOf(), FRIDAY);
  const run = bench.run;
  if (run === undefined) throw new RangeError("no run");
  const { jobs } = daysOf([run], [], ROOM, NOW);
  expect(jobs[0]?.steps[0]).toMatchObject({ id: "build", kind: "hands-on" });
  expect(jobs[0]?.steps[0]?.fixedStart).toBeUndefined();
});

test("a planned batch that was begun is not planned any more", () => {
  const both = [plannedBatch("a", FRIDAY), plannedBatch("b", FRIDAY)];
  expect(notBegun(both, [{ runId: "a" }]).map(({ id }) => id)).toEqual(["b"]);
});
