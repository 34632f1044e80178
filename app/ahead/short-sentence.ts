import { FILTER_STAND, PERSON } from "../../core/board/schedule/job.ts";
import type { Shortfall } from "../../core/board/schedule/plan-day.ts";
import { decimals, duration } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";
import { jobName } from "./prep.ts";

const COUNTED: readonly string[] = [PERSON, FILTER_STAND];

/**
 * Which limit breaks, by how much, and on what it shows.
 *
 * @param nameOf - what a job is called that is not on the list yet
 */
export function shortSentence(
  { breaks, by, job }: Shortfall,
  nameOf: (id: string) => string | undefined = () => undefined,
): string {
  const words = sayLater.days;
  const name = nameOf(job) ?? jobName(job);
  if (breaks === "time") return words.breaks.time(name, duration(by));
  if (breaks === "standing") return words.breaks.standing(name, duration(by));
  const resources: Readonly<Record<string, string>> = words.resources;
  const amount = COUNTED.includes(breaks)
    ? words.amounts.count(decimals(by, 0))
    : words.amounts.litres(decimals(by, 1));
  return words.breaks.more(resources[breaks] ?? breaks, amount, name);
}
