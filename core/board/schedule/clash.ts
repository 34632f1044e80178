import { SLACK } from "./job.ts";
import { type Claim, endIn, type Network, startIn } from "./network.ts";

/** Claims on one resource that together are more than there is. */
export interface Clash {
  readonly of: number;
  /** They all run at this moment's last instant, epoch ms. */
  readonly before: number;
  /** As few as it takes. */
  readonly claims: readonly Claim[];
}

function total(claims: readonly Claim[]): number {
  let sum = 0;
  for (const { amount } of claims) sum += amount;
  return sum;
}

/**
 * What has begun together cannot clash, nor can what is known at that moment: it has fitted somehow.
 *
 * @param before - the end of the moment, epoch ms
 */
const canBeHelped = (claims: readonly Claim[], before: number): boolean =>
  claims.some((claim) => !claim.begun) && claims.some(({ knownUntil }) => knownUntil < before);

/** Leaves out what is not needed for the clash, the smallest claims first. */
function fewest(claims: readonly Claim[], most: number, before: number): readonly Claim[] {
  let left = [...claims].sort((a, b) => a.amount - b.amount);
  for (const claim of [...left]) {
    const without = left.filter((one) => one !== claim);
    if (total(without) > most && canBeHelped(without, before)) left = without;
  }
  return left;
}

function clashOn(network: Network, of: number, starts: Float64Array): Clash | undefined {
  const most = (network.capacities[of] ?? 0) + SLACK;
  const claims = [...(network.claims[of] ?? [])].sort(
    (a, b) => endIn(starts, b.last) - endIn(starts, a.last),
  );
  let running: Claim[] = [];
  for (const next of claims) {
    const before = endIn(starts, next.last);
    if (startIn(starts, next.first) >= before) continue;
    running = running.filter(({ first }) => startIn(starts, first) < before);
    running.push(next);
    if (total(running) <= most || !canBeHelped(running, before)) continue;
    return { of, before, claims: fewest(running, most, before) };
  }
  return undefined;
}

/** How much of a resource is in use at its fullest, and by what. */
export interface Peak {
  readonly amount: number;
  readonly claims: readonly Claim[];
}

/**
 * The fullest moment of a resource, apart from what has begun together already.
 *
 * @param of - the resource's place in the network
 * @param starts - by task, epoch ms
 */
export function peakOn(network: Network, of: number, starts: Float64Array): Peak {
  const claims = network.claims[of] ?? [];
  const ends = claims.map(({ last }) => endIn(starts, last));
  let peak: Peak = { amount: 0, claims: [] };
  // Just before an end is when least of what runs together is known.
  for (const before of ends) {
    const together = claims.filter(
      ({ first }, i) => startIn(starts, first) < before && before <= (ends[i] ?? before),
    );
    const amount = total(together);
    if (amount > peak.amount && canBeHelped(together, before)) peak = { amount, claims: together };
  }
  return peak;
}

/**
 * The latest moment at which more is claimed than there is.
 *
 * @param starts - by task, epoch ms
 * @returns nothing where all fits; what has begun together already counts as fitting
 */
export function lastClash(network: Network, starts: Float64Array): Clash | undefined {
  let found: Clash | undefined;
  for (const of of network.capacities.keys()) {
    const clash = clashOn(network, of, starts);
    if (clash !== undefined && (found === undefined || clash.before > found.before)) found = clash;
  }
  return found;
}
