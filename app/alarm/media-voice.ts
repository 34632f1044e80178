import type { AlarmKind } from "./alarm.ts";
import { soundOf } from "./sound-shape.ts";
import type { Voice } from "./voice.ts";
import { wavOf } from "./wav.ts";

/** High enough for the top partial of every sound (below 3 kHz), small enough to make in a tap. */
const RATE = 16_000;

/** A voice on an <audio> element: no rise, for a phone may not let a page set the volume. */
export class MediaVoice implements Voice {
  readonly #element = new Audio();
  readonly #addresses = new Map<AlarmKind, string>();
  readonly #onChange: () => void;
  #allowed = false;

  constructor(onChange: () => void) {
    this.#onChange = onChange;
  }

  state() {
    return this.#allowed ? "running" : "stopped";
  }

  played() {
    return this.#element.currentTime;
  }

  wake() {
    if (this.#allowed) return;
    // Played once without sound inside a tap, the element may sound later without one.
    this.#element.muted = true;
    this.#play("done", false, () => {
      if (this.#element.muted) this.#element.pause();
    });
  }

  loop(kind: AlarmKind) {
    this.#element.muted = false;
    this.#play(kind, true);
  }

  once(kind: AlarmKind) {
    this.#element.muted = false;
    this.#play(kind, false);
  }

  hush() {
    this.#element.pause();
  }

  rest() {
    this.#element.pause();
  }

  close() {
    this.#element.pause();
    for (const address of this.#addresses.values()) URL.revokeObjectURL(address);
    this.#addresses.clear();
  }

  #play(kind: AlarmKind, loop: boolean, then = () => {}) {
    this.#element.src = this.#addressOf(kind);
    this.#element.loop = loop;
    this.#element.play().then(
      () => {
        then();
        this.#note(true);
      },
      // A play cut short by a pause says nothing about whether the phone allows it.
      (fault: unknown) => {
        if (fault instanceof DOMException && fault.name !== "AbortError") this.#note(false);
      },
    );
  }

  #note(allowed: boolean) {
    if (this.#allowed === allowed) return;
    this.#allowed = allowed;
    this.#onChange();
  }

  #addressOf(kind: AlarmKind): string {
    const known = this.#addresses.get(kind);
    if (known) return known;
    const file = new Blob([wavOf(soundOf(kind, RATE), RATE)], { type: "audio/wav" });
    const address = URL.createObjectURL(file);
    this.#addresses.set(kind, address);
    return address;
  }
}
