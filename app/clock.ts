/** The only door to time: everything else is handed a clock or a moment. */
export interface Clock {
  /** Wall clock, epoch ms: jumps with the phone's settings, survives sleep and restart. */
  readonly now: () => number;
  /** Monotonic ms since the page loaded: never jumps, may stop while the phone sleeps. */
  readonly mono: () => number;
  /**
   * Calls back every so many ms until stopped, the first time perhaps sooner. No code may assume a
   * call came on time.
   */
  readonly every: (ms: number, call: () => void) => () => void;
  /** Calls back once after so many ms, however many, unless stopped. */
  readonly after: (ms: number, call: () => void) => () => void;
}

/** A browser's timer set for longer goes off at once: 2^31 - 1 ms, not quite 25 days. */
const LONGEST_TIMER = 2_147_483_647;

interface Pace {
  readonly calls: Set<() => void>;
  readonly timer: ReturnType<typeof setInterval>;
}

const paces = new Map<number, Pace>();

function startPace(ms: number): Pace {
  const calls = new Set<() => void>();
  const timer = setInterval(() => {
    for (const call of calls) {
      try {
        call();
      } catch (error) {
        // One that fails is heard of, and keeps none of the others from its turn.
        reportError(error);
      }
    }
  }, ms);
  const pace = { calls, timer };
  paces.set(ms, pace);
  return pace;
}

/** What is called at one pace shares a timer: a phone that waits is woken once for all of it. */
function atPace(ms: number, call: () => void): () => void {
  const { calls, timer } = paces.get(ms) ?? startPace(ms);
  // The same function may be asked for twice.
  const mine = () => call();
  calls.add(mine);
  return () => {
    calls.delete(mine);
    if (calls.size > 0 || paces.get(ms)?.timer !== timer) return;
    clearInterval(timer);
    paces.delete(ms);
  };
}

/** The phone's own clock. */
export const phoneClock: Clock = {
  now: () => Date.now(),
  mono: () => performance.now(),
  every: atPace,
  after: (ms, call) => {
    let timer: ReturnType<typeof setTimeout>;
    const wait = (left: number) => {
      const now = Math.min(left, LONGEST_TIMER);
      timer = setTimeout(() => (left > now ? wait(left - now) : call()), now);
    };
    wait(ms);
    return () => clearTimeout(timer);
  },
};
