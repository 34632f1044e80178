/** Stretches in which this machine ran nobody, as this process itself noticed. */
export interface Stalls {
  /** The longest that ended between two moments, epoch ms; ms. */
  readonly longest: (from: number, to: number) => number;
  readonly end: () => void;
}

const EVERY = 10;

/**
 * Watches how late this process's own timer is. What is measured in real time may be late by as much
 * without anything being wrong with it: a test then allows for exactly that, and no more.
 */
export function watchStalls(): Stalls {
  const seen: { readonly at: number; readonly late: number }[] = [];
  let last = Date.now();
  const timer = setInterval(() => {
    const at = Date.now();
    seen.push({ at, late: at - last - EVERY });
    last = at;
  }, EVERY);
  return {
    longest: (from, to) =>
      Math.max(0, ...seen.filter(({ at }) => at >= from && at <= to).map(({ late }) => late)),
    end: () => clearInterval(timer),
  };
}
