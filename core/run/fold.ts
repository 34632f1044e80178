import { stepOf } from "../method/procedure.ts";
import type { Draft, RunEvent, Stamp } from "./event.ts";
import { mergeEvents, undoneActs } from "./order.ts";
import type { Run, Visit } from "./run.ts";
import { keep, later, listsOf, noLists } from "./run-lists.ts";

type EventOf<Type extends Draft["type"]> = Stamp & Extract<Draft, { type: Type }>;

function started(event: EventOf<"run.started">): Run {
  return {
    id: event.runId,
    batch: event.batch,
    plan: event.plan,
    procedure: event.procedure,
    appVersion: event.appVersion,
    startedAt: event.at,
    visits: [],
    ...noLists(),
  };
}

const withVisit = (run: Run, key: string, change: (visit: Visit) => Visit): Run => ({
  ...run,
  visits: run.visits.map((visit) => (visit.key === key ? change(visit) : visit)),
});

/** A visit that two phones both started began when the first of them did. */
function stepStarted(run: Run, event: EventOf<"step.started">): Run {
  if (run.visits.some((visit) => visit.key === event.visit)) return run;
  const known = run.procedure.steps.some((step) => step.id === event.step);
  if (!known) return run;
  const wait = stepOf(run.procedure, event.step).waitFor;
  const visit: Visit = {
    key: event.visit,
    step: event.step,
    startedAt: event.at,
    ...(wait === undefined ? {} : { dueAt: event.at + wait }),
  };
  return { ...run, visits: [...run.visits, visit] };
}

/**
 * Somebody set the clock: all that came before is told on the clock as it stands now, so that every
 * length of time stays what it was. A promise holds; what was told to another clock stays, for that
 * clock rings when it was told to.
 */
function clockShifted(run: Run, { byMs, keepElapsed }: EventOf<"clock.shifted">): Run {
  if (!keepElapsed) return run;
  const moved = (at: number): number => later(at, byMs);
  const visits = run.visits.map(
    (visit): Visit => ({
      ...visit,
      startedAt: moved(visit.startedAt),
      ...(visit.finishedAt === undefined ? {} : { finishedAt: moved(visit.finishedAt) }),
      ...(visit.dueAt === undefined ? {} : { dueAt: moved(visit.dueAt) }),
      ...(visit.heardAt === undefined ? {} : { heardAt: moved(visit.heardAt) }),
    }),
  );
  const { abandoned, pausedAt } = run;
  return {
    ...run,
    ...listsOf(run, byMs),
    startedAt: moved(run.startedAt),
    visits,
    ...(pausedAt === undefined ? {} : { pausedAt: moved(pausedAt) }),
    ...(abandoned === undefined ? {} : { abandoned: { ...abandoned, at: moved(abandoned.at) } }),
  };
}

function waitChanged(run: Run, event: EventOf<"alarm.heard" | "alarm.handed" | "due.moved">): Run {
  return withVisit(run, event.visit, (visit) => {
    switch (event.type) {
      case "alarm.heard":
        return { ...visit, heardAt: Math.max(visit.heardAt ?? 0, event.at) };
      case "alarm.handed": {
        const { to, dueAt, who } = event;
        const told = { to, dueAt, ...(who === undefined ? {} : { who }) };
        return { ...visit, handed: [...(visit.handed ?? []), told] };
      }
      case "due.moved":
        return { ...visit, dueAt: event.dueAt };
    }
  });
}

function resumed(run: Run): Run {
  const { pausedAt: _, ...going } = run;
  return going;
}

/**
 * What a run is after one more event.
 *
 * @param run - nothing before `run.started`
 * @param event - the next in the common order, not undone
 * @returns a run of its own; nothing while its start is unknown
 */
export function applyEvent(run: Run | undefined, event: RunEvent): Run | undefined {
  if (run === undefined) return event.type === "run.started" ? started(event) : undefined;
  switch (event.type) {
    case "run.started":
    case "event.undone":
      return run;
    case "step.started":
      return stepStarted(run, event);
    case "step.finished":
      return withVisit(run, event.visit, (visit) => ({
        ...visit,
        // Two phones that both finish it: the first did. A clock put back leaves no negative wait.
        finishedAt: Math.max(visit.startedAt, Math.min(visit.finishedAt ?? event.at, event.at)),
      }));
    case "alarm.heard":
    case "alarm.handed":
    case "due.moved":
      return waitChanged(run, event);
    case "clock.shifted":
      return clockShifted(run, event);
    case "ready.set":
      return { ...run, readyBy: event.by };
    case "run.paused":
      return { ...run, pausedAt: run.pausedAt ?? event.at };
    case "run.resumed":
      return resumed(run);
    case "run.abandoned":
      return { ...run, abandoned: { at: event.at, reason: event.reason } };
    default: {
      const lists = listsOf(run);
      keep(lists, event);
      return { ...run, ...lists };
    }
  }
}

/**
 * The run that a set of events tells of: pure, and the same whatever order they arrived in.
 *
 * @param events - of one run, in any order, repeats allowed
 * @returns nothing while its start is unknown
 */
export function foldRun(events: readonly RunEvent[]): Run | undefined {
  const ordered = mergeEvents(events, []);
  const undone = undoneActs(ordered);
  // Lists grow in place here: copying them for each event would cost the square of a long log.
  let lists = noLists();
  let run: Run | undefined;
  for (const event of ordered) {
    if (undone.has(event.act)) continue;
    if (event.type === "clock.shifted" && event.keepElapsed) lists = listsOf(lists, event.byMs);
    if (run === undefined || !keep(lists, event)) run = applyEvent(run, event);
  }
  return run === undefined ? undefined : { ...run, ...lists };
}
