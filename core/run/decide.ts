import type { Look, Procedure, ReadingKey } from "../method/procedure.ts";
import { stepAfter } from "../method/procedure.ts";
import { accepted, type Refused, type Result, refused } from "../quantity/result.ts";
import type { Plan } from "../spec/plan.ts";
import { type Answer, answerDraft, type FigureRefusal, refusedVolume } from "./answer.ts";
import {
  type Draft,
  draftSchema,
  type OtherWatch,
  type ReadingUnit,
  type RunEvent,
} from "./event.ts";
import { endingOf, openVisit, type Run, stepOfVisit, type Visit } from "./run.ts";
import { barToTakingBack, type TakeBackRefusal } from "./take-back.ts";

/** An order from the person at the bench. */
export type Command =
  | {
      readonly type: "start-run";
      readonly batch: string;
      readonly plan: Plan;
      readonly procedure: Procedure;
      readonly appVersion: string;
    }
  | {
      readonly type: "finish-step";
      readonly visit: string;
      readonly answer?: Answer;
      readonly look?: Look;
    }
  | {
      readonly type: "log-reading";
      readonly visit: string;
      readonly what: ReadingKey;
      readonly value: number;
      readonly unit: ReadingUnit;
    }
  | { readonly type: "pour-line"; readonly visit: string; readonly line: string }
  | { readonly type: "hear-alarm"; readonly visit: string; readonly dueAt: number }
  | {
      readonly type: "hand-alarm";
      readonly visit: string;
      readonly dueAt: number;
      readonly to: OtherWatch;
    }
  | { readonly type: "move-due"; readonly visit: string; readonly dueAt: number }
  | { readonly type: "undo"; readonly act: string }
  | { readonly type: "add-note"; readonly text: string }
  | { readonly type: "shift-clock"; readonly byMs: number; readonly keepElapsed: boolean }
  | { readonly type: "abandon"; readonly reason: string };

/** Why an order was not carried out. */
export type RunRefusal =
  | "run-already-started"
  | "run-not-started"
  | "run-ended"
  | "step-not-open"
  | "reading-missing"
  | "look-missing"
  | FigureRefusal
  | "note-empty"
  | TakeBackRefusal
  | "order-does-not-fit";

type Decision = Result<readonly Draft[], RunRefusal>;

const visitKey = (run: Run, step: string): string =>
  `${step}#${run.visits.filter((visit) => visit.step === step).length + 1}`;

function startRun(command: Extract<Command, { type: "start-run" }>): Decision {
  const first = command.procedure.steps[0];
  if (first === undefined) throw new RangeError("a procedure must have a step");
  const { type: _, ...what } = command;
  return accepted([
    { type: "run.started", ...what },
    { type: "step.started", visit: `${first.id}#1`, step: first.id },
  ]);
}

type FinishStep = Extract<Command, { type: "finish-step" }>;
type LogReading = Extract<Command, { type: "log-reading" }>;

const misfit = (order: Command["type"]): Refused<"order-does-not-fit"> =>
  refused("order-does-not-fit", { order });

/** Read while the step goes on, not in answer to its end. */
const readMeanwhile = (run: Run, visit: Visit, what: ReadingKey): boolean =>
  (what === "collected" || what === "temperature") &&
  run.readings.some((reading) => reading.visit === visit.key && reading.what === what);

/** Why a step cannot be finished yet; nothing where all it asks for was said. */
function unanswered(run: Run, visit: Visit, order: FinishStep): Refused<RunRefusal> | undefined {
  const { needs, look } = stepOfVisit(run, visit);
  const of = order.answer?.of;
  if (needs !== undefined && of !== needs && !readMeanwhile(run, visit, needs)) {
    return refused("reading-missing", { what: needs });
  }
  if (of !== undefined && of !== needs) return misfit(order.type);
  return look === true && order.look === undefined ? refused("look-missing") : undefined;
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
  const next = stepAfter(run.procedure, visit.step, look);
  if (next !== undefined) {
    drafts.push({ type: "step.started", visit: visitKey(run, next.id), step: next.id });
  }
  return accepted(drafts);
}

function logReading(run: Run, order: LogReading): Decision {
  const { type, ...reading } = order;
  const wrong = reading.unit === "ml" ? refusedVolume(run, reading.what, reading.value) : undefined;
  if (wrong !== undefined) return wrong;
  const draft: Draft = { type: "reading.logged", ...reading };
  return draftSchema.safeParse(draft).success ? accepted([draft]) : refused("reading-not-a-number");
}

const known = (run: Run, visit: string): boolean => run.visits.some((one) => one.key === visit);
const open = (run: Run, visit: string): boolean => openVisit(run)?.key === visit;

/** Orders that speak of a passage through a step. */
function atVisit(run: Run, order: Extract<Command, { visit: string }>): Decision {
  switch (order.type) {
    case "finish-step":
      return finishStep(run, order);
    // What was read a moment before the step ended is still worth keeping.
    case "log-reading":
      return known(run, order.visit) ? logReading(run, order) : refused("step-not-open");
    case "pour-line": {
      const { visit, line } = order;
      if (!open(run, visit)) return refused("step-not-open");
      return run.plan.lines.some((one) => one.lineId === line)
        ? accepted([{ type: "line.poured", visit, line }])
        : misfit(order.type);
    }
  }
  const { visit, dueAt } = order;
  if (!open(run, visit)) return refused("step-not-open");
  switch (order.type) {
    case "hear-alarm":
      return accepted([{ type: "alarm.heard", visit, dueAt }]);
    case "hand-alarm":
      return accepted([{ type: "alarm.handed", visit, dueAt, to: order.to }]);
    case "move-due":
      return accepted([{ type: "due.moved", visit, dueAt }]);
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

function onRun(events: readonly RunEvent[], run: Run, order: Command): Decision {
  if (order.type === "start-run") return refused("run-already-started");
  if (order.type === "undo") return undo(events, order.act);
  if (order.type === "add-note") return addNote(order.text);
  if (endingOf(run) !== undefined) return refused("run-ended");
  switch (order.type) {
    case "shift-clock": {
      const { type: _, ...shift } = order;
      return accepted([{ type: "clock.shifted", ...shift }]);
    }
    case "abandon":
      return accepted([{ type: "run.abandoned", reason: order.reason }]);
    default:
      return atVisit(run, order);
  }
}

/** An event that cannot be read back is a lost one: better to refuse the order. */
function storable(decision: Decision, order: Command["type"]): Decision {
  const fits = !decision.ok || decision.value.every((one) => draftSchema.safeParse(one).success);
  return fits ? decision : misfit(order);
}

/**
 * What an order comes to: the events to append, or why it is not carried out. Notes and undoing go on
 * after the end; nothing else does.
 *
 * @param events - the run's log in the common order; empty before it starts
 * @param run - the same log folded
 * @param command - the order
 * @returns events of one act, each of a shape that is read back; or a refusal that changes nothing
 */
export function decide(
  events: readonly RunEvent[],
  run: Run | undefined,
  command: Command,
): Decision {
  if (run !== undefined) return storable(onRun(events, run, command), command.type);
  return command.type === "start-run"
    ? storable(startRun(command), command.type)
    : refused("run-not-started");
}
