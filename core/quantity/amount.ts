import { leadingNumber, type NumberStyle } from "./leading-number.ts";
import { MASS_MEASURES, type MassUnit, type Unit, VOLUME_MEASURES } from "./measures-table.ts";
import { type Ounce, ounceInMl } from "./ounce.ts";
import { accepted, type Result, refused } from "./result.ts";
import { UNIT_WORDS } from "./unit-words-table.ts";

/** What was written: a number and its unit, not yet turned into ml or g. */
export interface Amount {
  readonly value: number;
  readonly unit: Unit;
}

/** Why a typed amount was not understood. */
export type AmountRefusal =
  | "amount-empty"
  | "amount-without-number"
  | "amount-without-unit"
  | "amount-unknown-unit"
  | "amount-not-positive"
  | "amount-too-large";

/** Far above any vessel: a slip of the finger, not a batch. ml or g, and the figure as written. */
const MOST = 1_000_000;

/** The unit at the head of a text, with any full stop: words of the unit may stand apart. */
const UNIT = /^(fl(?:uid)?\.?\s*(?:oz|ounces?)|bar\s*spoons?|[\p{L}µ]+)\.?(?=\s|$|[^\p{L}])/iu;

/** Accents do not matter: a phone's keyboard may have none at hand. */
function knownUnit(typed: string): Unit | undefined {
  const word = typed
    .toLowerCase()
    .normalize("NFKD")
    .replace(/[\s.\p{M}]/gu, "");
  return Object.hasOwn(UNIT_WORDS, word) ? UNIT_WORDS[word] : undefined;
}

/**
 * Reads an amount as bar people write it: "1 1/2 oz", "¾ oz", "22,5 ml", "45ml", "2 dashes", "120 g".
 *
 * @param text - as typed; case and spacing do not matter
 * @param style - of the language it is typed in; English unless told
 * @returns the number and unit with whatever text follows, or a refusal
 */
export function parseAmount(
  text: string,
  style: NumberStyle = "1,000.5",
): Result<Amount & { readonly rest: string }, AmountRefusal> {
  const typed = text.trim();
  if (typed === "") return refused("amount-empty");
  if (/^[-−–]\s*[\d.,]/u.test(typed)) return refused("amount-not-positive");
  const lead = leadingNumber(typed, style);
  if (lead === undefined) return refused("amount-without-number", { typed });
  const word = UNIT.exec(lead.rest);
  if (word === null) return refused("amount-without-unit", { typed });
  const unit = knownUnit(word[1] ?? "");
  if (unit === undefined) return refused("amount-unknown-unit", { unit: word[1] ?? "" });
  if (!(lead.value > 0)) return refused("amount-not-positive");
  // The figure itself is bounded too: a spec keeps what was written, and bounds it.
  if (lead.value * Math.max(1, sizeOf(unit, "bar")) > MOST) {
    return refused("amount-too-large", { most: MOST });
  }
  return accepted({ value: lead.value, unit, rest: lead.rest.slice(word[0].length).trim() });
}

/** Whether a unit weighs rather than measures. */
export const isMassUnit = (unit: Unit): unit is MassUnit => Object.hasOwn(MASS_MEASURES, unit);

function sizeOf(unit: Unit, ounce: Ounce): number {
  if (unit === "oz") return ounceInMl(ounce);
  return isMassUnit(unit) ? MASS_MEASURES[unit] : VOLUME_MEASURES[unit];
}

/** An amount in the core's own unit: ml for a measure, g for a weight. */
export type Measured =
  | { readonly kind: "volume"; readonly ml: number }
  | { readonly kind: "mass"; readonly g: number };

/**
 * Turns a written amount into ml or g.
 *
 * @param amount - as read
 * @param ounce - which ounce the house pours
 * @returns ml or g
 */
export function measured(amount: Amount, ounce: Ounce): Measured {
  const size = amount.value * sizeOf(amount.unit, ounce);
  return isMassUnit(amount.unit) ? { kind: "mass", g: size } : { kind: "volume", ml: size };
}
