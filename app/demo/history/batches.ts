// Invented batches of the invented bar: none of these figures is a check value.

/** How one invented wash went. Times in minutes, temperatures in degrees C. */
export interface DemoWash {
  readonly type: "wash";
  readonly specId: string;
  /** Days before today. */
  readonly ago: number;
  /** Bottles of 750 ml it was planned for. */
  readonly bottles: number;
  /** Litres of milk per litre of punch. */
  readonly ratio: number;
  readonly filters: number;
  readonly order: "punch-into-milk" | "milk-into-punch";
  readonly pour: number;
  readonly rest: number;
  readonly curdledAt: number;
  readonly drippedAt: number;
  /** Litres the curd kept per litre of milk. */
  readonly kept: number;
  /** Times the usual drip. */
  readonly drip: number;
  /** What was seen after each time it was poured back. */
  readonly looks: readonly ("cloudy" | "hazy" | "clear")[];
  /** Days left on the milk. */
  readonly milk: number;
  readonly clarity: number;
  readonly finish: number;
  readonly verdict: "good" | "fair" | "poor";
  readonly story?: "failed" | "best";
}

/** How one invented infusion went. */
export interface DemoInfusion {
  readonly type: "infusion";
  readonly specId: string;
  readonly ago: number;
  readonly volume: number;
  /** Hours it steeped. */
  readonly hours: number;
  /** ml */
  readonly through: number;
  readonly finish: number;
  readonly verdict: "good" | "fair" | "poor";
}

type Row = readonly [
  ago: number,
  ratio: number,
  filters: number,
  pour: number,
  rest: number,
  curdledAt: number,
  drippedAt: number,
  kept: number,
  drip: number,
  cloudy: number,
  milk: number,
  clarity: number,
  finish: number,
];

const PEAR = "demo-pear-beacon";
const BOATYARD = "demo-boatyard-flip-side";

/** As it went most times; the verdict follows what was tasted. */
function wash(specId: string, row: Row, rest: Partial<DemoWash> = {}): DemoWash {
  const [ago, ratio, filters, pour, rests, curdledAt, drippedAt, kept, drip, cloudy, milk] = row;
  const [clarity, finish] = [row[11], row[12]];
  const taste = clarity + finish;
  return {
    type: "wash",
    specId,
    ago,
    bottles: 6,
    ratio,
    filters,
    order: "punch-into-milk",
    pour,
    rest: rests,
    curdledAt,
    drippedAt,
    kept,
    drip,
    looks: [...Array.from({ length: cloudy }, () => "cloudy" as const), "clear"],
    milk,
    clarity,
    finish,
    verdict: taste >= 15 ? "good" : taste >= 12 ? "fair" : "poor",
    ...rest,
  };
}

// The drip got colder as the months went by, and less stayed in the curd.
const PEARS: readonly DemoWash[] = [
  wash(PEAR, [182, 0.25, 2, 5, 60, 18, 10, 0.46, 1.35, 1, 4, 6, 6]),
  wash(PEAR, [170, 0.25, 2, 6, 65, 17, 9, 0.43, 1.2, 1, 5, 7, 7]),
  wash(PEAR, [158, 0.24, 2, 4, 55, 19, 9, 0.44, 1.3, 2, 3, 6, 7]),
  wash(PEAR, [147, 0.26, 2, 6, 60, 18, 8, 0.42, 1.15, 1, 5, 7, 7]),
  wash(PEAR, [133, 0.25, 3, 7, 75, 16, 8, 0.41, 1.05, 0, 6, 8, 6]),
  wash(PEAR, [121, 0.25, 2, 1, 45, 20, 7, 0.6, 3, 0, 4, 2, 4], {
    story: "failed",
    order: "milk-into-punch",
    looks: ["cloudy", "cloudy", "cloudy"],
    verdict: "poor",
  }),
  wash(PEAR, [112, 0.25, 2, 6, 60, 17, 7, 0.4, 1.2, 1, 5, 7, 8]),
  wash(PEAR, [98, 0.24, 2, 8, 70, 16, 7, 0.38, 1.1, 1, 4, 8, 7]),
  wash(PEAR, [84, 0.25, 2, 7, 60, 15, 5, 0.19, 0.75, 0, 7, 10, 9], {
    story: "best",
    verdict: "good",
  }),
  wash(PEAR, [71, 0.26, 3, 6, 60, 17, 6, 0.37, 0.95, 1, 5, 8, 8]),
  wash(PEAR, [57, 0.25, 2, 7, 65, 15, 5, 0.35, 1.15, 1, 6, 8, 7]),
  wash(PEAR, [43, 0.25, 2, 8, 60, 16, 4, 0.33, 1.1, 0, 5, 9, 8]),
  wash(PEAR, [29, 0.24, 3, 7, 75, 15, 4, 0.32, 1.0, 1, 6, 8, 9]),
  wash(PEAR, [16, 0.25, 2, 8, 60, 14, 3, 0.31, 1.05, 0, 5, 9, 8]),
  wash(PEAR, [4, 0.25, 2, 7, 65, 15, 3, 0.3, 1.1, 0, 6, 9, 9]),
];

const BOATYARDS: readonly DemoWash[] = [
  wash(BOATYARD, [140, 0.25, 2, 6, 60, 17, 9, 0.45, 1.4, 2, 4, 5, 6], { bottles: 4 }),
  wash(BOATYARD, [92, 0.25, 2, 5, 60, 16, 7, 0.41, 1.3, 1, 5, 7, 7], { bottles: 4 }),
  wash(BOATYARD, [50, 0.26, 2, 7, 70, 15, 5, 0.37, 1.2, 1, 6, 7, 8], { bottles: 4 }),
  wash(BOATYARD, [11, 0.25, 2, 7, 60, 15, 4, 0.34, 1.15, 1, 5, 8, 8], { bottles: 4 }),
];

const BARLEY = { type: "infusion", specId: "demo-smoked-barley", volume: 1500 } as const;

/** All invented batches, the oldest first. */
export const DEMO_BATCHES: readonly (DemoWash | DemoInfusion)[] = [
  ...PEARS,
  ...BOATYARDS,
  { ...BARLEY, ago: 105, hours: 30, through: 1340, finish: 7, verdict: "fair" } as const,
  { ...BARLEY, ago: 36, hours: 24, through: 1365, finish: 8, verdict: "good" } as const,
].toSorted((a, b) => b.ago - a.ago);
