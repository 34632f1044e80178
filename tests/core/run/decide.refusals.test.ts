import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import type { Command, RunRefusal } from "../../../core/run/command.ts";
import { VESSELS } from "../../../core/run/event.ts";
import { openVisit } from "../../../core/run/run.ts";
import { planOf, runOf, TestBench } from "../../support/run-events.ts";
import { finishOpenStep } from "../../support/wash-walk.ts";

const plan = planOf();

/** A bench whose work has come to a step, or to the end. */
function at(step?: string): TestBench {
  const bench = new TestBench();
  bench.start(plan);
  for (let turn = 0; turn < 40 && openVisit(runOf(bench))?.step !== step; turn += 1) {
    const order = finishOpenStep(runOf(bench));
    if (order !== undefined) expect(bench.order(order)).toBeUndefined();
    bench.now += 60_000;
  }
  expect(openVisit(runOf(bench))?.step).toBe(step);
  return bench;
}

/** The same, with its vessels weighed empty: 800 g each. */
function weighing(step: string): TestBench {
  const bench = at(step);
  for (const vessel of VESSELS) bench.order({ type: "note-tare", vessel, grams: 800 });
  return bench;
}

/** A finished batch of which nothing is left. */
function spent(): TestBench {
  const bench = at();
  bench.order({ type: "end-stock", how: "spent", reason: "" });
  return bench;
}

const start = (rest: object = {}): Command => ({
  type: "start-run",
  batch: "TW-0101",
  plan,
  procedure: DAIRY_WASH,
  appVersion: "0",
  ...rest,
});

const finish = (visit: string, rest: object = {}): Command => ({
  type: "finish-step",
  visit,
  ...rest,
});

