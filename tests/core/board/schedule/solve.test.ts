import { expect, test } from "vitest";
import { networkOf } from "../../../../core/board/schedule/network.ts";
import { solveNetwork } from "../../../../core/board/schedule/solve.ts";
import { at, hands, job, limits, wait } from "./small-days.ts";

const label = (id: string, readyBy: number) => job(id, readyBy, [hands("label", 30)]);
const solve = (readyBys: readonly number[], goal: "any" | "latest" = "latest", now = 0) =>
  solveNetwork(
    networkOf(
      readyBys.map((readyBy, i) => label(String(i), readyBy)),
      limits(),
      at(now),
    ),
    goal,
  );

test("where nothing is short the plan is the latest there is", () => {
  expect(solve([100, 60])).toEqual({ starts: Float64Array.of(at(70), at(30)), proved: true });
  expect(solve([])).toEqual({ starts: Float64Array.of(), proved: true });
});

test("proves what it walks to the end: a plan, or that there is none", () => {
  expect(solve([100, 100, 100])).toMatchObject({ proved: true });
  expect(solve([100, 100, 100]).starts?.toSorted()).toEqual(
    Float64Array.of(at(10), at(40), at(70)),
  );
  expect(solve([89, 89, 89])).toEqual({ proved: true });
  expect(solve([60], "latest", 31)).toEqual({ proved: true });
});

test("any plan is not proved to be the latest", () => {
  const { starts, proved } = solve([100, 100], "any");
  expect([starts?.length, proved]).toEqual([2, false]);
});

test("many jobs come out without proof, and the same each time", () => {
  const wash = (i: number) =>
    job(String(i), 900 + 7 * i, [hands("a", 20), wait("b", 100 + i), hands("c", 25)]);
  const jobs = Array.from({ length: 18 }, (_, i) => wash(i));
  const once = solveNetwork(networkOf(jobs, limits(), 0), "latest");
  expect(once.starts).toHaveLength(54);
  expect(once.proved).toBe(false);
  expect(solveNetwork(networkOf(jobs, limits(), 0), "latest")).toEqual(once);
});
