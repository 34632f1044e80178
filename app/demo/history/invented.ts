import { batchCode } from "../../../core/label/batch-code.ts";
import { volumeOf } from "../../../core/liquid/liquid.ts";
import { usualDrip } from "../../../core/method/drip/usual-drip.ts";
import { procedureFor } from "../../../core/method/procedures.ts";
import { DAY, HOUR, MINUTE } from "../../../core/quantity/time-units-table.ts";
import { actualFinal } from "../../../core/run/actual.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { topUpAdvice } from "../../../core/run/top-up-advice.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import { throughFilter } from "../../../core/spec/wash.ts";
import { DEMO_RUN } from "../../storage/demo.ts";
import { demoSpecs } from "../specs.ts";
import type { DemoHistoryWords, DemoWords } from "../written.ts";
import { DEMO_BATCHES, type DemoInfusion, type DemoWash } from "./batches.ts";
import { type Player, playerOf } from "./player.ts";

const BOTTLE = 750;
/** What came through a blinded cake: ml, and minutes since the reading before. */
const BLINDED = [
  [320, 45],
  [390, 90],
  [410, 150],
] as const;
/** A jug is read to so many ml. */
const read = (ml: number): number => 5 * Math.round(ml / 5);

/** The invented bar: what it makes and from what, and how it writes. */
interface Bar {
  readonly specs: readonly Spec[];
  readonly cupboard: ReadonlyMap<string, Ingredient>;
  readonly words: DemoHistoryWords;
}

function specOf({ specs }: Bar, id: string): Spec {
  const found = specs.find((spec) => spec.id === id);
  if (found === undefined) throw new RangeError(`no demo spec ${id}`);
  return found;
}

function planOf(bar: Bar, spec: Spec, size: BatchSize): Plan {
  const plan = planBatch(spec, bar.cupboard, size, NEW_HOUSE);
  if (!plan.ok) throw new RangeError(`no plan of ${spec.name}: ${plan.refusal}`);
  return plan.value;
}

/** As the app names a batch, by the day it was begun (UTC: its own clock is invented). */
function codeOf(name: string, at: number): string {
  const [, month = "", date = ""] = new Date(at).toISOString().slice(0, 10).split("-");
  return batchCode(name, `${date}${month}`, []);
}

function begin(runId: string, plan: Plan, at: number): Player {
  const { spec } = plan;
  const procedure = procedureFor(spec, []);
  if (procedure === undefined) throw new RangeError(`no procedure for ${spec.name}`);
  const player = playerOf(runId, at);
  const batch = codeOf(spec.name, at);
  player.order({ type: "start-run", batch, plan, procedure, appVersion: "demo" }, 0);
  return player;
}

const temperature = (visit: string, value: number) =>
  ({ type: "log-reading", visit, what: "temperature", value, unit: "degC" }) as const;
const collected = (visit: string, ml: number) =>
  ({ type: "log-reading", visit, what: "collected", value: read(ml), unit: "ml" }) as const;

function washSpec(bar: Bar, { specId, ratio, filters, order }: DemoWash): Spec {
  const spec = specOf(bar, specId);
  if (spec.wash === undefined) throw new RangeError(`${spec.name} is not washed`);
  return { ...spec, wash: { ...spec.wash, ratio, filters, order, filterShape: "straight" } };
}

/** Up to the first look at the drip: built, poured, rested, wetted, passed and poured back. */
function curdled(player: Player, demo: DemoWash, at: number): void {
  const { plan } = player.run();
  const dairy = plan.spec.wash?.dairyId ?? "";
  const useBy = at + demo.milk * DAY;
  player.order({ type: "note-lot", ingredient: dairy, lot: `L${demo.ago}`, useBy }, 3);
  player.finish(17);
  player.finish(2, { answer: { of: "milk", ml: read(plan.milk?.ml ?? 0) } });
  player.finish(demo.pour);
  player.order(temperature(player.visit(), demo.curdledAt), 2);
  player.finish(demo.rest - 2);
  player.finish(4);
  player.finish(1.5);
  for (const look of demo.looks) {
    player.finish(2, { answer: { of: "cloudy-run", ml: 350 } });
    player.finish(1.5, { look });
  }
}

/** The slow drip by the law of a cake with its head kept up: volume by the root of time. */
function drips(player: Player, demo: DemoWash, through: number): void {
  const minutes = (usualDrip(through, demo.filters) * demo.drip) / MINUTE;
  let before = 0;
  for (const share of [0.06, 0.25, 0.5, 0.8]) {
    player.order(collected(player.visit(), through * Math.sqrt(share)), minutes * (share - before));
    before = share;
  }
  player.order(temperature(player.visit(), demo.drippedAt), 1);
  player.finish(minutes * (1 - before));
}

