// How long the core takes, and how long a general spreadsheet takes over the same plan: npm run bench
import { HyperFormula } from "hyperformula";
import { willCurdle } from "../../core/acid/curdle.ts";
import { dairyOf } from "../../core/acid/milk.ts";
import { mixPh } from "../../core/acid/mix-ph.ts";
import type { Job } from "../../core/board/schedule/job.ts";
import { scheduleJobs } from "../../core/board/schedule/plan-day.ts";
import { workForQuiet } from "../../core/board/schedule/quiet.ts";
import { replanDay } from "../../core/board/schedule/replan-day.ts";
import { acidPerLitre, strengthOf, sugarPerLitre } from "../../core/liquid/liquid.ts";
import { dripOutlook } from "../../core/run/drip-outlook.ts";
import type { RunEvent } from "../../core/run/event.ts";
import { foldRun } from "../../core/run/fold.ts";
import type { Run } from "../../core/run/run.ts";
import { stampDrafts } from "../../core/run/stamp.ts";
import { writtenAmounts } from "../../core/spec/batch-amounts.ts";
import { scaleFor } from "../../core/spec/batch-size.ts";
import { CUPBOARD } from "../../core/spec/cupboard-table.ts";
import { NEW_HOUSE } from "../../core/spec/house-rules.ts";
import type { Plan } from "../../core/spec/plan.ts";
import { planBatch } from "../../core/spec/plan-batch.ts";
import { stagesOf } from "../../core/spec/stages.ts";
import { lineOf, must, PUNCH } from "../support/world/punch-spec.ts";
import { TestBench } from "../support/world/run-events.ts";
import { finishOpenStep } from "../support/world/wash-walk.ts";
import { carriedOut, MONDAY, ROOM, WEEK } from "./busy-week.ts";
import { planSheet } from "./plan-sheet.ts";

/** Warm-up first, then the median of so many runs, ms. */
function median(work: () => unknown, runs = 201, warm = 60): number {
  for (let turn = 0; turn < warm; turn += 1) work();
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  times.sort((a, b) => a - b);
  return times[Math.floor(runs / 2)] ?? Number.NaN;
}

const say = (what: string, ms: number, more = ""): void =>
  console.log(`${what.padEnd(58)} ${ms.toFixed(3).padStart(9)} ms${more}`);

const cupboard = new Map(CUPBOARD.map((one) => [one.id, one]));
const WRITTEN: readonly (readonly [id: string, amount: number, held: number])[] = [
  ["gin-43", 20, 0.3],
  ["aged-rum-40", 15, 0.3],
  ["pot-still-rum-57", 10, 0],
  ["brandy-40", 10, 0],
  ["orange-liqueur-40", 8, 0],
  ["allspice-liqueur-22", 4, 0],
  ["dry-vermouth-18", 12, 0],
  ["lemon-juice", 18, 0],
  ["orange-juice", 12, 0],
  ["pineapple-juice", 15, 0],
  ["syrup-1-1", 10, 0],
  ["ginger-syrup-2-1", 8, 0],
  ["oolong-tea", 30, 0],
  ["aromatic-bitters-44", 1, 0],
  ["citric-acid", 0.4, 0],
];
const unitOf = (id: string) => (cupboard.get(id)?.kind === "dry" ? "g" : "ml");
const lines = WRITTEN.map(([id, amount, held]) => lineOf(id, amount, unitOf(id), held));
const spec = { ...PUNCH, lines };
const TARGET = 4200;
const size = { by: "volume", volume: TARGET } as const;
const planIt = (): Plan => must(planBatch(spec, cupboard, size, NEW_HOUSE));
const plan = planIt();

