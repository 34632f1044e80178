import type { AlarmKind } from "../../core/run/alarm.ts";

/** One way of making sound. `ring.ts` decides which one speaks. */
export interface Voice {
  /**
   * `stopped`: a tap may start it. `interrupted`: the phone took it away, for a call or another app;
   * it may come back by itself, or never. `dead`: it never will again.
   */
  readonly state: () => "running" | "stopped" | "interrupted" | "dead";
  /** Seconds of sound it has played; stands still when the phone has silenced it. */
  readonly played: () => number;
  /** Tries to start it; surest inside a tap. */
  readonly wake: () => void;
  /** Rounds of a sound, from quiet to loud, until `hush`. */
  readonly loop: (kind: AlarmKind) => void;
  /** One round at full strength. */
  readonly once: (kind: AlarmKind) => void;
  readonly hush: () => void;
  /** Quiet until the next `wake`: other sounds of the phone may have the speaker. */
  readonly rest: () => void;
  readonly close: () => void;
}
