import { leadingNumber, type NumberStyle } from "./amount.ts";

/** In English, Spanish and French, without accents. */
const UNITS: Readonly<Record<string, number>> = {
  s: 1000,
  sec: 1000,
  second: 1000,
  seconds: 1000,
  m: 60_000,
  min: 60_000,
  mins: 60_000,
  minute: 60_000,
  minutes: 60_000,
  h: 3_600_000,
  hr: 3_600_000,
  hrs: 3_600_000,
  hour: 3_600_000,
  hours: 3_600_000,
  d: 86_400_000,
  day: 86_400_000,
  days: 86_400_000,
  segundo: 1000,
  segundos: 1000,
  seconde: 1000,
  secondes: 1000,
  minuto: 60_000,
  minutos: 60_000,
  hora: 3_600_000,
  horas: 3_600_000,
  heure: 3_600_000,
  heures: 3_600_000,
  dia: 86_400_000,
  dias: 86_400_000,
  j: 86_400_000,
  jour: 86_400_000,
  jours: 86_400_000,
};

const LONGEST = 90 * 86_400_000;

/**
 * Reads a length of time as people write it: "45 min", "1 h 30 min", "1 1/2 h", "36h", "2 days".
 *
 * @param text - as typed; a number needs its unit
 * @param style - of the language it is typed in; English unless told
 * @returns ms, one second to ninety days; nothing where it is not one
 */
export function readLengthOfTime(text: string, style?: NumberStyle): number | undefined {
  let rest = text.normalize("NFD").replace(/\p{M}/gu, "").trim();
  let total = 0;
  while (rest !== "") {
    const lead = leadingNumber(rest, style);
    const word = /^([a-z]+)\.?\s*(.*)$/iu.exec(lead?.rest ?? "");
    const name = word?.[1]?.toLowerCase() ?? "";
    const unit = Object.hasOwn(UNITS, name) ? UNITS[name] : undefined;
    if (lead === undefined || unit === undefined) return undefined;
    total += lead.value * unit;
    rest = word?.[2] ?? "";
  }
  const ms = Math.round(total);
  return ms >= 1000 && ms <= LONGEST ? ms : undefined;
}
