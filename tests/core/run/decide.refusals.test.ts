import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import type { Command, RunRefusal } from "../../../core/run/command.ts";
import { VESSELS } from "../../../core/run/event.ts";
import { TestBench } from "../../support/world/run-events.ts";
import { benchAt, finishOrder, startOrder } from "../../support/world/wash-bench.ts";

/** The same, with its vessels weighed empty: 800 g each. */
function weighing(step: string): TestBench {
  const bench = benchAt(step);
  for (const vessel of VESSELS) bench.order({ type: "note-tare", vessel, grams: 800 });
  return bench;
}

/** A finished batch of which nothing is left. */
function spent(): TestBench {
  const bench = benchAt();
  bench.order({ type: "end-stock", how: "spent", reason: "" });
  return bench;
}

/** Every refusal there is, each with orders that come to it. */
const REFUSALS: Readonly<Record<RunRefusal, readonly (readonly [TestBench, Command])[]>> = {
  "run-already-started": [
    [benchAt("build"), startOrder()],
    [benchAt(), startOrder()],
  ],
  "procedure-without-end": [
    [
      new TestBench(),
      startOrder({
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
    [new TestBench(), finishOrder("build#1")],
    [new TestBench(), { type: "add-note", text: "early" }],
    [new TestBench(), { type: "undo", act: "none" }],
  ],
  "run-ended": [
    [benchAt(), finishOrder("label#1")],
    [benchAt(), { type: "hear-alarm", visit: "curdle#1", dueAt: 0 }],
    [benchAt(), { type: "abandon", reason: "too late" }],
    [benchAt(), { type: "shift-clock", byMs: 1000, keepElapsed: true }],
    [benchAt(), { type: "log-reading", visit: "yield#1", what: "collected", value: 1, unit: "ml" }],
  ],
  "step-not-open": [
    [benchAt("milk"), finishOrder("build#1")],
    [benchAt("milk"), finishOrder("nowhere#1")],
    [benchAt("milk"), { type: "pour-line", visit: "build#1", line: "lemon" }],
    [benchAt("pour"), { type: "hear-alarm", visit: "curdle#1", dueAt: 0 }],
    [benchAt("pour"), { type: "hand-alarm", visit: "curdle#1", dueAt: 0, to: "vessel" }],
    [benchAt("pour"), { type: "move-due", visit: "curdle#1", dueAt: 0 }],
    [benchAt("pour"), { type: "note-look", visit: "check-clear#1", look: "hazy" }],
    [benchAt("pour"), { type: "note-shape", visit: "slow-drip#1", shape: "cone" }],
    [benchAt("pour"), { type: "log-weight", visit: "slow-drip#1", gross: 900 }],
    [
      benchAt("pour"),
      { type: "log-reading", visit: "drip#1", what: "collected", value: 1, unit: "ml" },
    ],
  ],
  "reading-missing": [
    [benchAt("milk"), finishOrder("milk#1")],
    [benchAt("yield"), finishOrder("yield#1", { answer: { of: "milk", ml: 1000 } })],
    [benchAt("bottle"), finishOrder("bottle#1", { answer: { of: "yield", ml: 1000 } })],
  ],
  "look-missing": [[benchAt("check-clear"), finishOrder("check-clear#1")]],
  "reading-not-a-number": [
    [benchAt("milk"), { type: "note-tare", vessel: "clear-run", grams: Number.NaN }],
    [benchAt("milk"), { type: "note-tare", vessel: "clear-run", grams: -1 }],
    [benchAt(), { type: "pour-stock", count: Number.NaN, unit: "ml" }],
    [weighing("slow-drip"), { type: "log-weight", visit: "slow-drip#1", gross: Number.NaN }],
    [benchAt("milk"), finishOrder("milk#1", { answer: { of: "milk", ml: Number.NaN } })],
    [
      benchAt("pour"),
      { type: "log-reading", visit: "pour#1", what: "temperature", value: -51, unit: "degC" },
    ],
    [
      benchAt("pour"),
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
    [benchAt("re-pour"), finishOrder("re-pour#1", { answer: { of: "cloudy-run", ml: 6000 } })],
    [
      benchAt("slow-drip"),
      { type: "log-reading", visit: "slow-drip#1", what: "collected", value: 44_000, unit: "ml" },
    ],
  ],
  "tare-missing": [
    [benchAt("re-pour"), finishOrder("re-pour#1", { answer: { of: "cloudy-run", gross: 700 } })],
    [benchAt("slow-drip"), { type: "log-weight", visit: "slow-drip#1", gross: 2000 }],
  ],
  "weight-below-tare": [
    [weighing("slow-drip"), { type: "log-weight", visit: "slow-drip#1", gross: 799 }],
    [weighing("yield"), finishOrder("yield#1", { answer: { of: "yield", gross: 0 } })],
  ],
  "no-bottles": [
    [
      benchAt("bottle"),
      finishOrder("bottle#1", { answer: { of: "bottled", bottles: [], useBy: 0 } }),
    ],
  ],
  "note-empty": [[benchAt("pour"), { type: "add-note", text: " \n " }]],
  "taste-empty": [[benchAt(), { type: "note-taste", scores: {}, words: [" "], by: "AB" }]],
  "taster-missing": [[benchAt(), { type: "note-taste", scores: { acid: 5 }, words: [], by: " " }]],
  "tag-empty": [[benchAt("pour"), { type: "add-tag", tag: "  " }]],
  "not-bottled": [
    [benchAt("pour"), { type: "pour-stock", count: 1, unit: "serves" }],
    [benchAt("bottle"), { type: "end-stock", how: "spent", reason: "" }],
  ],
  "stock-ended": [
    [spent(), { type: "pour-stock", count: 1, unit: "serves" }],
    [spent(), { type: "end-stock", how: "discarded", reason: "" }],
  ],
  "pour-empty": [
    [benchAt(), { type: "pour-stock", count: 0, unit: "ml" }],
    [benchAt(), { type: "pour-stock", count: -3, unit: "serves" }],
  ],
  "undo-later-first": [
    [benchAt("pour"), { type: "undo", act: benchAt("pour").events[2]?.act ?? "" }],
  ],
  "nothing-to-undo": [
    [benchAt("pour"), { type: "undo", act: benchAt("pour").events[0]?.act ?? "" }],
  ],
  "order-does-not-fit": [
    [benchAt("build"), finishOrder("build#1", { answer: { of: "milk", ml: 1000 } })],
    [benchAt("build"), { type: "pour-line", visit: "build#1", line: "none" }],
    [benchAt("build"), { type: "add-note", text: "x".repeat(2001) }],
    [benchAt("build"), { type: "abandon", reason: "x".repeat(2001) }],
    [benchAt("build"), { type: "shift-clock", byMs: 0.5, keepElapsed: true }],
    [benchAt("build"), { type: "note-sleep", fromMs: 0, forMs: -1 }],
    [benchAt("build"), { type: "change-hands", initials: " " }],
    [benchAt("build"), { type: "note-lot", ingredient: "milk-whole", lot: "" }],
    [benchAt("check-clear"), finishOrder("check-clear#1", { look: "right" })],
    [benchAt("curdle"), { type: "move-due", visit: "curdle#1", dueAt: Number.NaN }],
    [benchAt("curdle"), { type: "note-shape", visit: "curdle#1", shape: "cone" }],
    [
      benchAt("bottle"),
      finishOrder("bottle#1", {
        answer: { of: "bottled", bottles: [{ count: 1, size: 700 }], useBy: Number.NaN },
      }),
    ],
    [benchAt(), { type: "note-taste", scores: { acid: 11 }, words: [], by: "AB" }],
    [benchAt(), { type: "note-taste", scores: { acid: 5 }, words: [], by: "ABCDEFGHI" }],
    [benchAt(), { type: "add-tag", tag: "x".repeat(41) }],
    [benchAt(), { type: "remove-tag", tag: "never put on" }],
    [benchAt(), { type: "remove-photo", photo: "none" }],
    [benchAt(), { type: "settle-yield", ml: 4400 }],
    [benchAt(), { type: "pour-stock", count: 1e9, unit: "serves" }],
    [new TestBench(), startOrder({ batch: "" })],
    [new TestBench(), startOrder({ batch: "x".repeat(41) })],
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
