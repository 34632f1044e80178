import { computed, signal } from "@preact/signals";
import { readyByOf } from "../../../core/board/schedule/ready-by.ts";
import { bestFirst, canBeRanked } from "../../../core/logbook/best-first.ts";
import { type EndedBatch, logbookOf } from "../../../core/logbook/logbook.ts";
import {
  facetsOf,
  type Summary,
  searchLogbook,
  summaryOf,
  type Wanted,
  type YieldBand,
} from "../../../core/logbook/search.ts";
import { MINUTE } from "../../../core/quantity/time-units-table.ts";
import type { Repeat, Verdict } from "../../../core/run/taste.ts";
import { localOf, phoneZone } from "../../local-time.ts";
import { records } from "../../state.ts";

/** What somebody looks for, as it stands in the fields: text and dates as typed. */
export interface Asked {
  readonly text: string;
  readonly specId?: string;
  readonly ingredient?: string;
  readonly tag?: string;
  readonly verdict?: Verdict;
  readonly repeat?: Repeat;
  readonly yielded?: YieldBand;
  /** `YYYY-MM-DD`, or nothing. */
  readonly from?: string;
  readonly to?: string;
}

/** Nothing in particular. */
export const ANYTHING: Asked = { text: "" };

/** What is looked for, for as long as the app is open. */
export const asked = signal<Asked>(ANYTHING);

/** The words as they stand in their field; looked for a moment later, see `useSearch`. */
export const typed = signal("");

/** Whether the filters are open. */
export const filtersOpen = signal(false);

/** Whether the best batches come first; the latest otherwise. */
export const byMerit = signal(false);

/** Takes a filter in place of another; `undefined` takes it away. */
export function ask(change: { readonly [Key in keyof Asked]?: Asked[Key] | undefined }): void {
  const next = Object.entries({ ...asked.value, ...change }).filter(
    ([, value]) => value !== undefined,
  );
  asked.value = { ...ANYTHING, ...Object.fromEntries(next) };
}

function momentOf(date: string | undefined, time: string): number | undefined {
  if (date === undefined) return undefined;
  const read = readyByOf({ date, time, zone: phoneZone() }, localOf);
  return read.ok ? read.value.at : undefined;
}

const wanted = computed<Wanted>(() => {
  const { from, to, ...rest } = asked.value;
  const first = momentOf(from, "00:00");
  const last = momentOf(to, "23:59");
  return {
    ...rest,
    ...(first === undefined ? {} : { from: first }),
    ...(last === undefined ? {} : { to: last + MINUTE - 1 }),
  };
});

/** Every batch that ended, the latest first. */
export const ended = computed(() => logbookOf(records.value));

/** What they can be told apart by. */
export const facets = computed(() => facetsOf(ended.value));

/** What was found, and what it comes to. */
interface Found {
  readonly rows: readonly EndedBatch[];
  readonly summary: Summary;
}

let last: (Found & { readonly of: readonly EndedBatch[]; readonly key: string }) | undefined;

/** What was looked for last is found at once when it is asked for again. */
function lookFor(of: readonly EndedBatch[], what: Wanted): Found {
  const key = JSON.stringify(what);
  if (last?.of !== of || last.key !== key) {
    const rows = searchLogbook(of, what);
    last = { of, key, rows, summary: summaryOf(rows) };
  }
  return last;
}

const looked = computed(() => lookFor(ended.value, wanted.value));
/** Whether there is anything to tell good batches from poor ones by. */
export const rankable = computed(() => canBeRanked(ended.value));
/** Those that are looked for, in the order that is wanted. */
export const found = computed(() =>
  byMerit.value && rankable.value ? bestFirst(looked.value.rows) : looked.value.rows,
);
/** What they come to. */
export const summary = computed(() => looked.value.summary);

/** Looks for words before they are asked for: what is drawn then need not wait for it. */
export function lookAhead(text: string): void {
  lookFor(ended.peek(), { ...wanted.peek(), text });
}
