const two = (value: number): string => String(value).padStart(2, "0");

const daysAndHours = (hours: number, day: string): string =>
  `${Math.floor(hours / 24)} ${day} ${hours % 24} h`;

/**
 * What is left of a wait: "4:07", "1:04:07" from an hour on, "2 d 3 h" from two days on.
 *
 * @param ms - what is left; less than nothing is nothing
 * @param day - the short word for a day
 */
export function countdown(ms: number, day: string): string {
  const seconds = Math.max(0, Math.ceil(ms / 1000));
  const hours = Math.floor(seconds / 3600);
  if (hours >= 48) return daysAndHours(hours, day);
  const rest = `${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
  return hours > 0 ? `${hours}:${rest}` : rest.replace(/^0(?=\d:)/u, "");
}

/**
 * A length of time as a person says it: "42 min", "2 h 05 min", "3 d 4 h".
 *
 * @param ms - how long; less than nothing is nothing
 * @param day - the short word for a day
 */
export function duration(ms: number, day: string): string {
  const minutes = Math.round(ms / 60_000);
  if (minutes < 1) return `${Math.max(0, Math.round(ms / 1000))} s`;
  if (minutes < 60) return `${minutes} min`;
  const hours = Math.floor(minutes / 60);
  if (hours < 48) return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${two(minutes % 60)} min`;
  return daysAndHours(hours, day);
}
