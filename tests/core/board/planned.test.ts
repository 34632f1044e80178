import { expect, test } from "vitest";
import { plannedSchema } from "../../../core/board/planned.ts";
import { plannedBatch } from "../../support/world/planned-batch.ts";

const friday = plannedBatch("friday", 1_764_000_000_000);

test("a planned batch reads back from JSON as it was", () => {
  expect(plannedSchema.parse(JSON.parse(JSON.stringify(friday)))).toEqual(friday);
});

test.each([
  ["no plan", { ...friday, plan: undefined }],
  ["no moment", { ...friday, readyBy: "Friday" }],
  ["a moment before all time", { ...friday, readyBy: -1 }],
  ["half a millisecond", { ...friday, readyBy: 0.5 }],
  ["no id", { ...friday, id: "" }],
])("one with %s is not read", (_, odd) => {
  expect(plannedSchema.safeParse(odd).success).toBe(false);
});
