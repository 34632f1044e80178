import { expect, test } from "vitest";
import { RISE_FOR, risingOf, soundOf } from "../../../app/alarm/sound-shape.ts";
import type { AlarmKind } from "../../../core/run/alarm.ts";

const RATE = 8000;
const KINDS: readonly AlarmKind[] = ["do", "look", "done"];

/** Energy at one frequency (Goertzel, Am. Math. Monthly 65, 1958; the recurrence from memory). */
function energyAt(samples: Float32Array, hertz: number): number {
  const turn = 2 * Math.cos((2 * Math.PI * hertz) / RATE);
  let [before, last] = [0, 0];
  for (const sample of samples) [before, last] = [last, sample + turn * last - before];
  return before * before + last * last - turn * before * last;
}

/** The strongest frequency of a stretch, to 5 Hz, between 100 and 3895 Hz. */
function pitchOf(samples: Float32Array): number {
  const steps = Array.from({ length: 760 }, (_, i) => 100 + i * 5);
  const energies = steps.map((hertz) => energyAt(samples, hertz));
  return steps[energies.indexOf(Math.max(...energies))] ?? 0;
}

test.each(KINDS)("%s is as loud as it can be without clipping", (kind) => {
  const samples = soundOf(kind, RATE);
  const peak = samples.reduce((top, one) => Math.max(top, Math.abs(one)), 0);
  expect(peak).toBeGreaterThan(0.9);
  expect(peak).toBeLessThanOrEqual(1);
});

test.each(KINDS)("%s begins and ends in silence, so that it repeats without a click", (kind) => {
  const samples = soundOf(kind, RATE);
  expect(Math.abs(samples[0] ?? 1)).toBeLessThan(0.01);
  expect(Math.abs(samples.at(-1) ?? 1)).toBeLessThan(0.01);
});

test.each(KINDS)("%s keeps more than four fifths of its energy between 700 and 3000 Hz", (kind) => {
  const samples = soundOf(kind, RATE);
  const steps = Array.from({ length: 395 }, (_, i) => 50 + i * 10);
  const sum = (some: readonly number[]) =>
    some.reduce((total, hertz) => total + energyAt(samples, hertz), 0);
  const heard = sum(steps.filter((hertz) => hertz >= 700 && hertz <= 3000));
  expect(heard / sum(steps)).toBeGreaterThan(0.8);
});

test.each<[AlarmKind, readonly [number, number, number][]]>([
  [
    "do",
    [
      [0, 0.12, 740],
      [0.14, 0.25, 932],
      [0.27, 0.5, 1175],
    ],
  ],
  [
    "look",
    [
      [0, 0.37, 1245],
      [0.4, 0.7, 784],
    ],
  ],
  [
    "done",
    [
      [0, 0.45, 1175],
      [1.4, 2, 784],
    ],
  ],
])("%s has its own tune", (kind, stretches) => {
  const samples = soundOf(kind, RATE);
  for (const [from, to, hertz] of stretches) {
    const pitch = pitchOf(samples.subarray(from * RATE, to * RATE));
    expect(Math.abs(pitch - hertz)).toBeLessThanOrEqual(15);
  }
});

test("the three differ in length, and the length follows the rate", () => {
  expect(KINDS.map((kind) => soundOf(kind, RATE).length / RATE)).toEqual([1.6, 2.4, 3.2]);
  expect(soundOf("do", 44_100)).toHaveLength(70_560);
});

const loudness = (samples: Float32Array) =>
  Math.sqrt(samples.reduce((sum, one) => sum + one * one, 0) / samples.length);

test.each(KINDS)("%s rises by whole rounds, each louder than the one before, to full", (kind) => {
  const round = soundOf(kind, RATE);
  const rising = risingOf(kind, RATE);
  const rounds = rising.length / round.length;
  expect(Number.isInteger(rounds)).toBe(true);
  expect(rising.length / RATE).toBeGreaterThanOrEqual(RISE_FOR);
  const levels = Array.from({ length: rounds }, (_, i) =>
    loudness(rising.subarray(i * round.length, (i + 1) * round.length)),
  );
  for (const [i, level] of levels.slice(1).entries()) expect(level).toBeGreaterThan(levels[i] ?? 0);
  expect((levels[0] ?? 0) / loudness(round)).toBeGreaterThan(0.3);
  expect((levels[0] ?? 0) / loudness(round)).toBeLessThan(0.45);
  expect((levels.at(-1) ?? 0) / loudness(round)).toBeGreaterThan(0.9);
});
