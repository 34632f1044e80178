import fc from "fast-check";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { LOOKS, OUTCOMES, READING_KEYS, STANDS } from "../../../core/method/procedure.ts";
import type { AfterOrder } from "../../../core/run/afterwards.ts";
import type { Answer } from "../../../core/run/answer.ts";
import type { Command } from "../../../core/run/command.ts";
import {
  READING_UNITS,
  STOCK_ENDS,
  STOCK_UNITS,
  VESSELS,
  WATCHERS,
} from "../../../core/run/event.ts";
import { openVisit } from "../../../core/run/run.ts";
import { REPEATS, VERDICTS } from "../../../core/run/taste.ts";
import { FILTER_SHAPES } from "../../../core/spec/spec.ts";
import { planOf, type TestBench } from "./run-events.ts";
import { finishOpenStep } from "./wash-walk.ts";

/** One order, made for the bench as it stands when its turn comes. */
export interface Turn {
  /** ms since the turn before; the clock may also have been put back. */
  readonly wait: number;
  readonly order: (bench: TestBench) => Command | undefined;
}

const plan = planOf();
const ml = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: 0, max: 4000, noNaN: true }) },
  fc.constantFrom(Number.NaN, -1, Number.POSITIVE_INFINITY, 1e9, 1e300),
);
const moment = fc.oneof(
  fc.integer({ min: 0, max: 2_000_000_000_000 }),
  fc.constantFrom(Number.NaN, -1, 0.5),
);
const text = fc.constantFrom("", "  ", "smells of tea", "x".repeat(2001), "__proto__");
const look = fc.option(fc.constantFrom(...OUTCOMES), { nil: undefined });

const answer: fc.Arbitrary<Answer> = fc.oneof(
  fc.record({ of: fc.constantFrom("milk", "cloudy-run", "yield", "top-up"), ml }),
  fc.record({ of: fc.constant("brix" as const), brix: ml }),
  fc.record({
    of: fc.constant("bottled" as const),
    bottles: fc.array(
      fc.record({
        count: fc.constantFrom(1, 7, 0, 0.5, Number.NaN),
        size: fc.constantFrom(700, 0),
      }),
      { maxLength: 2 },
    ),
    useBy: moment,
  }),
);

/** What is said of the drink, sensible and not. */
const afterOrder: fc.Arbitrary<AfterOrder> = fc.oneof(
  fc.record({
    type: fc.constant("note-taste" as const),
    scores: fc.record({ acid: fc.constantFrom(0, 7, 11, 0.5), finish: fc.constantFrom(3, 10) }),
    words: fc.array(fc.constantFrom("bright", "", "x".repeat(41)), { maxLength: 2 }),
    by: fc.constantFrom("AB", "cd ", "", "x".repeat(9)),
  }),
  fc.record({
    type: fc.constant("give-verdict" as const),
    verdict: fc.constantFrom(...VERDICTS),
    repeat: fc.constantFrom(...REPEATS),
    text,
  }),
  fc.record({
    type: fc.constantFrom("add-tag", "remove-tag"),
    tag: fc.constantFrom("a", "A ", ""),
  }),
  fc.record({
    type: fc.constant("add-photo" as const),
    photo: fc.constantFrom("p-1", "p-2", ""),
    media: fc.constant("image/jpeg"),
    bytes: fc.constant(1000),
    width: fc.constantFrom(640, 0),
    height: fc.constant(480),
  }),
  fc.record({ type: fc.constant("remove-photo" as const), photo: fc.constantFrom("p-1", "p-3") }),
  fc.record({
    type: fc.constant("pour-stock" as const),
    count: ml,
    unit: fc.constantFrom(...STOCK_UNITS),
  }),
  fc.record({
    type: fc.constant("end-stock" as const),
    how: fc.constantFrom(...STOCK_ENDS),
    reason: text,
  }),
  fc.record({ type: fc.constant("settle-yield" as const), ml }),
);

/** Where an order says it is: mostly where the work is, else somewhere else, else nowhere. */
const place = fc.integer({ min: 0, max: 9 }).map((pick) => (bench: TestBench): string => {
  const run = bench.run;
  if (pick > 3 && run !== undefined) return openVisit(run)?.key ?? "build#1";
  return ["build#1", "nowhere#9", "", "__proto__"][pick] ?? "build#1";
});

/** The order that the step asks for, with answers that are sometimes odd. */
const walking = fc
  .record({ milk: ml, cloudy: ml, yield: ml, topUp: ml, look: fc.constantFrom(...LOOKS) })
  .map((by) => (bench: TestBench) => {
    const { run } = bench;
    return run && finishOpenStep(run, { ...by, useBy: 2_000_000_000_000 });
  });

type Odd = (bench: TestBench) => Command;