const planMs = median(planIt);
say("plan of a washed batch, 15 ingredients", planMs);
const toStrength = { ...spec, topUp: { rule: "strength", target: 0.17 } as const };
say(
  "the same, topped up to a target strength",
  median(() => must(planBatch(toStrength, cupboard, size, NEW_HOUSE))),
);
const written = must(writtenAmounts(spec, cupboard, NEW_HOUSE.ounce));
say(
  "scale solve alone",
  median(() => must(scaleFor(spec, written, size, NEW_HOUSE))),
);
say(
  "balance of its stages, strengths with their ranges",
  median(() => stagesOf(plan)),
);

const sour = { volume: 4000, acids: { citric: 40, malic: 4 }, cation: 0.03, strength: 0.2 };
say(
  "pH of punch and milk",
  median(() => mixPh({ punch: sour, dairy: "whole", dairyVolume: 1000 })),
);
const flat = { volume: 4000, acids: { citric: 4 }, cation: 0.002, strength: 0.1 };
const juice = { acids: { citric: 0.048, malic: 0.002 }, cation: 0.000034, strength: 0 };
const base = { acids: {}, cation: 0, strength: 0.4 };
const question = { punch: flat, dairy: "whole", dairyVolume: 1000, juice, base } as const;
const curdling = willCurdle(question);
say(
  "will it curdle, with what would change that",
  median(() => willCurdle(question), 41, 10),
  ` (${curdling.verdict}, ${Object.keys(curdling.fixes).length} ways out)`,
);

/** A run's log with notes to make it long. */
function longLog(count: number): readonly RunEvent[] {
  const bench = new TestBench();
  bench.start(plan);
  const start = bench.events;
  let ids = 0;
  const notes = stampDrafts(
    Array.from({ length: count - start.length }, (_, at) => ({
      type: "note.added" as const,
      text: `drip ${at}`,
    })),
    {
      runId: bench.runId,
      device: "phone-b",
      act: "notes",
      now: bench.now + 1,
      last: start.at(-1)?.hlc ?? { ms: 0, n: 0 },
      notBefore: bench.now,
      newId: () => `note-${ids++}`,
    },
  );
  return [...start, ...notes];
}
const log = longLog(2000);
say(
  `fold of a run of ${log.length} events, most of them notes`,
  median(() => foldRun(log), 21, 5),
);

/** A run at its slow drip, four readings in. */
function dripping(): Run {
  const bench = new TestBench();
  bench.start(plan);
  for (let turn = 0; turn < 20 && bench.run?.visits.at(-1)?.step !== "slow-drip"; turn += 1) {
    const order = bench.run && finishOpenStep(bench.run);
    if (order !== undefined) bench.order(order);
  }
  for (const value of [700, 1300, 1900, 2400]) {
    bench.now += 45 * 60_000;
    const reading = { visit: "slow-drip#1", what: "collected", value, unit: "ml" } as const;
    bench.order({ type: "log-reading", ...reading });
  }
  if (bench.run === undefined) throw new RangeError("a run was started");
  return bench.run;
}
const drip = dripping();
const readAt = drip.readings.at(-1)?.at ?? 0;
let reads = 0;
say(
  "outlook of a drip with five readings, its curve with it",
  // Another fifth reading each time: the same one would not be worked out again.
  median(() => dripOutlook(drip, [{ at: readAt + 60_000 * ++reads, ml: 2700 }]), 51, 10),
);

const week = scheduleJobs(WEEK, ROOM, MONDAY);
if (!week.ok) throw new RangeError(`the busy week must plan, it lacks ${week.breaks}`);
const steps = WEEK.flatMap((job) => job.steps).length;
const HOUR = 3_600_000;
say(
  `schedule of ${WEEK.length} batches, ${steps} steps, 5 days`,
  median(() => scheduleJobs(WEEK, ROOM, MONDAY), 15, 5),
);
const before = { placed: week.placed };
const replan = (hours: number, jobs: readonly Job[]) =>
  replanDay({ before, jobs, limits: ROOM, now: MONDAY + hours * HOUR });
