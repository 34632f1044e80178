import type { ChoiceName, InputName, ResultName } from "../../core/logbook/compare/inputs.ts";
import { VERDICTS } from "../../core/run/taste.ts";
import { degrees } from "./degrees.ts";
import { abv, decimals, duration } from "./format.ts";
import { sayLater } from "./say-later.ts";
import { withUnit } from "./with-unit.ts";

/** Verdicts by their place, the worst first, as figures of a comparison count them. */
const BY_PLACE = VERDICTS.toReversed();

/** A share to a tenth of a percent: batches lie closer together than whole ones. */
export const share = (value: number): string => withUnit(decimals(100 * value, 1), "%");

const perLitre = (value: number): string => withUnit(decimals(value, 1), "g/L");
const litres = (value: number): string => withUnit(decimals(value, 2), "L");
const plain = (value: number): string => decimals(value, 0);

function verdictText(place: number): string {
  const verdict = BY_PLACE[Math.round(place)];
  return verdict === undefined ? "" : sayLater.tasting.verdicts[verdict];
}

const TEXTS: Readonly<Record<InputName | ResultName, (value: number) => string>> = {
  "milk-ratio": litres,
  "punch-strength": abv,
  "punch-sugar": perLitre,
  "punch-acid": perLitre,
  filters: plain,
  "degrees-curdle": (value) => degrees(value),
  "degrees-drip": (value) => degrees(value),
  "pour-time": duration,
  "rest-time": duration,
  "milk-days": plain,
  "yield-share": share,
  "curd-kept": litres,
  "time-to-clear": duration,
  passes: plain,
  "drip-time": duration,
  clarity: (value) => decimals(value, 1),
  verdict: verdictText,
};

/** A figure of a comparison in its own unit. */
export const figureIn = (name: InputName | ResultName, value: number): string => TEXTS[name](value);

/** A kind in words. */
export function kindIn(name: ChoiceName, kind: string): string {
  const kinds: Readonly<Record<string, string>> =
    name === "dairy" ? sayLater.ingredient.dairies : sayLater.compare.kinds;
  return kinds[kind] ?? kind;
}
