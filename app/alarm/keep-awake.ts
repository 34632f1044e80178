/** Whether the phone keeps its screen on for us. */
export type AwakeState = "held" | "refused" | "absent";

interface ScreenLock {
  readonly release: () => Promise<void>;
  readonly addEventListener: (type: "release", run: () => void) => void;
}

/** What the phone offers to keep its screen on with. */
export interface AwakeHost {
  /** Null where the phone has no such thing. */
  readonly request: (() => Promise<ScreenLock>) | null;
  readonly isVisible: () => boolean;
  readonly onVisibility: (run: () => void) => void;
  readonly onChange: () => void;
}

/** Keeps the screen on for as long as it is wanted. */
export interface KeepAwake {
  /** Keep the screen on from now: asks again on every return, for the lock ends with each leaving. */
  readonly hold: () => Promise<void>;
  readonly release: () => Promise<void>;
  readonly state: () => AwakeState;
}

/** Holds the screen on while it is wanted, and knows when it is not held. */
export function keepAwake(host: AwakeHost): KeepAwake {
  const { request, isVisible, onVisibility, onChange } = host;
  let wanted = false;
  let asking = false;
  let lock: ScreenLock | null = null;

  const letGo = async () => {
    const had = lock;
    lock = null;
    await had?.release();
  };
  const ask = async () => {
    if (!request || !wanted || lock || asking || !isVisible()) return;
    asking = true;
    try {
      const got = await request();
      lock = got;
      got.addEventListener("release", () => {
        if (lock === got) lock = null;
        onChange();
      });
      if (!wanted) await letGo();
    } catch {
      // Refused: a low battery or the phone's own policy. `state` says so.
      lock = null;
    } finally {
      asking = false;
    }
    onChange();
  };
  onVisibility(() => void ask());

  return {
    hold: async () => {
      wanted = true;
      await ask();
    },
    release: async () => {
      wanted = false;
      await letGo();
      onChange();
    },
    state: () => {
      if (!request) return "absent";
      return lock ? "held" : "refused";
    },
  };
}

/** What this browser offers for it. */
export function awakeHost(onChange: () => void): AwakeHost {
  const { wakeLock }: { wakeLock?: WakeLock } = navigator;
  return {
    request: wakeLock ? () => wakeLock.request("screen") : null,
    isVisible: () => document.visibilityState === "visible",
    onVisibility: (run) => document.addEventListener("visibilitychange", run),
    onChange,
  };
}
