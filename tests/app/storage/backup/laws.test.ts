import fc from "fast-check";
import { expect, test } from "vitest";
import { importBackup } from "../../../../app/storage/backup/import.ts";
import { openBackup } from "../../../../app/storage/backup/open.ts";
import { type Books, readBooks, writeTo } from "../../../../app/storage/books.ts";
import type { Database } from "../../../../app/storage/database.ts";
import type { RunEvent } from "../../../../core/run/event.ts";
import { mergeEvents } from "../../../../core/run/order.ts";
import { CUPBOARD } from "../../../../core/spec/cupboard-table.ts";
import type { Ingredient } from "../../../../core/spec/ingredient.ts";
import type { Spec } from "../../../../core/spec/spec.ts";
import { everyEvent, everything, freshPhone } from "../../../support/phone/phone-storage.ts";
import { anyTurns, play, type Turn } from "../../../support/world/any-order.ts";
import { bringIn, fill, textOf, unwatched } from "../../../support/world/backup-file.ts";
import { demoSpec } from "../../../support/world/play-run.ts";
import { TestBench } from "../../../support/world/run-events.ts";

/** Much work: a busy machine takes its time, ms. */
const SLOW = 60_000;
/** Seeds are fixed: a run that fails fails again. */
const RUNS = { seed: 2511, numRuns: 40 };

interface Holds {
  readonly events: readonly RunEvent[];
  readonly specs: readonly Spec[];
  readonly ingredients: readonly Ingredient[];
}

/** A batch that goes on from a log on a phone of its own, by odd hands. */
function goOn(from: readonly RunEvent[], device: string, turns: readonly Turn[]) {
  const runId = from[0]?.runId ?? `run-${device}`;
  const bench = new TestBench(1_000_000_000_000, device, runId);
  bench.events = from;
  if (from.length === 0) bench.start();
  play(bench, turns);
  return bench.events;
}

const books = fc
  .record({ names: fc.subarray(["Pear Beacon", "Harbour Slush"]), own: fc.nat({ max: 4 }) })
  .map(({ names, own }) => ({
    specs: names.map(demoSpec),
    ingredients: CUPBOARD.slice(own, own + 2),
  }));

/** Two phones that share a batch, go on with it apart, and each make another of their own. */
const phones: fc.Arbitrary<readonly [Holds, Holds]> = fc
  .record({
    shared: anyTurns(8),
    apart: fc.tuple(anyTurns(8), anyTurns(8)),
    own: fc.tuple(anyTurns(8), anyTurns(8)),
    books: fc.tuple(books, books),
  })
  .map(({ shared, apart, own, books: [mine, theirs] }) => {
    const begun = goOn([], "phone-s", shared);
    const holds = (device: string, further: readonly Turn[], another: readonly Turn[]) => [
      ...goOn(begun, device, further),
      ...goOn([], `${device}-2`, another),
    ];
    return [
      { ...mine, events: holds("phone-a", apart[0], own[0]) },
      { ...theirs, events: holds("phone-b", apart[1], own[1]) },
    ];
  });
const phone = phones.map(([one]) => one);

async function phoneOf({ events, specs, ingredients }: Holds): Promise<Database> {
  const db = await freshPhone();
  const tx = db.transaction("events", "readwrite");
  for (const event of events) await tx.store.add(event);
  await tx.done;
  await writeTo(db, "specs", specs);
  await writeTo(db, "ingredients", ingredients);
  return db;
}

/** What is on a phone, however it came there. */
async function state(db: Database): Promise<readonly [readonly RunEvent[], Books]> {
  return [mergeEvents(await everyEvent(db), []), await readBooks(db)];
}

test(
  "brought in on an empty phone, a backup gives the same events and books",
  async () => {
    await fc.assert(
      fc.asyncProperty(phone, async (one) => {
        const from = await phoneOf(one);
        const [text, before] = [await textOf(from), await state(from)];
        const there = await freshPhone();
        await bringIn(there, text);
        expect(await state(there)).toEqual(before);
      }),
      RUNS,
    );
  },
  SLOW,
);

