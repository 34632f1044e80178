import { expect, test } from "vitest";
import { collectedIn, dripOutlook } from "../../../core/run/drip-outlook.ts";
import { readingDrafts } from "../../../core/run/log-reading.ts";
import { openVisit } from "../../../core/run/run.ts";
import { collectedSoFar } from "../../../core/run/wash-progress.ts";
import { clearDensity } from "../../../core/run/weigh.ts";
import { planOf, runOf, TestBench } from "../../support/world/run-events.ts";
import { finishOpenStep } from "../../support/world/wash-walk.ts";

const MINUTE = 60_000;
const visit = "slow-drip#1";

function at(step: string): TestBench {
  const bench = new TestBench();
  bench.start(planOf());
  while (openVisit(runOf(bench))?.step !== step) {
    const order = finishOpenStep(runOf(bench));
    if (order !== undefined) bench.order(order);
  }
  bench.order({ type: "note-tare", vessel: "clear-run", grams: 800 });
  return bench;
}

test("what is weighed is logged as the ml it means, beside what the scale showed", () => {
  const bench = at("slow-drip");
  const run = runOf(bench);
  const gross = 800 + 900 * clearDensity(run);
  const drafts = readingDrafts(run, { type: "log-weight", visit, gross }, bench.now + MINUTE);
  if (!drafts.ok) throw new RangeError(drafts.refusal);
  const [logged, moved] = drafts.value;
  expect(logged).toMatchObject({
    type: "reading.logged",
    visit,
    what: "collected",
    unit: "ml",
    weighed: { gross, tare: 800 },
  });
  expect(logged?.type === "reading.logged" && logged.value).toBeCloseTo(900, 6);
  expect(moved).toMatchObject({ type: "due.moved", visit });
});

test("by weight or by volume, the glass, the forecast and the next call are the same", () => {
  const [byVolume, byWeight] = [at("slow-drip"), at("slow-drip")];
  for (const [minutes, ml] of [
    [30, 900],
    [60, 1900],
  ] as const) {
    byVolume.now += minutes * MINUTE;
    byWeight.now += minutes * MINUTE;
    const gross = 800 + ml * clearDensity(runOf(byWeight));
    byVolume.order({ type: "log-reading", visit, what: "collected", value: ml, unit: "ml" });
    byWeight.order({ type: "log-weight", visit, gross });
  }
  expect(collectedSoFar(runOf(byWeight))).toBeCloseTo(1900, 6);
  const [a, b] = [dripOutlook(runOf(byVolume)), dripOutlook(runOf(byWeight))];
  if (a?.type !== "forecast" || b?.type !== "forecast") throw new RangeError("two readings do");
  expect(b.throughAt.p50 / a.throughAt.p50).toBeCloseTo(1, 6);
  const due = (bench: TestBench) => openVisit(runOf(bench))?.dueAt ?? 0;
  expect(Math.abs(due(byWeight) - due(byVolume))).toBeLessThan(1000);
});

test("taken back, a weighed reading is gone, and its tare stays", () => {
  const bench = at("slow-drip");
  bench.order({ type: "log-weight", visit, gross: 1500 });
  const drip = runOf(bench).visits.at(-1);
  if (drip === undefined) throw new RangeError("the drip goes on");
  expect(collectedIn(runOf(bench), drip).length).toBe(1);
  bench.order({ type: "undo", act: bench.lastAct });
  expect(collectedIn(runOf(bench), drip)).toEqual([]);
  expect(runOf(bench).tares.length).toBe(1);
});

test("a reading elsewhere moves nothing; one that cannot be is refused", () => {
  const bench = at("pour");
  const warm = { visit: "pour#1", what: "temperature", value: 21, unit: "degC" } as const;
  const drafts = readingDrafts(runOf(bench), { type: "log-reading", ...warm }, bench.now);
  expect(drafts).toEqual({ ok: true, value: [{ type: "reading.logged", ...warm }] });
  const cold = { type: "log-reading", ...warm, value: -51 } as const;
  expect(readingDrafts(runOf(bench), cold, bench.now)).toMatchObject({
    refusal: "reading-not-a-number",
  });
  // What the step's own answer may not be (40 below to 200, 95 Brix), a reading beside it may not be.
  for (const [what, unit, value] of [
    ["temperature", "degC", 200.5],
    ["temperature", "degC", -40.5],
    ["brix", "brix", 95.5],
    ["brix", "brix", -1],
  ] as const) {
    const wrong = { type: "log-reading", visit: "pour#1", what, unit, value } as const;
    expect(readingDrafts(runOf(bench), wrong, bench.now)).toMatchObject({
      refusal: "reading-not-a-number",
    });
  }
  const much = { type: "log-weight", visit, gross: 50_000 } as const;
  expect(readingDrafts(runOf(at("slow-drip")), much, 0)).toMatchObject({
    refusal: "reading-above-poured",
  });
});
