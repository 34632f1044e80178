import fc from "fast-check";
import { expect, test } from "vitest";
import {
  copyOf,
  firstOver,
  latestFit,
  putToUse,
  unused,
} from "../../../../core/board/schedule/timeline.ts";

const uses = fc.array(
  fc.record({
    from: fc.integer({ min: 0, max: 20 }),
    long: fc.integer({ min: 0, max: 6 }),
    amount: fc.integer({ min: 1, max: 3 }),
  }),
  { maxLength: 8 },
);

/** The same, counted slot by slot. */
const levelAt = (list: readonly { from: number; long: number; amount: number }[], slot: number) =>
  list
    .filter(({ from, long }) => from <= slot && slot < from + long)
    .reduce((sum, { amount }) => sum + amount, 0);

test("fits as late as counting slots does", () => {
  fc.assert(
    fc.property(
      uses,
      fc.nat(25),
      fc.integer({ min: 1, max: 6 }),
      fc.nat(5),
      (list, latest, forMs, most) => {
        const timeline = unused();
        for (const { from, long, amount } of list) putToUse(timeline, from, from + long, amount);
        const isFree = (start: number) =>
          Array.from({ length: forMs }, (_, i) => levelAt(list, start + i)).every((l) => l <= most);
        let start = latest;
        while (!isFree(start)) start -= 1;
        expect(latestFit(timeline, latest, forMs, most)).toBe(start);
      },
    ),
  );
});

test("is first over where counting slots finds it", () => {
  fc.assert(
    fc.property(uses, fc.nat(25), fc.nat(8), fc.nat(5), (list, from, long, most) => {
      const timeline = unused();
      for (const one of list) putToUse(timeline, one.from, one.from + one.long, one.amount);
      const slots = Array.from({ length: long }, (_, i) => from + i);
      const over = slots.find((slot) => levelAt(list, slot) > most);
      const found = firstOver(timeline, from, from + long, most);
      expect(found === undefined).toBe(over === undefined);
      if (found !== undefined) expect(Math.max(found, from)).toBe(over);
    }),
  );
});

test("what wants more than there is fits nowhere", () => {
  expect(latestFit(unused(), 10, 5, -1)).toBe(Number.NEGATIVE_INFINITY);
  expect(firstOver(unused(), 3, 5, -1)).toBe(3);
  expect(firstOver(unused(), 5, 5, -1)).toBeUndefined();
});

test("a copy is changed by itself", () => {
  const one = unused();
  putToUse(one, 0, 10, 1);
  const two = copyOf(one);
  putToUse(two, 5, 10, 1);
  expect(latestFit(one, 5, 5, 1)).toBe(5);
  expect(latestFit(two, 5, 5, 1)).toBe(0);
});

// 0.1 + 0.2 is 0.30000000000000004 in any machine of this kind: still three tenths of a litre.
test("amounts that add up to just what there is fit", () => {
  const timeline = unused();
  putToUse(timeline, 0, 10, 0.1);
  putToUse(timeline, 0, 10, 0.2);
  expect(latestFit(timeline, 5, 5, 0.3)).toBe(5);
  expect(firstOver(timeline, 0, 10, 0.3)).toBeUndefined();
  expect(latestFit(timeline, 5, 5, 0.29)).toBe(-5);
});
