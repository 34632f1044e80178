import type { RunEvent } from "../../../core/run/event.ts";
import type { Run } from "../../../core/run/run.ts";
import { settings } from "../../state.ts";
import type { EventAbout } from "../../words/en/events.ts";
import { ingredientOf } from "../../words/ingredient-of.ts";
import { inOneLine } from "../../words/joined.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { stepTitle } from "../../words/step-title.ts";

/** The name of a step, and which round of it a visit was. */
export function stepName(run: Run, visit: string): string {
  const [, id = visit, round = "1"] = /^(.*)#(\d+)$/u.exec(visit) ?? [];
  const step = run.procedure.steps.find((one) => one.id === id);
  const name = step === undefined ? say.work.verbs[id] : stepTitle(step);
  return sayLater.events.round(name ?? sayLater.events.unknownStep, Number(round));
}

const MOVES: ReadonlySet<string> = new Set(["step.started", "step.finished"]);

/** An act in words: what was measured or said in it, else the step that it finished. */
function actWords(events: readonly RunEvent[], act: string, about: EventAbout): string {
  const mine = events.filter((event) => event.act === act);
  const telling = mine.filter(({ type }) => !MOVES.has(type));
  const finished = mine.filter(({ type }) => type === "step.finished");
  const chosen = telling.length > 0 ? telling : finished.length > 0 ? finished : mine;
  if (chosen.length === 0) return sayLater.events.unknownAct;
  // One level deep: a log from elsewhere might take itself back for ever.
  const flat = { ...about, act: () => sayLater.events.anUndo };
  return inOneLine(chosen.map((event) => sayLater.events.of(event, flat)));
}

/** What the wording of a batch's events looks up. */
export function aboutBatch(run: Run, events: readonly RunEvent[]): EventAbout {
  const lines = new Map(run.plan.lines.map((line) => [line.lineId, line.name]));
  const about: EventAbout = {
    style: settings.value,
    step: (visit) => stepName(run, visit),
    line: (id) => lines.get(id) ?? id,
    ingredient: (id) => ingredientOf(run, id),
    act: (act) => actWords(events, act, about),
  };
  return about;
}
