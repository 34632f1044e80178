import type { Figure } from "../../core/quantity/figure.ts";
import { degreesApart } from "./degrees.ts";
import { decimals, type FigureStyle, figureShown, figureText, rounded } from "./format.ts";
import { stepInHouse } from "./house-units.ts";
import type { Shown } from "./shown.ts";

/** A change with its sign; nothing where it would show as none. */
export function signed(by: number, places: number): string | undefined {
  const size = decimals(Math.abs(by), places);
  if (!/[1-9]/u.test(size)) return undefined;
  return by < 0 ? `−${size}` : `+${size}`;
}

/** By how much a figure moved, as the two are shown; nothing where they look the same. */
export function figureChange(now: Figure, then: Figure, style: FigureStyle): string | undefined {
  const [from, to] = [figureShown(now, style), figureShown(then, style)];
  const asShown = ({ value, places }: Shown): number => rounded(value, places);
  return signed(asShown(to) - asShown(from), Math.max(from.places, to.places));
}

/** Half the width of a figure's interval in its own unit, without a sign; nothing where it has none. */
export function withinText(one: Figure, style: FigureStyle, bare = false): string | undefined {
  if (one.within === undefined) return undefined;
  // A difference of temperatures has no zero to start from.
  if (one.unit === "degC")
    return bare ? decimals(stepInHouse(one.within), 0) : degreesApart(one.within);
  return figureText({ ...one, value: one.within }, style, bare || one.unit === "pH");
}
