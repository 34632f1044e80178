import * as z from "zod/mini";
import { type ClearLesson, clearLesson } from "../core/logbook/learn/clear-lesson.ts";
import { openRuns, records, recordsRead } from "./state.ts";
import { keptShelf } from "./storage/remembered.ts";

const figure = z.number();
const lessonSchema = z.object({
  took: z.object({ mean: figure, low: figure, high: figure }),
  passes: figure,
  batches: figure,
});

/** What was last said of each batch being made, by its id. */
const shelf = keptShelf("lessons");

const saidBefore = (runId: string): ClearLesson | undefined =>
  lessonSchema.safeParse(new Map(Object.entries(shelf.read())).get(runId)).data;

/** What this bar's other batches teach of when one will run clear, once all of them were read. */
function learntNow(runId: string): ClearLesson | undefined {
  const learnt = clearLesson(records.value, runId);
  const open = new Set(openRuns.value.map(({ id }) => id));
  const others = Object.entries(shelf.read()).filter(([id]) => id !== runId && open.has(id));
  const { took, passes, batches } = learnt ?? {};
  const mine = took && {
    took: { mean: took.mean, low: took.low, high: took.high },
    passes,
    batches,
  };
  shelf.write(Object.fromEntries(mine === undefined ? others : [...others, [runId, mine]]));
  return learnt;
}

/**
 * When this bar's batches usually run clear. Until all of them were read it is what was last said of
 * this one: a line that came a moment after the rest would push everything down.
 */
export const lessonFor = (runId: string): ClearLesson | undefined =>
  recordsRead.value ? learntNow(runId) : saidBefore(runId);
