import type { Amount } from "../../core/quantity/amount.ts";
import type { Figure } from "../../core/quantity/figure.ts";
import type { Ounce } from "../../core/quantity/ounce.ts";
import { massShown, type Shown, volumeShown } from "./shown.ts";

const LANGUAGE = "en-GB";

const numbers = new Map<number, Intl.NumberFormat>();

/** A number with exactly so many decimals. */
export function decimals(value: number, places: number): string {
  let format = numbers.get(places);
  if (format === undefined) {
    format = new Intl.NumberFormat(LANGUAGE, {
      minimumFractionDigits: places,
      maximumFractionDigits: places,
    });
    numbers.set(places, format);
  }
  // A tiny negative would print as "-0".
  return format.format(Math.abs(value) < 0.5 * 10 ** -places ? 0 : value);
}

/** How a house wants volumes shown. */
export interface VolumeStyle {
  readonly volumes: "ml" | "oz";
  readonly ounce: Ounce;
}

function shownText({ value, places, unit }: Shown): string {
  const number = decimals(value, places).replace("-", "−");
  return unit === "" ? number : `${number} ${unit}`;
}

/** A volume in the house's unit. */
export const volume = (ml: number, style: VolumeStyle): string => shownText(volumeShown(ml, style));

/** A mass in g. */
export const mass = (g: number): string => shownText(massShown(g));

/** A strength as bars write it. */
export const abv = (strength: number): string => `${decimals(strength * 100, 1)} %`;

/** A share of a whole. */
export const percent = (share: number): string => `${decimals(share * 100, 0)} %`;

const remakes: (() => void)[] = [];

/** A format keeps the zone that it was made in, so it can be made anew. */
function dated(options: Intl.DateTimeFormatOptions, language = LANGUAGE) {
  const make = () => new Intl.DateTimeFormat(language, options);
  let format = make();
  remakes.push(() => {
    format = make();
  });
  return { format: (at: number) => format.format(at) };
}

/** The phone keeps the time of another zone now: dates and times are written in it from here on. */
export function forgetZone(): void {
  for (const remake of remakes) remake();
}

const clockFormat = dated({ hour: "2-digit", minute: "2-digit" });
const dayFormat = dated({
  weekday: "short",
  day: "numeric",
  month: "short",
});
const weekdayFormat = dated({ weekday: "short" });
const stampFormat = dated({
  day: "numeric",
  month: "short",
  hour: "2-digit",
  minute: "2-digit",
  second: "2-digit",
});
const dateYearFormat = dated({
  weekday: "short",
  day: "numeric",
  month: "short",
  year: "numeric",
});
/** The Swedish way of writing a date is the ISO one, which sorts. */
const fileDateFormat = dated({}, "sv-SE");
const monthDayFormat = dated({ day: "2-digit", month: "2-digit" });

/** Time of day, 24 hours. */
export const clockTime = (at: number): string => clockFormat.format(at);
/** Day of the week and date. */
export const day = (at: number): string => dayFormat.format(at);
/** Day of the week alone: "Tue". */
export const weekday = (at: number): string => weekdayFormat.format(at);
/** Day of the week and date with the year, for what is read weeks later. */
export const dateYear = (at: number): string => dateYearFormat.format(at);
/** "2025-11-25": the date part of a file's name. */
export const fileDate = (at: number): string => fileDateFormat.format(at);
/** Date and time to the second, for the log. */
export const stampTime = (at: number): string => stampFormat.format(at);
/** "2511" for the 25th of November: the date part of a batch's name. */
export const dayMonth = (at: number): string => monthDayFormat.format(at).replace(/\D/gu, "");

/** Time of day, with the day when it is not today's. */
export const dueTime = (at: number, now: number): string =>
  day(at) === day(now) ? clockTime(at) : `${day(at)} ${clockTime(at)}`;

const two = (value: number): string => String(value).padStart(2, "0");

/** What is left of a wait: "4:07", "1:04:07" from an hour on, "2 d 3 h" from two days on. */
export function countdown(ms: number): string {
  const seconds = Math.max(0, Math.ceil(ms / 1000));
  const hours = Math.floor(seconds / 3600);
  if (hours >= 48) return `${Math.floor(hours / 24)} d ${hours % 24} h`;
  const rest = `${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
  return hours > 0 ? `${hours}:${rest}` : rest.replace(/^0(?=\d:)/u, "");
}

/** A length of time in words a person says: "42 min", "2 h 05 min", "3 d 4 h". */
export function duration(ms: number): string {
  const minutes = Math.round(ms / 60_000);
  if (minutes < 1) return `${Math.max(0, Math.round(ms / 1000))} s`;
  if (minutes < 60) return `${minutes} min`;
  const hours = Math.floor(minutes / 60);
  if (hours < 48) return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${two(minutes % 60)} min`;
  return `${Math.floor(hours / 24)} d ${hours % 24} h`;
}

