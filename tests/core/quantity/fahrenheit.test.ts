import fc from "fast-check";
import { expect, test } from "vitest";
import { fahrenheitStep, toCelsius, toFahrenheit } from "../../../core/quantity/fahrenheit.ts";

// Fixed points: water freezes and boils, and the scales cross (common knowledge); 41 °F beside 5 °C and
// 135 °F beside 57 °C stand side by side in the model food code, which rounds to a whole degree C.
test.each([
  [0, 32],
  [100, 212],
  [-40, -40],
  [5, 41],
  [-273.15, -459.67],
])("%d degrees C are %d degrees F", (celsius, fahrenheit) => {
  expect(toFahrenheit(celsius)).toBeCloseTo(fahrenheit, 9);
  expect(toCelsius(fahrenheit)).toBeCloseTo(celsius, 9);
});

test("135 degrees F are the model food code's 57 degrees C", () => {
  expect(Math.round(toCelsius(135))).toBe(57);
});

test("property: degrees F to a hundredth come back as they were typed", () => {
  fc.assert(
    fc.property(fc.integer({ min: -9000, max: 90_000 }), (hundredths) => {
      const typed = hundredths / 100;
      expect(toFahrenheit(toCelsius(typed))).toBeCloseTo(typed, 3);
    }),
  );
});

test("property: a difference is that of its two ends", () => {
  const degree = fc.double({ min: -40, max: 120, noNaN: true });
  fc.assert(
    fc.property(degree, degree, (a, b) => {
      expect(fahrenheitStep(b - a)).toBeCloseTo(toFahrenheit(b) - toFahrenheit(a), 9);
    }),
  );
});

test("nothing carries more digits than were meant, and no zero has a sign", () => {
  expect(String(toCelsius(39.1))).toBe("3.9444");
  expect(Object.is(toCelsius(32), 0)).toBe(true);
  expect(Object.is(toCelsius(31.999_99), 0)).toBe(true);
});

test("what no thermometer can show is stopped", () => {
  expect(() => toFahrenheit(-274)).toThrow(RangeError);
  expect(() => toFahrenheit(Number.NaN)).toThrow(RangeError);
  expect(() => toCelsius(-460)).toThrow(RangeError);
});
