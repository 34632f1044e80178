import fc from "fast-check";
import { expect, test } from "vitest";
import { ACID_TARGETS, acidToAdd } from "../../../core/acid/acid-adjust.ts";
import published from "../../published/juice.json";

const { adjust } = published;

test.each(adjust.rows)(`$from to $to (${adjust.source})`, ({ has, to, add }) => {
  const found = acidToAdd(has, to === "lime" ? ACID_TARGETS.lime : ACID_TARGETS.lemon);
  expect(found.ok).toBe(true);
  if (!found.ok) return;
  expect(Math.abs((found.value.acids.citric ?? 0) / add.citric - 1)).toBeLessThan(0.05);
  expect(Math.abs((found.value.acids.malic ?? 0) - (add.malic ?? 0))).toBeLessThan(
    0.05 * (add.malic ?? 0) + 1e-9,
  );
});

// Tenths of a gram: doubles a hair apart would be shrunk for minutes.
const tenths = fc.integer({ min: 0, max: 600 }).map((n) => n / 10);
const drawn = fc.record({ citric: tenths, malic: tenths });

test("what is made holds the target, acid for acid, in the volume it takes up", () => {
  fc.assert(
    fc.property(drawn, drawn, (has, target) => {
      const found = acidToAdd(has, target);
      if (!found.ok) {
        const name = found.about.acid === "malic" ? "malic" : "citric";
        expect(has[name]).toBeGreaterThan(target[name]);
        return;
      }
      const { acids, litres } = found.value;
      const citric = acids.citric ?? 0;
      const malic = acids.malic ?? 0;
      expect((has.citric + citric) / litres).toBeCloseTo(target.citric, 9);
      expect((has.malic + malic) / litres).toBeCloseTo(target.malic, 9);
      expect(litres).toBeCloseTo(1 + 0.000598 * (citric + malic), 9);
    }),
  );
});

test("an acid not aimed at is left as it is", () => {
  const found = acidToAdd({ citric: 8, malic: 90 }, ACID_TARGETS.lemon);
  expect(found).toMatchObject({ ok: true });
  if (found.ok) expect(Object.keys(found.value.acids)).toEqual(["citric"]);
});

test("nothing to add is nothing added", () => {
  expect(acidToAdd({ citric: 60 }, ACID_TARGETS.lemon)).toEqual({
    ok: true,
    value: { acids: { citric: 0 }, litres: 1 },
  });
});

test("a juice with more than the target is refused, naming the acid", () => {
  expect(acidToAdd({ citric: 8, malic: 25 }, ACID_TARGETS.lime)).toEqual({
    ok: false,
    refusal: "already-more-acid",
    about: { acid: "malic", has: 25, target: 20 },
  });
});

test("the acid named is the one there is too much of, not the first", () => {
  expect(acidToAdd({ citric: 10, malic: 30 }, { citric: 10, malic: 5 })).toMatchObject({
    refusal: "already-more-acid",
    about: { acid: "malic", has: 30, target: 5 },
  });
});

test("amounts that cannot be are refused in a sentence", () => {
  expect(() => acidToAdd({ citric: -1 }, { citric: 60 })).toThrow("citric acid of the juice");
  expect(() => acidToAdd({}, { citric: 60, malic: -1 })).toThrow("malic acid aimed at");
  expect(() => acidToAdd({}, { citric: 501 })).toThrow("the acids aimed at, together");
  expect(() => acidToAdd({ citric: Number.NaN }, { citric: 60 })).toThrow(RangeError);
});
