import { expect, test } from "vitest";
import { expectJobs } from "../../../../core/board/schedule/job.ts";
import { type JobFacts, jobOf } from "../../../../core/board/schedule/job-of.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { DAIRY_WASH } from "../../../../core/method/dairy-wash.ts";
import { LONG_INFUSION } from "../../../../core/method/infusions.ts";
import { PROCEDURES } from "../../../../core/method/procedures.ts";
import { at } from "./small-days.ts";

const HOUR = at(60);
const facts: JobFacts = { id: "run-1", name: "Pear punch", readyBy: 48 * HOUR };
const stepIn = (job: ReturnType<typeof jobOf>["job"], id: string) =>
  job.steps.find((step) => step.id === id);

test("hands-on work takes five minutes, a timed wait its time, a drip what is expected of it", () => {
  const { job } = jobOf(DAIRY_WASH, {
    ...facts,
    expected: { "slow-drip": 5 * HOUR, build: at(20) },
  });
  expect(stepIn(job, "build")).toEqual({ id: "build", kind: "hands-on", forMs: at(20), uses: [] });
  expect(stepIn(job, "milk")?.forMs).toBe(at(5));
  expect(stepIn(job, "curdle")).toMatchObject({ kind: "wait", forMs: HOUR, mayWaitBefore: 0 });
  expect(stepIn(job, "slow-drip")?.forMs).toBe(5 * HOUR);
  const quick = jobOf(DAIRY_WASH, { ...facts, handsOnFor: at(2), expected: { "slow-drip": -1 } });
  expect(stepIn(quick.job, "milk")?.forMs).toBe(at(2));
  expect(stepIn(quick.job, "slow-drip")?.forMs).toBe(1000);
});

test("tells which waits are only guessed: those that end on what is seen", () => {
  expect(jobOf(DAIRY_WASH, facts).guessed).toEqual(["first-pass", "check-clear", "slow-drip"]);
  const expected = { "first-pass": at(1), "check-clear": at(2), "slow-drip": 5 * HOUR };
  expect(jobOf(DAIRY_WASH, { ...facts, expected }).guessed).toEqual([]);
});

test("a procedure's own times, uses and hard stops go into the job", () => {
  const [build, steep] = LONG_INFUSION.steps;
  if (build === undefined || steep === undefined) throw new RangeError("no steps");
  const uses = [{ resource: "burner" as const, amount: 1 }];
  const own = {
    ...LONG_INFUSION,
    steps: [{ ...build, handsFor: at(25), uses }, ...LONG_INFUSION.steps.slice(1)],
  };
  const { job } = jobOf(own, { ...facts, expected: { steep: 24 * HOUR } });
  expect(job.steps[0]).toMatchObject({ forMs: at(25), uses });
  // Stopped at 36 hours at the latest, whatever it tastes like.
  expect(job.steps[2]?.mayWaitBefore).toBe(12 * HOUR);
  const long = jobOf(own, { ...facts, expected: { steep: 40 * HOUR } });
  expect(long.job.steps[2]?.mayWaitBefore).toBe(0);
});

test("the vessel is swapped at once; measured milk stands a quarter of an hour; the rest may wait", () => {
  const { job } = jobOf(DAIRY_WASH, facts);
  expect(stepIn(job, "re-pour")?.mayWaitBefore).toBe(0);
  expect(stepIn(job, "pour")?.mayWaitBefore).toBe(at(15));
  expect(stepIn(job, "wet-filter")).not.toHaveProperty("mayWaitBefore");
  const own = jobOf(DAIRY_WASH, { ...facts, mayWait: { "wet-filter": at(30), pour: 0 } });
  expect(stepIn(own.job, "wet-filter")?.mayWaitBefore).toBe(at(30));
  expect(stepIn(own.job, "pour")?.mayWaitBefore).toBe(0);
});

test("a stand is held from the wet filter to the last drip, unless told otherwise", () => {
  const stand = {
    resource: "filter-stand",
    amount: 1,
    fromStep: "wet-filter",
    toStep: "slow-drip",
  };
  expect(jobOf(DAIRY_WASH, facts).job.holds).toEqual([stand]);
  expect(jobOf(DAIRY_WASH, { ...facts, holds: [] }).job.holds).toEqual([]);
  expect(jobOf(LONG_INFUSION, facts).job.holds).toEqual([]);
});

test("goes another way where told, and begins no earlier than told", () => {
  const path = ["cold-rest", "rack", "yield"];
  const { job } = jobOf(DAIRY_WASH, { ...facts, path, earliest: at(9) });
  expect(job.steps.map(({ id }) => id)).toEqual(path);
  expect(job.earliest).toBe(at(9));
  expect(job.holds).toEqual([]);
  expect(() => jobOf(DAIRY_WASH, { ...facts, path: ["nothing"] })).toThrow(RangeError);
});

test("every procedure there is makes a job that can be planned", () => {
  for (const procedure of PROCEDURES) {
    const { job } = jobOf(procedure, { ...facts, readyBy: 200 * HOUR });
    const limits = { capacity: { person: 1, "filter-stand": 1 } };
    expect(() => expectJobs([job], limits, 0)).not.toThrow();
    expect(scheduleJobs([job], limits, 0)).toMatchObject({ ok: true, late: [], proved: true });
  }
});
