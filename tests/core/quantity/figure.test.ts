import { expect, test } from "vitest";
import { figure, given, type Rule } from "../../../core/quantity/figure.ts";

const SUM: Rule = { key: "sum", formula: "V = a + b", source: "arithmetic" };

test("what was typed says so, and rests on nothing", () => {
  const typed = given("pour", 85, "ml");
  expect(typed).toMatchObject({ name: "pour", value: 85, unit: "ml", from: [] });
  expect(typed.rule).toMatchObject({ key: "as-given", formula: "" });
  expect(typed.rule.source).not.toBe("");
});

test("a computed figure can be followed back to what was typed", () => {
  const [a, b] = [given("a", 30, "ml"), given("b", 15, "ml")];
  const inner = figure("inner", a.value + b.value, "ml", SUM, [a, b], 0.5);
  const outer = figure("outer", inner.value + a.value, "ml", SUM, [inner, a]);
  expect(outer.from[0]).toBe(inner);
  expect(outer.from[0]?.from.map(({ name }) => name)).toEqual(["a", "b"]);
  expect(inner.within).toBe(0.5);
  expect(outer.rule).toBe(SUM);
});

test("an interval that is not known is left out, and one of zero is not", () => {
  expect("within" in figure("sum", 1, "count", SUM, [])).toBe(false);
  expect(figure("sum", 1, "count", SUM, [], 0).within).toBe(0);
});
