import type { AlarmKind } from "../../core/run/alarm.ts";
import { risingOf, soundOf } from "./sound-shape.ts";
import type { Voice } from "./voice.ts";
import { wavOf } from "./wav.ts";

/** High enough for the top partial of every sound (below 3 kHz), small enough to make in a tap. */
const RATE = 16_000;

/** Which recording of a sound: one round, or rounds that rise. */
type Take = "round" | "rising";

/**
 * A voice on an <audio> element. A phone may not let a page set its volume, so the rise is in what
 * it plays: a recording that rises, then the sound at full strength for as long as it takes.
 */
export class MediaVoice implements Voice {
  readonly #element = new Audio();
  readonly #addresses = new Map<string, string>();
  readonly #onChange: () => void;
  #allowed = false;
  #afterwards = () => {};

  constructor(onChange: () => void) {
    this.#onChange = onChange;
    this.#element.addEventListener("ended", () => this.#afterwards());
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
    this.#play("done", "round", false, () => {
      if (this.#element.muted) this.#element.pause();
    });
  }

  loop(kind: AlarmKind) {
    this.#element.muted = false;
    this.#play(kind, "rising", false);
    this.#afterwards = () => this.#play(kind, "round", true);
  }

  once(kind: AlarmKind) {
    this.#element.muted = false;
    this.#play(kind, "round", false);
  }

  hush() {
    this.#afterwards = () => {};
    this.#element.pause();
  }

  rest() {
    this.hush();
  }

  close() {
    this.hush();
    for (const address of this.#addresses.values()) URL.revokeObjectURL(address);
    this.#addresses.clear();
  }

  #play(kind: AlarmKind, take: Take, loop: boolean, then = () => {}) {
    this.#afterwards = () => {};
    this.#element.src = this.#addressOf(kind, take);
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

  #addressOf(kind: AlarmKind, take: Take): string {
    const name = `${kind} ${take}`;
    const known = this.#addresses.get(name);
    if (known) return known;
    const samples = take === "round" ? soundOf(kind, RATE) : risingOf(kind, RATE);
    const file = new Blob([wavOf(samples, RATE)], { type: "audio/wav" });
    const address = URL.createObjectURL(file);
    this.#addresses.set(name, address);
    return address;
  }
}
