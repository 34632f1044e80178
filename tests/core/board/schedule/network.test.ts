import { expect, test } from "vitest";
import type { Job, Limits } from "../../../../core/board/schedule/job.ts";
import { endIn, networkOf, startIn } from "../../../../core/board/schedule/network.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const curd = job(
  "a",
  100,
  [hands("pour", 5), wait("rest", 20, { mayWaitBefore: 0 }), hands("filter", 10)],
  [{ ...use("stand", 1), fromStep: "rest", toStep: "filter" }],
);
const net = (jobs: readonly Job[], within: Limits = limits({ stand: 2 }), now = 0) =>
  networkOf(jobs, within, at(now));

test("each step can begin once those before it can be over", () => {
  const lows = (of: Job, now: number) =>
    net([of], limits(), now).tasks.map(({ low }) => low / at(1));
  expect(lows(curd, 7)).toEqual([7, 12, 32]);
  expect(lows({ ...curd, earliest: at(20) }, 7)).toEqual([20, 25, 45]);
  const [pour, ...rest] = curd.steps;
  if (pour === undefined) throw new RangeError("no first step");
  const begun = { ...curd, earliest: at(90), steps: [{ ...pour, fixedStart: at(2) }, ...rest] };
  expect(lows(begun, 3)).toEqual([2, 7, 27]);
  expect(lows(begun, 50)).toEqual([2, 50, 70]);
});

test("only the last step is bound by ready-by, and not once it is over", () => {
  const tops = (of: Job, now = 0) => net([of], limits(), now).tasks.map(({ top }) => top / at(1));
  expect(tops(curd)).toEqual([Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 90]);
  const late = job("a", 30, [hands("label", 10, { fixedStart: at(25) })]);
  expect(tops(late, 30)).toEqual([20]);
  expect(tops(late, 35)).toEqual([25]);
});

test("steps bound each other by what they take and by how long they may stand", () => {
  const [pour, rest, filter] = net([curd]).tasks;
  expect(pour?.bounds).toEqual([{ to: rest, plus: at(5) }]);
  expect(rest?.bounds).toEqual([{ to: pour, plus: -at(5) }]);
  expect(filter?.bounds).toEqual([{ to: rest, plus: -at(20) }]);
});

test("what is held counts during the steps and the idle time between them", () => {
  const [pour, rest, filter] = net([curd]).tasks;
  expect([pour?.during, pour?.after]).toEqual([[{ of: 0, amount: 1 }], []]);
  expect([rest?.during, rest?.after]).toEqual([[{ of: 1, amount: 1 }], [{ of: 1, amount: 1 }]]);
  expect(filter?.during).toEqual([
    { of: 0, amount: 1 },
    { of: 1, amount: 1 },
  ]);
  expect(filter?.after).toEqual([]);
});

test("claims are told by resource; what is not limited claims nothing", () => {
  const taken = [{ ...use("person", 1), from: at(50), to: at(60) }];
  const within = { ...limits({ stand: 2 }), taken };
  const { claims, resources, chains } = net([curd, job("b", 9, [hands("x", 1)])], within);
  expect(resources).toEqual(["person", "stand"]);
  expect(claims.map((of) => of.map(({ first, last }) => [first.step, last.step]))).toEqual([
    [
      ["pour", "pour"],
      ["filter", "filter"],
      ["x", "x"],
      ["taken", "taken"],
    ],
    [["rest", "filter"]],
  ]);
  expect(chains.map(({ job, todo }) => [job?.id, todo?.step])).toEqual([
    ["a", "pour"],
    ["b", "x"],
    [undefined, undefined],
  ]);
  expect(net([job("b", 9, [wait("x", 1, { uses: [use("oven", 3)] })])]).claims).toEqual([[], []]);
});

test("a hold is known until the last step that has begun ends", () => {
  const [pour, rest, filter] = curd.steps;
  if (pour === undefined || rest === undefined || filter === undefined)
    throw new RangeError("steps");
  const begun = { ...pour, fixedStart: at(0) };
  const resting = { ...rest, fixedStart: at(5) };
  const held = (...steps: Job["steps"]) =>
    net([{ ...curd, steps }], limits({ stand: 2 }), 6).claims[1]?.map(
      ({ knownUntil, begun: is }) => [knownUntil / at(1), is],
    );
  expect(held(begun, rest, filter)).toEqual([[Number.NEGATIVE_INFINITY, false]]);
  expect(held(begun, resting, filter)).toEqual([[25, true]]);
  expect(held(begun, resting, { ...filter, fixedStart: at(30) })).toEqual([[40, true]]);
});

test("starts and ends are read by task", () => {
  const [, rest] = net([curd]).tasks;
  if (rest === undefined) throw new RangeError("no task");
  expect(startIn(Float64Array.of(1, at(7), 3), rest)).toBe(at(7));
  expect(endIn(Float64Array.of(1, at(7), 3), rest)).toBe(at(27));
  expect(startIn(Float64Array.of(1), rest)).toBeNaN();
});

test("a step that must begin at a moment can begin at no other, and still has to fit", () => {
  const standing = (_: string, step: string) => (step === "rest" ? at(40) : undefined);
  const bounds = (now: number) =>
    networkOf([curd], limits(), at(now), standing).tasks.map(({ low, top }) => [
      low / at(1),
      top / at(1),
    ]);
  const free = Number.POSITIVE_INFINITY;
  expect(bounds(7)).toEqual([
    [7, free],
    [40, 40],
    [60, 90],
  ]);
  // It can no longer be kept: nothing fits.
  expect(bounds(38)[1]).toEqual([43, 40]);
  expect(networkOf([curd], limits(), 0, standing).tasks.every(({ pinned }) => !pinned)).toBe(true);
});