test(
  "bringing it in again changes nothing, on its own phone or another",
  async () => {
    await fc.assert(
      fc.asyncProperty(phones, async ([one, other]) => {
        const from = await phoneOf(one);
        const text = await textOf(from);
        const before = await everything(from);
        expect((await bringIn(from, text)).added).toBe(0);
        expect(await everything(from)).toEqual(before);
        const there = await phoneOf(other);
        await bringIn(there, text);
        const once = await everything(there);
        expect((await bringIn(there, text)).added).toBe(0);
        expect(await everything(there)).toEqual(once);
      }),
      RUNS,
    );
  },
  SLOW,
);

test(
  "two backups may be brought in in either order",
  async () => {
    await fc.assert(
      fc.asyncProperty(phones, async ([one, other]) => {
        const first = await textOf(await phoneOf(one));
        const second = await textOf(await phoneOf(other));
        const there = await freshPhone();
        await bringIn(there, first);
        await bringIn(there, second);
        const either = await state(there);
        const again = await freshPhone();
        await bringIn(again, second);
        await bringIn(again, first);
        expect(await state(again)).toEqual(either);
      }),
      RUNS,
    );
  },
  SLOW,
);

/** What may happen to a file on its way: bytes altered, cut out, put in, cut off. */
const harm = fc.array(
  fc.record({
    // Not mostly at the beginning, which is the header.
    at: fc.noBias(fc.nat({ max: 9999 })).map((part) => part / 10_000),
    what: fc.constantFrom("alter", "cut", "insert", "end"),
    bytes: fc.oneof(
      fc.uint8Array({ minLength: 1, maxLength: 20 }),
      fc
        .constantFrom("\n", "\0", '"', "{", "[[[[", "\\u0000", "null", "__proto__", "1e999", "\r\n")
        .map((text) => new TextEncoder().encode(text)),
    ),
  }),
  { minLength: 1, maxLength: 6 },
);

function harmed(bytes: Uint8Array, by: typeof harm extends fc.Arbitrary<infer All> ? All : never) {
  let all = [...bytes];
  for (const { at, what, bytes: other } of by) {
    const place = Math.floor(at * all.length);
    const gone = what === "insert" ? 0 : what === "end" ? all.length : other.length;
    const put = what === "alter" || what === "insert" ? [...other] : [];
    all = all.toSpliced(place, gone, ...put);
  }
  return Uint8Array.from(all);
}

/** Everything that was there is there still, as it was. */
async function expectKept(db: Database, before: Awaited<ReturnType<typeof state>>): Promise<void> {
  const [events, held] = before;
  const [eventsNow, heldNow] = await state(db);
  expect(eventsNow).toEqual(expect.arrayContaining([...events]));
  for (const name of ["specs", "ingredients", "procedures", "planned"] as const) {
    expect(heldNow[name]).toEqual(expect.arrayContaining([...held[name]]));
  }
}

test(
  "whatever happens to its bytes, a file never throws, and never removes or changes what is here",
  async () => {
    const from = await freshPhone();
    await fill(from);
    const text = new TextEncoder().encode(await textOf(from));
    const came: string[] = [];
    await fc.assert(
      fc.asyncProperty(harm, fc.boolean(), async (by, empty) => {
        const there = await freshPhone();
        if (!empty) await fill(there);
        const before = await everything(there);
        const held = await state(there);
        const read = await openBackup(there, new Blob([harmed(text, by)]), unwatched());
        expect(await everything(there)).toEqual(before);
        came.push(read.ok ? "read" : read.refusal);
        if (read.ok) await importBackup(there, read.value.fresh, unwatched());
        await expectKept(there, held);
      }),
      { seed: 2511, numRuns: 300 },
    );
    // The harm was neither always so bad that nothing was read, nor never.
    const readable = came.filter((one) => one === "read").length;
    expect(readable).toBeGreaterThan(150);
    expect(readable).toBeLessThan(300);
  },
  SLOW,
);
