import { requireWithin } from "../quantity/require-within.ts";
import { DAY, HOUR, MINUTE } from "../quantity/time-units-table.ts";

/** Steps of a clock that can be read at a glance, ms; longer ones go by doubled days. */
const CLOCK_STEPS = [
  ...[5, 10, 15, 30].map((minutes) => minutes * MINUTE),
  ...[1, 2, 3, 4, 6, 12].map((hours) => hours * HOUR),
];

/** A stretch of an axis. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** No machine holds a step of 0.1 exactly: an end that lies this little out is on it. */
const NEARLY = 1e-9;

/**
 * The first of ever longer steps that leaves few enough ticks, and those ticks.
 *
 * @param offset - shifts what counts as a whole step
 * @param slack - how far out an end may lie and still be marked, in steps
 */
function fewTicks(
  steps: Iterable<number>,
  most: number,
  { from, to }: Stretch,
  { offset = 0, slack = 0 },
) {
  for (const step of steps) {
    const first = Math.ceil((from + offset) / step - slack);
    const count = Math.floor((to + offset) / step + slack) - first + 1;
    // Counted before they are made: the finest steps would make millions.
    if (count <= most) {
      return Array.from({ length: Math.max(0, count) }, (_, at) => (first + at) * step - offset);
    }
  }
  return [];
}

function* clockSteps(): Iterable<number> {
  yield* CLOCK_STEPS;
  for (let step = DAY; step < 400 * DAY; step *= 2) yield step;
}

function* roundSteps(): Iterable<number> {
  for (let power = -6; power < 12; power += 1) {
    for (const one of [1, 2, 5]) yield one * 10 ** power;
  }
}

/**
 * Times of day to write along an axis: whole steps of the clock on the wall.
 *
 * @param from - epoch ms
 * @param to - epoch ms, after `from`
 * @param most - how many fit, 1 or more
 * @param zoneMs - what the clock on the wall is ahead of UTC, ms
 * @throws RangeError when the axis has no length or no room
 * @example
 * clockTicks(0, 7200000, 4, 0).length // => 3
 */
export function clockTicks(
  from: number,
  to: number,
  most: number,
  zoneMs: number,
): readonly number[] {
  requireWithin(to - from, 1, Number.MAX_VALUE, "the length of the axis in ms");
  requireWithin(most, 1, Number.MAX_VALUE, "the room for ticks");
  return fewTicks(clockSteps(), most, { from, to }, { offset: zoneMs });
}

/**
 * Round figures to write along a stretch: whole steps of 1, 2 or 5 times a power of ten.
 *
 * @param stretch - in any unit; where it is too short for two steps there may be none
 * @param most - how many fit, 1 or more
 * @throws RangeError when there is no room
 * @example
 * roundTicks({ from: 0, to: 4300 }, 4).length // => 3
 */
export function roundTicks(stretch: Stretch, most: number): readonly number[] {
  requireWithin(most, 1, Number.MAX_VALUE, "the room for ticks");
  return fewTicks(roundSteps(), most, stretch, { slack: NEARLY });
}

/**
 * Round amounts to write along an axis, without its foot.
 *
 * @param to - the top of the axis, above 0
 * @param most - how many fit, 1 or more
 * @param unit - what one of the unit shown is, in the axis's own
 * @throws RangeError when the axis has no length or no room
 * @example
 * amountTicks(4300, 4, 1).length // => 4
 */
export function amountTicks(to: number, most: number, unit: number): readonly number[] {
  requireWithin(to, Number.MIN_VALUE, Number.MAX_VALUE, "the top of the axis");
  requireWithin(most, 1, Number.MAX_VALUE, "the room for ticks");
  const ticks = roundTicks({ from: 0, to: to / unit }, most + 1);
  return ticks.filter((at) => at > 0).map((at) => at * unit);
}
