import { clockTime, dateYear } from "../words/format.ts";

/** A moment that may be read a day later: the date stands with the time. */
export const moment = (at: number): string => `${dateYear(at)}, ${clockTime(at)}`;
