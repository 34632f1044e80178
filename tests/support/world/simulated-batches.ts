import { type Belief, type Lesson, shrunk } from "../../../core/logbook/learn/shrunk.ts";

/** A seeded source of even numbers from 0 to 1 (mulberry32, from memory). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Normal numbers by Box and Muller's rule. */
export const normals = (even: () => number) => (): number =>
  Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());

/** A bar whose truth is known: where its kinds of batch lie, and how far batches of one kind spread. */
export interface TrueBar {
  readonly groups: readonly string[];
  readonly middle: (group: string) => number;
  readonly batch: number;
}

const TRUE_HOUSES = 0.05;
const TRUE_GROUPS = 0.025;
const TRUE_BATCHES = 0.04;

/** What the curd keeps before any batch. */
export const CURD_BELIEF: Belief = { mean: 0.35, half: 0.1 };

/** A bar drawn around the belief; its spreads are not exactly those that the learning takes. */
export function drawBar(normal: () => number): TrueBar {
  const house = CURD_BELIEF.mean + TRUE_HOUSES * normal();
  const groups = ["a", "b", "c"];
  const middles = new Map(groups.map((one) => [one, house + TRUE_GROUPS * normal()]));
  return { groups, middle: (group) => middles.get(group) ?? house, batch: TRUE_BATCHES };
}

/** Some batches of each kind: many of "a", few of "b", none of "c". */
export function drawLessons(bar: TrueBar, normal: () => number, batches: number): Lesson[] {
  const lesson = (group: string): Lesson => ({
    group,
    value: bar.middle(group) + bar.batch * normal(),
  });
  const own = Array.from({ length: batches }, () => lesson("a"));
  return [...own, ...Array.from({ length: Math.floor(batches / 3) }, () => lesson("b"))];
}

/**
 * How often the next batch of a kind lies in the interval that was learnt, over many bars.
 *
 * @param batches - that each bar has made of the kind "a"
 */
export function coverage(seed: number, bars: number, batches: number, group: string): number {
  const normal = normals(seeded(seed));
  let within = 0;
  for (let at = 0; at < bars; at += 1) {
    const bar = drawBar(normal);
    const { low, high } = shrunk(drawLessons(bar, normal, batches), CURD_BELIEF, group);
    const next = bar.middle(group) + bar.batch * normal();
    if (next >= low && next <= high) within += 1;
  }
  return within / bars;
}

/**
 * How far what is learnt lies from the truth on average, with one gross outlier among the batches
 * and without it: litres kept per litre of milk.
 */
export function outlierBias(seed: number, bars: number, batches: number, outlier: number) {
  const normal = normals(seeded(seed));
  let [clean, odd, plain] = [0, 0, 0];
  for (let at = 0; at < bars; at += 1) {
    const bar = drawBar(normal);
    const lessons = drawLessons(bar, normal, batches);
    const spoiled = [{ group: "a", value: outlier }, ...lessons.slice(1)];
    const truth = bar.middle("a");
    const own = spoiled.filter(({ group }) => group === "a");
    clean += shrunk(lessons, CURD_BELIEF, "a").mean - truth;
    odd += shrunk(spoiled, CURD_BELIEF, "a").mean - truth;
    plain += own.reduce((sum, { value }) => sum + value, 0) / own.length - truth;
  }
  return { clean: clean / bars, odd: odd / bars, plainMean: plain / bars };
}
