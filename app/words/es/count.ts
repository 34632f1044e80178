/** So many of something, in words: "1 lote", "0 lotes". */
export const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** Text that no line end parts. */
export const whole = (text: string): string => text.replaceAll(" ", "\u00a0");
