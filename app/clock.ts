/** The only door to time: everything else is handed a clock or a moment. */
export interface Clock {
  /** Wall clock, epoch ms: jumps with the phone's settings, survives sleep and restart. */
  readonly now: () => number;
  /** Monotonic ms since the page loaded: never jumps, may stop while the phone sleeps. */
  readonly mono: () => number;
  /** Calls back every so many ms until stopped. No code may assume a call came on time. */
  readonly every: (ms: number, call: () => void) => () => void;
  /** Calls back once after so many ms, however many, unless stopped. */
  readonly after: (ms: number, call: () => void) => () => void;
}

/** A browser's timer set for longer goes off at once: 2^31 - 1 ms, not quite 25 days. */
const LONGEST_TIMER = 2_147_483_647;

/** The phone's own clock. */
export const phoneClock: Clock = {
  now: () => Date.now(),
  mono: () => performance.now(),
  every: (ms, call) => {
    const timer = setInterval(call, ms);
    return () => clearInterval(timer);
  },
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
