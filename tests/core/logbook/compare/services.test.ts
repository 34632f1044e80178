import { expect, test } from "vitest";
import { strengthOf } from "../../../../core/liquid/liquid.ts";
import { type Service, serveAs, servedAs } from "../../../../core/logbook/compare/services.ts";
import { CUPBOARD } from "../../../../core/spec/cupboard-table.ts";
import { NEW_HOUSE } from "../../../../core/spec/house-rules.ts";
import { PEAR_PLAN } from "../../../support/world/learnt-batches.ts";
import { demoSpec, planned } from "../../../support/world/play-run.ts";
import { must } from "../../../support/world/punch-spec.ts";

const cupboard = new Map(CUPBOARD.map((one) => [one.id, one]));
const pear = demoSpec("Pear Beacon");
const size = { by: "bottles", bottles: 6, size: 750 } as const;
const as = (service: Service) => must(serveAs(pear, service, cupboard, size, NEW_HOUSE));

test("as the spec says it is the plan itself", () => {
  const served = as({ washed: true, method: "stirred" });
  expect(served.plan).toEqual(PEAR_PLAN);
  expect(served.glass.strength).toBe(strengthOf(PEAR_PLAN.served));
  expect(served.water).toBe(PEAR_PLAN.waterAdded);
});

test("unwashed it keeps all its spirit and none of the whey", () => {
  const unwashed = as({ washed: false, method: "stirred" });
  expect(unwashed.plan.milk).toBeUndefined();
  expect(unwashed.bottle.strength).toBeGreaterThan(
    as({ washed: true, method: "stirred" }).bottle.strength,
  );
});

// The invented unwashed drink of the demo is the same lines without milk.
test("unwashed and blended it is as strong as the demo's own unwashed drink", () => {
  const slush = planned(demoSpec("Harbour Slush"), size);
  const blended = as({ washed: false, method: "blended" });
  expect(blended.bottle.strength).toBeCloseTo(strengthOf(slush.final), 9);
  expect(blended.ice).toBeGreaterThan(0.1);
});

test("blended is colder and thinner than stirred, over ice is stronger", () => {
  const stirred = as({ washed: true, method: "stirred" });
  const blended = as({ washed: true, method: "blended" });
  const overIce = as({ washed: true, method: "over-ice" });
  expect(blended.glass.strength).toBeLessThan(stirred.glass.strength);
  expect(blended.glassAt).toBeLessThan(stirred.glassAt);
  expect(overIce.glass.strength).toBeGreaterThan(stirred.glass.strength);
});

test("a dilution that the house measured holds for its own method alone", () => {
  const own = { ...pear, serve: { ...pear.serve, dilution: 0.3 } };
  expect(servedAs(own, { washed: true, method: "stirred" }).serve.dilution).toBe(0.3);
  expect(servedAs(own, { washed: true, method: "shaken" }).serve).not.toHaveProperty("dilution");
});

test("a drink that cannot be planned is refused as the plan is", () => {
  const found = serveAs(pear, { washed: true, method: "stirred" }, new Map(), size, NEW_HOUSE);
  expect(found.ok).toBe(false);
});
