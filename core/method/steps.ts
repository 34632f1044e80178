import { MINUTE } from "../quantity/time-units-table.ts";
import type { Step } from "./procedure.ts";

type Rest = Partial<Omit<Step, "id" | "kind" | "work">>;

/** A step that is simply done. */
export const handsOn = (id: string, work: Step["work"], rest: Rest = {}): Step => ({
  id,
  kind: "hands-on",
  work,
  branches: [],
  ...rest,
});

/** A step that ends on a figure. */
export const reading = (
  id: string,
  work: Step["work"],
  needs: NonNullable<Step["needs"]>,
  rest: Rest = {},
): Step => ({ id, kind: "reading", work, needs, branches: [], ...rest });

/** A wait of a known length; it asks again every quarter of an hour until somebody comes. */
export const timedWait = (
  id: string,
  work: Step["work"],
  waitFor: number,
  rest: Rest = {},
): Step => ({
  id,
  kind: "timed-wait",
  work,
  waitFor,
  askEvery: 15 * MINUTE,
  branches: [],
  ...rest,
});

/** A wait that ends on what is tasted, with a hard stop. */
export const tastedWait = (
  id: string,
  first: number,
  rest: Rest & { readonly longestFor: number },
): Step => ({
  id,
  kind: "watched-wait",
  work: "steep",
  asks: "taste",
  waitFor: first,
  branches: [],
  ...rest,
});

/** How every preparation ends: counted into bottles, labelled. */
export const BOTTLED: readonly Step[] = [
  reading("bottle", "bottle", "bottled"),
  handsOn("label", "label"),
];
