import { type Result, refused } from "../core/quantity/result.ts";
import { inventedHistory } from "./demo/history/invented.ts";
import { demoWords } from "./demo/words.ts";
import { atDesk, type StoreRefusal, store } from "./desk.ts";
import { genericCupboard } from "./pantry.ts";
import { PRACTICE_RUN } from "./practice.ts";
import { decisions } from "./reading.ts";
import { forgetRuns, takeRecords } from "./state.ts";
import { addDemo, DEMO_RUN, removeDemo } from "./storage/demo.ts";

/** Puts the invented history in, in the language of the moment: only ever because somebody asked for it. */
export async function putDemoHistory(): Promise<Result<void, StoreRefusal | "part-missing">> {
  const part = await decisions().catch(() => undefined);
  const words = await demoWords();
  if (part === undefined || words === undefined) return refused("part-missing");
  const history = inventedHistory(atDesk().clock.now(), words, genericCupboard.value);
  const logs = history.flatMap((events) => {
    const record = part.storedRecord(events, 0);
    return record === undefined ? [] : [{ events, record }];
  });
  const written = await store((db) => addDemo(db, logs));
  if (!written.ok) return written;
  takeRecords(logs.map(({ record }) => record));
  atDesk().announce({ stored: "everything" });
  return written;
}

async function removeCalled(name: string): Promise<Result<number, StoreRefusal>> {
  const removed = await store((db) => removeDemo(db, name));
  if (!removed.ok) return removed;
  forgetRuns(new Set(removed.value));
  atDesk().announce({ stored: "everything" });
  return { ok: true, value: removed.value.length };
}

/** Removes the invented history, and nothing else. */
export const removeDemoHistory = () => removeCalled(DEMO_RUN);

/** Removes whatever was made in practice, and nothing else. */
export const removePractice = () => removeCalled(PRACTICE_RUN);