/** Every refusal there is, each with orders that come to it. */
const REFUSALS: Readonly<Record<RunRefusal, readonly (readonly [TestBench, Command])[]>> = {
  "run-already-started": [
    [at("build"), start()],
    [at(), start()],
  ],
  "procedure-without-end": [
    [
      new TestBench(),
      start({
        procedure: {
          ...DAIRY_WASH,
          steps: DAIRY_WASH.steps.map((step) =>
            step.id === "label" ? { ...step, next: "bottle" } : step,
          ),
        },
      }),
    ],
  ],
  "run-not-started": [
    [new TestBench(), finish("build#1")],
    [new TestBench(), { type: "add-note", text: "early" }],
    [new TestBench(), { type: "undo", act: "none" }],
  ],
  "run-ended": [
    [at(), finish("label#1")],
    [at(), { type: "hear-alarm", visit: "curdle#1", dueAt: 0 }],
    [at(), { type: "abandon", reason: "too late" }],
    [at(), { type: "shift-clock", byMs: 1000, keepElapsed: true }],
    [at(), { type: "log-reading", visit: "yield#1", what: "collected", value: 1, unit: "ml" }],
  ],
  "step-not-open": [
    [at("milk"), finish("build#1")],
    [at("milk"), finish("nowhere#1")],
    [at("milk"), { type: "pour-line", visit: "build#1", line: "lemon" }],
    [at("pour"), { type: "hear-alarm", visit: "curdle#1", dueAt: 0 }],
    [at("pour"), { type: "hand-alarm", visit: "curdle#1", dueAt: 0, to: "vessel" }],
    [at("pour"), { type: "move-due", visit: "curdle#1", dueAt: 0 }],
    [at("pour"), { type: "note-look", visit: "check-clear#1", look: "hazy" }],
    [at("pour"), { type: "note-shape", visit: "slow-drip#1", shape: "cone" }],
    [at("pour"), { type: "log-weight", visit: "slow-drip#1", gross: 900 }],
    [at("pour"), { type: "log-reading", visit: "drip#1", what: "collected", value: 1, unit: "ml" }],
  ],
  "reading-missing": [
    [at("milk"), finish("milk#1")],
    [at("yield"), finish("yield#1", { answer: { of: "milk", ml: 1000 } })],
    [at("bottle"), finish("bottle#1", { answer: { of: "yield", ml: 1000 } })],
  ],
  "look-missing": [[at("check-clear"), finish("check-clear#1")]],
  "reading-not-a-number": [
    [at("milk"), { type: "note-tare", vessel: "clear-run", grams: Number.NaN }],
    [at("milk"), { type: "note-tare", vessel: "clear-run", grams: -1 }],
    [at(), { type: "pour-stock", count: Number.NaN, unit: "ml" }],
    [weighing("slow-drip"), { type: "log-weight", visit: "slow-drip#1", gross: Number.NaN }],
    [at("milk"), finish("milk#1", { answer: { of: "milk", ml: Number.NaN } })],
    [
      at("pour"),
      { type: "log-reading", visit: "pour#1", what: "temperature", value: -51, unit: "degC" },
    ],
    [
      at("pour"),
      {
        type: "log-reading",
        visit: "pour#1",
        what: "temperature",
        value: Number.NaN,
        unit: "degC",
      },
    ],
  ],
  "reading-above-poured": [
    [weighing("slow-drip"), { type: "log-weight", visit: "slow-drip#1", gross: 44_000 }],
    [at("re-pour"), finish("re-pour#1", { answer: { of: "cloudy-run", ml: 6000 } })],
    [
      at("slow-drip"),
      { type: "log-reading", visit: "slow-drip#1", what: "collected", value: 44_000, unit: "ml" },
    ],
  ],
  "tare-missing": [
    [at("re-pour"), finish("re-pour#1", { answer: { of: "cloudy-run", gross: 700 } })],
    [at("slow-drip"), { type: "log-weight", visit: "slow-drip#1", gross: 2000 }],
  ],
  "weight-below-tare": [
    [weighing("slow-drip"), { type: "log-weight", visit: "slow-drip#1", gross: 799 }],
    [weighing("yield"), finish("yield#1", { answer: { of: "yield", gross: 0 } })],
  ],
  "no-bottles": [
    [at("bottle"), finish("bottle#1", { answer: { of: "bottled", bottles: [], useBy: 0 } })],
  ],
  "note-empty": [[at("pour"), { type: "add-note", text: " \n " }]],
  "taste-empty": [[at(), { type: "note-taste", scores: {}, words: [" "], by: "AB" }]],
  "taster-missing": [[at(), { type: "note-taste", scores: { acid: 5 }, words: [], by: " " }]],
  "tag-empty": [[at("pour"), { type: "add-tag", tag: "  " }]],
  "not-bottled": [
    [at("pour"), { type: "pour-stock", count: 1, unit: "serves" }],
    [at("bottle"), { type: "end-stock", how: "spent", reason: "" }],
  ],
  "stock-ended": [
    [spent(), { type: "pour-stock", count: 1, unit: "serves" }],
    [spent(), { type: "end-stock", how: "discarded", reason: "" }],
  ],
  "pour-empty": [
    [at(), { type: "pour-stock", count: 0, unit: "ml" }],
    [at(), { type: "pour-stock", count: -3, unit: "serves" }],
  ],
  "undo-later-first": [[at("pour"), { type: "undo", act: at("pour").events[2]?.act ?? "" }]],
  "nothing-to-undo": [[at("pour"), { type: "undo", act: at("pour").events[0]?.act ?? "" }]],
  "order-does-not-fit": [
    [at("build"), finish("build#1", { answer: { of: "milk", ml: 1000 } })],
    [at("build"), { type: "pour-line", visit: "build#1", line: "none" }],
    [at("build"), { type: "add-note", text: "x".repeat(2001) }],
    [at("build"), { type: "abandon", reason: "x".repeat(2001) }],
    [at("build"), { type: "shift-clock", byMs: 0.5, keepElapsed: true }],
    [at("build"), { type: "note-sleep", fromMs: 0, forMs: -1 }],
    [at("build"), { type: "change-hands", initials: " " }],
    [at("build"), { type: "note-lot", ingredient: "milk-whole", lot: "" }],
    [at("check-clear"), finish("check-clear#1", { look: "right" })],
    [at("curdle"), { type: "move-due", visit: "curdle#1", dueAt: Number.NaN }],
    [at("curdle"), { type: "note-shape", visit: "curdle#1", shape: "cone" }],
    [
      at("bottle"),
      finish("bottle#1", {
        answer: { of: "bottled", bottles: [{ count: 1, size: 700 }], useBy: Number.NaN },
      }),
    ],
    [at(), { type: "note-taste", scores: { acid: 11 }, words: [], by: "AB" }],
    [at(), { type: "note-taste", scores: { acid: 5 }, words: [], by: "ABCDEFGHI" }],
    [at(), { type: "add-tag", tag: "x".repeat(41) }],
    [at(), { type: "remove-tag", tag: "never put on" }],
    [at(), { type: "remove-photo", photo: "none" }],
    [at(), { type: "settle-yield", ml: 4400 }],
    [at(), { type: "pour-stock", count: 1e9, unit: "serves" }],
    [new TestBench(), start({ batch: "" })],
    [new TestBench(), start({ batch: "x".repeat(41) })],
  ],
};

test.each(
  Object.entries(REFUSALS).flatMap(([refusal, cases]) =>
    cases.map(([bench, order]) => [refusal, order.type, bench, order] as const),
  ),
)("%s: %s is refused and changes nothing", (refusal, _, bench, order) => {
  const { events } = bench;
  expect(bench.order(order)).toBe(refusal);
  expect(bench.events).toBe(events);
});
