import { LAST_MOMENT, type RunEvent, type Stamp, type Weighed } from "./event.ts";
import type {
  Bottled,
  Judged,
  LinePoured,
  Pictured,
  Reading,
  RePour,
  Run,
  Seen,
  ShapeNoted,
  StockPoured,
  Tasted,
  TopUpPoured,
  Yielded,
} from "./run.ts";

/** What a run keeps in the order it was said. */
export interface Lists {
  readonly poured: LinePoured[];
  readonly readings: Reading[];
  readonly looks: Seen[];
  readonly rePours: RePour[];
  readonly yields: Yielded[];
  readonly topUps: TopUpPoured[];
  readonly bottlings: Bottled[];
  readonly notes: Run["notes"][number][];
  readonly shapes: ShapeNoted[];
  readonly tares: Run["tares"][number][];
  readonly stands: Run["stands"][number][];
  readonly hands: Run["hands"][number][];
  readonly lots: Run["lots"][number][];
  readonly tastings: Tasted[];
  readonly verdicts: Judged[];
  readonly photos: Pictured[];
  readonly tagged: Run["tagged"][number][];
  readonly unpictured: Run["unpictured"][number][];
  readonly stockPoured: StockPoured[];
  readonly stockEnded: Run["stockEnded"][number][];
}

/** Before anything was said. */
export const noLists = (): Lists => ({
  poured: [],
  readings: [],
  looks: [],
  rePours: [],
  yields: [],
  topUps: [],
  bottlings: [],
  notes: [],
  shapes: [],
  tares: [],
  stands: [],
  hands: [],
  lots: [],
  tastings: [],
  verdicts: [],
  photos: [],
  tagged: [],
  unpictured: [],
  stockPoured: [],
  stockEnded: [],
});

/** A moment so many ms later, as long as it is one that an event may carry. */
export const later = (at: number, byMs: number): number =>
  Math.min(LAST_MOMENT, Math.max(0, at + byMs));

/** A copy of a list, its moments so many ms later. */
function copied<One extends { readonly at: number }>(list: readonly One[], laterBy: number): One[] {
  if (laterBy === 0) return [...list];
  return list.map((one) => ({ ...one, at: later(one.at, laterBy) }));
}

/**
 * Copies of what a run keeps, to be added to.
 *
 * @param laterBy - ms that all of it is put later by, as when a clock was set; below 0 earlier
 */
export const listsOf = (kept: Pick<Run, keyof Lists>, laterBy = 0): Lists => ({
  poured: copied(kept.poured, laterBy),
  readings: copied(kept.readings, laterBy),
  looks: copied(kept.looks, laterBy),
  rePours: copied(kept.rePours, laterBy),
  yields: copied(kept.yields, laterBy),
  topUps: copied(kept.topUps, laterBy),
  bottlings: copied(kept.bottlings, laterBy),
  notes: copied(kept.notes, laterBy),
  shapes: copied(kept.shapes, laterBy),
  tares: copied(kept.tares, laterBy),
  stands: copied(kept.stands, laterBy),
  hands: copied(kept.hands, laterBy),
  lots: copied(kept.lots, laterBy),
  tastings: copied(kept.tastings, laterBy),
  verdicts: copied(kept.verdicts, laterBy),
  photos: copied(kept.photos, laterBy),
  tagged: copied(kept.tagged, laterBy),
  unpictured: copied(kept.unpictured, laterBy),
  stockPoured: copied(kept.stockPoured, laterBy),
  stockEnded: copied(kept.stockEnded, laterBy),
});

const said = ({ id, act, device, at, visit }: Stamp & { readonly visit: string }) => ({
  id,
  act,
  device,
  at,
  visit,
});

const scaled = ({ weighed }: { readonly weighed?: Weighed | undefined }) =>
  weighed === undefined ? {} : { weighed };

/**
 * Notes what was said, in place.
 *
 * @param lists - what was said before
 * @returns false where an event says nothing that is kept in a list
 */
export function keep(lists: Lists, event: RunEvent): boolean {
  switch (event.type) {
    case "line.poured":
      lists.poured.push({ ...said(event), line: event.line });
      return true;
    case "reading.logged": {
      const { what, value, unit } = event;
      lists.readings.push({ ...said(event), what, value, unit, ...scaled(event) });
      return true;
    }
    case "look.noted":
      lists.looks.push({ ...said(event), look: event.look });
      return true;
    case "run.repoured":
      lists.rePours.push({ ...said(event), ml: event.ml, ...scaled(event) });
      return true;
    case "yield.logged":
      lists.yields.push({
        ...said(event),
        ml: event.ml,
        ...scaled(event),
        ...(event.settles === undefined ? {} : { settles: event.settles }),
      });
      return true;
    case "topup.poured": {
      const { ml, advised, planned } = event;
      lists.topUps.push({ ...said(event), ml, advised, planned });
      return true;
    }
    case "run.bottled":
      lists.bottlings.push({ ...said(event), bottles: event.bottles, useBy: event.useBy });
      return true;
    case "shape.noted":
      lists.shapes.push({ ...said(event), shape: event.shape });
      return true;
    case "note.added":
      lists.notes.push({ at: event.at, text: event.text });
      return true;
    default:
      return keepAround(lists, event);
  }
}

/** Keeps what is said of the whole run rather than of one step; false where it is something else. */
function keepAround(lists: Lists, event: RunEvent): boolean {
  const { act, device, at } = event;
  const it = { act, device, at };
  switch (event.type) {
    case "tare.noted":
      lists.tares.push({ ...it, vessel: event.vessel, grams: event.grams });
      return true;
    case "vessel.moved":
      lists.stands.push({ ...it, to: event.to });
      return true;
    case "hands.changed":
      lists.hands.push({ ...it, initials: event.initials });
      return true;
    case "lot.noted": {
      const { ingredient, lot, useBy } = event;
      lists.lots.push({ ...it, ingredient, lot, ...(useBy === undefined ? {} : { useBy }) });
      return true;
    }
    default:
      return keepAfterwards(lists, event);
  }
}

/** Keeps what is said of the finished drink; false where it is something else. */
function keepAfterwards(lists: Lists, event: RunEvent): boolean {
  const { act, device, at } = event;
  const it = { act, device, at };
  switch (event.type) {
    case "taste.noted":
      lists.tastings.push({ ...it, scores: event.scores, words: event.words, by: event.by });
      return true;
    case "verdict.given": {
      const { verdict, repeat, text } = event;
      lists.verdicts.push({ ...it, verdict, repeat, text });
      return true;
    }
    case "tag.added":
    case "tag.removed":
      lists.tagged.push({ ...it, tag: event.tag, on: event.type === "tag.added" });
      return true;
    case "photo.added": {
      const { photo, media, bytes, width, height } = event;
      lists.photos.push({ ...it, photo, media, bytes, width, height });
      return true;
    }
    case "photo.removed":
      lists.unpictured.push({ ...it, photo: event.photo });
      return true;
    case "stock.poured": {
      const { ml, count, unit } = event;
      lists.stockPoured.push({ ...it, ml, count, unit });
      return true;
    }
    case "stock.ended":
      lists.stockEnded.push({ ...it, how: event.how, reason: event.reason });
      return true;
    default:
      return false;
  }
}
