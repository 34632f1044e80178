import { expect, test } from "vitest";
import { labelOf } from "../../../core/label/label.ts";
import { labelStrength } from "../../../core/label/label-strength.ts";
import { useByOf } from "../../../core/label/use-by.ts";
import { strengthOf } from "../../../core/liquid/liquid.ts";
import { waterToReach } from "../../../core/liquid/reach-strength.ts";
import { actualFinal } from "../../../core/run/actual.ts";
import { demoSpec, dripped, madeWhole, planned, started } from "../../support/world/play-run.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const USE_BY = Date.parse("2025-11-30T23:59:59.999Z");
const begun = () => started("run-1", "PB-2511", MADE);

test("a bottled batch carries what was bottled and the use-by that was set", () => {
  const bottles = [
    { count: 4, size: 750 },
    { count: 1, size: 500 },
  ];
  const { run } = madeWhole(begun(), { yield: 3700, topUp: 450, useBy: USE_BY, bottles });
  expect(labelOf(run)).toMatchObject({
    name: "Pear Beacon",
    batch: "PB-2511",
    madeAt: MADE,
    useBy: USE_BY,
    bottled: true,
    bottles,
  });
});

test("before bottling it carries the plan's bottles and the house's days from the start", () => {
  const { run } = dripped(begun());
  expect(labelOf(run)).toMatchObject({
    bottled: false,
    useBy: useByOf(MADE, 7),
    bottles: [{ count: 6, size: 750 }],
  });
  const bySize = planned(demoSpec("Pear Beacon"), { by: "volume", volume: 4000 });
  expect(labelOf(started("run-2", "PB", MADE, bySize).run).bottles).toEqual([]);
});

test("bottles that were planned by a part are counted whole: each needs its label", () => {
  const plan = planned(demoSpec("Pear Beacon"), { by: "bottles", bottles: 5.2, size: 750 });
  expect(labelOf(started("run-9", "PB", MADE, plan).run).bottles).toEqual([
    { count: 6, size: 750 },
  ]);
});

test("the strength is that of what was really poured", () => {
  const dry = madeWhole(begun(), { yield: 3700, topUp: 0, useBy: USE_BY }).run;
  const full = madeWhole(begun(), { yield: 3700, topUp: 900, useBy: USE_BY }).run;
  for (const run of [dry, full]) {
    expect(labelOf(run).strength).toBe(labelStrength(strengthOf(actualFinal(run))));
  }
  // 900 ml of 42 % in 4.6 L add about 5 % vol.
  const rise = labelOf(full).strength - labelOf(dry).strength;
  expect(rise).toBeGreaterThan(0.04);
  expect(rise).toBeLessThan(0.065);
});

// OIV-SECSAN 520-2014 (excerpt): a wine fined with casein declares it where present.
test("milk stays declared after the wash, and says why", () => {
  const label = labelOf(begun().run);
  expect(label.allergens).toEqual(["milk"]);
  expect(label.cautions.slice(0, 2)).toEqual(["keep-cold", "milk-stays"]);
});

test("a drink that is not washed is not said to have been", () => {
  const { run } = started("run-3", "HS", MADE, planned(demoSpec("Harbour Slush")));
  expect(labelOf(run).allergens).toEqual([]);
  expect(labelOf(run).cautions).toEqual(["keep-cold", "fresh-juice", "local-use-by", "local-sale"]);
});

test("milk that stays is said of a milk that washed it, not of oats nor of cream in the drink", () => {
  const beacon = demoSpec("Pear Beacon");
  const oats = { ...beacon, ...(beacon.wash && { wash: { ...beacon.wash, dairyId: "oat-milk" } }) };
  const byOats = labelOf(started("run-10", "PB", MADE, planned(oats)).run);
  expect(byOats.allergens).toEqual(["gluten"]);
  expect(byOats.cautions).not.toContain("milk-stays");
  const { wash: _, ...unwashed } = beacon;
  const [line] = beacon.lines;
  if (line === undefined) throw new RangeError("it has a line");
  const lines = [...beacon.lines, { ...line, id: "cream", ingredientId: "cream", heldBack: 0 }];
  const creamy = labelOf(started("run-11", "PB", MADE, planned({ ...unwashed, lines })).run);
  expect(creamy.allergens).toEqual(["milk"]);
  expect(creamy.cautions).toContain("keep-cold");
  expect(creamy.cautions).not.toContain("milk-stays");
});

test("grapefruit and wine reach the label of what they went into", () => {
  const { run } = started("run-4", "BFS", MADE, planned(demoSpec("Boatyard Flip-Side")));
  expect(labelOf(run).allergens).toEqual(["milk", "sulphites"]);
  expect(labelOf(run).cautions).toContain("grapefruit");
});

test.each([
  [7, false],
  [8, true],
])("kept %i days, a word about the seven-day rule: %s", (keepDays, said) => {
  const plan = planned({ ...demoSpec("Pear Beacon"), keepDays });
  const { run } = started("run-5", "PB", MADE, plan);
  expect(labelOf(run).cautions.includes("over-seven-days")).toBe(said);
});

test("a strong spirit in a weak drink is no caution for the bottle, a strong drink is", () => {
  const beacon = demoSpec("Pear Beacon");
  expect(labelOf(begun().run).cautions).not.toContain("overproof");
  const lines = beacon.lines.filter((line) => line.ingredientId === "pot-still-rum-57");
  const { wash: _, ...unwashed } = beacon;
  const { run } = started("run-6", "R", MADE, planned({ ...unwashed, lines }));
  expect(labelOf(run).cautions).toContain("overproof");
});

/** The spirit alone, let down to a strength: what is in the bottle is exactly that strong. */
function letDown(strength: number) {
  const beacon = demoSpec("Pear Beacon");
  const lines = beacon.lines.filter((line) => line.ingredientId === "pot-still-rum-57");
  const { wash: _, ...unwashed } = beacon;
  const plan = planned({ ...unwashed, lines });
  const water = waterToReach(plan.final, strength);
  if (!water.ok) throw new RangeError(`must be below the rum's, got ${strength}`);
  return labelOf(started("run-8", "R", MADE, { ...plan, final: water.value.liquid }).run);
}

// A flash point at room temperature from about 50 % vol: ethanol-water tables (caution-table.ts).
test.each([
  [0.502, 0.5, true],
  // Rounded, the label says 50 % vol: its caution goes with what it says.
  [0.498, 0.5, true],
  [0.497, 0.495, false],
])("%s v/v is labelled %s, overproof: %s", (strength, says, overproof) => {
  const label = letDown(strength);
  expect(label.strength).toBe(says);
  expect(label.cautions.includes("overproof")).toBe(overproof);
});

test("always sends to the local code, and no code says safe", () => {
  for (const spec of ["Pear Beacon", "Boatyard Flip-Side", "Harbour Slush"]) {
    const { cautions } = labelOf(started("run-7", "X", MADE, planned(demoSpec(spec))).run);
    expect(cautions.slice(-2)).toEqual(["local-use-by", "local-sale"]);
    expect(new Set(cautions).size).toBe(cautions.length);
    expect(cautions.join(" ")).not.toMatch(/safe/);
  }
});
