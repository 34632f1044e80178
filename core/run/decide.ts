import {
  ANSWERS,
  type Outcome,
  procedureSchema,
  type ReadingKey,
  stepAfter,
} from "../method/procedure.ts";
import { astray } from "../method/ways.ts";
import { accepted, type Refused, type Result, refused } from "../quantity/result.ts";
import { afterwards, asInitials, isAfterOrder, misfit } from "./afterwards.ts";
import { answerDraft } from "./answer.ts";
import type { Command, RunRefusal } from "./command.ts";
import { drippingVisit } from "./drip-outlook.ts";
import { type Draft, draftSchema, MOST_AMOUNT, type RunEvent } from "./event.ts";
import { readingDrafts } from "./log-reading.ts";
import { endingOf, openVisit, type Run, stepOfVisit, type Visit } from "./run.ts";
import { barToTakingBack } from "./take-back.ts";

type Decision = Result<readonly Draft[], RunRefusal>;

const visitKey = (run: Run, step: string): string =>
  `${step}#${run.visits.filter((visit) => visit.step === step).length + 1}`;

function startRun(command: Extract<Command, { type: "start-run" }>): Decision {
  const first = command.procedure.steps[0];
  if (first === undefined) throw new RangeError("a procedure must have a step");
  // One that does not hang together is refused as what cannot be stored.
  const whole = procedureSchema.safeParse(command.procedure).success;
  const [shutIn] = whole ? astray(command.procedure).endless : [];
  if (shutIn !== undefined) return refused("procedure-without-end", { step: shutIn });
  const { type: _, readyBy, ...what } = command;
  return accepted([
    { type: "run.started", ...what },
    { type: "step.started", visit: `${first.id}#1`, step: first.id },
    ...(readyBy === undefined ? [] : [{ type: "ready.set", by: readyBy } as const]),
  ]);
}

type FinishStep = Extract<Command, { type: "finish-step" }>;

/** Read while the step goes on, not in answer to its end. */
const readMeanwhile = (run: Run, visit: Visit, what: ReadingKey): boolean =>
  (what === "collected" || what === "temperature") &&
  run.readings.some((reading) => reading.visit === visit.key && reading.what === what);

/** Why a step cannot be finished yet; nothing where all it asks for was said. */
function unanswered(run: Run, visit: Visit, order: FinishStep): Refused<RunRefusal> | undefined {
  const { needs, asks } = stepOfVisit(run, visit);
  const of = order.answer?.of;
  if (needs !== undefined && of !== needs && !readMeanwhile(run, visit, needs)) {
    return refused("reading-missing", { what: needs });
  }
  if (of !== undefined && of !== needs) return misfit(order);
  if (asks === undefined) return undefined;
  if (order.look === undefined) return refused("look-missing");
  const ends: readonly Outcome[] = ANSWERS[asks];
  return ends.includes(order.look) ? undefined : misfit(order);
}

function finishStep(run: Run, order: FinishStep): Decision {
  const visit = openVisit(run);
  if (visit === undefined || visit.key !== order.visit) return refused("step-not-open");
  const wrong = unanswered(run, visit, order);
  if (wrong !== undefined) return wrong;
  const { answer, look } = order;
  const drafts: Draft[] = [];
  if (answer !== undefined) {
    const draft = answerDraft(run, visit, answer);
    if (!draft.ok) return draft;
    drafts.push(draft.value);
  }
  if (look !== undefined) drafts.push({ type: "look.noted", visit: visit.key, look });
  drafts.push({ type: "step.finished", visit: visit.key });
  const round = run.visits.filter((one) => one.step === visit.step).length;
  const next = stepAfter(run.procedure, visit.step, look, round);
  if (next !== undefined) {
    drafts.push({ type: "step.started", visit: visitKey(run, next.id), step: next.id });
  }
  return accepted(drafts);
}

const known = (run: Run, visit: string): boolean => run.visits.some((one) => one.key === visit);
const open = (run: Run, visit: string): boolean => openVisit(run)?.key === visit;

function handed(order: Extract<Command, { type: "hand-alarm" }>): Draft {
  const { visit, dueAt, to } = order;
  const who = asInitials(order.who ?? "");
  return { type: "alarm.handed", visit, dueAt, to, ...(who === "" ? {} : { who }) };
}

