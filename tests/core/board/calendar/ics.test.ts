import fc from "fast-check";
import ICAL from "ical.js";
import { expect, test } from "vitest";
import { type CalendarEvent, calendarText } from "../../../../core/board/calendar/ics.ts";

const STAMPED = Date.parse("2025-11-24T09:00:00Z");
const drip: CalendarEvent = {
  uid: "run-1.slow-drip#1",
  startMs: Date.parse("2025-11-24T22:40:00Z"),
  endMs: Date.parse("2025-11-25T10:40:00Z"),
  title: "Pear punch; drip, then top up",
  detail: "Line one\nC:\\ back\\slash, comma; semicolon",
  alarmMinutesBefore: 15,
};

// RFC 5545, written out by hand after 3.1, 3.3.5, 3.3.11, 3.6.1 and 3.6.6.
test("an event as the standard writes it", () => {
  expect(calendarText([drip], STAMPED)).toBe(
    [
      "BEGIN:VCALENDAR",
      "VERSION:2.0",
      "PRODID:-//Second Pour//Second Pour//EN",
      "BEGIN:VEVENT",
      "UID:run-1.slow-drip#1",
      "DTSTAMP:20251124T090000Z",
      "DTSTART:20251124T224000Z",
      "DTEND:20251125T104000Z",
      "SUMMARY:Pear punch\\; drip\\, then top up",
      "DESCRIPTION:Line one\\nC:\\\\ back\\\\slash\\, comma\\; semicolon",
      "BEGIN:VALARM",
      "ACTION:DISPLAY",
      "DESCRIPTION:Pear punch\\; drip\\, then top up",
      "TRIGGER:-PT15M",
      "END:VALARM",
      "END:VEVENT",
      "END:VCALENDAR",
      "",
    ].join("\r\n"),
  );
});

/** Events as an independent parser reads them. */
function parsed(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents("vevent").map((component) => {
    const event = new ICAL.Event(component);
    const [alarm] = component.getAllSubcomponents("valarm");
    const trigger = alarm?.getFirstPropertyValue("trigger");
    return {
      uid: event.uid,
      title: event.summary,
      detail: event.description ?? "",
      startMs: event.startDate.toJSDate().getTime(),
      endMs: event.endDate.toJSDate().getTime(),
      minutes: trigger instanceof ICAL.Duration ? trigger.toSeconds() / -60 : undefined,
      zone: event.startDate.zone?.tzid,
    };
  });
}

/** What RFC 5545 can carry of a text: line ends become one kind, control characters go. */
const carried = (text: string): string =>
  [...text.replaceAll("\r\n", "\n").replaceAll("\r", "\n")]
    .filter((character) => {
      const code = character.codePointAt(0) ?? 0;
      const isHalf = code >= 0xd800 && code <= 0xdfff;
      return !isHalf && (code >= 0x20 || character === "\t" || character === "\n") && code !== 0x7f;
    })
    .join("");

const anyText = fc.oneof(
  fc.string({ unit: "binary", maxLength: 120 }),
  fc.string({ unit: fc.constantFrom("\\", ";", ",", "\n", "\r", " ", "n", "é", "💧", "\ud83d") }),
);
const anyEvent: fc.Arbitrary<CalendarEvent> = fc.record({
  uid: fc.uuid(),
  startMs: fc.integer({ min: 0, max: 4e9 }).map((seconds) => seconds * 1000),
  endMs: fc.integer({ min: 4_000_000_001, max: 8e9 }).map((seconds) => seconds * 1000),
  title: anyText,
  detail: anyText,
  alarmMinutesBefore: fc.nat(100_000),
});

test("an independent parser reads back what was written", () => {
  fc.assert(
    fc.property(fc.array(anyEvent, { minLength: 1, maxLength: 3 }), (events) => {
      expect(parsed(calendarText(events, STAMPED))).toEqual(
        events.map(({ uid, startMs, endMs, title, detail, alarmMinutesBefore }) => ({
          uid,
          startMs,
          endMs,
          title: carried(title),
          detail: carried(detail),
          minutes: alarmMinutesBefore === 0 ? -0 : alarmMinutesBefore,
          zone: "UTC",
        })),
      );
    }),
    { numRuns: 300 },
  );
});

test("lines end in CRLF and are at most 75 octets, and no character is cut", () => {
  const octets = new TextEncoder();
  fc.assert(
    fc.property(anyEvent, (event) => {
      const text = calendarText([event], STAMPED);
      expect(text.endsWith("\r\n")).toBe(true);
      const lines = text.split("\r\n");
      expect(lines.filter((line) => /[\r\n]/.test(line))).toEqual([]);
      expect(Math.max(...lines.map((line) => octets.encode(line).length))).toBeLessThanOrEqual(75);
      // A half of a character would come back as a replacement.
      expect(new TextDecoder().decode(octets.encode(text))).toBe(text);
    }),
    { numRuns: 300 },
  );
});

test.each([
  ["a".repeat(67), 1],
  ["a".repeat(68), 2],
  ["é".repeat(33), 1],
  ["é".repeat(34), 2],
  ["\u0840".repeat(22), 1],
  ["\u0840".repeat(23), 2],
  [`${"a".repeat(66)}💧`, 2],
  // The space that a line goes on with counts.
  ["a".repeat(67 + 74 + 74), 3],
  ["a".repeat(67 + 74 + 75), 4],
])("folds SUMMARY:%s into %i", (title, count) => {
  const lines = calendarText([{ ...drip, title }], STAMPED).split("\r\n");
  const from = lines.findIndex((line) => line.startsWith("SUMMARY:"));
  const next = lines.findIndex((line) => line.startsWith("DESCRIPTION:"));
  expect(next - from).toBe(count);
  const whole = lines.slice(from, next).map((line, i) => (i === 0 ? line : line.slice(1)));
  expect(whole.join("")).toBe(`SUMMARY:${title}`);
});

test("a mere moment has no end, no detail no description, no alarm none", () => {
  const { alarmMinutesBefore: _, ...quiet } = drip;
  const moment = { ...quiet, endMs: quiet.startMs + 999, detail: "" };
  const text = calendarText([moment], STAMPED);
  expect(text).not.toMatch(/DTEND|DESCRIPTION|VALARM/);
  expect(parsed(text)).toMatchObject([{ startMs: quiet.startMs, endMs: quiet.startMs }]);
  expect(calendarText([{ ...drip, alarmMinutesBefore: 0 }], STAMPED)).toContain("TRIGGER:PT0M\r\n");
});

test.each<[string, Partial<CalendarEvent>]>([
  ["must have a uid", { uid: "" }],
  ["must not end before", { endMs: drip.startMs - 1000 }],
  ["whole minutes", { alarmMinutesBefore: 1.5 }],
  ["whole minutes", { alarmMinutesBefore: -1 }],
  ["a calendar holds years", { startMs: Number.NaN }],
  ["a calendar holds years", { endMs: Date.UTC(10_000, 0, 1) }],
])("stops at a mistake of ours: %s", (says, wrong) => {
  expect(() => calendarText([{ ...drip, ...wrong }], STAMPED)).toThrow(RangeError);
  expect(() => calendarText([{ ...drip, ...wrong }], STAMPED)).toThrow(says);
});

test("stops at an empty calendar, which the standard does not have", () => {
  expect(() => calendarText([], STAMPED)).toThrow("a calendar must hold an event");
});
