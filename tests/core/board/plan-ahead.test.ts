import { expect, test } from "vitest";
import { partsOf } from "../../../core/board/plan-ahead.ts";
import { plannedSchema } from "../../../core/board/planned.ts";
import { procedureFor } from "../../../core/method/procedures.ts";
import { NEW_HOUSE } from "../../../core/spec/house-rules.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { HOUSE_CUPBOARD, HOUSE_MADE, houseMadePlan } from "../../support/world/house-made.ts";
import { PUNCH } from "../../support/world/punch-spec.ts";

const [punch = PUNCH] = HOUSE_MADE;
const FRIDAY = 1_764_345_600_000;

function batchOf(spec: Spec) {
  const procedure = procedureFor(spec, []);
  if (procedure === undefined) throw new RangeError(`no procedure for ${spec.name}`);
  const plan = houseMadePlan(spec, 5000);
  return { id: "punch-1", plan, procedure, readyBy: FRIDAY, changes: [] };
}

function parts(specs: readonly Spec[], spec = punch) {
  let made = 0;
  return partsOf(batchOf(spec), {
    cupboard: HOUSE_CUPBOARD,
    specs: new Map(specs.map((one) => [one.id, one])),
    rules: NEW_HOUSE,
    procedures: [],
    newId: () => `part-${++made}`,
  });
}

test("the tea comes before the punch and its syrup before the tea", () => {
  const { planned, unplanned } = parts(HOUSE_MADE);
  expect(unplanned).toEqual([]);
  expect(planned.map(({ id, madeFor, plan }) => [id, madeFor, plan.spec.name])).toEqual([
    ["part-1", "punch-1", "House tea"],
    ["part-2", "part-1", "House syrup"],
  ]);
  expect(planned.map(({ procedure }) => procedure.id)).toEqual(["short-infusion", "syrup"]);
  expect(planned.every(({ readyBy }) => readyBy === FRIDAY)).toBe(true);
  expect(planned.every((one) => plannedSchema.safeParse(one).success)).toBe(true);
});

test("each is planned for what the batch after it pours", () => {
  const { planned } = parts(HOUSE_MADE);
  const poured = houseMadePlan(punch, 5000).lines.find((one) => one.ingredientId === "house-tea");
  expect(planned[0]?.plan.finalMl).toBeCloseTo(
    (poured?.before.ml ?? 0) + (poured?.after.ml ?? 0),
    3,
  );
});

test("one whose procedure is gone is named, the rest is planned", () => {
  const lost = HOUSE_MADE.map((spec) =>
    spec.id === "syrup-spec" ? { ...spec, procedure: { id: "gone", times: {} } } : spec,
  );
  const { planned, unplanned } = parts(lost);
  expect(planned.map(({ plan }) => plan.spec.name)).toEqual(["House tea"]);
  expect(unplanned).toEqual(["house-syrup"]);
});

test("specs that lead back to each other end", () => {
  const loop = HOUSE_MADE.map((spec) =>
    spec.id === "syrup-spec" ? { ...spec, lines: [...(HOUSE_MADE[1]?.lines ?? [])] } : spec,
  );
  expect(parts(loop).planned.length).toBeLessThan(4);
});
