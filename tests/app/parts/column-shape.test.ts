import fc from "fast-check";
import { expect, test } from "vitest";
import type { ColumnSize, Layer, Look } from "../../../app/parts/column-shape.ts";
import {
  footOf,
  GLASS,
  insideOf,
  landingOf,
  levelOf,
  marksOf,
  slabsOf,
  surfaceOf,
  tileOf,
  wallOf,
} from "../../../app/parts/column-shape.ts";

const LOOKS: readonly Look[] = ["milk", "curd", "cloudy", "hazy", "clear", "spirit", "punch"];
const SIZES: readonly ColumnSize[] = ["rack", "run", "chip"];
const rack = GLASS.rack;
const brim = levelOf(1, rack);

interface Spot {
  readonly x: number;
  readonly y: number;
}
/** Where each command of a path leaves the pen; the bulge of a curve is not followed. */
const MOVES: Readonly<Record<string, (from: Spot, x: number, y: number) => Spot>> = {
  M: (_, x, y) => ({ x, y }),
  L: (_, x, y) => ({ x, y }),
  H: ({ y }, _, x) => ({ x, y }),
  V: ({ x }, _, y) => ({ x, y }),
  q: (from, x, y) => ({ x: from.x + x, y: from.y + y }),
  a: (from, x, y) => ({ x: from.x + x, y: from.y + y }),
};

function walk(d: string): readonly Spot[] {
  const spots: Spot[] = [];
  for (const [, letter = "", rest = ""] of d.matchAll(/([a-yA-Y])([^a-zA-Z]*)/g)) {
    const [x = 0, y = 0] = ["0", ...(rest.match(/-?[\d.]+/g) ?? [])].slice(-2).map(Number);
    const move = MOVES[letter];
    if (!move) throw new RangeError(`the walk knows no ${letter}`);
    spots.push(move(spots.at(-1) ?? { x: 0, y: 0 }, x, y));
  }
  return spots;
}

/** The centres of a path of dots. */
const dotsOf = (d: string): readonly Spot[] =>
  [...d.matchAll(/M(\S+) (\S+?)h/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));

test.each([
  ["nothing stands on the floor", 0, rack.floor],
  ["a half stands half way to the brim", 0.5, (rack.floor + brim) / 2],
  ["more than full is full", 1.3, brim],
  ["less than nothing is nothing", -0.2, rack.floor],
  ["no number is nothing", Number.NaN, rack.floor],
])("level: %s", (_, share, y) => {
  expect(levelOf(share, rack)).toBeCloseTo(y, 1);
});

test("a full glass stops below its rim, so that waves and lumps stay inside", () => {
  for (const size of SIZES) {
    const tops = LOOKS.flatMap((look) => walk(surfaceOf(look, GLASS[size])).map(({ y }) => y));
    expect(levelOf(1, GLASS[size]) + Math.min(...tops)).toBeGreaterThan(GLASS[size].rim);
  }
});

test("layers come bottom first and are painted top first", () => {
  const slabs = slabsOf(
    [
      { look: "clear", share: 0.25 },
      { look: "curd", share: 0.5 },
    ],
    rack,
  );
  expect(slabs).toEqual([
    { look: "curd", key: "curd0", y: levelOf(0.75, rack) },
    { look: "clear", key: "clear0", y: levelOf(0.25, rack) },
  ]);
});

test("a layer keeps its key when the first clear drink comes in under it", () => {
  const before: readonly Layer[] = [
    { look: "cloudy", share: 0.6 },
    { look: "curd", share: 0.3 },
    { look: "cloudy", share: 0.1 },
  ];
  const keys = (layers: readonly Layer[]) => slabsOf(layers, rack).map(({ key }) => key);
  expect(keys(before)).toEqual(["cloudy1", "curd0", "cloudy0"]);
  expect(keys([{ look: "clear", share: 0.1 }, ...before])).toEqual([...keys(before), "clear0"]);
});

test.each([
  ["through the curd onto the clear", ["clear", "cloudy", "curd"], 0],
  ["onto the top-up over the clear", ["clear", "spirit", "curd"], 1],
  ["onto the top when nothing is clear", ["cloudy", "curd"], 1],
  ["onto the top when all is clear", ["clear", "spirit"], 1],
  ["onto the milk, not what was poured on it", ["milk", "punch"], 1],
] as const)("a drop lands %s", (_, looks, on) => {
  const layers = looks.map((look) => ({ look, share: 0.2 }));
  expect(landingOf(slabsOf(layers, rack), rack)).toBe(levelOf(0.2 * (on + 1), rack));
});

test("a drop in an empty glass falls to the floor", () => {
  expect(landingOf([], rack)).toBe(rack.floor);
});

