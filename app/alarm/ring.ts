import type { AlarmKind } from "../../core/run/alarm.ts";
import { MediaVoice } from "./media-voice.ts";
import type { Voice } from "./voice.ts";
import { WebVoice } from "./web-voice.ts";

/** `running`: it would be heard now, as far as the phone says. `blocked`: a tap is needed. */
export type SoundState = "running" | "blocked" | "absent";

/** What the phone offers to sound with. */
export interface SoundHost {
  /** Null where the browser has no such thing. */
  readonly web: ((onChange: () => void) => Voice) | null;
  readonly media: ((onChange: () => void) => Voice) | null;
  /** Where the browser lets a page ask to sound in spite of the phone's silent switch. */
  readonly session: ((wish: "playback" | "auto") => void) | null;
  readonly onChange: () => void;
}

/** A running voice plays at least this share of the time that passes. */
const LEAST_SHARE = 0.2;
/** Over less time than this nothing can be said, ms. */
const LEAST_SPAN = 400;

/** A phone that lends its speaker to nobody now may throw; what rings is shown all the same. */
function made(make: SoundHost["web"], onChange: () => void): Voice | null {
  try {
    return make?.(onChange) ?? null;
  } catch {
    return null;
  }
}

/** Decides which voice speaks, and says truthfully whether one would be heard. */
export class Ringer {
  readonly #host: SoundHost;
  readonly #media: Voice | null;
  #web: Voice | null = null;
  #ringing: AlarmKind | null = null;
  #speaking: Voice | null = null;
  #last: { readonly mono: number; readonly played: number } | null = null;
  #stalled = false;

  constructor(host: SoundHost) {
    this.#host = host;
    this.#media = made(host.media, () => this.#changed());
  }

  /** Call inside a tap: opens the speaker, and makes a new voice where the old one is lost. */
  prepareSound(): void {
    this.#host.session?.("playback");
    // Inside a tap a fresh voice may start, so one that the phone took away is not waited for.
    this.#renewWeb(this.#web?.state() === "interrupted");
    this.#web?.wake();
    // While ringing, the sound itself is begun again inside the tap, and that opens the speaker.
    if (!this.#ringing) this.#media?.wake();
    else if (this.#speaking?.state() !== "running") this.#speaking = null;
    this.#changed();
  }

  /** Call on return to sight, without a tap: starts again what may start by itself. */
  reviveSound(): void {
    this.#last = null;
    this.#start();
    this.#changed();
  }

  /** Call about once a second with a steady clock, ms: finds a voice that only says it runs. */
  checkSound(mono: number): void {
    if (this.#web?.state() !== "running") {
      this.#last = null;
      return;
    }
    const before = this.#last;
    if (before && mono - before.mono < LEAST_SPAN) return;
    const played = this.#web.played();
    this.#last = { mono, played };
    if (!before) return;
    const was = this.#stalled;
    this.#stalled = (played - before.played) * 1000 < LEAST_SHARE * (mono - before.mono);
    if (was !== this.#stalled) this.#changed();
  }

  soundState(): SoundState {
    if (this.#host.web) return this.#webRuns() ? "running" : "blocked";
    if (!this.#media) return "absent";
    return this.#media.state() === "running" ? "running" : "blocked";
  }

  /** Rings until `stopRinging`; a second call with the same kind changes nothing. */
  startRinging(kind: AlarmKind): void {
    if (this.#ringing === kind) return;
    this.stopRinging();
    this.#ringing = kind;
    this.#start();
    this.#speak();
  }

  stopRinging(): void {
    this.#ringing = null;
    this.#speaking?.hush();
    this.#speaking = null;
  }

  /** One round, for the sound check; call inside a tap. Says nothing while an alarm rings. */
  playOnce(kind: AlarmKind): void {
    if (this.#ringing) return;
    this.prepareSound();
    // The voice that will ring, even if it is only just starting.
    (this.#web ?? this.#media)?.once(kind);
  }

  /** No alarm is left: gives the speaker back to the phone's other sounds. */
  restSound(): void {
    this.stopRinging();
    this.#last = null;
    this.#web?.rest();
    this.#media?.rest();
    this.#host.session?.("auto");
    this.#host.onChange();
  }

  /** Without a tap this works only where the phone trusts the page; `soundState` tells. */
  #start(): void {
    this.#host.session?.("playback");
    this.#renewWeb();
    const state = this.#web?.state();
    if (state === "stopped" || state === "interrupted") this.#web?.wake();
  }

  #webRuns(): boolean {
    return this.#web?.state() === "running" && !this.#stalled;
  }

  #best(): Voice | null {
    return this.#webRuns() ? this.#web : (this.#media ?? this.#web);
  }

  #speak(): void {
    const voice = this.#best();
    if (!this.#ringing || voice === this.#speaking) return;
    this.#speaking?.hush();
    this.#speaking = voice;
    voice?.loop(this.#ringing);
  }

  #changed(): void {
    this.#speak();
    this.#host.onChange();
  }

  #renewWeb(taken = false): void {
    const alive = this.#web && this.#web.state() !== "dead" && !this.#stalled && !taken;
    if (!this.#host.web || alive) return;
    if (this.#speaking === this.#web) this.#speaking = null;
    this.#web?.close();
    this.#last = null;
    this.#stalled = false;
    this.#web = made(this.#host.web, () => this.#changed());
  }
}

/** What this browser offers. */
export function soundHost(onChange: () => void): SoundHost {
  const session: unknown = Reflect.get(navigator, "audioSession");
  const hasSession = typeof session === "object" && session !== null;
  return {
    web: "AudioContext" in window ? (hear) => new WebVoice(hear) : null,
    media: "Audio" in window ? (hear) => new MediaVoice(hear) : null,
    session: hasSession ? (wish) => Reflect.set(session, "type", wish) : null,
    onChange,
  };
}
