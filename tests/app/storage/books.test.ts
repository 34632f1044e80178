import { beforeEach, expect, test, vi } from "vitest";
import { readBooks, removeFrom, writeTo } from "../../../app/storage/books.ts";
import type { Database } from "../../../app/storage/database.ts";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { freshPhone } from "../../support/phone/phone-storage.ts";
import { plannedBatch } from "../../support/world/planned-batch.ts";
import { demoSpec } from "../../support/world/play-run.ts";

const beacon = demoSpec("Pear Beacon");
const slush = demoSpec("Harbour Slush");
const some = CUPBOARD.slice(0, 2);

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test("saved specs and ingredients read back; saving again replaces", async () => {
  await writeTo(db, "specs", [beacon, slush]);
  await writeTo(db, "ingredients", some);
  await writeTo(db, "specs", [{ ...beacon, version: 2 }]);
  const books = await readBooks(db);
  expect(books.unread).toBe(0);
  expect(books.specs).toHaveLength(2);
  expect(books.specs.find(({ id }) => id === beacon.id)?.version).toBe(2);
  expect(new Set(books.ingredients)).toEqual(new Set(some));
});

test("a removed spec is gone, the others stay", async () => {
  await writeTo(db, "specs", [beacon, slush]);
  await removeFrom(db, "specs", beacon.id);
  expect((await readBooks(db)).specs).toEqual([slush]);
});

test("procedures and planned batches read back as saved", async () => {
  await writeTo(db, "procedures", [{ ...DAIRY_WASH, id: "own", name: "Slower wash" }]);
  await writeTo(db, "planned", [plannedBatch("friday", 1_000_000)]);
  const { procedures, planned } = await readBooks(db);
  expect(procedures).toEqual([{ ...DAIRY_WASH, id: "own", name: "Slower wash" }]);
  expect(planned).toEqual([plannedBatch("friday", 1_000_000)]);
  await removeFrom(db, "planned", "friday");
  expect((await readBooks(db)).planned).toEqual([]);
});

test("records that this version cannot read stay and are counted", async () => {
  await writeTo(db, "specs", [beacon]);
  const odd = { id: "odd", name: "", future: true };
  await db.put("specs", odd);
  await db.put("ingredients", odd);
  expect(await readBooks(db)).toEqual({
    specs: [beacon],
    ingredients: [],
    procedures: [],
    planned: [],
    unread: 2,
  });
  expect(await db.get("specs", "odd")).toEqual(odd);
});

test("every write asks to be flushed to disk", async () => {
  const asked = vi.spyOn(IDBDatabase.prototype, "transaction");
  await writeTo(db, "specs", [beacon]);
  await removeFrom(db, "specs", beacon.id);
  await writeTo(db, "ingredients", some);
  expect(asked.mock.calls.map(([, mode, options]) => [mode, options])).toEqual(
    Array(3).fill(["readwrite", { durability: "strict" }]),
  );
  asked.mockRestore();
});