test.each([
  ["milk", []],
  ["curd", ["gap", "gap", "grain", "grain"]],
  ["cloudy", ["fleck"]],
  ["hazy", ["mote"]],
  ["clear", ["glint"]],
  ["spirit", ["hatch"]],
  ["punch", ["ripple"]],
] as const)("%s has its own texture", (look, kinds) => {
  for (const size of SIZES) {
    const marks = marksOf(look, GLASS[size]);
    expect(marks.map(({ kind }) => kind)).toEqual(kinds);
    expect(marks.every(({ d, pen }) => d.length > 5 && pen > 0 && !d.includes("NaN"))).toBe(true);
  }
});

test("a cloudy glass is finer and denser grained than a hazy one", () => {
  const [cloudy] = marksOf("cloudy", rack);
  const [hazy] = marksOf("hazy", rack);
  const dots = (d = "") => d.split("M").length;
  expect(dots(cloudy?.d)).toBeGreaterThan(3 * dots(hazy?.d));
  expect(cloudy?.pen).toBeLessThan(hazy?.pen ?? 0);
});

test("the same grains are drawn every time", () => {
  for (const look of LOOKS) expect(marksOf(look, rack)).toEqual(marksOf(look, rack));
});

test.each(SIZES)("a grain cut by the end of its tile goes on at the other end: %s", (size) => {
  const tall = tileOf(GLASS[size]);
  const marks = [...marksOf("curd", GLASS[size]), ...marksOf("cloudy", GLASS[size])];
  const cut = marks.flatMap(({ d, pen }) => {
    const dots = dotsOf(d);
    const over = (edge: number) => dots.filter(({ y }) => Math.abs(y - edge) < pen / 2);
    const wanted = [
      ...over(0).map(({ x, y }) => ({ x, y: y + tall })),
      ...over(tall).map(({ x, y }) => ({ x, y: y - tall })),
    ];
    return wanted.map((w) => dots.some((dot) => Math.hypot(dot.x - w.x, dot.y - w.y) < 0.05));
  });
  expect(cut.length).toBeGreaterThan(8);
  expect(cut).not.toContain(false);
});

test("stripes and ripples meet at the end of their tile", () => {
  for (const size of SIZES) {
    const tall = tileOf(GLASS[size]);
    for (const look of ["spirit", "punch"] as const) {
      const starts = [...(marksOf(look, GLASS[size])[0]?.d ?? "").matchAll(/M0 ([\d.]+)/g)];
      const [first = 0, second = 0] = starts.map(([, y]) => Number(y));
      expect(starts.length).toBeGreaterThan(4);
      expect(tall / (second - first)).toBeCloseTo(9, 1);
    }
  }
});

test("every surface reaches from wall to wall and ends as high as it began", () => {
  for (const size of SIZES) {
    for (const look of LOOKS) {
      const path = walk(surfaceOf(look, GLASS[size]));
      expect(path[0]?.x).toBe(GLASS[size].left);
      expect(path.at(-1)?.x).toBeCloseTo(GLASS[size].right, 1);
      expect(path.at(-1)?.y).toBeCloseTo(path[0]?.y ?? Number.NaN, 5);
    }
  }
});

test.each(SIZES)("the glass is even on both sides and inside its picture: %s", (size) => {
  const glass = GLASS[size];
  for (const d of [wallOf(glass), footOf(glass), insideOf(glass)]) {
    const path = walk(d);
    const [xs, ys] = [path.map(({ x }) => x), path.map(({ y }) => y)];
    expect((xs[0] ?? 0) + (xs.at(-1) ?? 0)).toBeCloseTo(glass.left + glass.right, 1);
    expect(ys.at(-1)).toBeCloseTo(ys[0] ?? Number.NaN, 1);
    expect(Math.min(...xs, ...ys)).toBeGreaterThan(0);
    expect(Math.max(...xs)).toBeLessThan(glass.width);
    expect(Math.max(...ys)).toBeLessThan(glass.height);
  }
});

const layer = fc.record({
  look: fc.constantFrom(...LOOKS),
  share: fc.oneof(fc.double({ min: 0, max: 2, noNaN: true }), fc.constant(Number.NaN)),
});

test("whatever stands in it, the glass holds it, in order and without a repeated key", () => {
  fc.assert(
    fc.property(fc.array(layer, { maxLength: 9 }), fc.constantFrom(...SIZES), (layers, size) => {
      const glass = GLASS[size];
      const slabs = slabsOf(layers, glass);
      const heights = slabs.map(({ y }) => y);
      expect(heights).toEqual([...heights].sort((a, b) => a - b));
      for (const y of heights) {
        expect(y).toBeGreaterThanOrEqual(levelOf(1, glass));
        expect(y).toBeLessThanOrEqual(glass.floor);
      }
      expect(new Set(slabs.map(({ key }) => key)).size).toBe(slabs.length);
      expect(slabs.length).toBe(layers.filter(({ share }) => share > 0).length);
    }),
  );
});

test("an over-full glass keeps its proportions", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.51, max: 1, noNaN: true }), (share) => {
      const slabs = slabsOf(
        [
          { look: "clear", share },
          { look: "curd", share },
        ],
        rack,
      );
      expect(slabs.map(({ y }) => y)).toEqual([brim, levelOf(0.5, rack)]);
    }),
  );
});
