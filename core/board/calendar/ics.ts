import { MINUTE, SECOND } from "../../quantity/time-units-table.ts";
import { utcCalendar } from "./utc.ts";

/** An entry of a calendar file. Times in epoch ms, kept to the second. */
export interface CalendarEvent {
  /** The same entry sent again keeps its uid, so that a calendar replaces it. */
  readonly uid: string;
  readonly startMs: number;
  /** Not before the start; the same for a mere moment. */
  readonly endMs: number;
  readonly title: string;
  readonly detail: string;
  /** Whole minutes from 0; no alarm where absent. */
  readonly alarmMinutesBefore?: number;
}

const LINE = 75;
const END = "\r\n";
const MOST_YEAR = 9999;

/** Octets of a character in UTF-8. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x1_0000 ? 3 : 4;
}

/** Lines of at most 75 octets, no character cut; those that go on begin with a space. */
function folded(line: string): string {
  let out = "";
  let octets = 0;
  for (const character of line) {
    const more = octetsOf(character);
    if (octets + more > LINE) {
      out += `${END} `;
      octets = 1;
    }
    out += character;
    octets += more;
  }
  return out + END;
}

/** What may not stand in a text at all: control characters but tab, and halves of a character. */
const BANNED =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 5545 bans them by number
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const escaped = (text: string): string =>
  text
    .replace(/\r\n?/g, "\n")
    .replace(BANNED, "")
    .replace(/[\\;,]/g, "\\$&")
    .replaceAll("\n", "\\n");

const two = (value: number): string => String(value).padStart(2, "0");

function stamp(ms: number): string {
  const { year, month, day, hour, minute } = utcCalendar(ms);
  if (!Number.isFinite(ms) || year < 0 || year > MOST_YEAR) {
    throw new RangeError(`a calendar holds years 0 to ${MOST_YEAR}, got ${ms} ms`);
  }
  const second = Math.floor(ms / SECOND) - Math.floor(ms / MINUTE) * 60;
  const date = `${String(year).padStart(4, "0")}${two(month)}${two(day)}`;
  return `${date}T${two(hour)}${two(minute)}${two(second)}Z`;
}

function alarmLines({ title, alarmMinutesBefore: minutes }: CalendarEvent): readonly string[] {
  if (minutes === undefined) return [];
  if (!Number.isInteger(minutes) || minutes < 0) {
    throw new RangeError(`an alarm must be whole minutes before, got ${minutes}`);
  }
  return [
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    `DESCRIPTION:${escaped(title)}`,
    `TRIGGER:${minutes === 0 ? "" : "-"}PT${minutes}M`,
    "END:VALARM",
  ];
}

function eventLines(event: CalendarEvent, stampedAt: number): readonly string[] {
  const { uid, startMs, endMs, title, detail } = event;
  const [start, end] = [stamp(startMs), stamp(endMs)];
  if (uid === "") throw new RangeError("an event must have a uid, got none");
  if (endMs < startMs) throw new RangeError(`an event must not end before it starts, got ${uid}`);
  return [
    "BEGIN:VEVENT",
    `UID:${escaped(uid)}`,
    `DTSTAMP:${stamp(stampedAt)}`,
    `DTSTART:${start}`,
    // An end must be later than the start: a moment has none (3.6.1).
    ...(end === start ? [] : [`DTEND:${end}`]),
    `SUMMARY:${escaped(title)}`,
    ...(detail === "" ? [] : [`DESCRIPTION:${escaped(detail)}`]),
    ...alarmLines(event),
    "END:VEVENT",
  ];
}

/**
 * A calendar file with an alarm for each event.
 *
 * @param events - at least one
 * @param stampedAt - when it was written, epoch ms
 * @returns the text, to be stored as UTF-8; times at Greenwich, so that no zone need be described
 * @throws RangeError when there is no event, or one has no uid, ends before it starts, lies beyond
 *   the year 9999 or has an alarm that is not whole minutes from 0
 * @source RFC 5545: 3.1 lines and folding, 3.3.5 times, 3.3.11 escaping, 3.4 and 3.6.1 what must be
 *   there, 3.6.6 alarms
 */
export function calendarText(events: readonly CalendarEvent[], stampedAt: number): string {
  if (events.length === 0) throw new RangeError("a calendar must hold an event, got none");
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Second Pour//Second Pour//EN",
    ...events.flatMap((event) => eventLines(event, stampedAt)),
    "END:VCALENDAR",
  ];
  return lines.map(folded).join("");
}
