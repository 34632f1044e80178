/** Whether it fits with so much, and how much of that it really takes; nothing where it does not. */
export type Probe = (most: number) => number | undefined;

/**
 * The least that fits, found by halving between nothing, which does not fit, and the most there may
 * be.
 *
 * @param most - from 0; infinity where the probe tells what it really takes
 * @param close - how near to the least is near enough, given what fits so far
 * @returns what fits; nothing where even the most does not
 * @example
 * narrow(100, () => 1, (most) => (most < 42 ? undefined : Math.floor(most))) // => 42
 */
export function narrow(
  most: number,
  close: (fits: number) => number,
  probe: Probe,
): number | undefined {
  let from = 0;
  let to = probe(most);
  while (to !== undefined && to - from > close(to)) {
    const middle = (from + to) / 2;
    const found = probe(middle);
    if (found === undefined) from = middle;
    else to = Math.min(found, middle);
  }
  return to;
}
