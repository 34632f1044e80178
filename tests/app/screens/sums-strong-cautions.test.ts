import { expect, test } from "vitest";
import { spiritCautions, strongCautions } from "../../../app/screens/sums/strong-cautions.ts";

test("overproof is said from 50 % on, heat and flame from 30 % on where a spirit is handled", () => {
  const overproof = spiritCautions(0.57);
  expect(overproof).toHaveLength(3);
  expect(overproof[0]).toMatch(/^50 % vol or more/u);
  expect(overproof[1]).toContain("from about 22 °C");
  expect(overproof[2]).toContain("Never heat spirit");
  expect(spiritCautions(0.4)).toHaveLength(2);
  expect(spiritCautions(0.4)[0]).toContain("from about 26 °C");
  expect(spiritCautions(0.29)).toEqual([]);
  expect(spiritCautions(0)).toEqual([]);
  expect(strongCautions(0.49)).toEqual([]);
  expect(strongCautions(0.5)).toHaveLength(3);
});
