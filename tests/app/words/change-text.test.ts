import fc from "fast-check";
import { expect, test } from "vitest";
import { figureChange, signed, withinText } from "../../../app/words/change-text.ts";
import { figureText, mass, money, volume } from "../../../app/words/format.ts";
import { type FigureUnit, given } from "../../../core/quantity/figure.ts";

const STYLE = { volumes: "ml", ounce: "bar", currency: "€" } as const;
const moved = (unit: FigureUnit, now: number, then: number) =>
  figureChange(given("now", now, unit), given("then", then, unit), STYLE);

// Judged by eye: the change is that of the two numbers as they stand on the screen.
test.each([
  ["abv", 0.219, 0.213, "−0.6"],
  ["abv", 0.21949, 0.21951, "+0.1"],
  ["abv", 0.2191, 0.2194, undefined],
  ["ml", 998.72, 1204.63, "+206"],
  ["ml", 5100, 5100, undefined],
  ["ml", 4555.31, 4569.82, "+15"],
  ["g/L", 6.24, 5.9, "−0.3"],
  ["pH", 3.31, 3.38, "+0.1"],
  ["count", 60, 75, "+15"],
  ["money", 1.2, 1.345, "+0.15"],
  ["share", 0.14, 0.12, "−2"],
] as const)("%s from %d to %d", (unit, now, then, says) => {
  expect(moved(unit, now, then)).toBe(says);
});

test("a change is said exactly where the two numbers look different", () => {
  const strength = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(strength, strength, (now, then) => {
      const [from, to] = [now, then].map((value) => figureText(given("x", value, "abv"), STYLE));
      expect(moved("abv", now, then) === undefined).toBe(from === to);
    }),
  );
});

test("a sign is always written; what shows as nothing says nothing", () => {
  expect([signed(0.04, 1), signed(-0.04, 1), signed(0.06, 1), signed(-1234, 0)]).toEqual([
    undefined,
    undefined,
    "+0.1",
    "−1,234",
  ]);
});

test("half an interval stands in the figure's own unit", () => {
  const within = { ...given("x", 0.2, "abv"), within: 0.0034 };
  expect(withinText(within, STYLE)).toBe("0.3 %");
  expect(withinText(within, STYLE, true)).toBe("0.3");
  expect(withinText({ ...given("x", 3.3, "pH"), within: 0.3 }, STYLE)).toBe("0.3");
  expect(withinText(given("x", 3.3, "pH"), STYLE)).toBeUndefined();
});

test("what was rounded to a tool is shown as it is poured, the rest as a jug shows it", () => {
  expect([62.5, 1687, 1687.34, 684.07, 5, 2.5, 3.333].map((ml) => volume(ml, STYLE))).toEqual([
    "62.5 ml",
    "1,687 ml",
    "1,685 ml",
    "684 ml",
    "5 ml",
    "2.5 ml",
    "3.3 ml",
  ]);
  expect([612.4, 83, 83.04, 612.43].map(mass)).toEqual(["612.4 g", "83 g", "83.0 g", "612 g"]);
});

test("money in the house's own sign, below zero with a true minus", () => {
  expect([money(12.3, "€"), money(12.3, "kr"), money(12.3, "")]).toEqual([
    "€12.30",
    "12.30 kr",
    "12.30",
  ]);
  expect(figureText(given("x", 1.5, "money"), STYLE)).toBe("€1.50");
  expect(figureText(given("x", -8.4, "degC"), STYLE)).toBe("−8 °C");
});
