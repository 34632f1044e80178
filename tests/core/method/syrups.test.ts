import { expect, test } from "vitest";
import { stepOf } from "../../../core/method/procedure.ts";
import {
  ACID_JUICE,
  CORDIAL,
  FREEZER_BOTTLE,
  SALINE,
  SHERBET,
  SYRUP,
} from "../../../core/method/syrups.ts";

const HOUR = 3_600_000;
const ids = ({ steps }: typeof SYRUP) => steps.map(({ id }) => id);

// Times and order: common practice, no source.
test("a sherbet draws its oil before the juice goes in, and its °Brix is read", () => {
  expect(stepOf(SHERBET, "draw-oil").waitFor).toBe(12 * HOUR);
  expect(ids(SHERBET).indexOf("draw-oil")).toBeLessThan(ids(SHERBET).indexOf("build"));
  expect(stepOf(SHERBET, "brix").needs).toBe("brix");
});

test("a cordial is cooled before it is read, and read before it is corrected", () => {
  const order = ["cool", "brix", "correct"].map((id) => ids(CORDIAL).indexOf(id));
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(order).not.toContain(-1);
});

test("syrup is read; juice and saline are only stirred", () => {
  expect(ids(SYRUP)).toEqual(["build", "stir", "brix", "bottle", "label"]);
  expect(ids(ACID_JUICE)).toEqual(["build", "stir", "bottle", "label"]);
  expect(ids(SALINE)).toEqual(ids(ACID_JUICE));
});

test("a freezer bottle is labelled before it goes into the freezer", () => {
  expect(ids(FREEZER_BOTTLE).at(-1)).toBe("freeze");
  expect(stepOf(FREEZER_BOTTLE, "freeze")).toMatchObject({ waitFor: 6 * HOUR, stands: "freezer" });
});
