import { type BatchRecord, recordOf } from "../../../core/logbook/record.ts";
import { throughFilter } from "../../../core/spec/wash.ts";
import { demoSpec, madeWhole, type Played, planned, started } from "./play-run.ts";

const DAY = 24 * 3_600_000;
export const PEAR_PLAN = planned(demoSpec("Pear Beacon"));

/** A whole batch of a day whose curd kept so much, litres per litre of milk. */
export function keptIn(day: number, curd: number): Played {
  const { milk, mixed, yield: expected, spec } = PEAR_PLAN;
  if (milk === undefined || expected === undefined) throw new RangeError("Pear Beacon is washed");
  const filters = (spec.wash?.filters ?? 0) * (expected.filterKeeps ?? 0);
  const wash = { punch: mixed, dairy: milk.dairy, milk: milk.ml };
  const through = throughFilter(wash, curd, filters);
  const begun = started(`kept-${day}`, `PB-${day}`, day * DAY, PEAR_PLAN);
  return madeWhole(begun, { yield: through, topUp: 300, useBy: (day + 8) * DAY });
}

/** The same as a record; the bar's own unless it is to stay an invented one. */
export function keptRecord(day: number, curd: number, demo = false): BatchRecord {
  return { ...recordOf(keptIn(day, curd).run), demo };
}