/** What was tasted, judged and poured, as far as it is not in the future. */
function afterwards(player: Player, demo: DemoWash | DemoInfusion, words: readonly string[]): void {
  const { finish, verdict } = demo;
  const scores = demo.type === "wash" ? { clarity: demo.clarity, finish } : { finish };
  player.order({ type: "note-taste", scores, words, by: "DL" }, 20);
  const second = { ...scores, finish: Math.min(10, finish + 1) };
  player.order({ type: "note-taste", scores: second, words: words.slice(0, 1), by: "BB" }, 10);
  const repeat = verdict === "good" ? "yes" : verdict === "fair" ? "with-changes" : "no";
  player.order({ type: "give-verdict", verdict, repeat, text: "" }, 10);
}

function bottle(player: Player): void {
  const run = player.run();
  const { keepDays } = run.plan.spec;
  const count = Math.max(1, Math.floor(volumeOf(actualFinal(run)) / BOTTLE));
  const useBy = (run.visits.at(-1)?.startedAt ?? 0) + keepDays * DAY;
  const bottles = [{ count, size: BOTTLE }];
  player.finish(15, { answer: { of: "bottled", bottles, useBy } });
  player.finish(8);
}

function soldOut(player: Player, demo: DemoWash | DemoInfusion): void {
  const { keepDays } = player.run().plan.spec;
  if (demo.ago > keepDays) {
    player.order({ type: "end-stock", how: "spent", reason: "" }, (keepDays - 2) * 24 * 60);
  } else {
    player.order({ type: "pour-stock", count: 8, unit: "serves" }, 60 * 20);
  }
}

function playWash(bar: Bar, runId: string, demo: DemoWash, at: number): readonly RunEvent[] {
  const { words } = bar;
  const size = { by: "bottles", bottles: demo.bottles, size: BOTTLE } as const;
  const player = begin(runId, planOf(bar, washSpec(bar, demo), size), at);
  curdled(player, demo, at);
  const { mixed, milk, yield: expected } = player.run().plan;
  if (milk === undefined || expected === undefined) throw new RangeError(`${runId} is not washed`);
  if (demo.story === "failed") {
    player.finish(5, { look: "accept" });
    for (const [ml, minutes] of BLINDED) {
      player.order(collected(player.visit(), ml), minutes);
    }
    player.order(temperature(player.visit(), demo.drippedAt), 5);
    player.order({ type: "add-note", text: words.failedNote }, 2);
    player.order({ type: "abandon", reason: words.failed }, 3);
    player.order({ type: "give-verdict", verdict: "poor", repeat: "no", text: "" }, 10);
    player.order({ type: "add-tag", tag: words.failedTag }, 1);
    return player.events();
  }
  const punch = { punch: mixed, dairy: milk.dairy, milk: milk.ml };
  const keep = demo.filters * (expected.filterKeeps ?? NEW_HOUSE.perFilter);
  const through = throughFilter(punch, demo.kept, keep);
  drips(player, demo, through);
  player.finish(6, { answer: { of: "yield", ml: read(through) } });
  player.finish(4, { answer: { of: "top-up", ml: read(topUpAdvice(player.run()).advised) } });
  bottle(player);
  const best = demo.story === "best";
  afterwards(player, demo, best ? words.best : (words.usual[demo.ago % 3] ?? []));
  if (best) {
    player.order({ type: "add-tag", tag: words.bestTag }, 1);
    player.order({ type: "add-note", text: words.bestNote }, 1);
  }
  soldOut(player, demo);
  return player.events();
}

function playInfusion(
  bar: Bar,
  runId: string,
  demo: DemoInfusion,
  at: number,
): readonly RunEvent[] {
  const size = { by: "volume", volume: demo.volume } as const;
  const player = begin(runId, planOf(bar, specOf(bar, demo.specId), size), at);
  player.finish(10);
  player.order({ type: "note-look", visit: player.visit(), look: "not-yet" }, 12 * 60);
  player.finish((demo.hours - 12) * 60, { look: "right" });
  player.finish(15);
  player.finish(40);
  player.finish(5, { answer: { of: "yield", ml: demo.through } });
  bottle(player);
  afterwards(player, demo, bar.words.barley);
  soldOut(player, demo);
  return player.events();
}

/** A day's work begins at ten, by an invented clock. */
const OPENS = 10 * HOUR;

/**
 * The invented batches of the last six months, as the logs they would have left.
 *
 * @param now - epoch ms; the same day gives the same logs
 * @param words - what the bar wrote; in every language it is as many events under the same ids
 * @param cupboard - what its ingredients are called
 * @returns one log a batch, the oldest first; every moment in them is past
 */
export function inventedHistory(
  now: number,
  words: DemoWords,
  cupboard: Bar["cupboard"],
): readonly (readonly RunEvent[])[] {
  const bar = { specs: demoSpecs(words), cupboard, words: words.history };
  const today = Math.floor(now / DAY) * DAY;
  return DEMO_BATCHES.map((demo, at) => {
    const runId = `${DEMO_RUN}${String(at + 1).padStart(2, "0")}`;
    const startsAt = today - demo.ago * DAY + OPENS;
    return demo.type === "wash"
      ? playWash(bar, runId, demo, startsAt)
      : playInfusion(bar, runId, demo, startsAt);
  });
}
