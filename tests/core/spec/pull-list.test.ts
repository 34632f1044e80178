import fc from "fast-check";
import { expect, test } from "vitest";
import { INGREDIENT_KINDS } from "../../../core/spec/ingredient.ts";
import { USUAL_PACK } from "../../../core/spec/pack-table.ts";
import { pullList } from "../../../core/spec/pull-list.ts";
import {
  cupboardWith,
  fromCupboard,
  lineOf,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const litre = fromCupboard("brandy-40", { price: { paid: 30, pack: 1000 } });
const stocked = (value: number) =>
  ({ by: "stock", ingredientId: "brandy-40", amount: { value, unit: "ml" } }) as const;
const find = (list: ReturnType<typeof pullList>, id: string) => list.find((one) => one.id === id);

// By hand: 2,100 ml of brandy is three bottles of 700 ml to the drop; 1,050 ml of lemon two litres.
test("whole packs, and what stays in the last one", () => {
  const list = pullList([planFor(PUNCH, stocked(2100))]);
  expect(find(list, "brandy-40")).toMatchObject({
    packs: 3,
    pack: 700,
    packFrom: "common-practice",
  });
  expect(find(list, "brandy-40")?.left).toBeCloseTo(0, 3);
  expect(find(list, "lemon-juice")).toMatchObject({ packs: 2, pack: 1000 });
  expect(find(list, "lemon-juice")?.left).toBeCloseTo(950, 3);
  expect(list.at(-1)?.id).toBe("milk-whole");
});

test("the pack that the house buys counts before the usual one", () => {
  const plan = planFor(PUNCH, stocked(2100), cupboardWith(litre));
  const line = find(pullList([plan]), "brandy-40");
  expect(line).toMatchObject({ packs: 3, pack: 1000, packFrom: "price" });
  expect(line?.left).toBeCloseTo(900, 3);
});

test("several plans share a bottle: 400 and 300 ml are one, fetched apart they are two", () => {
  const [a, b] = [planFor(PUNCH, stocked(400)), planFor(PUNCH, stocked(300))];
  expect(find(pullList([a, b]), "brandy-40")?.packs).toBe(1);
  expect(
    (find(pullList([a]), "brandy-40")?.packs ?? 0) + (find(pullList([b]), "brandy-40")?.packs ?? 0),
  ).toBe(2);
});

test("a pack known to any of the plans is used, the latest first", () => {
  const known = planFor(PUNCH, stocked(400), cupboardWith(litre));
  const two = fromCupboard("brandy-40", { price: { paid: 50, pack: 2000 } });
  const later = planFor(PUNCH, stocked(400), cupboardWith(two));
  const unknown = planFor(PUNCH, stocked(400));
  expect(find(pullList([known, unknown]), "brandy-40")?.pack).toBe(1000);
  expect(find(pullList([known, later]), "brandy-40")?.pack).toBe(2000);
});

test("dry goods in grams", () => {
  const spec = unwashed({ ...PUNCH, lines: [...PUNCH.lines, lineOf("white-sugar", 12, "g")] });
  const line = find(pullList([planFor(spec, stocked(4000))]), "white-sugar");
  expect(line).toMatchObject({ weighed: true, packs: 2, pack: 1000 });
  expect(line?.needed).toBeCloseTo(1200, 4);
});

test("an ingredient the plan came without is still fetched", () => {
  const plan = planFor(PUNCH, stocked(2100));
  const list = pullList([{ ...plan, ingredients: [] }]);
  expect(find(list, "brandy-40")).toMatchObject({
    packs: 3,
    pack: 1000,
    packFrom: "common-practice",
  });
});

test("no bottle is opened for a rounding error, one is for a drop", () => {
  const plan = planFor(PUNCH, stocked(2100));
  const withBrandy = (ml: number) => ({
    ...plan,
    lines: plan.lines
      .slice(0, 1)
      .map((one) => ({ ...one, before: { ml, g: ml }, after: { ml: 0, g: 0 } })),
  });
  expect(find(pullList([withBrandy(700 + 1e-7)]), "brandy-40")).toMatchObject({
    packs: 1,
    left: 0,
  });
  expect(find(pullList([withBrandy(700.05)]), "brandy-40")?.packs).toBe(2);
});

test("every kind has a usual pack; nothing to make is nothing to fetch", () => {
  expect(Object.keys(USUAL_PACK).sort()).toEqual([...INGREDIENT_KINDS].sort());
  expect(pullList([])).toEqual([]);
});

test("what is fetched covers what is needed, with less than a pack left", () => {
  const ml = fc.double({ min: 100, max: 20_000, noNaN: true });
  fc.assert(
    fc.property(fc.array(ml, { minLength: 1, maxLength: 3 }), (amounts) => {
      const plans = amounts.map((one) => planFor(PUNCH, stocked(one)));
      const list = pullList(plans);
      for (const { needed, packs, pack, left } of list) {
        expect(packs * pack + 1e-5 * pack).toBeGreaterThanOrEqual(needed);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(left).toBeLessThan(pack);
        expect(Number.isInteger(packs)).toBe(true);
      }
      const brandy = find(list, "brandy-40")?.needed ?? 0;
      expect(brandy).toBeCloseTo(
        amounts.reduce((sum, one) => sum + one, 0),
        3,
      );
    }),
    { numRuns: 30 },
  );
});
