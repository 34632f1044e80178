import { batch as atOnce, computed, signal } from "@preact/signals";
import type { Planned } from "../core/board/planned.ts";
import type { BatchRecord } from "../core/logbook/record.ts";
import type { Procedure } from "../core/method/procedure.ts";
import type { RunEvent } from "../core/run/event.ts";
import { foldRun } from "../core/run/fold.ts";
import { mergeEvents } from "../core/run/order.ts";
import { endingOf, type Run } from "../core/run/run.ts";
import type { Ingredient } from "../core/spec/ingredient.ts";
import type { Spec } from "../core/spec/spec.ts";
import type { Ringing } from "./alarm/alarm.ts";
import type { AlarmStatus } from "./alarm/status.ts";
import { isPractice } from "./practice.ts";
import type { Books } from "./storage/books.ts";
import type { StoredRecord } from "./storage/database.ts";
import type { ReadLog } from "./storage/run-log.ts";
import { DEFAULT_SETTINGS, type Settings } from "./storage/settings.ts";

/** Whether the phone's storage is open. */
export type Opening =
  | { readonly type: "opening" }
  /** After an update or an import: what lists need is worked out anew from the logs. */
  | { readonly type: "working-out"; readonly done: number; readonly all: number }
  | { readonly type: "ready" }
  | { readonly type: "failed"; readonly why: string };

/** What the page last tried to store. */
export type Saving =
  | { readonly type: "saved" }
  | { readonly type: "saving" }
  | { readonly type: "not-saved"; readonly why: string }
  | { readonly type: "no-room" };

/** A line at the foot of the screen, with an act that can be taken back where there is one. */
export interface Notice {
  readonly text: string;
  readonly undo?: { readonly runId: string; readonly act: string };
  readonly until: number;
}

export const opening = signal<Opening>({ type: "opening" });
/** Whether something that a person made was stored since the page opened. */
export const somethingSaved = signal(false);
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
/** The address after the #, which place or thing is shown. */
export const address = signal("");

const folded = new WeakMap<readonly RunEvent[], Run | undefined>();

/** The same log array is never folded twice. */
function runOfLog(log: readonly RunEvent[]): Run | undefined {
  if (!folded.has(log)) folded.set(log, foldRun(log));
  return folded.get(log);
}

/** The runs whose logs are in memory: those being made, and the few that were looked at. */
const loadedRuns = computed<readonly Run[]>(() =>
  [...logs.value.values()].flatMap((log) => runOfLog(log) ?? []),
);

/** The runs being made now. */
export const openRuns = computed(() =>
  loadedRuns.value.filter((run) => endingOf(run) === undefined),
);

/** The batches being made now: what is only practice takes no hands, stands or turns from them. */
export const openBatches = computed(() => openRuns.value.filter(({ id }) => !isPractice(id)));

const recordsById = signal<ReadonlyMap<string, StoredRecord>>(new Map());
/** Whether every record has been read; until then the lists are not complete. */
export const recordsRead = signal(false);

/** Every batch there is, open or ended, as lists need it. */
export const records = computed<readonly BatchRecord[]>(() =>
  [...recordsById.value.values()].map(({ record }) => record),
);

const unreadLogs = new Map<string, number>();
const unreadBooks = signal(0);
/** Entries of the database that this version could not read. */
export const unread = computed(() =>
  [...recordsById.value.values()].reduce((sum, one) => sum + one.unread, unreadBooks.value),
);

/** Stored events of a run that this version does not understand. */
export const unreadIn = (runId: string): number => unreadLogs.get(runId) ?? 0;

/** Takes records as stored into the page's memory. */
export function takeRecords(some: readonly StoredRecord[]): void {
  if (some.length === 0) return;
  const next = new Map(recordsById.value);
  // Practice is no batch: no list, no shelf and no lesson hears of it.
  for (const one of some) if (!isPractice(one.id)) next.set(one.id, one);
  recordsById.value = next;
}

/** Lets go of runs that are no longer stored: the invented history or a practice was removed. */
export function forgetRuns(gone: ReadonlySet<string>): void {
  atOnce(() => {
    recordsById.value = new Map([...recordsById.value].filter(([id]) => !gone.has(id)));
    logs.value = new Map([...logs.value].filter(([id]) => !gone.has(id)));
  });
}

/** Whether a run's log is in memory; until then nothing can be said of the run. */
export const isLoaded = (runId: string): boolean => logs.value.has(runId);

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

/** Takes logs as they were read, also those that hold nothing. */
export function takeLogs(read: readonly ReadLog[]): void {
  const next = new Map(logs.value);
  for (const { runId, events, unread: beyond } of read) {
    unreadLogs.set(runId, beyond);
    next.set(runId, mergeEvents(next.get(runId) ?? [], events));
  }
  logs.value = next;
}

/** Takes what was stored beside the logs into the page's memory, in one redraw. */
export function takeBooks(
  all: Books & { readonly settings: Settings; readonly unread: number },
): void {
  atOnce(() => {
    specs.value = all.specs;
    ownIngredients.value = all.ingredients;
    ownProcedures.value = all.procedures;
    planned.value = all.planned;
    settings.value = all.settings;
    unreadBooks.value = all.unread;
  });
}
