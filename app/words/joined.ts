import { tongue } from "./tongue.ts";

/** What something is called, and what is said of it: "Yield: 900 ml". */
export const named = (name: string, what: string): string =>
  `${name}${tongue.value.gapBeforeColon}: ${what}`;

/** Several sayings in one line: "milk 1 : 5; top-up as written". */
export const inOneLine = (sayings: readonly string[]): string =>
  sayings.join(`${tongue.value.gapBeforeColon}; `);
