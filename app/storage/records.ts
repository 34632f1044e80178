import { RECORD_SHAPE } from "../../core/logbook/record-shape.ts";
import { field } from "../../core/quantity/field.ts";
import type { Database, StoredRecord } from "./database.ts";
import { inOne } from "./in-one.ts";

/** Under this key stands which records are true; they are worked out anew where it says otherwise. */
const STATE = "records";
/** So many are read before the page gets a turn. */
const AT_ONCE = 250;

/** Which records need to be worked out anew: every one, or those of some runs. */
export type Stale = "all" | readonly string[];

/** What the phone says of its records: their version, and runs whose log has grown without them. */
interface RecordsState {
  readonly shape: number;
  readonly stale: readonly string[];
}

const ids = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one) => typeof one === "string") : [];

function stateOf(stored: unknown): RecordsState {
  if (typeof stored !== "object" || stored === null) return { shape: 0, stale: [] };
  return { shape: Number(field(stored, "shape")), stale: ids(field(stored, "stale")) };
}

/**
 * Which records are not to be trusted; nothing where all are. A phone without any log needs no
 * record: what works them out is not even fetched for it.
 */
export async function staleRecords(db: Database): Promise<Stale | undefined> {
  const { shape, stale } = stateOf(await db.get("settings", STATE));
  if (shape === RECORD_SHAPE) return stale.length > 0 ? stale : undefined;
  const [anyEvent] = await db.getAllKeys("events", undefined, 1);
  if (anyEvent !== undefined) return "all";
  await shapeIsNow(db);
  return undefined;
}

/** The store in which it is said which records are stale, inside somebody's own transaction. */
interface StateStore {
  readonly get: (key: string) => Promise<unknown>;
  readonly put: (value: unknown, key: string) => Promise<unknown>;
}

/** Says that the logs of some runs grew without their records: in the transaction that grew them. */
export async function markStale(store: StateStore, runIds: Iterable<string>): Promise<void> {
  const { shape, stale } = stateOf(await store.get(STATE));
  await store.put({ shape, stale: [...new Set([...stale, ...runIds])] }, STATE);
}

/** Says that the records of some runs are true again: in the transaction that wrote them. */
export async function markTrue(store: StateStore, runIds: readonly string[]): Promise<void> {
  const { shape, stale } = stateOf(await store.get(STATE));
  const done = new Set(runIds);
  await store.put({ shape, stale: stale.filter((id) => !done.has(id)) }, STATE);
}

/** Says that every record says what this version wants of it; what became stale meanwhile stays so. */
export async function shapeIsNow(db: Database): Promise<void> {
  const tx = db.transaction("settings", "readwrite");
  await inOne(tx, async () => {
    const { stale } = stateOf(await tx.store.get(STATE));
    await tx.store.put({ shape: RECORD_SHAPE, stale } satisfies RecordsState, STATE);
  });
}

/** Reads every record, a part at a time. */
export async function* readRecords(db: Database): AsyncGenerator<readonly StoredRecord[]> {
  let after: string | undefined;
  for (;;) {
    const range = after === undefined ? undefined : IDBKeyRange.lowerBound(after, true);
    const part = await db.getAll("records", range, AT_ONCE);
    const last = part.at(-1);
    if (last === undefined) return;
    yield part;
    after = last.id;
  }
}
