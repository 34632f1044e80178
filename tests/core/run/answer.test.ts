import { expect, test } from "vitest";
import { type Answer, answerDraft, refusedVolume } from "../../../core/run/answer.ts";
import { openVisit } from "../../../core/run/run.ts";
import { topUpAdvice } from "../../../core/run/top-up-advice.ts";
import { mostInVessel } from "../../../core/run/wash-progress.ts";
import { clearDensity } from "../../../core/run/weigh.ts";
import { planOf, TestBench } from "../../support/world/run-events.ts";

function standing() {
  const bench = new TestBench();
  bench.start(planOf());
  const { run } = bench;
  const visit = run && openVisit(run);
  if (run === undefined || visit === undefined) throw new RangeError("a run stands at its start");
  return { run, visit };
}

const { run, visit } = standing();
const USE_BY = 2_000_000_000_000;
const { advised, planned } = topUpAdvice(run);
const at = { visit: "build#1" };

test.each<[Answer, object]>([
  [
    { of: "milk", ml: 1000 },
    { type: "reading.logged", ...at, what: "milk", value: 1000, unit: "ml" },
  ],
  [
    { of: "cloudy-run", ml: 0 },
    { type: "run.repoured", ...at, ml: 0 },
  ],
  [
    { of: "yield", ml: 4400.5 },
    { type: "yield.logged", ...at, ml: 4400.5 },
  ],
  [
    { of: "top-up", ml: 400 },
    { type: "topup.poured", ...at, ml: 400, advised, planned },
  ],
  [
    { of: "bottled", bottles: [{ count: 7, size: 700 }], useBy: USE_BY },
    { type: "run.bottled", ...at, bottles: [{ count: 7, size: 700 }], useBy: USE_BY },
  ],
])("an answer is kept as one event: %j", (answer, draft) => {
  expect(answerDraft(run, visit, answer)).toEqual({ ok: true, value: draft });
});

test("an answer off a scale is kept as the ml it means, beside what the scale showed", () => {
  const weighing = new TestBench();
  weighing.start(planOf());
  weighing.order({ type: "note-tare", vessel: "cloudy-run", grams: 400 });
  const weighed = weighing.run;
  if (weighed === undefined) throw new RangeError("a run stands at its start");
  const draft = answerDraft(weighed, visit, { of: "cloudy-run", gross: 700 });
  const ml = 300 / clearDensity(weighed);
  expect(draft).toEqual({
    ok: true,
    value: { type: "run.repoured", ...at, ml, weighed: { gross: 700, tare: 400 } },
  });
  expect(answerDraft(weighed, visit, { of: "yield", gross: 700 })).toMatchObject({
    refusal: "tare-missing",
  });
  expect(answerDraft(weighed, visit, { of: "cloudy-run", gross: 90_000 })).toMatchObject({
    refusal: "reading-above-poured",
  });
});

test.each([Number.NaN, -0.1, Number.POSITIVE_INFINITY])("%s ml is no figure", (ml) => {
  for (const of of ["milk", "cloudy-run", "yield", "top-up"] as const) {
    expect(answerDraft(run, visit, { of, ml })).toMatchObject({ refusal: "reading-not-a-number" });
  }
});

test.each(["cloudy-run", "yield", "collected"])(
  "%s: not more than went in, but for the jug",
  (what) => {
    const most = mostInVessel(run) * 1.05;
    expect(refusedVolume(run, what, most)).toBeUndefined();
    const over = { ok: false, refusal: "reading-above-poured", about: { ml: most * 1.001, most } };
    expect(refusedVolume(run, what, most * 1.001)).toEqual(over);
  },
);

// A refractometer's scale: 0 to 95 °Bx.
test.each([
  [0, true],
  [66.7, true],
  [95, true],
  [95.1, false],
  [-0.1, false],
  [Number.NaN, false],
])("%s °Bx: %s", (brix, ok) => {
  expect(answerDraft(run, visit, { of: "brix", brix }).ok).toBe(ok);
});

// A chest freezer stands at -18 degrees C, fat is clarified below 130, sugar boils to hard crack at 155:
// from memory; a thermometer off its scale is a slip of a digit.
test.each([
  [-18, true],
  [-40, true],
  [-40.1, false],
  [4.5, true],
  [200, true],
  [200.1, false],
  [Number.NaN, false],
])("%s °C: %s", (degC, ok) => {
  const draft = answerDraft(run, visit, { of: "temperature", degC });
  const kept = { type: "reading.logged", what: "temperature", value: degC, unit: "degC" };
  expect(draft).toMatchObject(ok ? { value: kept } : { refusal: "reading-not-a-number" });
});

test("what was collected by now answers a step that asks for it, up to what the vessel can hold", () => {
  expect(answerDraft(run, visit, { of: "collected", ml: 900 })).toMatchObject({
    value: { type: "reading.logged", what: "collected", value: 900, unit: "ml" },
  });
  expect(answerDraft(run, visit, { of: "collected", ml: 44_000 })).toMatchObject({
    refusal: "reading-above-poured",
  });
});

test("a slip of a digit in the yield is caught: 44000 for 4400", () => {
  expect(answerDraft(run, visit, { of: "yield", ml: 44_000 })).toMatchObject({
    refusal: "reading-above-poured",
  });
});

test.each(["milk", "top-up"] as const)("%s comes from outside the vessel", (of) => {
  expect(answerDraft(run, visit, { of, ml: 50_000 }).ok).toBe(true);
  expect(answerDraft(run, visit, { of, ml: 1_000_001 })).toMatchObject({
    refusal: "reading-above-poured",
    about: { most: 1_000_000 },
  });
});

test.each([
  [[]],
  [[{ count: 0, size: 700 }]],
  [[{ count: 1.5, size: 700 }]],
  [[{ count: Number.NaN, size: 700 }]],
  [[{ count: 7, size: 0 }]],
  [
    [
      { count: 7, size: 700 },
      { count: -1, size: 700 },
    ],
  ],
])("bottles that cannot be filled: %j", (bottles) => {
  expect(answerDraft(run, visit, { of: "bottled", bottles, useBy: USE_BY })).toMatchObject({
    refusal: "no-bottles",
  });
});
