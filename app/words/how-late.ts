import { duration } from "./format.ts";
import { say } from "./say.ts";

/** Nobody calls so little late, ms. */
const ON_TIME = 1500;

/** Whether an alarm is so late that it is said by how much. */
export const isLate = (ms: number): boolean => ms >= ON_TIME;

/** How late an alarm is, in words. */
export const howLate = (ms: number): string =>
  isLate(ms) ? say.alarm.lateBy(duration(ms)) : say.alarm.dueNow;
