import { expect, test } from "vitest";
import { salineOf } from "../../../core/acid/saline.ts";
import published from "../../published/juice.json";

const { salt } = published;

test.each(salt.rows)(`a litre at $percent % holds $gPerL g (${salt.source})`, (row) => {
  const found = salineOf(1000, row.percent / 100);
  expect(found.ok).toBe(true);
  if (!found.ok) return;
  const { saltG, waterG } = found.value;
  expect(Math.abs(saltG + waterG - row.kgPerM3)).toBeLessThan(0.4);
  expect(Math.abs(saltG / row.gPerL - 1)).toBeLessThan(0.001);
});

test("water is saline without salt", () => {
  expect(salineOf(500, 0)).toEqual({ ok: true, value: { saltG: 0, waterG: 499.1 } });
});

test("more than dissolves is refused", () => {
  expect(salineOf(100, 0.27)).toEqual({
    ok: false,
    refusal: "more-salt-than-dissolves",
    about: { share: 0.27, most: 0.26 },
  });
});

test("amounts that cannot be are refused in a sentence", () => {
  expect(() => salineOf(-1, 0.2)).toThrow("a volume of saline in ml");
  expect(() => salineOf(100, 20)).toThrow("a share of salt (0 to 1)");
  expect(() => salineOf(Number.NaN, 0.2)).toThrow(RangeError);
});