const odd: fc.Arbitrary<Odd> = fc.oneof<fc.Arbitrary<Odd>[]>(
  fc
    .tuple(place, fc.option(answer, { nil: undefined }), look)
    .map(([at, said, seen]) => (bench) => ({
      type: "finish-step",
      visit: at(bench),
      ...(said === undefined ? {} : { answer: said }),
      ...(seen === undefined ? {} : { look: seen }),
    })),
  fc
    .tuple(place, fc.constantFrom(...READING_KEYS), ml, fc.constantFrom(...READING_UNITS))
    .map(([at, what, value, unit]) => (bench) => ({
      type: "log-reading",
      visit: at(bench),
      what,
      value,
      unit,
    })),
  fc
    .tuple(place, fc.constantFrom(...plan.lines.map((line) => line.lineId), "none"))
    .map(([at, line]) => (bench) => ({ type: "pour-line", visit: at(bench), line })),
  fc.tuple(place, ml).map(([at, gross]) => (bench) => ({
    type: "log-weight",
    visit: at(bench),
    gross,
  })),
  fc.tuple(fc.constantFrom(...VESSELS), ml).map(([vessel, grams]) => () => ({
    type: "note-tare",
    vessel,
    grams,
  })),
  fc.tuple(place, fc.constantFrom(...FILTER_SHAPES)).map(([at, shape]) => (bench) => ({
    type: "note-shape",
    visit: at(bench),
    shape,
  })),
  fc.tuple(place, moment).map(([at, dueAt]) => (bench) => ({
    type: "hear-alarm",
    visit: at(bench),
    dueAt,
  })),
  fc
    .tuple(place, moment, fc.constantFrom(...WATCHERS), fc.constantFrom("AB", " ", "x".repeat(9)))
    .map(([at, dueAt, to, who]) => (bench) => ({
      type: "hand-alarm",
      visit: at(bench),
      dueAt,
      to,
      who,
    })),
  fc.tuple(moment, moment).map(([fromMs, forMs]) => () => ({ type: "note-sleep", fromMs, forMs })),
  fc.tuple(place, moment).map(([at, dueAt]) => (bench) => ({
    type: "move-due",
    visit: at(bench),
    dueAt,
  })),
  fc.tuple(place, fc.constantFrom(...OUTCOMES)).map(([at, seen]) => (bench) => ({
    type: "note-look",
    visit: at(bench),
    look: seen,
  })),
  fc.constantFrom<Command>({ type: "pause" }, { type: "resume" }).map((order) => () => order),
  fc.constantFrom(...STANDS).map((to) => () => ({ type: "move-vessel", to })),
  fc.constantFrom("AB", " ", "x".repeat(9)).map((initials) => () => ({
    type: "change-hands",
    initials,
  })),
  fc
    .tuple(fc.constantFrom("L 204", "", "x".repeat(61)), fc.option(moment, { nil: undefined }))
    .map(([lot, useBy]) => () => ({
      type: "note-lot",
      ingredient: "milk-whole",
      lot,
      ...(useBy === undefined ? {} : { useBy }),
    })),
  fc.nat({ max: 200 }).map((at) => (bench) => ({
    type: "undo",
    act: bench.events[at % (bench.events.length + 1)]?.act ?? "none",
  })),
  fc.constant<Odd>((bench) => ({ type: "undo", act: bench.lastAct })),
  text.map((words) => () => ({ type: "add-note", text: words })),
  afterOrder.map((order) => () => order),
  fc
    .tuple(fc.constantFrom(3_600_000, -3_600_000, 0.5, Number.NaN), fc.boolean())
    .map(([byMs, keepElapsed]) => () => ({ type: "shift-clock", byMs, keepElapsed })),
);

const rare: fc.Arbitrary<Odd> = fc.oneof<fc.Arbitrary<Odd>[]>(
  text.map((reason) => () => ({ type: "abandon", reason })),
  fc.constant<Odd>(() => ({
    type: "start-run",
    batch: "TW-0102",
    plan,
    procedure: DAIRY_WASH,
    appVersion: "0",
  })),
);

/** Turns at the bench, legal and not: walking on, odd orders, seldom an end. */
export const anyTurns = (most: number): fc.Arbitrary<Turn[]> =>
  fc.array(
    fc.record({
      wait: fc.constantFrom(0, 1000, 60_000, 3_600_000, -3_600_000),
      order: fc.oneof(
        { weight: 12, arbitrary: walking },
        { weight: 10, arbitrary: odd },
        { weight: 1, arbitrary: rare },
      ),
    }),
    { maxLength: most },
  );

/** Plays turns; calls back after each with what came of it. */
export function play(
  bench: TestBench,
  turns: readonly Turn[],
  after: (refusal: string | undefined, order: Command) => void = () => {},
): void {
  for (const { wait, order } of turns) {
    bench.now += wait;
    const command = order(bench);
    if (command !== undefined) after(bench.order(command), command);
  }
}
