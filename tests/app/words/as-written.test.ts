import fc from "fast-check";
import { expect, test } from "vitest";
import { typed } from "../../../app/words/format.ts";
import { asWritten, proportion } from "../../../app/words/written.ts";
import { parseAmount } from "../../../core/quantity/amount.ts";
import { UNIT_WORDS } from "../../../core/quantity/unit-words-table.ts";

test.each([
  [{ value: 45, unit: "ml" }, "45 ml"],
  [{ value: 1.5, unit: "oz" }, "1½ oz"],
  [{ value: 0.75, unit: "oz" }, "¾ oz"],
  [{ value: 1 / 3, unit: "oz" }, "⅓ oz"],
  [{ value: 0.6, unit: "oz" }, "0.6 oz"],
  [{ value: 2, unit: "dash" }, "2 dashes"],
  [{ value: 1, unit: "dash" }, "1 dash"],
  [{ value: 0.5, unit: "barspoon" }, "½ barspoon"],
  [{ value: 3, unit: "barspoon" }, "3 barspoons"],
  [{ value: 1.5, unit: "l" }, "1.5 L"],
  [{ value: 1200, unit: "ml" }, "1200 ml"],
  [{ value: 0.3, unit: "g" }, "0.3 g"],
] as const)("%j is written %s", (amount, text) => {
  expect(asWritten(amount)).toBe(text);
});

const units = [...new Set(Object.values(UNIT_WORDS))];

test("what is written reads back as the same amount", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 24_000 }),
      fc.constantFrom(1, 3, 4, 8, 10, 100),
      fc.constantFrom(...units),
      (parts, of, unit) => {
        const amount = { value: parts / of, unit };
        fc.pre(amount.value <= 200);
        const read = parseAmount(asWritten(amount));
        expect(read).toMatchObject({ ok: true, value: { unit, rest: "" } });
        if (read.ok) expect(Math.abs(read.value.value - amount.value)).toBeLessThan(1e-6);
      },
    ),
  );
});

test.each([
  [0.25, "1 : 4"],
  [0.3, "3 : 10"],
  [0.5, "1 : 2"],
  [1, "1 : 1"],
  [0.4, "1 : 2.5"],
  [2, "1 : 0.5"],
  [0.123457, "0.123457"],
])("%s of milk to punch is %s", (ratio, text) => {
  expect(proportion(ratio)).toBe(text);
});

test("a figure for a field has no thousands mark and no trailing noughts", () => {
  expect([12.5, 40, 1250, 0.1 + 0.2, 1e-9].map((value) => typed(value))).toEqual([
    "12.5",
    "40",
    "1250",
    "0.3",
    "0",
  ]);
});
