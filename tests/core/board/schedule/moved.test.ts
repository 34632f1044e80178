import { expect, test } from "vitest";
import type { PlacedStep } from "../../../../core/board/schedule/day-plan.ts";
import { movedSteps } from "../../../../core/board/schedule/moved.ts";
import { at, hands, job, limits, use, wait } from "./small-days.ts";

const NOW = 100;
const placed = (job: string, step: string, from: number, to: number): PlacedStep => ({
  job,
  step,
  startAt: at(from),
  endAt: at(to),
});

/** A wash that drips until `through`, and another batch that is to have a stand. */
const day = (through: number, stands: number) => ({
  jobs: [
    job("wash", 900, [
      wait("slow-drip", through - 40, { fixedStart: at(40), uses: [use("stand", 1)] }),
      hands("yield", 5),
    ]),
    job("other", 900, [hands("wet-filter", 5, { uses: [use("stand", 1)] })]),
  ],
  limits: limits({ stand: stands }),
  now: at(NOW),
});

const BEFORE = [
  placed("wash", "slow-drip", 40, 220),
  placed("wash", "yield", 220, 225),
  placed("other", "wet-filter", 230, 235),
];
const SLOW = [
  placed("wash", "slow-drip", 40, 340),
  placed("wash", "yield", 340, 345),
  placed("other", "wet-filter", 345, 350),
];

test("a drip that goes on longer pushes its own yield and the next batch's filter, and is named", () => {
  const because = { job: "wash", step: "slow-drip" };
  expect(movedSteps(BEFORE, SLOW, day(340, 1))).toEqual([
    { job: "wash", step: "yield", byMs: at(120), startAt: at(340), because },
    { job: "other", step: "wet-filter", byMs: at(115), startAt: at(345), because },
  ]);
});

test("a move whose cause is not known is told without one", () => {
  // There is another stand: the drip was not in the way.
  const [, other] = movedSteps(BEFORE, SLOW, day(340, 2));
  expect(other).toEqual({ job: "other", step: "wet-filter", byMs: at(115), startAt: at(345) });
});

test("the largest move comes first, be it later or sooner", () => {
  const after = [
    placed("wash", "slow-drip", 40, 230),
    placed("wash", "yield", 230, 235),
    placed("other", "wet-filter", 110, 115),
  ];
  const moves = movedSteps(BEFORE, after, day(230, 2)).map(({ step, byMs }) => [step, byMs]);
  expect(moves).toEqual([
    ["wet-filter", at(-120)],
    ["yield", at(10)],
  ]);
});

test("what has begun moves no more, under a minute is nothing, what is new has not moved", () => {
  const after = [
    placed("wash", "slow-drip", 41, 220),
    { ...placed("wash", "yield", 220, 225), startAt: at(221) - 1 },
    placed("new", "build", 110, 120),
  ];
  expect(movedSteps(BEFORE, after, day(220, 1))).toEqual([]);
});

test("a whole minute is told, less is not, nor what begins at this very moment", () => {
  const after = (from: number) => [
    ...BEFORE.slice(0, 2),
    placed("other", "wet-filter", from, from + 5),
  ];
  const told = (from: number, now = NOW) =>
    movedSteps(BEFORE, after(from), { ...day(220, 1), now: at(now) }).map(({ byMs }) => byMs);
  expect(told(231)).toEqual([at(1)]);
  expect(told(230.9)).toEqual([]);
  expect(told(240, 240)).toEqual([]);
  expect(told(240, 239)).toEqual([at(10)]);
});
