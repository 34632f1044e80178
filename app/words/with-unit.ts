import { tongue } from "./tongue.ts";

/** A figure and its unit, parted as the language parts them. */
export const withUnit = (figure: string, unit: string): string =>
  `${figure}${tongue.value.gap}${unit}`;
