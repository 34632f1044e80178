import fc from "fast-check";
import { expect, test } from "vitest";
import { filtrationLaw } from "../../../../core/method/drip/filtration-law.ts";
import { fitResistance } from "../../../../core/method/drip/ruth-fit.ts";
import published from "../../../published/filtration.json";

const PRESSED = filtrationLaw(0, 1);
/** At constant pressure a share may be any volume below one unit: here m3. */
const fitOf = ({ seconds, volumes }: { seconds: number[]; volumes: number[] }) =>
  fitResistance(
    seconds.map((time, i) => ({ time, share: volumes[i] ?? 0 })),
    PRESSED,
  );
const off = (got: number, want: number) => Math.abs(got / want - 1);

test.each(published.runs)("$name: $source", (run) => {
  const { medium, cake } = fitOf(run);
  expect(off(cake / 2, run.slope)).toBeLessThan(run.tolerance);
  expect(off(medium, run.intercept)).toBeLessThan(run.tolerance);
  // Kp = mu alpha c / (A2 dP), B = mu Rm / (A dP)
  const alpha = (cake * run.area ** 2 * run.pressure) / (run.viscosity * run.solids);
  const rm = (medium * run.area * run.pressure) / run.viscosity;
  expect(off(alpha, run.cakeResistance)).toBeLessThan(Math.max(run.tolerance, 2e-5));
  expect(off(rm, run.mediumResistance)).toBeLessThan(Math.max(run.tolerance, 2e-5));
});

test("the line the book draws through the 338 kPa run", () => {
  const [run] = published.runs;
  if (!run) throw new RangeError("the published runs must not be empty");
  const { medium, cake } = fitOf(run);
  expect(off(cake / 2, published.drawnLine.slope)).toBeLessThan(0.06);
  expect(off(medium, published.drawnLine.intercept)).toBeLessThan(0.06);
});

const resistances = fc.double({ min: 0.01, max: 100, noNaN: true });

test("exact points give back their law, whatever the vessel", () => {
  const heads = fc.constantFrom(0, 1 / 3, 1);
  fc.assert(
    fc.property(resistances, resistances, heads, (medium, cake, head) => {
      const timeAt = (f: number) =>
        head === 1
          ? medium * -Math.log1p(-f) + cake * (-Math.log1p(-f) - f)
          : simpson((x) => (medium + cake * x) / (1 - x) ** head, f);
      const points = [0.1, 0.35, 0.6, 0.8].map((share) => ({ time: timeAt(share), share }));
      const fit = fitResistance(points, filtrationLaw(head, 1));
      expect(Math.abs(fit.medium - medium) / (medium + cake)).toBeLessThan(0.005);
      expect(Math.abs(fit.cake - cake) / (medium + cake)).toBeLessThan(0.01);
    }),
  );
});

function simpson(f: (x: number) => number, to: number): number {
  const cuts = 200;
  const weight = (i: number) => (i === 0 || i === cuts ? 1 : i % 2 === 1 ? 4 : 2);
  const ends = Array.from({ length: cuts + 1 }, (_, i) => weight(i) * f((to * i) / cuts));
  return (ends.reduce((sum, x) => sum + x, 0) * to) / cuts / 3;
}

test("neither part is ever below zero", () => {
  const points = fc.array(
    fc.record({
      time: fc.double({ min: 1, max: 1e7, noNaN: true }),
      share: fc.double({ min: 0.01, max: 0.98, noNaN: true }),
    }),
    { minLength: 1, maxLength: 6 },
  );
  fc.assert(
    fc.property(points, (some) => {
      const { medium, cake } = fitResistance(some, PRESSED);
      expect(medium).toBeGreaterThanOrEqual(0);
      expect(cake).toBeGreaterThanOrEqual(0);
      expect(medium + cake).toBeGreaterThan(0);
      expect(Number.isFinite(medium + cake)).toBe(true);
    }),
  );
});

test("one point is a bare filter; a drip that speeds up too; one that starts free is all bed", () => {
  const single = fitResistance([{ time: 5, share: 0.5 }], PRESSED);
  expect(single.medium).toBeCloseTo(10, 9);
  expect(single.cake).toBe(0);
  const faster = [
    { time: 5, share: 0.2 },
    { time: 6, share: 0.6 },
  ];
  expect(fitResistance(faster, PRESSED).cake).toBe(0);
  const free = [
    { time: 1, share: 0.2 },
    { time: 16, share: 0.6 },
  ];
  expect(fitResistance(free, PRESSED).medium).toBe(0);
});

test("refuses no point at all", () => {
  expect(() => fitResistance([], PRESSED)).toThrow("at least one point, got none");
});
