import { expect, test } from "vitest";
import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { NEW_HOUSE, RETENTION_PRIOR } from "../../../core/spec/house-rules.ts";
import { learntFor, retentionFor, washGroup, worldOf } from "../../../core/spec/wash-group.ts";
import { PUNCH } from "../../support/world/punch-spec.ts";

const learnt = (mean: number) => ({
  retention: {
    mean,
    low: mean - 0.05,
    high: mean + 0.05,
    from: "own-batches",
    batches: 9,
  } as const,
});
const kind = { procedureId: DAIRY_WASH.id, shape: "unknown", dairy: "whole", demo: false } as const;

test("a washed spec that names no procedure is of the shipped wash's kind", () => {
  const house = { ...NEW_HOUSE, learnt: { [washGroup(kind)]: learnt(0.41) } };
  expect(retentionFor(house, PUNCH, "whole").mean).toBe(0.41);
  expect(retentionFor(house, PUNCH, "skim")).toBe(RETENTION_PRIOR);
});

test("each of procedure, filter, dairy and world makes another kind", () => {
  const names = [
    kind,
    { ...kind, procedureId: "house-wash" },
    { ...kind, shape: "cone" as const },
    { ...kind, dairy: "skim" as const },
    { ...kind, demo: true },
  ].map(washGroup);
  expect(new Set(names).size).toBe(names.length);
});

test("a kind that nothing was learnt of goes by the house, an invented spec by the invented", () => {
  const house = { ...NEW_HOUSE, learnt: { own: learnt(0.4), demo: learnt(0.3) } };
  expect(learntFor(house, PUNCH, "oat")?.retention?.mean).toBe(0.4);
  expect(learntFor(house, { ...PUNCH, demo: true }, "oat")?.retention?.mean).toBe(0.3);
  expect(worldOf({ demo: true })).toBe("demo");
  expect(learntFor(NEW_HOUSE, PUNCH, "whole")).toBeUndefined();
});
