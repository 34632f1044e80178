import { measured } from "../../../core/quantity/amount.ts";
import type { Figure } from "../../../core/quantity/figure.ts";
import { type Expected, typedNumber } from "../../parts/typed-number.ts";
import { degrees, degreesBare } from "../../words/degrees.ts";
import { typed, type VolumeStyle } from "../../words/format.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { amountIn, celsiusIn, numberIn } from "../../words/typed-in.ts";

/** What a sum comes to. Every figure carries its working. */
export interface Answer {
  /** The answer in words, where it is one. */
  readonly headline?: string;
  /** The figures that were asked for. */
  readonly main: readonly Figure[];
  /** What else is worth knowing. */
  readonly more: readonly Figure[];
  readonly says: readonly string[];
  readonly cautions: readonly string[];
}

/** A form read: a sentence for every field that needs another look, or the answer. */
export interface ReadSum {
  readonly faults: ReadonlyMap<string, string>;
  /** Every field makes sense by itself, but not together. */
  readonly cannot?: string;
  readonly answer?: Answer;
}

/** ml or g: far above any vessel of a bar. */
const MOST = 100_000;
/** g per litre of one acid: three of them together stay below what the core takes for a juice. */
const MOST_ACID = 160;
const PERCENT = ["%", "% abv", "abv", "% vol"];
const PER_LITRE = ["g", "g/l"];

const words = sayLater.sums.faults;

function amountTyped(text: string, bare: "ml" | "oz" | "g", style: VolumeStyle) {
  const withUnit = numberIn(text)?.rest === "" ? `${text} ${bare}` : text;
  const amount = amountIn(withUnit);
  if (!amount.ok || amount.value.rest !== "") return undefined;
  return measured(amount.value, style.ounce);
}

const belowMost = (amount: number): number | undefined => (amount <= MOST ? amount : undefined);

function volumeTyped(text: string, style: VolumeStyle): number | undefined {
  const size = amountTyped(text, volumeUnit(style.volumes), style);
  return size?.kind === "volume" ? belowMost(size.ml) : undefined;
}

function massTyped(text: string, style: VolumeStyle): number | undefined {
  const size = amountTyped(text, "g", style);
  return size?.kind === "mass" ? belowMost(size.g) : undefined;
}

function temperatureTyped(text: string, low: number, high: number): number | undefined {
  const degrees = celsiusIn(text);
  return degrees !== undefined && degrees >= low && degrees <= high ? degrees : undefined;
}

/** An empty field that may stay empty counts as none of it. */
const orNone = (text: string, value: () => number | undefined): number | undefined =>
  text.trim() === "" ? 0 : value();

interface Bounds {
  readonly low: number;
  readonly high: number;
}

/** Reads the fields of a form one by one, and keeps a sentence for each that is not understood. */
export interface Reader {
  readonly style: VolumeStyle;
  readonly faults: ReadonlyMap<string, string>;
  readonly note: (key: string, fault: string) => void;
  /** ml; a bare figure is in the house's unit. */
  readonly volume: (key: string, text: string) => number | undefined;
  /** g */
  readonly mass: (key: string, text: string) => number | undefined;
  /** v/v, from per cent */
  readonly strength: (key: string, text: string, bounds: Bounds) => number | undefined;
  /** degrees C */
  readonly temperature: (key: string, text: string, bounds: Bounds) => number | undefined;
  /** g per litre; empty for none */
  readonly sugar: (key: string, text: string) => number | undefined;
  /** g per litre; empty for none */
  readonly acid: (key: string, text: string) => number | undefined;
  /** g; empty for none */
  readonly grams: (key: string, text: string) => number | undefined;
  readonly figure: (
    key: string,
    text: string,
    expected: Expected,
    fault: string,
  ) => number | undefined;
}

/** A reader for one form. */
export function readerOf(style: VolumeStyle): Reader {
  const faults = new Map<string, string>();
  const kept = (key: string, value: number | undefined, fault: string) => {
    if (value === undefined) faults.set(key, fault);
    return value;
  };
  const perLitre = (text: string, high: number) =>
    orNone(text, () => typedNumber(text, { low: 0, high, units: PER_LITRE }));
  return {
    style,
    faults,
    note: (key, fault) => void faults.set(key, fault),
    volume: (key, text) => kept(key, volumeTyped(text, style), words.volume),
    mass: (key, text) => kept(key, massTyped(text, style), words.mass),
    strength: (key, text, { low, high }) => {
      const percent = typedNumber(text, { low, high, units: PERCENT });
      const value = percent === undefined ? undefined : percent / 100;
      return kept(key, value, words.percent(typed(low), typed(high)));
    },
    temperature: (key, text, { low, high }) =>
      kept(
        key,
        temperatureTyped(text, low, high),
        words.temperature(degreesBare(low), degrees(high)),
      ),
    sugar: (key, text) => kept(key, perLitre(text, 1200), words.sugar),
    acid: (key, text) => kept(key, perLitre(text, MOST_ACID), words.acid),
    grams: (key, text) =>
      kept(
        key,
        orNone(text, () => typedNumber(text, { low: 0, high: MOST, units: ["g"] })),
        words.grams,
      ),
    figure: (key, text, expected, fault) => kept(key, typedNumber(text, expected), fault),
  };
}
