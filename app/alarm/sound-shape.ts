import type { AlarmKind } from "../../core/run/alarm.ts";

/**
 * Our three sounds, computed here: struck glasses. Fundamentals and upper partials lie between
 * 700 and 3000 Hz, where a phone's speaker is loud and a bar's hum is not. Judgement by ear.
 */
interface Strike {
  /** Seconds from the start of the round. */
  readonly at: number;
  /** Hz. */
  readonly pitch: number;
  /** Seconds until it has fallen to 1/e. */
  readonly ring: number;
}

interface Round {
  /** Seconds; the sound repeats at this length. */
  readonly length: number;
  readonly strikes: readonly Strike[];
}

const strikesOf = (pitches: readonly number[], from: number, apart: number, ring: number) =>
  pitches.map((pitch, index) => ({ at: from + index * apart, pitch, ring }));

const ROUNDS: Readonly<Record<AlarmKind, Round>> = {
  // Two quick climbs and a gap: hands, now.
  do: {
    length: 1.6,
    strikes: [
      ...strikesOf([740, 932, 1175], 0, 0.13, 0.14),
      ...strikesOf([740, 932, 1175], 0.6, 0.13, 0.14),
    ],
  },
  // High and low in turn, like two people calling: come and look.
  look: { length: 2.4, strikes: strikesOf([1245, 784, 1245, 784], 0, 0.38, 0.26) },
  // Three falling, let ring: it is finished.
  done: { length: 3.2, strikes: strikesOf([1175, 988, 784], 0, 0.5, 0.5) },
};

/** Second mode of a wine glass over its first; a plausible figure, from memory. */
const UPPER = 2.32;
const ATTACK = 0.004;
const FADE = 0.03;
/** A tone is silent after so many of its own times: -69 dB. */
const GONE = 8;
/** Louder for the same peak, and dirtier: it should be heard over ice machines. */
const DRIVE = 1.8;

/**
 * Adds a fading tone, sample by sample from the one before: a turn and a shrinking. Working out a
 * sine and a power for each would hold a slow phone up for most of a second, just when it is to ring.
 */
function addTone(to: Float32Array, rate: number, { at, pitch, ring }: Strike, level: number): void {
  const first = Math.ceil(at * rate);
  const last = Math.min(to.length, Math.ceil((at + GONE * ring) * rate));
  const turn = (2 * Math.PI * pitch) / rate;
  const shrink = Math.exp(-1 / (ring * rate));
  const [across, up] = [Math.cos(turn) * shrink, Math.sin(turn) * shrink];
  const late = first / rate - at;
  const size = level * Math.exp(-late / ring);
  let x = size * Math.cos(2 * Math.PI * pitch * late);
  let y = size * Math.sin(2 * Math.PI * pitch * late);
  for (let i = first; i < last; i++) {
    to[i] = (to[i] ?? 0) + Math.min(1, (i / rate - at) / ATTACK) * y;
    [x, y] = [x * across - y * up, x * up + y * across];
  }
}

/**
 * One round of a sound, from -1 to 1, silent at both ends so that it repeats without a click.
 *
 * @param rate - samples a second
 */
export function soundOf(kind: AlarmKind, rate: number): Float32Array<ArrayBuffer> {
  const { length, strikes } = ROUNDS[kind];
  const samples = new Float32Array(Math.round(length * rate));
  for (const strike of strikes) {
    addTone(samples, rate, strike, 1);
    // The upper mode is quieter and dies twice as fast.
    const upper = { at: strike.at, pitch: strike.pitch * UPPER, ring: strike.ring / 2 };
    addTone(samples, rate, upper, 0.5);
  }
  for (let i = 0; i < samples.length; i++) {
    const end = Math.min(1, (length - i / rate) / FADE);
    samples[i] = Math.tanh(DRIVE * (samples[i] ?? 0)) * end * 0.98;
  }
  return samples;
}

/** From a third to full strength in a quarter of a minute: heard at once, then not to be ignored. */
export const FIRST_LEVEL = 0.3;
/** Seconds. */
export const RISE_FOR = 15;

/**
 * Rounds of a sound while it rises, for a voice that cannot change its level as it plays.
 *
 * @param rate - samples a second
 * @returns whole rounds, the first that reach full strength among them
 */
export function risingOf(kind: AlarmKind, rate: number): Float32Array<ArrayBuffer> {
  const round = soundOf(kind, rate);
  const rising = new Float32Array(Math.ceil((RISE_FOR * rate) / round.length) * round.length);
  for (let i = 0; i < rising.length; i++) {
    const share = Math.min(1, i / (RISE_FOR * rate));
    rising[i] = (round[i % round.length] ?? 0) * (FIRST_LEVEL + share * (1 - FIRST_LEVEL));
  }
  return rising;
}
