import fc from "fast-check";
import { expect, test } from "vitest";
import {
  celsius,
  fraction,
  grams,
  gramsPerLitre,
  instant,
  milliseconds,
  ml,
  strength,
} from "../../../core/quantity/units.ts";

const makers = { ml, grams, strength, fraction, celsius, instant, milliseconds, gramsPerLitre };

interface Bounds {
  readonly name: keyof typeof makers;
  readonly inside: readonly number[];
  readonly outside: readonly number[];
  readonly expected: string;
}

// Absolute zero: -273.15 degrees C by the SI definition of the degree Celsius. The rest: judgement.
const BOUNDS: readonly Bounds[] = [
  { name: "ml", inside: [0, 1e9], outside: [-1e-9], expected: "a volume in ml" },
  { name: "grams", inside: [0, 1e9], outside: [-1], expected: "a mass in g" },
  { name: "strength", inside: [0, 1], outside: [-0.01, 1.01, 40], expected: "a strength (0 to 1)" },
  { name: "fraction", inside: [0, 1], outside: [-1, 2], expected: "a fraction (0 to 1)" },
  {
    name: "celsius",
    inside: [-273.15, 1000],
    outside: [-273.16, 1000.1],
    expected: "a temperature in degrees C",
  },
  { name: "gramsPerLitre", inside: [0, 1e4], outside: [-1], expected: "a concentration in g/L" },
  { name: "instant", inside: [-1, 1.7e12], outside: [], expected: "a moment" },
  { name: "milliseconds", inside: [-1, 1.7e12], outside: [], expected: "a length of time" },
];

test("every quantity is looked at", () => {
  expect(BOUNDS.map(({ name }) => name).sort()).toEqual(Object.keys(makers).sort());
});

test.each(BOUNDS)("$name gives back what lies within its bounds", ({ name, inside }) => {
  for (const value of inside) expect(makers[name](value)).toBe(value);
});

test.each(BOUNDS)("$name says what it expected and what came", ({ name, outside, expected }) => {
  for (const value of outside) {
    expect(() => makers[name](value)).toThrow(RangeError);
    expect(() => makers[name](value)).toThrow(expected);
    expect(() => makers[name](value)).toThrow(`got ${value}`);
  }
});

test.each(BOUNDS)("$name refuses what is no finite number", ({ name }) => {
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    expect(() => makers[name](value)).toThrow(RangeError);
  }
});

test("a strength and a fraction are never anything else than what was given", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
      expect(strength(share)).toBe(share);
      expect(fraction(share)).toBe(share);
    }),
  );
});
