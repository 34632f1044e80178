import { expect, test } from "vitest";
import { pathOfRun } from "../../../../core/board/schedule/path-of-run.ts";
import { foldRun } from "../../../../core/run/fold.ts";
import type { Run } from "../../../../core/run/run.ts";
import { demoSpec, type Played, planned, started } from "../../../support/world/play-run.ts";
import { stationAt } from "../../../support/world/wash-stations.ts";

const START = 1_764_000_000_000;
const MINUTE = 60_000;

function runAt(step: string): Run {
  const run = foldRun(stationAt("run", "PB", START, step).events);
  if (run === undefined) throw new RangeError("no run");
  return run;
}

const ids = (run: Run): readonly string[] => pathOfRun(run).map(({ id }) => id);
const BEGIN = ["build", "milk", "pour", "curdle", "wet-filter", "first-pass"];
const END = ["slow-drip", "yield", "top-up", "bottle", "label"];

test("what is over has its true times, the open step its start, what is to come none", () => {
  const path = pathOfRun(runAt("curdle"));
  expect(path.map(({ id }) => id)).toEqual([...BEGIN, "re-pour", "check-clear", ...END]);
  // Built for 20 minutes, 2 for the milk, 5 to pour.
  const from = (minutes: number) => START + minutes * MINUTE;
  expect(path.slice(0, 5)).toMatchObject([
    { startedAt: from(0), finishedAt: from(20) },
    { startedAt: from(20), finishedAt: from(22) },
    { startedAt: from(22), finishedAt: from(27) },
    { startedAt: from(27) },
    {},
  ]);
  expect(path[3]).not.toHaveProperty("finishedAt");
  expect(path.slice(4).every((one) => one.startedAt === undefined)).toBe(true);
});

test("poured back again: the last passage through a step bears its name, those before their round", () => {
  const path = ids(runAt("re-pour, again"));
  expect(path).toEqual([...BEGIN, "re-pour#1", "check-clear#1", "re-pour", "check-clear", ...END]);
  expect(new Set(path).size).toBe(path.length);
});

/** A wash that is still cloudy after three passes. */
function wontClear(): Played {
  const plan = planned(demoSpec("Pear Beacon"));
  let run = started("run", "PB", START, plan)
    .finish({}, 20)
    .finish({ answer: { of: "milk", ml: plan.milk?.ml ?? 0 } }, 2)
    .finish({}, 5)
    .finish({}, 60)
    .finish({}, 4)
    .finish({}, 2);
  for (const ml of [400, 300, 200]) {
    run = run.finish({ answer: { of: "cloudy-run", ml } }, 3).finish({ look: "cloudy" }, 2);
  }
  return run;
}

test("a run that is rescued goes on from where it is", () => {
  const asked = wontClear();
  expect(ids(asked.run).slice(-6)).toEqual(["rescue", ...END]);
  const finer = asked.finish({ look: "finer-filter" }, 1);
  expect(ids(finer.run).slice(-8)).toEqual(["finer", "re-pour", "check-clear", ...END]);
  expect(ids(finer.run).filter((id) => id.startsWith("re-pour"))).toEqual([
    "re-pour#1",
    "re-pour#2",
    "re-pour#3",
    "re-pour",
  ]);
  const cold = asked.finish({ look: "cold-rest" }, 1);
  expect(ids(cold.run).slice(-7)).toEqual([
    "rescue",
    "cold-rest",
    "rack",
    "yield",
    "top-up",
    "bottle",
    "label",
  ]);
});

test("an ended run goes nowhere", () => {
  expect(pathOfRun(runAt("finished"))).toEqual([]);
});

test("a way that another phone began and nobody walked on is no part of it", () => {
  const run = runAt("slow-drip");
  const stray = { key: "rescue#1", step: "rescue", startedAt: START + 100 * MINUTE };
  const at = run.visits.length - 1;
  const both = { ...run, visits: run.visits.toSpliced(at, 0, stray) };
  expect(ids(both)).toEqual(ids(run));
});
