import type { AlarmKind } from "../../core/run/alarm.ts";
import { FIRST_LEVEL, RISE_FOR, soundOf } from "./sound-shape.ts";
import type { Voice } from "./voice.ts";

/** A promise whose failing is already told by the context's state. */
const quietly = (promise: Promise<void>) => promise.catch(() => undefined);

/** A voice on Web Audio. `onChange` hears of every change of its state. */
export class WebVoice implements Voice {
  readonly #context = new AudioContext();
  readonly #buffers = new Map<AlarmKind, AudioBuffer>();
  readonly #onChange: () => void;
  #source: AudioBufferSourceNode | null = null;

  constructor(onChange: () => void) {
    this.#onChange = onChange;
    this.#context.addEventListener("statechange", onChange);
  }

  state() {
    switch (this.#context.state) {
      case "running":
        return "running";
      // Only iOS has it: a call, an alarm of the phone's own, another app.
      case "interrupted":
        return "interrupted";
      case "closed":
        return "dead";
      case "suspended":
        return "stopped";
    }
  }

  played() {
    return this.#context.currentTime;
  }

  wake() {
    void quietly(this.#context.resume());
    // Some phones open the speaker only for a source begun inside the tap.
    const buffer = this.#context.createBuffer(1, 1, this.#context.sampleRate);
    const silence = new AudioBufferSourceNode(this.#context, { buffer });
    silence.connect(this.#context.destination);
    silence.start();
  }

  loop(kind: AlarmKind) {
    const level = this.#play(kind, true);
    const now = this.#context.currentTime;
    level.gain.setValueAtTime(FIRST_LEVEL, now);
    level.gain.linearRampToValueAtTime(1, now + RISE_FOR);
  }

  once(kind: AlarmKind) {
    this.#play(kind, false);
  }

  hush() {
    this.#source?.stop();
    this.#source?.disconnect();
    this.#source = null;
  }

  rest() {
    this.hush();
    void quietly(this.#context.suspend());
  }

  close() {
    this.#context.removeEventListener("statechange", this.#onChange);
    this.hush();
    void quietly(this.#context.close());
  }

  #play(kind: AlarmKind, loop: boolean): GainNode {
    this.hush();
    const source = new AudioBufferSourceNode(this.#context, { buffer: this.#bufferOf(kind), loop });
    const level = new GainNode(this.#context);
    source.connect(level).connect(this.#context.destination);
    source.start();
    this.#source = source;
    return level;
  }

  #bufferOf(kind: AlarmKind): AudioBuffer {
    const known = this.#buffers.get(kind);
    if (known) return known;
    const { sampleRate } = this.#context;
    const samples = soundOf(kind, sampleRate);
    const buffer = this.#context.createBuffer(1, samples.length, sampleRate);
    buffer.copyToChannel(samples, 0);
    this.#buffers.set(kind, buffer);
    return buffer;
  }
}
