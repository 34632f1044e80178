import { batch as atOnce, computed, signal } from "@preact/signals";
import type { Planned } from "../core/board/planned.ts";
import type { Procedure } from "../core/method/procedure.ts";
import type { RunEvent } from "../core/run/event.ts";
import { foldRun } from "../core/run/fold.ts";
import { mergeEvents } from "../core/run/order.ts";
import { endingOf, type Run } from "../core/run/run.ts";
import type { Ingredient } from "../core/spec/ingredient.ts";
import type { Spec } from "../core/spec/spec.ts";
import type { Ringing } from "./alarm/alarm.ts";
import type { AlarmStatus } from "./alarm/status.ts";
import type { Books } from "./storage/books.ts";
import { DEFAULT_SETTINGS, type Settings } from "./storage/settings.ts";

/** Whether the phone's storage is open. */
export type Opening =
  | { readonly type: "opening" }
  | { readonly type: "ready" }
  | { readonly type: "failed"; readonly why: string };

/** What the page last tried to store. */
export type Saving =
  | { readonly type: "saved" }
  | { readonly type: "saving" }
  | { readonly type: "not-saved"; readonly why: string };

/** A line at the foot of the screen, with an act that can be taken back where there is one. */
export interface Notice {
  readonly text: string;
  readonly undo?: { readonly runId: string; readonly act: string };
  readonly until: number;
}

export const opening = signal<Opening>({ type: "opening" });
export const saving = signal<Saving>({ type: "saved" });
export const notice = signal<Notice | undefined>(undefined);
/** The moment the page was last drawn for, epoch ms; main.tsx keeps it moving. */
export const now = signal(0);
const logs = signal<ReadonlyMap<string, readonly RunEvent[]>>(new Map());
export const specs = signal<readonly Spec[]>([]);
export const ownIngredients = signal<readonly Ingredient[]>([]);
export const ownProcedures = signal<readonly Procedure[]>([]);
/** Batches that are planned; those that have been begun meanwhile are among the runs. */
export const planned = signal<readonly Planned[]>([]);
export const settings = signal<Settings>(DEFAULT_SETTINGS);
export const alarmStatus = signal<AlarmStatus | undefined>(undefined);
/** What rings now. */
export const ringing = signal<Ringing | undefined>(undefined);
/** By how much the phone's clock was moved, and how that is known. */
export interface ClockMoved {
  readonly byMs: number;
  /** `away`: it went back while nobody looked, by this much at least. */
  readonly seen: "here" | "away";
}

/** What the person has to be asked about the phone's clock. */
export const clockMoved = signal<ClockMoved | undefined>(undefined);
/** What is known of the hands; `dry-now` where everything was asked back for this step. */
export type WetHands =
  | { readonly type: "dry" | "dry-now" | "wet" }
  | { readonly type: "asked"; readonly until: number };

export const wetHands = signal<WetHands>({ type: "dry" });
export const updateWaiting = signal(false);
/** Entries of the database that this version could not read. */
export const unread = signal(0);
/** The address after the #, which place or thing is shown. */
export const address = signal("");

const folded = new WeakMap<readonly RunEvent[], Run | undefined>();

/** The same log array is never folded twice. */
function runOfLog(log: readonly RunEvent[]): Run | undefined {
  if (!folded.has(log)) folded.set(log, foldRun(log));
  return folded.get(log);
}

/** Every run whose start is known. */
export const runs = computed<readonly Run[]>(() =>
  [...logs.value.values()].flatMap((log) => runOfLog(log) ?? []),
);

/** The runs being made now. */
export const openRuns = computed(() => runs.value.filter((run) => endingOf(run) === undefined));

/** The log of a run, in the common order. */
export const logOf = (runId: string): readonly RunEvent[] => logs.value.get(runId) ?? [];

/** The run with an id. */
export const runOf = (runId: string): Run | undefined => runOfLog(logOf(runId));

/** Takes events that are stored into the page's memory. */
export function takeEvents(events: readonly RunEvent[]): void {
  const next = new Map(logs.value);
  for (const runId of new Set(events.map((event) => event.runId))) {
    const mine = events.filter((event) => event.runId === runId);
    next.set(runId, mergeEvents(next.get(runId) ?? [], mine));
  }
  logs.value = next;
}

/** Takes the whole of what was stored into the page's memory, in one redraw. */
export function takeAll(
  all: Books & {
    readonly events: readonly RunEvent[];
    readonly settings: Settings;
    readonly unread: number;
  },
): void {
  atOnce(() => {
    takeEvents(all.events);
    specs.value = all.specs;
    ownIngredients.value = all.ingredients;
    ownProcedures.value = all.procedures;
    planned.value = all.planned;
    settings.value = all.settings;
    unread.value = all.unread;
  });
}
