import { type Result, refused } from "../core/quantity/result.ts";
import { inventedHistory } from "./demo/history/invented.ts";
import { atDesk, type StoreRefusal, store } from "./desk.ts";
import { decisions } from "./reading.ts";
import { forgetRuns, takeRecords } from "./state.ts";
import { addDemo, removeDemo } from "./storage/demo.ts";

/** Puts the invented history in: only ever because somebody asked for it. */
export async function putDemoHistory(): Promise<Result<void, StoreRefusal | "part-missing">> {
  const part = await decisions().catch(() => undefined);
  if (part === undefined) return refused("part-missing");
  const logs = inventedHistory(atDesk().clock.now()).flatMap((events) => {
    const record = part.storedRecord(events, 0);
    return record === undefined ? [] : [{ events, record }];
  });
  const written = await store((db) => addDemo(db, logs));
  if (!written.ok) return written;
  takeRecords(logs.map(({ record }) => record));
  atDesk().announce({ stored: "everything" });
  return written;
}

/** Removes the invented history, and nothing else. */
export async function removeDemoHistory(): Promise<Result<number, StoreRefusal>> {
  const removed = await store(removeDemo);
  if (!removed.ok) return removed;
  forgetRuns(new Set(removed.value));
  atDesk().announce({ stored: "everything" });
  return { ok: true, value: removed.value.length };
}
