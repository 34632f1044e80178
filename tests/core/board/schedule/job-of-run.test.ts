import { expect, test } from "vitest";
import { jobOfRun } from "../../../../core/board/schedule/job-of-run.ts";
import { FAT_WASH, LONG_INFUSION } from "../../../../core/method/infusions.ts";
import type { Procedure } from "../../../../core/method/procedure.ts";
import { dripOutlook } from "../../../../core/run/drip-outlook.ts";
import { foldRun } from "../../../../core/run/fold.ts";
import type { Run } from "../../../../core/run/run.ts";
import { planOf, TestBench } from "../../../support/run-events.ts";
import { stationAt } from "../../../support/wash-stations.ts";

const HOUR = 3_600_000;
const MINUTE = 60_000;
const START = 1_764_000_000_000;
const FRIDAY = START + 72 * HOUR;
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

const openOf = (run: Run, now: number) => jobOfRun(run, facts, now)?.steps[0];

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
  bench.order({ type: "abandon", reason: "dropped" });
  expect(bench.run && jobOfRun({ ...bench.run, visits: [] }, facts, START)).toBeUndefined();
});
