import { beforeEach, expect, test, vi } from "vitest";
import { readBooks, removeSpec, writeIngredients, writeSpecs } from "../../../app/storage/books.ts";
import type { Database } from "../../../app/storage/database.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { freshPhone } from "../../support/phone-storage.ts";
import { demoSpec } from "../../support/play-run.ts";

const beacon = demoSpec("Pear Beacon");
const slush = demoSpec("Harbour Slush");
const some = CUPBOARD.slice(0, 2);

let db: Database;
beforeEach(async () => {
  db = await freshPhone();
});

test("saved specs and ingredients read back; saving again replaces", async () => {
  await writeSpecs(db, [beacon, slush]);
  await writeIngredients(db, some);
  await writeSpecs(db, [{ ...beacon, version: 2 }]);
  const books = await readBooks(db);
  expect(books.unread).toBe(0);
  expect(books.specs).toHaveLength(2);
  expect(books.specs.find(({ id }) => id === beacon.id)?.version).toBe(2);
  expect(new Set(books.ingredients)).toEqual(new Set(some));
});

test("a removed spec is gone, the others stay", async () => {
  await writeSpecs(db, [beacon, slush]);
  await removeSpec(db, beacon.id);
  expect((await readBooks(db)).specs).toEqual([slush]);
});

test("records that this version cannot read stay and are counted", async () => {
  await writeSpecs(db, [beacon]);
  const odd = { id: "odd", name: "", future: true };
  await db.put("specs", odd);
  await db.put("ingredients", odd);
  expect(await readBooks(db)).toEqual({ specs: [beacon], ingredients: [], unread: 2 });
  expect(await db.get("specs", "odd")).toEqual(odd);
});

test("every write asks to be flushed to disk", async () => {
  const asked = vi.spyOn(IDBDatabase.prototype, "transaction");
  await writeSpecs(db, [beacon]);
  await removeSpec(db, beacon.id);
  await writeIngredients(db, some);
  expect(asked.mock.calls.map(([, mode, options]) => [mode, options])).toEqual(
    Array(3).fill(["readwrite", { durability: "strict" }]),
  );
  asked.mockRestore();
});
