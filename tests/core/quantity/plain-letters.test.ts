import { expect, test } from "vitest";
import { plainLetters } from "../../../core/quantity/plain-letters.ts";

test.each([
  ["Crème  BRÛLÉE", "creme  brulee"],
  ["Smørrebrød, Łódź, Weiß", "smorrebrod, lodz, weiss"],
  ["IJsvogel Đ", "ijsvogel d"],
])("%s is compared as %s", (text, plain) => {
  expect(plainLetters(text)).toBe(plain);
});
