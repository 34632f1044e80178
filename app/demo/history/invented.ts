import { volumeOf } from "../../../core/liquid/liquid.ts";
import { usualDrip } from "../../../core/method/drip/usual-drip.ts";
import { procedureFor } from "../../../core/method/procedures.ts";
import { actualFinal } from "../../../core/run/actual.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { topUpAdvice } from "../../../core/run/top-up-advice.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec } from "../../../core/spec/spec.ts";
import { throughFilter } from "../../../core/spec/wash.ts";
import { DEMO_RUN } from "../../storage/demo.ts";
import { DEMO_SPECS } from "../specs.ts";
import { DEMO_BATCHES, type DemoInfusion, type DemoWash } from "./batches.ts";
import { type Player, playerOf } from "./player.ts";
import { demoWords } from "./words.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
const BOTTLE = 750;
/** A jug is read to so many ml. */
const read = (ml: number): number => 5 * Math.round(ml / 5);

function specOf(id: string): Spec {
  const found = DEMO_SPECS.find((spec) => spec.id === id);
  if (found === undefined) throw new RangeError(`no demo spec ${id}`);
  return found;
}

function planOf(spec: Spec, size: BatchSize): Plan {
  const cupboard = new Map(CUPBOARD.map((one) => [one.id, one]));
  const plan = planBatch(spec, cupboard, size, NEW_HOUSE);
  if (!plan.ok) throw new RangeError(`no plan of ${spec.name}: ${plan.refusal}`);
  return plan.value;
}

/** "PB-2511": as the app names a batch, by the day it was begun (UTC: its own clock is invented). */
function codeOf(name: string, at: number): string {
  const initials = name.split(/[ -]/u).map((word) => word.charAt(0).toUpperCase());
  const [, month = "", date = ""] = new Date(at).toISOString().slice(0, 10).split("-");
  return `${initials.slice(0, 3).join("")}-${date}${month}`;
}

function begin(runId: string, spec: Spec, size: BatchSize, at: number): Player {
  const plan = planOf(spec, size);
  const procedure = procedureFor(spec, []);
  if (procedure === undefined) throw new RangeError(`no procedure for ${spec.name}`);
  const player = playerOf(runId, at);
  const batch = codeOf(spec.name, at);
  player.then({ type: "start-run", batch, plan, procedure, appVersion: "demo" }, 0);
  return player;
}

const temperature = (visit: string, value: number) =>
  ({ type: "log-reading", visit, what: "temperature", value, unit: "degC" }) as const;
const collected = (visit: string, ml: number) =>
  ({ type: "log-reading", visit, what: "collected", value: read(ml), unit: "ml" }) as const;

function washSpec({ specId, ratio, filters, order }: DemoWash): Spec {
  const spec = specOf(specId);
  if (spec.wash === undefined) throw new RangeError(`${spec.name} is not washed`);
  return { ...spec, wash: { ...spec.wash, ratio, filters, order, filterShape: "straight" } };
}

/** Up to the first look at the drip: built, poured, rested, wetted, passed and poured back. */
function curdled(player: Player, demo: DemoWash, at: number): void {
  const { plan } = player.run();
  const dairy = plan.spec.wash?.dairyId ?? "";
  const useBy = at + demo.milk * DAY;
  player.then({ type: "note-lot", ingredient: dairy, lot: `L${demo.ago}`, useBy }, 3);
  player.finish(17);
  player.finish(2, { answer: { of: "milk", ml: read(plan.milk?.ml ?? 0) } });
  player.finish(demo.pour);
  player.then(temperature(player.visit(), demo.curdledAt), 2);
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
    player.then(collected(player.visit(), through * Math.sqrt(share)), minutes * (share - before));
    before = share;
  }
  player.then(temperature(player.visit(), demo.drippedAt), 1);
  player.finish(minutes * (1 - before));
}

/** What was tasted, judged and poured, as far as it is not in the future. */
function afterwards(player: Player, demo: DemoWash | DemoInfusion, words: readonly string[]): void {
  const { finish, verdict } = demo;
  const scores = demo.type === "wash" ? { clarity: demo.clarity, finish } : { finish };
  player.then({ type: "note-taste", scores, words, by: "DL" }, 20);
  const second = { ...scores, finish: Math.min(10, finish + 1) };
  player.then({ type: "note-taste", scores: second, words: words.slice(0, 1), by: "BB" }, 10);
  const repeat = verdict === "good" ? "yes" : verdict === "fair" ? "with-changes" : "no";
  player.then({ type: "give-verdict", verdict, repeat, text: "" }, 10);
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
    player.then({ type: "end-stock", how: "spent", reason: "" }, (keepDays - 2) * 24 * 60);
  } else {
    player.then({ type: "pour-stock", count: 8, unit: "serves" }, 60 * 20);
  }
}

function playWash(runId: string, demo: DemoWash, at: number): readonly RunEvent[] {
  const spec = washSpec(demo);
  const player = begin(runId, spec, { by: "bottles", bottles: demo.bottles, size: BOTTLE }, at);
  curdled(player, demo, at);
  const { mixed, milk, yield: expected } = player.run().plan;
  if (milk === undefined || expected === undefined) throw new RangeError(`${runId} is not washed`);
  if (demo.story === "failed") {
    player.finish(5, { look: "accept" });
    for (const [ml, minutes] of demoWords.blinded) {
      player.then(collected(player.visit(), ml), minutes);
    }
    player.then(temperature(player.visit(), demo.drippedAt), 5);
    player.then({ type: "add-note", text: demoWords.failedNote }, 2);
    player.then({ type: "abandon", reason: demoWords.failed }, 3);
    player.then({ type: "give-verdict", verdict: "poor", repeat: "no", text: "" }, 10);
    player.then({ type: "add-tag", tag: demoWords.failedTag }, 1);
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
  afterwards(player, demo, best ? demoWords.best : (demoWords.usual[demo.ago % 3] ?? []));
  if (best) {
    player.then({ type: "add-tag", tag: demoWords.bestTag }, 1);
    player.then({ type: "add-note", text: demoWords.bestNote }, 1);
  }
  soldOut(player, demo);
  return player.events();
}

function playInfusion(runId: string, demo: DemoInfusion, at: number): readonly RunEvent[] {
  const player = begin(runId, specOf(demo.specId), { by: "volume", volume: demo.volume }, at);
  player.finish(10);
  player.then({ type: "note-look", visit: player.visit(), look: "not-yet" }, 12 * 60);
  player.finish((demo.hours - 12) * 60, { look: "right" });
  player.finish(15);
  player.finish(40);
  player.finish(5, { answer: { of: "yield", ml: demo.through } });
  bottle(player);
  afterwards(player, demo, demoWords.barley);
  soldOut(player, demo);
  return player.events();
}

/** A day's work begins at ten, by an invented clock. */
const OPENS = 10 * HOUR;

/**
 * The invented batches of the last six months, as the logs they would have left.
 *
 * @param now - epoch ms; the same day gives the same logs
 * @returns one log a batch, the oldest first; every moment in them is past
 */
export function inventedHistory(now: number): readonly (readonly RunEvent[])[] {
  const today = Math.floor(now / DAY) * DAY;
  return DEMO_BATCHES.map((demo, at) => {
    const runId = `${DEMO_RUN}${String(at + 1).padStart(2, "0")}`;
    const startsAt = today - demo.ago * DAY + OPENS;
    return demo.type === "wash"
      ? playWash(runId, demo, startsAt)
      : playInfusion(runId, demo, startsAt);
  });
}
