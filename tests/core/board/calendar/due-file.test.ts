import fc from "fast-check";
import { expect, test } from "vitest";
import { CALENDAR_TYPE, dueFileOf, isDueFile } from "../../../../core/board/calendar/due-file.ts";

test("the address of a wait stays the same, whatever its due time", () => {
  expect(dueFileOf("run-1", "curdle#1")).toBe("due/run-1/curdle-1.ics");
});

// RFC 5545 section 8.1: the media type, and its charset parameter.
test("it is sent as a calendar", () => {
  expect(CALENDAR_TYPE).toBe("text/calendar; charset=utf-8");
});

test.each([
  ["/due/run-1/curdle-1.ics", "/", true],
  ["/bar/due/run-1/curdle-1.ics", "/bar/", true],
  ["/due/run-1/curdle-1.ics", "/bar/", false],
  ["/bar/due/", "/bar/", false],
  ["/bar/due/run-1", "/bar/", false],
  ["/bar/overdue/run-1/a.ics", "/bar/", false],
  ["/bar/index.html", "/bar/", false],
])("%s under %s is one: %s", (pathname, scope, is) => {
  expect(isDueFile(pathname, scope)).toBe(is);
});

test("whatever the names, the address is one of ours and no two waits share it", () => {
  const name = fc.string({ unit: "grapheme", minLength: 1, maxLength: 12 });
  const pathOf = (run: string, visit: string) =>
    new URL(dueFileOf(run, visit), "https://bar.example/app/").pathname;
  fc.assert(
    fc.property(name, name, name, (run, other, step) => {
      fc.pre(![run, other].some((one) => /^\.{1,2}$/.test(one)));
      const path = pathOf(run, `${step}#1`);
      expect(isDueFile(path, "/app/")).toBe(true);
      expect(path === pathOf(other, `${step}#1`)).toBe(run === other);
      expect(path).not.toBe(pathOf(run, `${step}#2`));
    }),
  );
});