for (const hours of [40, 54]) {
  const jobs = carriedOut(week, MONDAY + hours * HOUR, 2 * HOUR);
  const { plan: found, moved } = replan(hours, jobs);
  const end = found.ok ? "all still on time" : `no longer fits: ${found.breaks}`;
  say(
    "replanned after one drip two hours slow",
    median(() => replan(hours, jobs), 15, 5),
    ` (${end}; ${moved.length} steps moved)`,
  );
}
const soon = WEEK.map((job, i) => (i < 4 ? { ...job, readyBy: MONDAY + 3 * HOUR } : job));
say(
  "a week that cannot be: four batches promised in 3 hours",
  median(() => scheduleJobs(soon, ROOM, MONDAY), 15, 5),
);
const small = { ...ROOM, capacity: { ...ROOM.capacity, fridge: 6.5 } };
say(
  "a week that cannot be: a fridge smaller than a batch",
  median(() => scheduleJobs(WEEK, small, MONDAY), 9, 3),
);
say(
  "what could be done in the next quiet stretch",
  median(() => workForQuiet(week, WEEK, ROOM, MONDAY), 15, 5),
);

const dairy = dairyOf("whole");
const milk = { water: dairy.water / 1000, solids: (dairy.lactose + dairy.otherSolids) / 1000 };
const rows = WRITTEN.flatMap(([id, ml, held]) => {
  const ingredient = cupboard.get(id);
  return ingredient === undefined ? [] : [{ ingredient, ml, held }];
});
const sheet = planSheet(spec, rows, milk, TARGET, NEW_HOUSE);
const build = () => HyperFormula.buildFromArray(sheet.cells, { licenseKey: "gpl-v3" });
const engine = build();
const cell = (row: number): number => {
  const value = engine.getCellValue({ sheet: 0, col: 1, row: row - 1 });
  if (typeof value !== "number")
    throw new RangeError(`row ${row} must hold a number, got ${value}`);
  return value;
};

/** Largest disagreement of the two plans, as a share. */
const off = Math.max(
  ...[
    [cell(sheet.rows.finalMl), plan.finalMl],
    [cell(sheet.rows.scale), plan.scale],
    [cell(sheet.rows.strength), strengthOf(plan.final)],
    [cell(sheet.rows.sugar), sugarPerLitre(plan.final)],
    [cell(sheet.rows.acid), acidPerLitre(plan.final)],
  ].map(([theirs = 0, ours = 1]) => Math.abs(theirs / ours - 1)),
);
const count = sheet.cells.flat().filter((one) => typeof one === "string" && one.startsWith("="));
console.log(
  `\nthe same plan as a sheet of ${count.length} formulas, agreeing within ${off.toExponential(1)}:`,
);
if (!(off < 1e-4)) throw new RangeError(`the sheet must compute the same plan, got off by ${off}`);

let turn = 0;
const set = (row: number, column: number, value: number) =>
  engine.setCellContents({ sheet: 0, col: column, row: row - 1 }, value);
const times = (ms: number) => ` = ${(ms / planMs).toFixed(1)} x our plan`;
const buildMs = median(() => build().destroy(), 21, 5);
say("spreadsheet engine: build", buildMs, times(buildMs));
const sizeMs = median(() => set(sheet.rows.target, 1, TARGET + (turn++ % 2)), 101, 20);
say("spreadsheet engine: recalculate for another size", sizeMs, times(sizeMs));
const amountMs = median(() => set(2, 1, 20 + (turn++ % 2)), 101, 20);
say("spreadsheet engine: recalculate for another amount", amountMs, times(amountMs));
const allMs = median(
  () => {
    turn += 1;
    engine.batch(() => {
      for (const at of WRITTEN.keys()) set(2 + at, 2, 0.01 + (turn % 2) * 0.001);
    });
  },
  41,
  10,
);
say("spreadsheet engine: recalculate for other strengths", allMs, times(allMs));

console.log("");
await import("./learning.ts");
// How fast the built app is: last, for it takes a browser and some minutes.
await import("./speed/speed.ts");
