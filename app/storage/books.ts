import { type Ingredient, ingredientSchema } from "../../core/spec/ingredient.ts";
import { type Spec, specSchema } from "../../core/spec/spec.ts";
import type { Database } from "./database.ts";

/** The spec book and the cupboard: whole records, replaced when saved. */
export interface Books {
  readonly specs: readonly Spec[];
  readonly ingredients: readonly Ingredient[];
  /** Records this version does not understand; they stay stored. */
  readonly unread: number;
}

const understood = <Value>(
  stored: readonly unknown[],
  check: (entry: unknown) => { success: boolean; data?: Value | undefined },
): Value[] =>
  stored.flatMap((entry) => {
    const checked = check(entry);
    return checked.success && checked.data !== undefined ? [checked.data] : [];
  });

/** Reads the spec book and the cupboard. */
export async function readBooks(db: Database): Promise<Books> {
  const [specs, ingredients] = await Promise.all([db.getAll("specs"), db.getAll("ingredients")]);
  const goodSpecs = understood<Spec>(specs, (entry) => specSchema.safeParse(entry));
  const goodIngredients = understood<Ingredient>(ingredients, (entry) =>
    ingredientSchema.safeParse(entry),
  );
  const unread = specs.length + ingredients.length - goodSpecs.length - goodIngredients.length;
  return { specs: goodSpecs, ingredients: goodIngredients, unread };
}

/** Saves a spec, flushed to disk before it resolves. @throws DOMException when it could not */
export async function writeSpecs(db: Database, specs: readonly Spec[]): Promise<void> {
  const tx = db.transaction("specs", "readwrite", { durability: "strict" });
  await Promise.all([...specs.map((spec) => tx.store.put(spec)), tx.done]);
}

/** Removes a spec; batches made from it keep their own frozen copy. */
export async function removeSpec(db: Database, id: string): Promise<void> {
  const tx = db.transaction("specs", "readwrite", { durability: "strict" });
  await Promise.all([tx.store.delete(id), tx.done]);
}

/** Saves ingredients, flushed to disk before it resolves. @throws DOMException when it could not */
export async function writeIngredients(
  db: Database,
  ingredients: readonly Ingredient[],
): Promise<void> {
  const tx = db.transaction("ingredients", "readwrite", { durability: "strict" });
  await Promise.all([...ingredients.map((one) => tx.store.put(one)), tx.done]);
}
