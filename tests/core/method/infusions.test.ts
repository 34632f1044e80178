import { expect, test } from "vitest";
import { FAT_WASH, LONG_INFUSION, SHORT_INFUSION } from "../../../core/method/infusions.ts";
import { stepOf } from "../../../core/method/procedure.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

// Times of the trade: common practice, no source (reference notes, infusions).
test("a long infusion is tasted at 12, 24 and 30 h and stopped at 36 h", () => {
  const { waitFor, askAt, longestFor, asks } = stepOf(LONG_INFUSION, "steep");
  expect([waitFor, ...(askAt ?? []), longestFor]).toEqual([12, 24, 30, 36].map((h) => h * HOUR));
  expect(asks).toBe("taste");
});

test("a short one is tasted every ten minutes and stopped at 45", () => {
  expect(stepOf(SHORT_INFUSION, "steep")).toMatchObject({
    waitFor: 10 * MINUTE,
    askEvery: 10 * MINUTE,
    longestFor: 45 * MINUTE,
  });
});

test("a fat wash mingles warm, freezes overnight, and counts as perishable once the fat is in", () => {
  expect(stepOf(FAT_WASH, "mingle").waitFor).toBe(3 * HOUR);
  expect(stepOf(FAT_WASH, "freeze")).toMatchObject({ waitFor: 12 * HOUR, stands: "freezer" });
  expect(FAT_WASH.perishableFrom).toBe("melt");
});
