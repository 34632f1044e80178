import fc from "fast-check";
import { expect, test } from "vitest";
import { batchCode } from "../../../core/label/batch-code.ts";

// The form of the name is ours: no source.
test.each([
  ["Pear Beacon", [], "PB-2511"],
  ["Boatyard Flip-Side", [], "BFS-2511"],
  ["The Long and Winding Punch", [], "TLA-2511"],
  ["éclair à l'orange", [], "EAL-2511"],
  ["Øre Łódka Ürzig", [], "OLU-2511"],
  ["Baker's Dozen", [], "BD-2511"],
  ["Punch No. 7", [], "PN-2511"],
  ["ночь", [], "B-2511"],
  ["  7 ", [], "B-2511"],
  ["Pear Beacon", ["PB-2511"], "PB-2511-2"],
  ["Pear Beacon", [" pb-2511 ", "PB-2511-2"], "PB-2511-3"],
  ["Pear Beacon", ["PB-2511", "PB-2511-3"], "PB-2511-2"],
  ["Pear Beacon", ["PB-2411", "PX-2511"], "PB-2511"],
])("%s beside %j is %s", (name, taken, code) => {
  expect(batchCode(name, "2511", taken)).toBe(code);
});

test("whatever the name, the code is free, plain and fits on tape", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme" }), fc.nat({ max: 30 }), (name, before) => {
      const taken: string[] = [];
      for (let made = 0; made <= before; made += 1) taken.push(batchCode(name, "0102", taken));
      expect(new Set(taken).size).toBe(before + 1);
      for (const code of taken) expect(code).toMatch(/^[A-Z]{1,3}-0102(-[1-9]\d*)?$/);
    }),
    { numRuns: 60 },
  );
});

test.each(["", "511", "25.11", "25111"])("refuses %j for a day and month", (dayMonth) => {
  expect(() => batchCode("Pear Beacon", dayMonth, [])).toThrow(RangeError);
});
