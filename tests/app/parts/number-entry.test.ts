import fc from "fast-check";
import { expect, test } from "vitest";
import { enterKey, keyFromKeyboard, type NumberKey } from "../../../app/parts/number-entry.ts";

test.each<[string, NumberKey, string]>([
  ["", "7", "7"],
  ["7", "0", "70"],
  ["0", "5", "5"],
  ["0", "0", "0"],
  ["", "mark", "0."],
  ["12", "mark", "12."],
  ["12.", "mark", "12."],
  ["0.", "0", "0.0"],
  ["0.0", "5", "0.05"],
  ["12.5", "erase", "12."],
  ["", "erase", ""],
  ["1234567", "8", "1234567"],
  ["123.4567", "8", "123.4567"],
  ["1234567", "mark", "1234567."],
])("%j and %s gives %j", (text, key, expected) => {
  expect(enterKey(text, key, ".")).toBe(expected);
});

test("the mark is the one of the place", () => {
  expect(enterKey("4", "mark", ",")).toBe("4,");
  expect(enterKey("4,", "mark", ",")).toBe("4,");
});

test.each([
  ["7", "7"],
  [".", "mark"],
  [",", "mark"],
  ["Backspace", "erase"],
  ["e", null],
  ["-", null],
  ["Enter", null],
  ["Tab", null],
])("the keyboard's %s is %s", (key, expected) => {
  expect(keyFromKeyboard(key)).toBe(expected);
});

const keys = fc.constantFrom<NumberKey>(
  ...(["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "mark", "erase"] as const),
);

test("whatever is typed reads as a number, and erasing it all leaves nothing", () => {
  fc.assert(
    fc.property(fc.array(keys, { maxLength: 40 }), (typed) => {
      const text = typed.reduce((soFar, key) => enterKey(soFar, key, "."), "");
      expect(text === "" || /^(0|[1-9]\d*)(\.\d*)?$/.test(text)).toBe(true);
      const none = [...text].reduce((soFar) => enterKey(soFar, "erase", "."), text);
      expect(none).toBe("");
    }),
  );
});
