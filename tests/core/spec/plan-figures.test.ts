import { expect, test } from "vitest";
import { strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import {
  amountFigures,
  fillFigure,
  freezingFigure,
  glassFigures,
  milkFigures,
  pouredFigures,
  servesFigure,
  topUpFigure,
} from "../../../core/spec/plan-figures.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import freezing from "../../published/freezing.json";
import {
  cupboardWith,
  fromCupboard,
  lineOf,
  PUNCH,
  planFor,
  unwashed,
} from "../../support/world/punch-spec.ts";

const SIZE = { by: "volume", volume: 3000 } as const;
const plan = planFor(PUNCH, SIZE);
const brandyOf = ({ lines }: Plan) => {
  const [line] = lines;
  if (line === undefined) throw new RangeError("the punch starts with brandy");
  return line;
};
const numberOf = (name: string, from: readonly { name: string; value: number }[]) =>
  from.find((one) => one.name === name)?.value;

// Brandy, 40 ml as written, a quarter of it held back.
test.each([
  { part: "before", share: 0.75 },
  { part: "after", share: 0.25 },
] as const)("the brandy $part the wash: 40 ml x scale x $share", ({ part, share }) => {
  const { ml, g } = amountFigures(plan, brandyOf(plan), part);
  expect(ml.value).toBe(brandyOf(plan)[part].ml);
  expect(ml.value).toBeCloseTo(40 * plan.scale * share, 9);
  expect(numberOf("written", ml.from)).toBe(40);
  expect(numberOf("share", ml.from)).toBeCloseTo(share, 12);
  // 40 % vol weighs 948.05 kg/m3 at 20 degrees C: OIML R 22, as in the reference notes.
  expect(numberOf("density", g.from)).toBeCloseTo(948.05, 1);
  expect(g.value).toBeCloseTo((ml.value * 948.05) / 1000, 1);
});

test("what is written by weight is proportional by weight, its volume follows", () => {
  const spec: Spec = { ...PUNCH, lines: [lineOf("brandy-40", 40, "g"), ...PUNCH.lines.slice(1)] };
  const heavy = planFor(spec, SIZE);
  const { ml, g } = amountFigures(heavy, brandyOf(heavy), "before");
  expect(g.value).toBeCloseTo(40 * heavy.scale, 9);
  expect(numberOf("share", g.from)).toBeCloseTo(1, 12);
  expect(ml.from[0]).toBe(g);
  expect(ml.value).toBeCloseTo((1000 * g.value) / 948.05, 1);
});

test("the milk in both units: whole milk weighs 1.030 kg/L (reference notes)", () => {
  const { ml, g } = milkFigures(plan) ?? {};
  expect([ml?.value, g?.value]).toEqual([plan.milk?.ml, plan.milk?.g]);
  expect((g?.value ?? 0) / (ml?.value ?? 1)).toBeCloseTo(1.03, 2);
  expect(milkFigures(planFor(unwashed(), SIZE))).toBeUndefined();
});

test("a rounded amount keeps the exact one it came from, its other unit follows by density", () => {
  const exact = amountFigures(plan, brandyOf(plan), "before");
  const jigger = pouredFigures(exact, { ml: 820, g: 777.4 }, "ml", 5);
  expect([jigger.ml.value, jigger.g.value]).toEqual([820, 777.4]);
  expect(jigger.ml.from).toEqual([exact.ml, expect.objectContaining({ name: "step", value: 5 })]);
  expect(numberOf("density", jigger.g.from)).toBeCloseTo(948.05, 1);
  const scale = pouredFigures(exact, { ml: 820.2, g: 777.6 }, "g", 0.1);
  expect(scale.g.from).toEqual([exact.g, expect.objectContaining({ value: 0.1, unit: "g" })]);
  expect(scale.ml.from[0]).toBe(scale.g);
});

test("the top-up is the sum of what is held back, or solved for its target", () => {
  const brandy = brandyOf(plan).after.ml;
  const sum = topUpFigure(plan);
  expect(sum?.value).toBeCloseTo(brandy, 9);
  expect(sum?.from.map(({ value }) => value)).toEqual([brandy]);
  const solved = topUpFigure(planFor({ ...PUNCH, topUp: { rule: "strength", target: 0.2 } }, SIZE));
  const { from = [], value = 0 } = solved ?? {};
  const [through, washed, spirit] = ["yield", "washed-strength", "spirit-strength"].map(
    (name) => numberOf(name, from) ?? Number.NaN,
  );
  expect(spirit).toBeCloseTo(0.4, 6);
  // The first guess of the reference notes, without contraction, is within 1 %.
  const guess = ((through ?? 0) * (0.2 - (washed ?? 0))) / ((spirit ?? 0) - 0.2);
  expect(Math.abs(value / guess - 1)).toBeLessThan(0.01);
  expect(solved?.rule.key).toBe("top-up");
});

test("nothing held back, or nothing washed, has no top-up", () => {
  const lines = PUNCH.lines.map((line) => ({ ...line, heldBack: 0 }));
  expect(topUpFigure(planFor({ ...PUNCH, lines }, SIZE))).toBeUndefined();
  expect(topUpFigure(planFor(unwashed(), SIZE))).toBeUndefined();
});

test("serves and what fills the vessel", () => {
  expect(servesFigure(plan).value).toBeCloseTo(3000 / 90, 6);
  expect(fillFigure(plan).value).toBeCloseTo(plan.yield?.poured ?? 0, 9);
  expect(fillFigure(plan).from.map(({ name }) => name)).toEqual(["volume", "milk"]);
  const plain = planFor(unwashed(), SIZE);
  expect(fillFigure(plain).value).toBeCloseTo(volumeOf(plain.mixed), 9);
});

test("in the glass: stirred has no ice left in it, blended has", () => {
  const stirred = glassFigures(plan);
  expect(stirred.water.value).toBe(plan.waterAdded);
  expect(stirred.water.rule.key).toBe("water");
  expect(stirred).not.toHaveProperty("ice");
  const serve = { ...PUNCH.serve, method: "blended" } as const;
  const blended = planFor({ ...PUNCH, serve }, SIZE);
  expect(glassFigures(blended).ice?.value).toBe(blended.servedIce);
  expect(blended.servedIce).toBeGreaterThan(0.1);
  const own = planFor({ ...PUNCH, serve: { ...PUNCH.serve, dilution: 0.3 } }, SIZE);
  expect(glassFigures(own).water.value).toBeCloseTo(27, 9);
  expect(glassFigures(own).water.rule.key).toBe("own-water");
});

// CRC Handbook, 102nd edition: a bottle of ethanol and water alone, by mass.
const rows = freezing.ethanol.rows.map(([percent = 0, celsius = 0]) => ({ percent, celsius }));
test.each(rows.filter(({ percent }) => percent >= 5 && percent <= 60))(
  "a bottle of $percent % ethanol by mass begins to freeze at $celsius degrees C",
  ({ percent, celsius }) => {
    const strength = strengthOf({
      ethanol: percent,
      water: 100 - percent,
      sugar: 0,
      acids: {},
      cation: 0,
      solids: 0,
    });
    const spirit = fromCupboard("vodka-40", { strength });
    const lines = [lineOf("vodka-40", 100)];
    const bottle = planFor(unwashed({ ...PUNCH, lines }), SIZE, cupboardWith(spirit));
    const found = freezingFigure(bottle);
    expect(found?.value).toBeCloseTo(celsius, 1);
    expect(numberOf("ethanol-per-water", found?.from ?? [])).toBeCloseTo(
      (1000 * percent) / (100 - percent),
      2,
    );
  },
);

test("sugar alone has no water to freeze, and says nothing", () => {
  const noWater = { ...plan, final: { ...plan.final, water: 0 } };
  expect(freezingFigure(noWater)).toBeUndefined();
});

test("a plan whose spec lost a line is our own mistake", () => {
  const lost = { ...plan, spec: { ...plan.spec, lines: [] } };
  expect(() => amountFigures(lost, brandyOf(plan), "before")).toThrow(RangeError);
});
