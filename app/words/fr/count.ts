/** So many of something, in words; none is one in French: "0 lot", "1 lot", "2 lots". */
export const counted = (count: number, one: string, many: string): string =>
  `${count} ${Math.abs(count) < 2 ? one : many}`;

/** Text that no line end parts. */
export const whole = (text: string): string => text.replaceAll(" ", "\u00a0");
