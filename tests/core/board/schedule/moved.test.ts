import { expect, test } from "vitest";
import type { PlacedStep } from "../../../../core/board/schedule/day-plan.ts";
import { movedSteps } from "../../../../core/board/schedule/moved.ts";

const MINUTE = 60_000;
const NOW = 1_764_000_000_000;
const at = (minutes: number): number => NOW + minutes * MINUTE;
const placed = (job: string, step: string, from: number, to: number): PlacedStep => ({
  job,
  step,
  startAt: at(from),
  endAt: at(to),
});

const BEFORE = [
  placed("wash", "slow-drip", -60, 120),
  placed("wash", "yield", 120, 125),
  placed("other", "wet-filter", 130, 135),
];

test("a drip that goes on longer pushes its own yield and the next batch's filter, and is named", () => {
  const after = [
    placed("wash", "slow-drip", -60, 240),
    placed("wash", "yield", 240, 245),
    placed("other", "wet-filter", 245, 250),
  ];
  const because = { job: "wash", step: "slow-drip" };
  expect(movedSteps(BEFORE, after, NOW)).toEqual([
    { job: "wash", step: "yield", byMs: 120 * MINUTE, startAt: at(240), because },
    { job: "other", step: "wet-filter", byMs: 115 * MINUTE, startAt: at(245), because },
  ]);
});

test("what has begun moves no more, a minute is nothing, what is new has not moved", () => {
  const after = [
    placed("wash", "slow-drip", -59, 120),
    { ...placed("wash", "yield", 120, 125), startAt: at(120) + MINUTE - 1 },
    placed("new", "build", 10, 20),
  ];
  expect(movedSteps(BEFORE, after, NOW)).toEqual([]);
});

test("a move whose cause is not known is told without one", () => {
  const after = [...BEFORE.slice(0, 2), placed("other", "wet-filter", 100, 105)];
  expect(movedSteps(BEFORE, after, NOW)).toEqual([
    { job: "other", step: "wet-filter", byMs: -30 * MINUTE, startAt: at(100) },
  ]);
});

test("a batch's own wait is its cause before that of another batch", () => {
  const before = [
    placed("a", "rest", -10, 50),
    placed("b", "rest", -10, 50),
    placed("b", "pour", 50, 55),
  ];
  const after = [
    placed("a", "rest", -10, 500),
    placed("b", "rest", -10, 60),
    placed("b", "pour", 60, 65),
  ];
  expect(movedSteps(before, after, NOW)[0]?.because).toEqual({ job: "b", step: "rest" });
});

test("with the day at hand a step of another batch is the cause only where it was in the way", () => {
  const step = { kind: "hands-on", forMs: 5 * MINUTE, uses: [] } as const;
  const stand = [{ resource: "stand", amount: 1 }];
  const drip = { id: "slow-drip", kind: "wait", forMs: 300 * MINUTE, uses: stand } as const;
  const jobs = [
    {
      id: "wash",
      name: "wash",
      readyBy: at(500),
      steps: [
        { ...drip, fixedStart: at(-60) },
        { ...step, id: "yield" },
      ],
    },
    {
      id: "other",
      name: "other",
      readyBy: at(500),
      steps: [{ ...step, id: "wet-filter", uses: stand }],
    },
  ];
  const after = [
    placed("wash", "slow-drip", -60, 240),
    placed("wash", "yield", 240, 245),
    placed("other", "wet-filter", 245, 250),
  ];
  const because = (stands: number) =>
    movedSteps(BEFORE, after, NOW, {
      jobs,
      limits: { capacity: { stand: stands } },
      now: NOW,
    }).map((one) => one.because?.step);
  expect(because(1)).toEqual(["slow-drip", "slow-drip"]);
  expect(because(2)).toEqual(["slow-drip", undefined]);
});
