// How well the learning holds on bars whose truth is known: part of npm run bench
import { coverage, outlierBias } from "../support/world/simulated-batches.ts";

const BARS = 4000;
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

console.log(
  "next batches within the 80 % interval: same kind, a kind with a third as many, a new one",
);
for (const batches of [0, 3, 7, 12, 30]) {
  const shares = ["a", "b", "c"].map((group) => percent(coverage(7, BARS, batches, group)));
  console.log(`${String(batches).padStart(3)} batches: ${shares.join(", ")}`);
}
console.log(
  "mean error of what the curd keeps, one batch of 1.2 l/l among them (plain mean beside it)",
);
for (const batches of [4, 7, 20]) {
  const { clean, odd, plainMean } = outlierBias(3, BARS / 4, batches, 1.2);
  const shown = [clean, odd, plainMean].map((one) => one.toFixed(4)).join(", ");
  console.log(`${String(batches).padStart(3)} batches: without, with, plain mean: ${shown}`);
}
