import type { LocalOf } from "../core/board/schedule/ready-by.ts";

const formats = new Map<string, Intl.DateTimeFormat>();

function formatFor(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known !== undefined) return known;
  const made = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
  });
  formats.set(zone, made);
  return made;
}

/** What a clock on the wall of a zone shows at a moment. */
export const localOf: LocalOf = (ms, zone) => {
  const parts = new Map(
    formatFor(zone)
      .formatToParts(ms)
      .map(({ type, value }) => [type, value]),
  );
  const part = (type: Intl.DateTimeFormatPartTypes) => Number(parts.get(type) ?? 0);
  return {
    year: part("year"),
    month: part("month"),
    day: part("day"),
    hour: part("hour"),
    minute: part("minute"),
  };
};

/** The zone this phone is set to. */
export const phoneZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

/** What the clock on the wall is ahead of UTC at a moment, ms, but for whole days. */
export function wallAhead(at: number): number {
  const { hour, minute } = localOf(at, phoneZone());
  const intoDay = Math.floor((at % 86_400_000) / 60_000);
  return (hour * 60 + minute - intoDay) * 60_000;
}
