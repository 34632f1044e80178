import fc from "fast-check";
import { expect, test } from "vitest";
import { differencesOf } from "../../../../core/logbook/compare/differences.ts";
import type { Side } from "../../../../core/logbook/compare/inputs.ts";

const side = (inputs: Side["inputs"], results: Side["results"] = {}): Side => ({
  inputs,
  results,
  choices: {},
});
const MINUTE = 60_000;

test("with few batches, by the stated scales: four degrees before ten minutes of rest", () => {
  const a = side({ "degrees-drip": 2, "rest-time": 60 * MINUTE, filters: 2 });
  const b = side({ "degrees-drip": 6, "rest-time": 70 * MINUTE, filters: 2 });
  const { inputs } = differencesOf([a, b], [a, b]);
  expect(inputs.map(({ name }) => name)).toEqual(["degrees-drip", "rest-time"]);
  expect(inputs[0]).toMatchObject({ size: 2, scaledBy: "stated", figures: [2, 6] });
});

test("from eight batches on, by what usually varies in this house", () => {
  // Degrees that vary by many, rests that hardly vary: ten minutes tell more than four degrees.
  const house = Array.from({ length: 9 }, (_, at) =>
    side({ "degrees-drip": 2 * at, "rest-time": (60 + at / 4) * MINUTE }),
  );
  const a = side({ "degrees-drip": 2, "rest-time": 60 * MINUTE });
  const b = side({ "degrees-drip": 6, "rest-time": 70 * MINUTE });
  const { inputs } = differencesOf([a, b], house);
  expect(inputs.map(({ name }) => name)).toEqual(["rest-time", "degrees-drip"]);
  // By hand: quartiles 4 and 12 of 0, 2 … 16: 8 / 1.349 = 5.93; 4 / 5.93 = 0.675.
  expect(inputs[1]?.size).toBeCloseTo(0.6745, 3);
  expect(inputs[1]?.scaledBy).toBe("house");
});

test("however alike a house's batches are, what no jug reads is no difference", () => {
  const house = Array.from({ length: 9 }, (_, at) => side({ "milk-ratio": 0.25 + at * 1e-5 }));
  const [a, b] = [side({ "milk-ratio": 0.25 }), side({ "milk-ratio": 0.2503 })];
  expect(differencesOf([a, b], house).inputs).toEqual([]);
  // By hand: a quarter of the stated 0.02 is 0.005; 0.01 / 0.005 = 2.
  const [c, d] = [side({ "milk-ratio": 0.25 }), side({ "milk-ratio": 0.26 })];
  expect(differencesOf([c, d], house).inputs[0]?.size).toBeCloseTo(2, 9);
});

test("nearer than a fifth of its scale is the same to anybody", () => {
  const named = (to: number) =>
    differencesOf([side({ "milk-ratio": 0.25 }), side({ "milk-ratio": to })], []).inputs.length;
  // The stated scale is 0.02.
  expect([named(0.2539), named(0.2541)]).toEqual([0, 1]);
});

test("one odd batch does not widen what is usual", () => {
  const house = Array.from({ length: 9 }, (_, at) => side({ "degrees-drip": at }));
  const odd = [...house.slice(0, 8), side({ "degrees-drip": 90 })];
  const pair = [side({ "degrees-drip": 2 }), side({ "degrees-drip": 6 })];
  expect(differencesOf(pair, odd).inputs[0]?.size).toBeCloseTo(
    differencesOf(pair, house).inputs[0]?.size ?? 0,
    9,
  );
});

test("what is always the same in the house goes by the stated scale", () => {
  const house = Array.from({ length: 9 }, () => side({ filters: 2 }));
  const { inputs } = differencesOf([side({ filters: 2 }), side({ filters: 4 })], house);
  expect(inputs[0]).toMatchObject({ size: 2, scaledBy: "stated" });
});

test("kinds that differ are named; what one side did not note is no difference", () => {
  const a: Side = { ...side({ filters: 2 }), choices: { order: "punch-into-milk" } };
  const b: Side = { ...side({}), choices: { order: "milk-into-punch", dairy: "whole" } };
  const { choices, inputs } = differencesOf([a, b], []);
  expect(choices).toEqual([{ name: "order", kinds: ["punch-into-milk", "milk-into-punch"] }]);
  expect(inputs).toEqual([]);
});

test("results are ordered too, and a batch never differs from itself", () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(share, share, share, (x, y, z) => {
      const a = side({ "milk-ratio": x }, { "yield-share": y, clarity: 10 * z });
      const b = side({ "milk-ratio": z }, { "yield-share": x, clarity: 10 * y });
      expect(differencesOf([a, a], []).inputs).toEqual([]);
      const { results } = differencesOf([a, b], []);
      const sizes = results.map(({ size }) => size);
      expect(sizes).toEqual(sizes.toSorted((one, other) => other - one));
      expect(differencesOf([b, a], []).results.map(({ size }) => size)).toEqual(sizes);
    }),
  );
});
