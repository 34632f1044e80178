import { accepted, type Refused, type Result, refused } from "../quantity/result.ts";
import type { Draft, StockEnd, StockUnit } from "./event.ts";
import { photosOf, tagsOf } from "./keepsakes.ts";
import { bottledOf, type Run } from "./run.ts";
import type { Repeat, Scores, Verdict } from "./taste.ts";
import { differingYields } from "./yield-conflict.ts";

/** An order about what came of a batch: carried out also after its work has ended. */
export type AfterOrder =
  | {
      readonly type: "note-taste";
      readonly scores: Scores;
      readonly words: readonly string[];
      /** Initials of whoever tasted. */
      readonly by: string;
    }
  | {
      readonly type: "give-verdict";
      readonly verdict: Verdict;
      readonly repeat: Repeat;
      readonly text: string;
    }
  | { readonly type: "add-tag" | "remove-tag"; readonly tag: string }
  | {
      readonly type: "add-photo";
      readonly photo: string;
      readonly media: string;
      readonly bytes: number;
      readonly width: number;
      readonly height: number;
    }
  | { readonly type: "remove-photo"; readonly photo: string }
  /** Out of the bottles, counted as the bar counts. */
  | { readonly type: "pour-stock"; readonly count: number; readonly unit: StockUnit }
  | { readonly type: "end-stock"; readonly how: StockEnd; readonly reason: string }
  /** Of several measured yields, this one counts, ml. */
  | { readonly type: "settle-yield"; readonly ml: number };

/** Why such an order is not carried out. */
export type AfterRefusal =
  | "taste-empty"
  | "taster-missing"
  | "tag-empty"
  | "not-bottled"
  | "stock-ended"
  | "pour-empty"
  | "reading-not-a-number"
  | "order-does-not-fit";

type Decision = Result<readonly Draft[], AfterRefusal>;

/** An order that speaks of what this run does not have, or that could not be read back. */
export const misfit = (order: { readonly type: string }): Refused<"order-does-not-fit"> =>
  refused("order-does-not-fit", { order: order.type });

/** Initials as they are kept: "ab " and "AB" are one person. */
export const asInitials = (typed: string): string => typed.trim().toUpperCase();

/** A tag as it is kept: no double spaces. */
export const asTag = (typed: string): string => typed.trim().replace(/\s+/gu, " ");

function noteTaste(order: Extract<AfterOrder, { type: "note-taste" }>): Decision {
  const by = asInitials(order.by);
  const words = [...new Set(order.words.map(asTag))].filter((word) => word !== "");
  const scored = Object.values(order.scores).some((score) => score !== undefined);
  if (!scored && words.length === 0) return refused("taste-empty");
  if (by === "") return refused("taster-missing");
  return accepted([{ type: "taste.noted", scores: order.scores, words, by }]);
}

function tagged(run: Run, order: Extract<AfterOrder, { tag: string }>): Decision {
  const tag = asTag(order.tag);
  if (tag === "") return refused("tag-empty");
  const known = tagsOf(run).find((one) => one.toLowerCase() === tag.toLowerCase());
  // Said twice, also in other letters, it is the one that stands.
  if (order.type === "add-tag") {
    return accepted([{ type: "tag.added", tag: known ?? tag }]);
  }
  return known === undefined ? misfit(order) : accepted([{ type: "tag.removed", tag: known }]);
}

function pourStock(run: Run, order: Extract<AfterOrder, { type: "pour-stock" }>): Decision {
  const bottled = bottledOf(run);
  if (bottled === undefined) return refused("not-bottled");
  if (run.stockEnded.length > 0) return refused("stock-ended");
  const { count, unit } = order;
  if (!Number.isFinite(count)) return refused("reading-not-a-number");
  if (!(count > 0)) return refused("pour-empty");
  const each: Readonly<Record<StockUnit, number>> = {
    ml: 1,
    serves: run.plan.spec.serve.pour,
    // Of several sizes, the first that was filled: the screen offers each size as ml.
    bottles: bottled.bottles[0]?.size ?? 0,
  };
  return accepted([{ type: "stock.poured", ml: count * each[unit], count, unit }]);
}

function endStock(run: Run, order: Extract<AfterOrder, { type: "end-stock" }>): Decision {
  if (bottledOf(run) === undefined) return refused("not-bottled");
  if (run.stockEnded.length > 0) return refused("stock-ended");
  return accepted([{ type: "stock.ended", how: order.how, reason: order.reason.trim() }]);
}

function settleYield(run: Run, order: Extract<AfterOrder, { type: "settle-yield" }>): Decision {
  const counts = differingYields(run).find(({ ml }) => ml === order.ml);
  if (counts === undefined) return misfit(order);
  const { visit, ml, weighed } = counts;
  const scale = weighed === undefined ? {} : { weighed };
  return accepted([{ type: "yield.logged", visit, ml, ...scale, settles: true }]);
}

/**
 * What an order about a finished drink comes to. Nothing here moves the work on.
 *
 * @param run - as its log tells it, ended or not
 * @param order - what was said
 */
export function afterwards(run: Run, order: AfterOrder): Decision {
  switch (order.type) {
    case "note-taste":
      return noteTaste(order);
    case "give-verdict": {
      const { verdict, repeat, text } = order;
      return accepted([{ type: "verdict.given", verdict, repeat, text: text.trim() }]);
    }
    case "add-tag":
    case "remove-tag":
      return tagged(run, order);
    case "add-photo": {
      const { type: _, ...photo } = order;
      return accepted([{ type: "photo.added", ...photo }]);
    }
    case "remove-photo":
      return photosOf(run).some(({ photo }) => photo === order.photo)
        ? accepted([{ type: "photo.removed", photo: order.photo }])
        : misfit(order);
    case "pour-stock":
      return pourStock(run, order);
    case "end-stock":
      return endStock(run, order);
    case "settle-yield":
      return settleYield(run, order);
  }
}

const AFTER: ReadonlySet<string> = new Set<AfterOrder["type"]>([
  "note-taste",
  "give-verdict",
  "add-tag",
  "remove-tag",
  "add-photo",
  "remove-photo",
  "pour-stock",
  "end-stock",
  "settle-yield",
]);

/** Whether an order speaks of what came of a batch. */
export const isAfterOrder = <Order extends { readonly type: string }>(
  order: Order | AfterOrder,
): order is AfterOrder => AFTER.has(order.type);
