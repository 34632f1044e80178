/** Lengths of time in ms. A day is that of a clock that is not changed: calendar days come from date-fns. */
export const SECOND = 1000;
export const MINUTE = 60 * SECOND;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;
