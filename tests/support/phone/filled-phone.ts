import { afterEach, beforeEach, expect } from "vitest";
import type { Database } from "../../../app/storage/database.ts";
import { fill, textOf } from "../world/backup-file.ts";
import { everything, freshPhone } from "./phone-storage.ts";

/** A phone with something of every kind on it, and its backup's text. */
export interface FilledPhone {
  readonly db: Database;
  readonly text: string;
}

/** A full phone for each test of a file; whatever file is opened, only that never changes anything. */
export function filledPhone(): FilledPhone {
  let there: (FilledPhone & { readonly before: unknown }) | undefined;
  const phone = () => {
    if (there === undefined)
      throw new RangeError("the phone is filled with the first test, not before");
    return there;
  };
  beforeEach(async () => {
    const db = await freshPhone();
    await fill(db);
    there = { db, text: await textOf(db), before: await everything(db) };
  });
  afterEach(async () => {
    expect(await everything(phone().db)).toEqual(phone().before);
  });
  return {
    get db() {
      return phone().db;
    },
    get text() {
      return phone().text;
    },
  };
}
