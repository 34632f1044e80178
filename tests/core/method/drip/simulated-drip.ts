// Drips that follow the filtration law exactly, read with a shaky hand. The law is integrated here
// on its own, by Simpson's rule, so that a fault in core/method/drip cannot hide.

import type { ExpectedTotal } from "../../../../core/method/drip/drip-cases.ts";
import type { DripReading } from "../../../../core/method/drip/drip-readings.ts";

/** A seeded source of numbers from 0 to 1 (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Chance = () => number;

/** A normal number (Box and Muller). */
const normal = (chance: Chance): number =>
  Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());

/** Kinds of truth, as in filtration.json. */
const KINDS = ["topped-up", "straight", "cone", "packing"] as const;
export type DripKind = (typeof KINDS)[number];

/** The kind of that name; throws where there is none. */
export function kindOf(name: string): DripKind {
  const found = KINDS.find((kind) => kind === name);
  if (!found) throw new RangeError(`expected a kind of drip, got ${name}`);
  return found;
}

/** How a filter blinds: resistance grows as a power of e, or its pores close one by one. */
export type BlindingKind = "grows" | "closes";

/** dt/df by share. */
type Slowness = (share: number) => number;

/** A law drawn by lot: b log-uniform 0.02 to 3 and the kind's n and s. */
function lawByLot(kind: DripKind, chance: Chance): Slowness {
  const b = 0.02 * 150 ** chance();
  const n = { "topped-up": 0, straight: 1, cone: 1 / 3 + (2 / 3) * chance(), packing: 0 }[kind];
  if (kind !== "packing") return (f) => (b + f) / (1 - f) ** n;
  const head = 1 / 3 + 0.77 * chance();
  const s = 1 + 0.6 * chance();
  return (f) => (b + f ** s) / (1 - f) ** head;
}

/** How many times slower a blinding filter is, by share: from a point on, drawn by lot. */
function blindingByLot(kind: BlindingKind, chance: Chance): Slowness {
  const from = 0.15 + 0.3 * chance();
  if (kind === "grows") {
    const growth = 5 + 10 * chance();
    return (f) => Math.exp(growth * Math.max(0, f - from));
  }
  const shut = 0.55 + 0.25 * chance();
  return (f) => (f <= from ? 1 : 1 / Math.max(1e-6, 1 - (f - from) / (shut - from)));
}

const CUTS = 1500;
const END = 4.2;

/** Time by share, from its slowness: Simpson's rule in steps of -ln(1 - f). */
export function timeBy(slowness: Slowness): (share: number) => number {
  const shareAt = (cut: number): number => -Math.expm1((-cut * END) / CUTS);
  const times = [0];
  let time = 0;
  for (let cut = 0; cut < CUTS; cut += 1) {
    const [a, b] = [shareAt(cut), shareAt(cut + 1)];
    time += ((b - a) * (slowness(a) + 4 * slowness((a + b) / 2) + slowness(b))) / 6;
    times.push(time);
  }
  return (share) => {
    const cut = (-Math.log1p(-share) * CUTS) / END;
    const low = Math.floor(cut);
    const from = times[low] ?? 0;
    return from + (cut - low) * ((times[low + 1] ?? from) - from);
  };
}

export interface SimulatedDrip {
  /** Readings up to the last share asked for. */
  readonly readings: readonly DripReading[];
  readonly total: ExpectedTotal;
  /** When it is really through, ms. */
  readonly trueMs: (share: number) => number;
  /** How many times slower than its law the filter is at each reading. */
  readonly slower: readonly number[];
}

export interface Plot {
  readonly kind: DripKind;
  readonly blinding?: BlindingKind;
  /** Shares at which it is read, jittered by up to `jitter` of themselves. */
  readonly shares: readonly number[];
  readonly jitter?: number;
  /** Standard deviation of the planned total. */
  readonly scatter?: number;
  /** Planned total over the true one, on average. */
  readonly planned?: number;
}

const TRUE_ML = 4500;
const UNIT_MS = 3_600_000;

/** One drip by lot: 3 % noise on each volume read, `scatter` on the planned total. */
export function simulateDrip(plot: Plot, chance: Chance): SimulatedDrip {
  const { kind, blinding, shares, jitter = 0.15, scatter = 0.03, planned = 1 } = plot;
  const law = lawByLot(kind, chance);
  const slower = blinding === undefined ? () => 1 : blindingByLot(blinding, chance);
  const time = timeBy((f) => law(f) * slower(f));
  const expected = TRUE_ML * planned * Math.exp(-scatter * normal(chance));
  const half = 1.2816 * scatter * expected;
  const readings: DripReading[] = [];
  const times: number[] = [];
  for (const share of shares) {
    const f = Math.min(0.97, share * (1 + jitter * (2 * chance() - 1)));
    const read = TRUE_ML * f * (1 + 0.03 * normal(chance));
    const before = readings.at(-1) ?? { atMs: 0, ml: 0 };
    const atMs = time(f) * UNIT_MS;
    // Nobody reads a level below the last mark, nor goes back in time.
    if (atMs <= before.atMs || slower(f) > 1000) continue;
    readings.push({ atMs, ml: Math.max(before.ml, read) });
    times.push(slower(f));
  }
  return {
    readings,
    total: { expected, low: expected - half, high: expected + half },
    trueMs: (share) => time(share) * UNIT_MS,
    slower: times,
  };
}
