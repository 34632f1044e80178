import type { ReadSum } from "../../../app/screens/sums/read-sum.ts";
import type { VolumeStyle } from "../../../app/words/format.ts";

/** A house that pours in ml. */
export const IN_ML: VolumeStyle = { volumes: "ml", ounce: "bar" };

/** The value of a figure of an answer, by what it is called; fails where there is none. */
export function sumValue(read: ReadSum, name: string): number {
  const { main = [], more = [] } = read.answer ?? {};
  const found = [...main, ...more].find((one) => one.name === name);
  if (found === undefined) {
    const why = read.cannot ?? [...read.faults].join();
    throw new RangeError(`expected a figure called ${name}, got none: ${why}`);
  }
  return found.value;
}
