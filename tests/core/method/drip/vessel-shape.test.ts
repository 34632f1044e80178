import { expect, test } from "vitest";
import { lawsOf, type VesselShape } from "../../../../core/method/drip/vessel-shape.ts";

const SHAPES: readonly VesselShape[] = ["topped-up", "straight", "cone", "unknown"];
const sum = (of: readonly { weight: number }[]) => of.reduce((so, { weight }) => so + weight, 0);
/** Heads as in the law's own source: 0 kept topped up, 1 straight-sided, 1/3 to 1 a cone. */
const MEAN_HEAD = {
  "topped-up": [0, 0.05],
  straight: [0.95, 1],
  cone: [0.6, 0.75],
  unknown: [0.4, 0.7],
};

test.each(SHAPES)("%s: weights add up to 1, clogging is rare, beds seldom pack", (shape) => {
  const laws = lawsOf(shape);
  expect(sum(laws)).toBeCloseTo(1, 12);
  expect(sum(laws.filter(({ clogs }) => clogs))).toBeCloseTo(0.06, 12);
  expect(sum(laws.filter(({ law }) => law.packing > 1))).toBeLessThan(0.25);
  expect(laws.every(({ law, clogs }) => law.clogging.growth > 0 === clogs)).toBe(true);
});

test.each(SHAPES)("%s: the head it stands for", (shape) => {
  const sound = lawsOf(shape).filter(({ clogs }) => !clogs);
  const mean = sound.reduce((so, { law, weight }) => so + law.head * weight, 0) / sum(sound);
  const [least = 1, most = 0] = MEAN_HEAD[shape];
  expect(mean).toBeGreaterThanOrEqual(least);
  expect(mean).toBeLessThanOrEqual(most);
});

test("an unknown vessel may be any of the others", () => {
  const heads = new Set(lawsOf("unknown").map(({ law }) => law.head));
  expect([0, 1 / 3, 1].every((head) => heads.has(head))).toBe(true);
});
