import { leadingNumber, type NumberStyle } from "./leading-number.ts";
import { DAY, HOUR, MINUTE, SECOND } from "./time-units-table.ts";

/** In English, Spanish and French, without accents. */
const WORDS: readonly (readonly [number, string])[] = [
  [SECOND, "s sec second seconds segundo segundos seconde secondes"],
  [MINUTE, "m min mins minute minutes minuto minutos"],
  [HOUR, "h hr hrs hour hours hora horas heure heures"],
  [DAY, "d day days dia dias j jour jours"],
];
const UNITS: ReadonlyMap<string, number> = new Map(
  WORDS.flatMap(([ms, words]) => words.split(" ").map((word) => [word, ms] as const)),
);

/** What a bare number after a unit counts: "1h30", as French and Spanish write it. */
const NEXT: ReadonlyMap<number, number> = new Map([
  [HOUR, MINUTE],
  [MINUTE, SECOND],
]);
/** Fewer than sixty, and nothing after it. */
const BARE = /^[0-5]?\d$/u;

const LONGEST = 90 * DAY;

/**
 * Reads a length of time as people write it: "45 min", "1 h 30 min", "1h30", "1 1/2 h", "2 days".
 *
 * @param text - as typed; a number needs its unit, but for minutes after hours, and seconds after minutes
 * @param style - of the language it is typed in; English unless told
 * @returns ms, one second to ninety days; nothing where it is not one
 */
export function readLengthOfTime(text: string, style?: NumberStyle): number | undefined {
  let rest = text.normalize("NFD").replace(/\p{M}/gu, "").trim();
  let total = 0;
  while (rest !== "") {
    const lead = leadingNumber(rest, style);
    const word = /^([a-z]+)\.?\s*(.*)$/iu.exec(lead?.rest ?? "");
    const unit = UNITS.get(word?.[1]?.toLowerCase() ?? "");
    if (lead === undefined || unit === undefined) return undefined;
    total += lead.value * unit;
    rest = word?.[2] ?? "";
    const next = NEXT.get(unit);
    if (next !== undefined && BARE.test(rest)) {
      total += Number(rest) * next;
      rest = "";
    }
  }
  const ms = Math.round(total);
  return ms >= SECOND && ms <= LONGEST ? ms : undefined;
}
