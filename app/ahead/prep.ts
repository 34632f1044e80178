import { computed } from "@preact/signals";
import type { DayPlan, PlacedStep } from "../../core/board/schedule/day-plan.ts";
import type { Limits } from "../../core/board/schedule/job.ts";
import { notBegun, type PrepDay, prepDay } from "../../core/board/schedule/prep-day.ts";
import { limitsOf } from "../../core/board/schedule/room.ts";
import { DAY, MINUTE } from "../../core/quantity/time-units-table.ts";
import { localOf, phoneZone } from "../local-time.ts";
import { now, openBatches, planned, records, runOf, settings } from "../state.ts";
import { dueTime } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { stepTitle } from "../words/step-title.ts";

/** Further ahead than this nobody's hours are known. Judgement. */
const FARTHEST = 60 * DAY;

/** A minute is as fine as a plan need be: it is not worked out anew each second. */
export const minute = computed(() => Math.floor(now.value / MINUTE) * MINUTE);

/** Batches that are planned and not begun, the first to be ready first. */
export const waiting = computed(() =>
  notBegun(planned.value, records.value).toSorted((a, b) => a.readyBy - b.readyBy),
);

const room = computed(() => {
  const { people, filterStands, fridge, freezer, hours } = settings.value;
  return { people, filterStands, fridge, freezer, hours };
});

/** What there is until everything promised is ready, and something for a moment more. */
export function limitsUntil(readyBy: number): Limits {
  const from = minute.value;
  const promised = openBatches.value.flatMap((run) => run.readyBy ?? []);
  const last = Math.max(readyBy, ...promised, ...waiting.value.map((one) => one.readyBy));
  const to = Math.min(last, from + FARTHEST) + 2 * DAY;
  return limitsOf(room.value, { from: from - DAY, to }, phoneZone(), localOf);
}

/** The prep list as somebody last saw it. */
export const seen = computed(() => ({
  placed: settings.value.seenPrep,
  readyBy: settings.value.seenReady,
}));

/** What is to be remembered of the prep list as it is seen now. */
export const asSeen = (placed: readonly PlacedStep[], { promised }: PrepDay) => ({
  seenPrep: [...placed],
  seenReady: { ...promised },
});

/** All that is being made and planned, as it stands this minute. */
export const prep = computed<PrepDay>(() =>
  prepDay(openBatches.value, waiting.value, limitsUntil(minute.value), minute.value, seen.value),
);

/** The plan as it can be carried out: on time, or making the least of it. */
export const dayOf = ({ plan }: PrepDay): DayPlan => (plan.ok ? plan : plan.least);

/** What a job is called: its spec, and the batch where it has begun. */
export function jobName(id: string): string {
  const run = runOf(id);
  if (run !== undefined) return `${run.plan.spec.name} ${run.batch}`;
  return planned.value.find((one) => one.id === id)?.plan.spec.name ?? id;
}

/** What a step of a job is called; an earlier passage through it carries its round: `re-pour#1`. */
export function stepName(job: string, passage: string): string {
  const [step = passage] = passage.split("#");
  const made = runOf(job) ?? planned.value.find((one) => one.id === job);
  const found = made?.procedure.steps.find(({ id }) => id === step);
  return stepTitle(found ?? { id: step });
}

/** A moment as it is said this minute. */
export const whenIs = (moment: number): string => dueTime(moment, minute.value);

/** By when a batch has to be begun, in words. */
export const startWords = (startAt: number): string =>
  startAt <= minute.value ? sayLater.days.startNow : sayLater.days.startBy(whenIs(startAt));
