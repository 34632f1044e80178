import type { RunEvent } from "../../core/run/event.ts";

/**
 * What a phone's clock said when the phone last wrote in a log, as far as that can be known. Time in
 * a log does not run back: what is written while the clock is behind carries the moment of the event
 * before it, which may be another phone's, and tells nothing.
 *
 * @param log - of one batch, in the common order
 * @returns epoch ms; nothing where this phone never read its clock for it
 */
export const lastReading = (log: readonly RunEvent[], device: string): number | undefined =>
  log.findLast((event, at) => event.device === device && event.at !== log[at - 1]?.at)?.at;
