/** What a cell of a table holds: a figure, a text, or nothing. */
export type Cell = number | string | undefined;

/** Stands before the first row, or spreadsheets take UTF-8 for something older. */
export const CSV_MARK = "\uFEFF";

/** A spreadsheet takes a text that begins so for a formula and works it out. */
const FORMULA = /^[=+\-@\t\r\n\0＝＋－＠]/u;
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/u;
/** More digits than this are the binary's, not the figure's. */
const DIGITS = 12;

function cellText(cell: Cell): string {
  if (cell === undefined) return "";
  if (typeof cell === "number") {
    return Number.isFinite(cell) ? String(Number(cell.toPrecision(DIGITS))) : "";
  }
  const safe = FORMULA.test(cell) ? `'${cell}` : cell;
  return NEEDS_QUOTES.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/**
 * One row of a table, with its line end. Figures stay figures, with a point; a text that a spreadsheet
 * would work out as a formula gets an apostrophe before it.
 *
 * @source quotes, commas and line ends: RFC 4180, section 2. Which beginnings are a formula's: OWASP
 *   ASVS 5, requirement 1.2.10 (read in a copy), with carriage return, line feed and the full-width
 *   forms by judgement
 * @example
 * csvRow(["=1+1", -2.5, undefined]).length // => 13
 */
export const csvRow = (cells: readonly Cell[]): string => `${cells.map(cellText).join(",")}\r\n`;
