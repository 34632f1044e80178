import { expect, test } from "vitest";
import { cautionRank } from "../../../core/label/caution-rank.ts";
import { CAUTIONS } from "../../../core/spec/caution-table.ts";

test("what the house is reminded of goes first, the rest never", () => {
  const notes = ["fresh-juice", "over-seven-days", "local-use-by", "local-sale"];
  const ranks = notes.map(cautionRank);
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  expect(Math.min(...ranks)).toBeGreaterThan(2);
  for (const code of [...CAUTIONS, "keep-cold", "milk-stays", "from-elsewhere"]) {
    if (!notes.includes(code)) expect([code, cautionRank(code)]).toEqual([code, 0]);
  }
});