/** How a house wants figures shown. */
export interface FigureStyle extends VolumeStyle {
  readonly currency?: string;
}

/** A figure as it is shown. */
export function figureShown({ value, unit }: Figure, style: FigureStyle): Shown {
  switch (unit) {
    case "ml":
      return volumeShown(value, style);
    case "g":
      return massShown(value);
    case "abv":
      return { value: value * 100, places: 1, unit: "%" };
    case "g/L":
      return { value, places: 1, unit: "g/L" };
    case "brix":
      return { value, places: 1, unit: "°Bx" };
    case "ratio":
      return { value, places: value < 1 ? 2 : 1, unit: "" };
    case "share":
      return { value: value * 100, places: 0, unit: "%" };
    case "pH":
      return { value, places: 1, unit: "" };
    case "degC":
      return { value, places: 0, unit: "°C" };
    case "kg/m3":
      return { value, places: 0, unit: "kg/m³" };
    case "count":
      return { value, places: 0, unit: "" };
    case "ms":
      return { value: value / 60_000, places: 0, unit: "min" };
    case "money":
      return { value, places: 2, unit: style.currency ?? "" };
  }
}

/** Money in the house's sign: "€12.30", "12.30 kr". */
export function money(value: number, currency: string): string {
  const amount = decimals(value, 2);
  if (currency === "") return amount;
  return /^[\p{Sc}]$/u.test(currency) ? `${currency}${amount}` : `${amount} ${currency}`;
}

/** A figure in its own unit; `bare` leaves the unit to the table's heading. */
export function figureText(one: Figure, style: FigureStyle, bare = false): string {
  const shown = figureShown(one, style);
  if (bare) return decimals(shown.value, shown.places);
  switch (one.unit) {
    case "ms":
      return duration(one.value);
    case "pH":
      return `pH ${shownText(shown)}`;
    case "money":
      return money(one.value, shown.unit);
    default:
      return shownText(shown);
  }
}

/** A figure for a field: no more digits than it has and no thousands mark, so that it reads back. */
export const typed = (value: number, most = 4): string => String(Number(value.toFixed(most)));

const FRACTIONS = [
  ["", 0],
  ["¼", 1 / 4],
  ["⅓", 1 / 3],
  ["½", 1 / 2],
  ["⅔", 2 / 3],
  ["¾", 3 / 4],
] as const;

/** "1½" where a jigger would say so, otherwise decimals. */
function cupsText(value: number): string {
  const whole = Math.floor(value + 1e-9);
  const part = FRACTIONS.find(([, size]) => Math.abs(value - whole - size) < 1e-9);
  if (part === undefined) return typed(value, 6);
  return part[0] === "" ? typed(whole) : `${whole === 0 ? "" : whole}${part[0]}`;
}

const METRIC: ReadonlySet<string> = new Set(["ml", "cl", "dl", "l", "g", "kg", "mg"]);
const SPELLED: ReadonlySet<string> = new Set([
  "drop",
  "barspoon",
  "cup",
  "pint",
  "quart",
  "gallon",
]);

/** An amount as it was written: "45 ml", "1½ oz", "2 dashes". It reads back as the same amount. */
export function asWritten({ value, unit }: Amount): string {
  if (METRIC.has(unit)) return `${typed(value, 6)} ${unit === "l" ? "L" : unit}`;
  const many = value > 1;
  if (unit === "dash") return `${cupsText(value)} ${many ? "dashes" : "dash"}`;
  return `${cupsText(value)} ${unit}${many && SPELLED.has(unit) ? "s" : ""}`;
}

/** A proportion as bars write it: "1 : 4"; a decimal where no small figures say it. */
export function proportion(ratio: number): string {
  for (const [a, b] of [1, 2, 3, 4, 5].map((part) => [part, part / ratio] as const)) {
    const neat = Math.round(b * 100) / 100;
    if (Math.abs(b - neat) < 1e-9) return `${a} : ${typed(neat)}`;
  }
  return typed(ratio, 6);
}

/** An amount of storage: "340 kB", "1.2 MB". */
export function storageSize(bytes: number): string {
  if (bytes < 999_500) return `${decimals(bytes / 1000, 0)} kB`;
  if (bytes < 999_500_000) return `${decimals(bytes / 1_000_000, 1)} MB`;
  return `${decimals(bytes / 1_000_000_000, 1)} GB`;
}

/** A length of time as a person would type it, to read back the same: "36 h", "90 min", "45 s". */
export function typedLength(ms: number): string {
  if (ms % 3_600_000 === 0) return `${ms / 3_600_000} h`;
  return ms % 60_000 === 0 ? `${ms / 60_000} min` : `${ms / 1000} s`;
}
