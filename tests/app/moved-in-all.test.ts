import { expect, test } from "vitest";
import { movedInAll } from "../../app/moved-in-all.ts";

const HOUR = 3_600_000;

test.each<[string, number | undefined, number, number | undefined]>([
  ["moved once", undefined, HOUR, HOUR],
  ["moved on before anybody answered", HOUR, HOUR, 2 * HOUR],
  ["put forward by mistake and back again", HOUR, -HOUR, undefined],
  ["and back again but for what a network corrects", HOUR, 2000 - HOUR, undefined],
  ["put back too far", HOUR, -3 * HOUR, -2 * HOUR],
])("a clock that was %s is asked about by what it came to", (_, asked, by, all) => {
  expect(movedInAll(asked, by)).toBe(all);
});
