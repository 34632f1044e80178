import type { Page } from "playwright-core";

/** What the page sent to its speaker. */
export interface Heard {
  /** From -1 to 1. */
  readonly samples: readonly number[];
  /** A second. */
  readonly rate: number;
  /** When the first sample was played, epoch ms. */
  readonly from: number;
}

/** Runs in the page before the app: keeps a copy of whatever is sent to the speaker. */
export function listenIn(): void {
  // One sample of four is enough: the sounds lie below 3 kHz.
  const thin = 4;
  const kept: { samples: number[]; from: number; rate: number } = { samples: [], from: 0, rate: 0 };
  Reflect.set(globalThis, "heardAudio", kept);
  const taps = new WeakMap<BaseAudioContext, AudioNode>();
  const connect: (this: AudioNode, to: AudioNode) => AudioNode = Reflect.get(
    AudioNode.prototype,
    "connect",
  );
  const tapOf = (context: BaseAudioContext): AudioNode => {
    const known = taps.get(context);
    if (known) return known;
    // Old, but it hands over every sample on the page's own thread.
    const tap = context.createScriptProcessor(1024, 1, 1);
    let first: number | undefined;
    taps.set(context, tap);
    tap.onaudioprocess = ({ inputBuffer, playbackTime }) => {
      const data = inputBuffer.getChannelData(0);
      first ??= playbackTime;
      if (kept.from === 0) {
        kept.rate = context.sampleRate / thin;
        kept.from = Date.now() + (playbackTime - context.currentTime) * 1000;
      }
      // A busy page misses some: what was missed is put in as silence, or all after it came early.
      const at = Math.round((playbackTime - first) * kept.rate);
      while (kept.samples.length < at) kept.samples.push(0);
      for (let i = 0; i < data.length; i += thin) kept.samples.push(data[i] ?? 0);
    };
    connect.call(tap, context.destination);
    return tap;
  };
  Reflect.set(AudioNode.prototype, "connect", function (this: AudioNode, to: AudioNode) {
    if (to instanceof AudioDestinationNode) connect.call(this, tapOf(this.context));
    return connect.call(this, to);
  });
}

/** Everything that was sent to the speaker so far. */
export const heardBy = (page: Page): Promise<Heard> => page.evaluate("heardAudio");

/** Loudness of a stretch, root mean square. */
export function loudness({ samples, rate, from }: Heard, at: number, forMs: number): number {
  const first = Math.round(((at - from) / 1000) * rate);
  // Before the first sample nothing was sent: that part of the stretch is silent.
  const some = samples.slice(
    Math.max(0, first),
    Math.max(0, first + Math.round((forMs / 1000) * rate)),
  );
  if (some.length === 0) return 0;
  return Math.sqrt(some.reduce((sum, one) => sum + one * one, 0) / some.length);
}

/** When something is first heard after a moment, epoch ms; nothing where it stays silent. */
export function onsetAfter(heard: Heard, at: number): number | undefined {
  const first = Math.max(0, Math.round(((at - heard.from) / 1000) * heard.rate));
  const index = heard.samples.findIndex((one, i) => i >= first && Math.abs(one) > 0.02);
  return index < 0 ? undefined : heard.from + (index / heard.rate) * 1000;
}

/** Which of some pitches, Hz, a stretch holds most of (Goertzel's recurrence, from memory). */
export function pitchAt(heard: Heard, at: number, forMs: number, of: readonly number[]): number {
  const { samples, rate, from } = heard;
  const first = Math.max(0, Math.round(((at - from) / 1000) * rate));
  const some = samples.slice(first, first + Math.round((forMs / 1000) * rate));
  const energy = (hertz: number) => {
    const turn = 2 * Math.cos((2 * Math.PI * hertz) / rate);
    let [before, last] = [0, 0];
    for (const sample of some) [before, last] = [last, sample + turn * last - before];
    return before * before + last * last - turn * before * last;
  };
  const energies = of.map(energy);
  return of[energies.indexOf(Math.max(...energies))] ?? 0;
}

/** Runs in the page before the app: notes every sound that loops, as what rings does. */
export function noteLoops(): void {
  const loops: { began: number[]; playing: number } = { began: [], playing: 0 };
  Reflect.set(globalThis, "loops", loops);
  const { start, stop } = AudioBufferSourceNode.prototype;
  AudioBufferSourceNode.prototype.start = function (...at) {
    if (this.loop) {
      loops.began.push(Date.now());
      loops.playing += 1;
    }
    start.apply(this, at);
  };
  AudioBufferSourceNode.prototype.stop = function (...at) {
    if (this.loop) loops.playing -= 1;
    stop.apply(this, at);
  };
}

/** When each sound that loops began by the phone's own time, epoch ms, and how many play now. */
export const loopsOn = (
  page: Page,
): Promise<{ readonly began: readonly number[]; readonly playing: number }> =>
  page.evaluate("loops");
