import { accepted, type Result, refused } from "../quantity/result.ts";
import { type FigureRefusal, refusedFigure, refusedVolume } from "./answer.ts";
import type { Command } from "./command.ts";
import { drippingVisit, nextDripLook } from "./drip-outlook.ts";
import { type Draft, draftSchema } from "./event.ts";
import type { Run } from "./run.ts";
import { weigh } from "./weigh.ts";

type LogReading = Extract<Command, { type: "log-reading" }>;
type LogWeight = Extract<Command, { type: "log-weight" }>;
type Logged = Extract<Draft, { type: "reading.logged" }>;

/** A reading as it is kept: what was weighed, as the ml it means beside what the scale showed. */
function loggedAs(
  run: Run,
  order: LogReading | LogWeight,
): Result<Omit<Logged, "type">, FigureRefusal> {
  if (order.type === "log-reading") {
    const { type: _, ...reading } = order;
    return accepted(reading);
  }
  const weight = weigh(run, "collected", order.gross);
  if (!weight.ok) return weight;
  const { ml, weighed } = weight.value;
  return accepted({ visit: order.visit, what: "collected", value: ml, unit: "ml", weighed });
}

/** A reading of the drip moves the wait to when the next look is worth the walk. */
function dripMoved(run: Run, reading: Omit<Logged, "type">, now: number): Draft[] {
  const { visit, what, unit, value } = reading;
  if (what !== "collected" || unit !== "ml" || drippingVisit(run)?.key !== visit) return [];
  const dueAt = nextDripLook(run, value, now);
  return dueAt === undefined ? [] : [{ type: "due.moved", visit, dueAt }];
}

/**
 * The events that keep a reading, and move the drip's next call where it is one of the drip.
 *
 * @param run - in which the visit is known
 * @param order - what was read, or weighed
 * @param now - epoch ms
 */
export function readingDrafts(
  run: Run,
  order: LogReading | LogWeight,
  now: number,
): Result<readonly Draft[], FigureRefusal> {
  const logged = loggedAs(run, order);
  if (!logged.ok) return logged;
  const { what, value, unit } = logged.value;
  const wrong = unit === "ml" ? refusedVolume(run, what, value) : refusedFigure(what, value);
  if (wrong !== undefined) return wrong;
  const draft: Draft = { type: "reading.logged", ...logged.value };
  return draftSchema.safeParse(draft).success
    ? accepted([draft, ...dripMoved(run, logged.value, now)])
    : refused("reading-not-a-number");
}
