import { expect, test } from "vitest";
import { lastClash } from "../../../../core/board/schedule/clash.ts";
import { giveWay } from "../../../../core/board/schedule/give-way.ts";
import type { Job, Limits } from "../../../../core/board/schedule/job.ts";
import { aloneEnough, leastGive } from "../../../../core/board/schedule/least-give.ts";
import { networkOf } from "../../../../core/board/schedule/network.ts";
import { scheduleJobs } from "../../../../core/board/schedule/plan-day.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const day = (jobs: readonly Job[], within: Limits = limits(), now = 0) => ({
  jobs,
  limits: within,
  now: at(now),
});
const label = (id: string, minutes: number, readyBy: number) =>
  job(id, readyBy, [hands("label", minutes)]);

test("only what needs it is late, and what was promised first is not", () => {
  const three = day([label("c", 20, 70), label("a", 30, 30), label("b", 30, 50)]);
  const alone = aloneEnough(three);
  expect(alone.map(({ breaks }) => breaks)).toEqual(["person", "time"]);
  expect(alone[0]?.give.extra).toEqual(new Map([["person", 1]]));
  expect(alone[1]?.give.late).toEqual(
    new Map([
      ["a", 0],
      ["b", 10],
      ["c", 10],
    ]),
  );
  expect(leastGive(three, alone)).toBe(alone[1]?.give);
});

test("what was promised first is on time, though another is late anyway", () => {
  const past = job("past", 1, [wait("drip", 101)]);
  const both = day([label("b", 20, 31), label("a", 20, 30), past]);
  expect(leastGive(both, aloneEnough(both)).late).toEqual(
    new Map([
      ["b", 9],
      ["a", 0],
      ["past", 100],
    ]),
  );
});

test("the resource that lacks the smallest share comes first", () => {
  // b goes beside a, which takes two more litres, or beside c, which takes another stand.
  const chill = (id: string, readyBy: number, litres: number, stands: number) =>
    job(id, readyBy, [wait("chill", 10, { uses: [use("fridge", litres), use("stand", stands)] })]);
  const a = { ...chill("a", 20, 21, 0), earliest: at(10) };
  const three = [a, chill("b", 20, 21, 1), chill("c", 10, 0, 2)];
  const short = day(three, limits({ stand: 2, fridge: 40 }));
  expect(aloneEnough(short).map(({ breaks }) => breaks)).toEqual(["fridge", "stand", "time"]);
});

test("a resource that would not be enough alone is not offered", () => {
  const both = [use("fridge", 21), use("stand", 1)];
  const two = ["a", "b"].map((id) => job(id, 30, [wait("chill", 30, { uses: both })]));
  const fridge = day(two, limits({ stand: 2, fridge: 40 }));
  expect(aloneEnough(fridge).map(({ breaks }) => breaks)).toEqual(["fridge", "time"]);
  const nothing = day(two, limits({ stand: 1, fridge: 40 }));
  expect(aloneEnough(nothing).map(({ breaks }) => breaks)).toEqual(["time"]);
});

test("without a bound that is enough alone, everything gives as little as may be", () => {
  const steps = [wait("chill", 30, { uses: [use("fridge", 45.5), use("stand", 3)] })];
  const big = day([job("a", 20, steps)], limits({ stand: 1, fridge: 40 }));
  expect(aloneEnough(big)).toEqual([]);
  expect(leastGive(big, [])).toEqual({
    late: new Map([["a", 10]]),
    standing: new Map([["a", 0]]),
    extra: new Map([
      ["person", 0],
      ["stand", 2],
      ["fridge", 5.5],
    ]),
  });
});

test("standing gives way before a helper is counted on", () => {
  const running = (id: string) =>
    job(id, 100, [wait("rest", 20, { fixedStart: 0 }), hands("filter", 10, { mayWaitBefore: 0 })]);
  const two = day([running("a"), running("b")], limits(), 5);
  const give = leastGive(two, aloneEnough(two));
  expect([...give.standing.values()].sort()).toEqual([0, 10]);
  expect(give.extra.size).toBe(0);
});

test("a large day is late in one good way, and that way is a placing of it", () => {
  const wash = (i: number) =>
    job(`b${i}`, 400 + 40 * i, [hands("build", 20), wait("rest", 60), hands("bottle", 15)]);
  // 40 batches, one of which is to be ready before it can be.
  const jobs = [...Array.from({ length: 39 }, (_, i) => wash(i)), job("soon", 30, wash(0).steps)];
  const large = day(jobs);
  const [alone, ...more] = aloneEnough(large);
  expect(more).toEqual([]);
  expect(alone?.breaks).toBe("time");
  const late = [...(alone?.give.late ?? [])].filter(([, minutes]) => minutes > 0);
  expect(late).toEqual([["soon", 65]]);
  if (alone?.starts === undefined) throw new RangeError("no placing");
  const given = giveWay(large, alone.give);
  const network = networkOf(given.jobs, given.limits, given.now);
  expect(lastClash(network, alone.starts)).toBeUndefined();
  const plan = scheduleJobs(jobs, limits(), at(0));
  expect(plan).toMatchObject({ ok: false, breaks: "time", by: at(65), job: "soon" });
});
