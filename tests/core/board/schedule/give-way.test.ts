import { expect, test } from "vitest";
import { fitWith, giveWay, NO_GIVE } from "../../../../core/board/schedule/give-way.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const steps = [
  hands("build", 10),
  wait("chill", 30, { mayWaitBefore: at(5), uses: [use("fridge", 4)] }),
];
const day = {
  jobs: [job("a", 60, steps), job("b", 60, steps)],
  limits: limits({ fridge: 7 }),
  now: 0,
};

test("gives way where it is told, and nowhere else", () => {
  expect(giveWay(day, NO_GIVE)).toEqual(day);
  const give = {
    late: new Map([["a", 7]]),
    standing: new Map([["b", 3]]),
    extra: new Map([["fridge", 1]]),
  };
  const { jobs, limits: most } = giveWay(day, give);
  expect(jobs.map(({ readyBy }) => readyBy)).toEqual([at(67), at(60)]);
  expect(jobs.map((one) => one.steps[1]?.mayWaitBefore)).toEqual([at(5), at(8)]);
  expect(jobs[1]?.steps[0]).toEqual(steps[0]);
  expect(most.capacity).toEqual({ person: 1, fridge: 8 });
});

test("a day fits once enough has given way", () => {
  expect(fitWith(day, NO_GIVE)).toBeUndefined();
  const fit = fitWith(day, { ...NO_GIVE, extra: new Map([["fridge", 1]]) });
  expect(fit?.network.resources).toEqual(["person", "fridge"]);
  expect(fit?.starts).toHaveLength(4);
  expect(fitWith(day, { ...NO_GIVE, late: new Map([["a", 9]]) })).toBeUndefined();
  expect(fitWith(day, { ...NO_GIVE, late: new Map([["a", 10]]) })).toBeDefined();
});
