import { expect, test } from "vitest";
import { DEMO_RUN } from "../../../app/storage/demo.ts";
import { sideOf } from "../../../core/logbook/compare/inputs.ts";
import { learntRules } from "../../../core/logbook/learn/house-learning.ts";
import { whatMatters } from "../../../core/logbook/matters/what-matters.ts";
import { recordOf } from "../../../core/logbook/record.ts";
import { eventSchema } from "../../../core/run/event.ts";
import { foldRun } from "../../../core/run/fold.ts";
import type { Run } from "../../../core/run/run.ts";
import { DEMO_SPECS, demoHistory } from "../../support/world/demo-bar.ts";

const DAY = 24 * 3_600_000;
const NOW = Date.UTC(2026, 10, 26, 3);
const LOGS = demoHistory(NOW);
const runs = LOGS.map((log): Run => {
  const run = foldRun(log);
  if (run === undefined) throw new RangeError("an invented log must fold");
  return run;
});
const batches = runs.map(recordOf);
const pears = batches.filter(({ name }) => name === "Pear Beacon");

test("at least eighteen batches over six months, all ended, none in the future", () => {
  expect(batches.length).toBeGreaterThanOrEqual(18);
  const starts = batches.map(({ startedAt }) => startedAt);
  expect(Math.max(...starts) - Math.min(...starts)).toBeGreaterThan(170 * DAY);
  for (const { ending } of batches) expect(ending?.at).toBeLessThan(NOW);
  for (const event of LOGS.flat()) expect(event.at).toBeLessThan(NOW);
});

test("the same day gives the same logs, whatever the hour; every event is as the app stores it", () => {
  expect(demoHistory(NOW + 9 * 3_600_000)).toEqual(LOGS);
  expect(demoHistory(NOW + DAY)[0]?.[0]?.at).toBe((LOGS[0]?.[0]?.at ?? 0) + DAY);
  for (const event of LOGS.flat()) expect(eventSchema.safeParse(event).success).toBe(true);
  const ids = LOGS.flat().map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
}, 30_000);

test("marked as invented everywhere", () => {
  for (const run of runs) {
    expect(run.id.startsWith(DEMO_RUN)).toBe(true);
    expect(run.plan.spec.demo).toBe(true);
    expect(DEMO_SPECS.some(({ id }) => id === run.plan.spec.id)).toBe(true);
  }
  expect(batches.every(({ demo }) => demo)).toBe(true);
});

test("one obvious failure, one lucky best", () => {
  const failed = batches.filter(({ ending }) => ending?.how === "abandoned");
  expect(failed).toHaveLength(1);
  expect(failed[0]?.ending?.reason).toContain("blinded");
  expect(failed[0]?.work.pour?.took).toBeLessThan(2 * 60_000);
  const best = pears.toSorted((a, b) => (b.yielded?.share ?? 0) - (a.yielded?.share ?? 0))[0];
  expect(best?.tags).toContain("best so far");
  expect(best?.verdict).toBe("good");
});

test("the colder the drip the better the yield, and it stands out among all that is looked at", () => {
  const found = whatMatters(pears.map(sideOf));
  if (found.type !== "found") throw new RangeError("there are enough of them");
  const trend = found.together.find(
    ({ input, result }) => input === "degrees-drip" && result === "yield-share",
  );
  expect(trend?.rho).toBeLessThan(-0.7);
  expect(trend?.standsOut).toBe(true);
});

test("plans of the invented specs learn from them", () => {
  const learnt = learntRules(batches);
  expect(Object.keys(learnt).every((name) => name.startsWith("demo"))).toBe(true);
  expect(learnt["demo|dairy-wash|straight|whole"]?.retention).toMatchObject({
    from: "own-batches",
    batches: 18,
  });
});

test("every measured batch was tasted and judged; the old ones are sold out", () => {
  const measured = batches.filter(({ yielded }) => yielded !== undefined);
  expect(measured.length).toBeGreaterThan(15);
  for (const { taste, verdict, stock, startedAt } of measured) {
    expect(taste?.tasters).toBe(2);
    expect(verdict).toBeDefined();
    if (NOW - startedAt > 40 * DAY) expect(stock?.ended).toBeDefined();
  }
});
