import { type Result, refused } from "../../../core/quantity/result.ts";
import type { Database } from "../database.ts";
import { differingFrom, type Known } from "./compare.ts";
import { type Entry, entryOf, type LineRefusal } from "./entry.ts";
import { MOST_LINE } from "./header.ts";
import { everyKey } from "./keys.ts";
import { type Kept, KINDS, nothingBrought, STORES, type StoreName } from "./kinds.ts";
import type { Line } from "./lines.ts";
import { isSame } from "./same.ts";

/** So many lines that were left out are listed; of the others the number is told. */
const MOST_LISTED = 10;
/** More lines than are looked up in one go come late at most, so that the very first are known. */
const LATE = 1000;

/** A line that was left out, and why. */
export interface LeftLine {
  /** As an editor counts them: the header is line 1. */
  readonly number: number;
  readonly refusal: LineRefusal;
  readonly about: Readonly<Record<string, string | number>>;
}

/** Lines that were left out: how many, and the first of them. */
export interface LeftLines {
  readonly count: number;
  readonly first: readonly LeftLine[];
}

type Here = Readonly<Record<StoreName, ReadonlySet<string>>>;
type Waiting = { readonly [Name in StoreName]: Known<Name>[] };

/** Every id that is stored. */
export async function hereIn(db: Database): Promise<Here> {
  const keys = async (store: StoreName) => new Set(await everyKey(db.transaction(store).store));
  const [events, specs, ingredients, procedures, planned, photos] = await Promise.all([
    keys("events"),
    keys("specs"),
    keys("ingredients"),
    keys("procedures"),
    keys("planned"),
    keys("photos"),
  ]);
  return { events, specs, ingredients, procedures, planned, photos };
}

const nobodyWaits = (): Waiting => ({
  events: [],
  specs: [],
  ingredients: [],
  procedures: [],
  planned: [],
  photos: [],
});

/** Sorts the lines of a file into what is new, what is known and what is left out. */
export class Sorter {
  readonly fresh = nothingBrought();
  readonly #db: Database;
  readonly #here: Here;
  readonly #known = new Set<string>();
  readonly #first: LeftLine[] = [];
  #waiting = nobodyWaits();
  #waits = 0;
  #left = 0;

  constructor(db: Database, here: Here) {
    this.#db = db;
    this.#here = here;
  }

  get known(): number {
    return this.#known.size;
  }

  get left(): LeftLines {
    const first = this.#first.toSorted((a, b) => a.number - b.number).slice(0, MOST_LISTED);
    return { count: this.#left, first };
  }

  get isFull(): boolean {
    return this.#waits >= 1;
  }

  take({ number, bytes, tooLong }: Line): void {
    const entry: Result<Entry, LineRefusal> = tooLong
      ? refused("line-too-long", { most: MOST_LINE })
      : entryOf(bytes);
    if (entry.ok) this.#file(number, entry.value.store, entry.value.record);
    else this.#leave({ number, refusal: entry.refusal, about: entry.about });
  }

  /** Looks up what is known by id: only the same content is the same record. */
  async compare(): Promise<void> {
    const waiting = this.#waiting;
    this.#waiting = nobodyWaits();
    this.#waits = 0;
    for (const store of STORES) await this.#compareOn(store, waiting);
  }

  async #compareOn<Name extends StoreName>(store: Name, waiting: Waiting): Promise<void> {
    const some: readonly Known<Name>[] = waiting[store];
    const differing = new Set(await differingFrom(this.#db, store, some));
    for (const one of some) {
      if (!differing.has(one)) this.#known.add(`${store} ${one.record.id}`);
      else this.#leave({ number: one.number, refusal: "line-differs-here", about: {} });
    }
  }

  #file<Name extends StoreName>(number: number, store: Name, record: Kept[Name]): void {
    if (this.#here[store].has(record.id)) {
      const waiting: Known<Name>[] = this.#waiting[store];
      waiting.push({ number, record });
      this.#waits += 1 / KINDS[store].atOnce;
      return;
    }
    const fresh: Map<string, Kept[Name]> = this.fresh[store];
    const above = fresh.get(record.id);
    if (above === undefined) fresh.set(record.id, record);
    else if (!isSame(above, record)) {
      this.#leave({ number, refusal: "line-differs-above", about: {} });
    }
  }

  #leave(line: LeftLine): void {
    this.#left += 1;
    // Lines that had to be looked up come a little late: some more are kept, to list the very first.
    if (this.#first.length < MOST_LISTED + LATE) this.#first.push(line);
  }
}
