import { type Planned, plannedSchema } from "../../core/board/planned.ts";
import { type Procedure, procedureSchema } from "../../core/method/procedure.ts";
import { type Ingredient, ingredientSchema } from "../../core/spec/ingredient.ts";
import { type Spec, specSchema } from "../../core/spec/spec.ts";
import type { Checked } from "./checked.ts";
import type { Database } from "./database.ts";
import { inOne } from "./in-one.ts";

/** Whole records, replaced when saved: the spec book, the cupboard, the procedures, the plans. */
export interface Books {
  readonly specs: readonly Spec[];
  readonly ingredients: readonly Ingredient[];
  readonly procedures: readonly Procedure[];
  readonly planned: readonly Planned[];
}

/** The name of a book. */
export type Book = keyof Books;

type Check<Value> = (entry: unknown) => Checked<Value>;

/** How a record of each book is read. */
export const CHECKS: { readonly [Name in Book]: Check<Books[Name][number]> } = {
  specs: (entry) => specSchema.safeParse(entry),
  ingredients: (entry) => ingredientSchema.safeParse(entry),
  procedures: (entry) => procedureSchema.safeParse(entry),
  planned: (entry) => plannedSchema.safeParse(entry),
};

interface ReadBook<Value> {
  readonly records: readonly Value[];
  readonly unread: number;
}

async function readBook<Name extends Book>(
  db: Database,
  name: Name,
): Promise<ReadBook<Books[Name][number]>> {
  const stored = await db.getAll(name);
  const check: Check<Books[Name][number]> = CHECKS[name];
  const records = stored.flatMap((entry) => check(entry).data ?? []);
  return { records, unread: stored.length - records.length };
}

/** Reads every book. Records this version does not understand are counted; they stay stored. */
export async function readBooks(db: Database): Promise<Books & { readonly unread: number }> {
  const [specs, ingredients, procedures, planned] = await Promise.all([
    readBook(db, "specs"),
    readBook(db, "ingredients"),
    readBook(db, "procedures"),
    readBook(db, "planned"),
  ]);
  return {
    specs: specs.records,
    ingredients: ingredients.records,
    procedures: procedures.records,
    planned: planned.records,
    unread: specs.unread + ingredients.unread + procedures.unread + planned.unread,
  };
}

/** Saves records of a book, flushed to disk before it resolves. @throws DOMException when it could not */
export async function writeTo<Name extends Book>(
  db: Database,
  name: Name,
  records: Books[Name],
): Promise<void> {
  const tx = db.transaction(name, "readwrite", { durability: "strict" });
  const store = tx.objectStore(name);
  await inOne(tx, () => Promise.all(records.map(async (one) => store.put({ ...one }))));
}

/** Removes a record; batches made from it keep their own frozen copy. */
export async function removeFrom(db: Database, name: Book, id: string): Promise<void> {
  const tx = db.transaction(name, "readwrite", { durability: "strict" });
  await inOne(tx, () => tx.objectStore(name).delete(id));
}
