import { expect, test } from "vitest";
import { barsOf, codePath, codeRows } from "../../../app/label/code.ts";

// ISO/IEC 18004: version 1 has 21 modules a side and holds 20 signs at medium correction; version 2
// has 25. Four quiet modules stand on each side.
test.each([
  ["PB-2511", 21],
  ["ABCDEFGH-0102-33 $%", 21],
  ["ABCDEFGH-0102-33 $%X", 21],
  ["ABCDEFGH-0102-33 $%XY", 25],
])("%s takes %i modules and its quiet edge", (text, modules) => {
  const rows = codeRows(text);
  expect(rows).toHaveLength(modules + 8);
  const quiet = rows.flatMap((row, y) =>
    row.filter((_, x) => Math.min(x, y, rows.length - 1 - x, rows.length - 1 - y) < 4),
  );
  expect(quiet).not.toContain(true);
});

// ISO/IEC 18004, 7.9: the two bits by the upper left finder say the correction; masked with 10, they
// are 00 for medium.
test("it is made with medium correction", () => {
  const rows = codeRows("PB-2511");
  expect([rows[4 + 8]?.[4], rows[4 + 8]?.[5]]).toEqual([true, false]);
});

test("the bars are the dark modules, all of them and no others", () => {
  const rows = codeRows("HS-2511-2");
  const drawn = rows.map((row) => row.map(() => false));
  for (const { x, y, width } of barsOf(rows)) {
    for (let at = x; at < x + width; at += 1) drawn[y]?.splice(at, 1, true);
    expect([rows[y]?.[x - 1], rows[y]?.[x + width]]).toEqual([false, false]);
  }
  expect(drawn).toEqual(rows);
});

test("the path of a code draws each bar as a rectangle one module high", () => {
  expect(
    codePath([
      [true, true, false],
      [false, false, true],
    ]),
  ).toBe("M0 0h2v1h-2zM2 1h1v1h-1z");
});
