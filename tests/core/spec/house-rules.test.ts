import { expect, test } from "vitest";
import { NEW_HOUSE, RETENTION_PRIOR } from "../../../core/spec/house-rules.ts";

// dairy_wash_practice.json, row 'curd_hold': 0.35 (0.25 to 0.45) l per l of milk, low confidence; the
// floor is 0.09 l/l of cooked and pressed curd. 20 ml per filter: common practice, no source.
test("a new house starts from common practice, and says so", () => {
  expect(RETENTION_PRIOR).toEqual({
    mean: 0.35,
    low: 0.25,
    high: 0.45,
    from: "common-practice",
    batches: 0,
  });
  expect(NEW_HOUSE).toEqual({ ounce: "bar", retention: RETENTION_PRIOR, perFilter: 20 });
});