/** Orders that speak of a passage through a step. */
function atVisit(run: Run, order: Extract<Command, { visit: string }>, now: number): Decision {
  switch (order.type) {
    case "finish-step":
      return finishStep(run, order);
    // What was read a moment before the step ended is still worth keeping.
    case "log-reading":
    case "log-weight":
      return known(run, order.visit) ? readingDrafts(run, order, now) : refused("step-not-open");
    case "pour-line": {
      const { visit, line } = order;
      if (!open(run, visit)) return refused("step-not-open");
      return run.plan.lines.some((one) => one.lineId === line)
        ? accepted([{ type: "line.poured", visit, line }])
        : misfit(order);
    }
  }
  const { visit } = order;
  if (!open(run, visit)) return refused("step-not-open");
  switch (order.type) {
    case "note-shape":
      return drippingVisit(run)?.key === visit
        ? accepted([{ type: "shape.noted", visit, shape: order.shape }])
        : misfit(order);
    case "note-look":
      return accepted([{ type: "look.noted", visit, look: order.look }]);
    case "hear-alarm":
      return accepted([{ type: "alarm.heard", visit, dueAt: order.dueAt }]);
    case "hand-alarm":
      return accepted([handed(order)]);
    case "move-due":
      return accepted([{ type: "due.moved", visit, dueAt: order.dueAt }]);
  }
}

type AroundRun = Extract<
  Command,
  {
    type:
      | "pause"
      | "resume"
      | "set-ready"
      | "move-vessel"
      | "change-hands"
      | "note-lot"
      | "note-tare";
  }
>;

/** Orders about the whole run: who, where, from which lot, and whether anybody is at it. */
function aroundRun(order: AroundRun): Decision {
  switch (order.type) {
    case "pause":
      return accepted([{ type: "run.paused" }]);
    case "resume":
      return accepted([{ type: "run.resumed" }]);
    case "set-ready":
      return accepted([{ type: "ready.set", by: order.by }]);
    case "move-vessel":
      return accepted([{ type: "vessel.moved", to: order.to }]);
    case "change-hands":
      return accepted([{ type: "hands.changed", initials: asInitials(order.initials) }]);
    case "note-lot": {
      const { type: _, ...noted } = order;
      return accepted([{ type: "lot.noted", ...noted }]);
    }
    case "note-tare":
      return order.grams >= 0 && order.grams <= MOST_AMOUNT
        ? accepted([{ type: "tare.noted", vessel: order.vessel, grams: order.grams }])
        : refused("reading-not-a-number");
  }
}

function addNote(text: string): Decision {
  const trimmed = text.trim();
  return trimmed === "" ? refused("note-empty") : accepted([{ type: "note.added", text: trimmed }]);
}

function undo(events: readonly RunEvent[], act: string): Decision {
  const bar = barToTakingBack(events, act);
  return bar === undefined ? accepted([{ type: "event.undone", undoes: act }]) : refused(bar);
}

function onRun(events: readonly RunEvent[], run: Run, order: Command, now: number): Decision {
  if (order.type === "start-run") return refused("run-already-started");
  if (order.type === "undo") return undo(events, order.act);
  if (order.type === "add-note") return addNote(order.text);
  if (isAfterOrder(order)) return afterwards(run, order);
  if (endingOf(run) !== undefined) return refused("run-ended");
  switch (order.type) {
    case "shift-clock": {
      const { type: _, ...shift } = order;
      return accepted([{ type: "clock.shifted", ...shift }]);
    }
    case "note-sleep":
      return accepted([{ type: "phone.slept", fromMs: order.fromMs, forMs: order.forMs }]);
    case "abandon":
      return accepted([{ type: "run.abandoned", reason: order.reason }]);
    case "pause":
    case "resume":
    case "set-ready":
    case "move-vessel":
    case "change-hands":
    case "note-lot":
    case "note-tare":
      return aroundRun(order);
    default:
      return atVisit(run, order, now);
  }
}

/** An event that cannot be read back is a lost one: better to refuse the order. */
function storable(decision: Decision, order: Command): Decision {
  const fits = !decision.ok || decision.value.every((one) => draftSchema.safeParse(one).success);
  return fits ? decision : misfit(order);
}

/**
 * What an order comes to: the events to append, or why it is not carried out. Notes, undoing and what
 * came of it go on after the end; nothing else does.
 *
 * @param events - the run's log in the common order; empty before it starts
 * @param run - the same log folded
 * @param command - the order
 * @param now - epoch ms
 * @returns events of one act, each of a shape that is read back; or a refusal that changes nothing
 */
export function decide(
  events: readonly RunEvent[],
  run: Run | undefined,
  command: Command,
  now: number,
): Decision {
  if (run !== undefined) return storable(onRun(events, run, command, now), command);
  return command.type === "start-run"
    ? storable(startRun(command), command)
    : refused("run-not-started");
}
