import type { Figure } from "../../core/quantity/figure.ts";
import type { Ounce } from "../../core/quantity/ounce.ts";
import * as left from "../../core/quantity/time-left.ts";
import { degreeSign, inHouse, type VolumeChoice } from "./house-units.ts";
import { massShown, type Shown, volumeShown } from "./shown.ts";
import { tongue } from "./tongue.ts";

const numbers = new Map<string, Intl.NumberFormat>();

function written(value: number, places: number, locale: string): string {
  const key = `${locale} ${places}`;
  let format = numbers.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, {
      minimumFractionDigits: places,
      maximumFractionDigits: places,
    });
    numbers.set(key, format);
  }
  // A tiny negative would print as "-0".
  return format.format(Math.abs(value) < 0.5 * 10 ** -places ? 0 : value);
}

/** A number with exactly so many decimals. */
export const decimals = (value: number, places: number): string =>
  written(value, places, tongue.value.figures ?? tongue.value.locale);

/** A number as `decimals` rounds it: toFixed rounds 1.345 down, for its binary is a little less. */
export const rounded = (value: number, places: number): number =>
  Number(written(value, places, "en").replaceAll(",", ""));

/** What parts whole from tenths, where the language of the moment is written. */
export const decimalMark = (): "." | "," => (tongue.value.numbers === "1,000.5" ? "." : ",");

/** How a house wants volumes shown. */
export interface VolumeStyle {
  readonly volumes: VolumeChoice;
  readonly ounce: Ounce;
}

function shownText({ value, places, unit }: Shown): string {
  const number = decimals(value, places).replace("-", "−");
  return unit === "" ? number : `${number}${tongue.value.gap}${unit}`;
}

/** A volume in the house's unit. */
export const volume = (ml: number, style: VolumeStyle): string => shownText(volumeShown(ml, style));

/** A mass in g. */
export const mass = (g: number): string => shownText(massShown(g));

/** A strength as bars write it. */
export const abv = (strength: number): string =>
  `${decimals(strength * 100, 1)}${tongue.value.gap}%`;

/** A share of a whole. */
export const percent = (share: number): string => `${decimals(share * 100, 0)}${tongue.value.gap}%`;

const remakes: (() => void)[] = [];

/** A format keeps the zone that it was made in, so it can be made anew. */
function dated(options: Intl.DateTimeFormatOptions, fixed?: string) {
  let made: { readonly locale: string; readonly format: Intl.DateTimeFormat } | undefined;
  remakes.push(() => {
    made = undefined;
  });
  return {
    format: (at: number) => {
      const locale = fixed ?? tongue.value.locale;
      if (made?.locale !== locale) {
        made = { locale, format: new Intl.DateTimeFormat(locale, options) };
      }
      return made.format.format(at);
    },
  };
}

/** The phone keeps the time of another zone now: dates and times are written in it from here on. */
export function forgetZone(): void {
  for (const remake of remakes) remake();
}

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
const monthDayFormat = dated({ day: "2-digit", month: "2-digit" }, "en-GB");

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

const two = (value: number): string => String(value).padStart(2, "0");

/**
 * Time of day, 24 hours, as each of our languages writes it. By hand: the first format that a slow
 * phone makes takes longer than the whole first screen.
 */
export function clockTime(at: number): string {
  const local = new Date(at);
  return `${two(local.getHours())}:${two(local.getMinutes())}`;
}

/** Whether two moments lie on one day of this phone's calendar. */
const sameDay = (a: number, b: number): boolean =>
  new Date(a).toDateString() === new Date(b).toDateString();

/** Time of day, with the day when it is not today's. */
export const dueTime = (at: number, now: number): string =>
  sameDay(at, now) ? clockTime(at) : `${day(at)} ${clockTime(at)}`;

/** What is left of a wait: "4:07", "1:04:07" from an hour on, "2 d 3 h" from two days on. */
export const countdown = (ms: number): string => left.countdown(ms, tongue.value.day);

/** A length of time in words a person says: "42 min", "2 h 05 min", "3 d 4 h". */
export const duration = (ms: number): string => left.duration(ms, tongue.value.day);

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
      return { value: inHouse(value), places: 0, unit: degreeSign() };
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

/** Money in the house's sign, as the language writes it: "€12.30", "12.30 kr", "12,30 €". */
export function money(value: number, currency: string): string {
  const amount = decimals(value, 2);
  if (currency === "") return amount;
  return tongue.value.signFirst && /^[\p{Sc}]$/u.test(currency)
    ? `${currency}${amount}`
    : `${amount}${tongue.value.gap}${currency}`;
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
export const typed = (value: number, most = 4): string =>
  String(Number(value.toFixed(most))).replace(".", decimalMark());
