import { expect, test } from "vitest";
import { serveCardOf } from "../../../core/label/serve-card.ts";
import { strengthOf } from "../../../core/liquid/liquid.ts";
import { actualFinal } from "../../../core/run/actual.ts";
import { demoSpec, madeWhole, planned, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const begun = (own?: number) => {
  const spec = demoSpec("Pear Beacon");
  const serve = own === undefined ? spec.serve : { ...spec.serve, dilution: own };
  return started("run-1", "PB-2511", MADE, planned({ ...spec, serve }));
};

test("says how the spec is served", () => {
  expect(serveCardOf(begun().run)).toMatchObject({
    name: "Pear Beacon",
    batch: "PB-2511",
    pour: 85,
    method: "stirred",
    glass: "Small rocks glass",
    garnish: "Thin slice of pear",
    allergens: ["milk"],
    ice: 0,
  });
});

test("as planned, it is the plan's own serve", () => {
  const { run } = begun();
  const card = serveCardOf(run);
  expect(card?.water).toBeCloseTo(run.plan.waterAdded, 6);
  expect(card?.inGlass).toBeCloseTo(run.plan.servedMl, 6);
});

test("a dilution the house measured is what it adds", () => {
  const { run } = begun(0.2);
  const card = serveCardOf(run);
  expect(card?.water).toBeCloseTo(17, 9);
  // By hand, ethanol balance: the strength falls with the volume; contraction is below 0.3 %.
  const byHand = (strengthOf(actualFinal(run)) * 85) / (85 + 17);
  expect(Math.abs((card?.strength ?? 0) / byHand - 1)).toBeLessThan(0.003);
});

test("follows what is really in the bottle", () => {
  const useBy = MADE + 1;
  const weak = serveCardOf(madeWhole(begun(0.2), { yield: 3700, topUp: 0, useBy }).run);
  const strong = serveCardOf(madeWhole(begun(0.2), { yield: 3700, topUp: 900, useBy }).run);
  expect((strong?.strength ?? Number.NaN) - (weak?.strength ?? Number.NaN)).toBeGreaterThan(0.03);
});

test("a blended drink says how much of it is ice", () => {
  const { run } = started("run-2", "HS", MADE, planned(demoSpec("Harbour Slush")));
  expect(serveCardOf(run)?.ice).toBeGreaterThan(0.1);
});

test("there is no card where nothing is in the bottle", () => {
  const { run } = madeWhole(begun(), { yield: 0, topUp: 0, useBy: MADE + 1 });
  expect(serveCardOf(run)).toBeUndefined();
});
