import encodeQR from "qr";

/** Rows of a code, dark where true, its quiet edge among them. */
export type CodeRows = readonly (readonly boolean[])[];

/** A quiet edge of four modules (ISO/IEC 18004). */
const EDGE = 4;

/** A text as a code: of a batch's name, any phone shows the name and this app opens the batch. */
export const codeRows = (text: string): CodeRows =>
  encodeQR(text, "raw", { ecc: "medium", border: EDGE });

/** Dark modules that lie side by side, in modules from the code's corner. */
interface Bar {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** The bars a code is drawn with: fewer than its modules, and no seams inside a row. */
export const barsOf = (rows: CodeRows): readonly Bar[] =>
  rows.flatMap((row, y) => {
    const bars: Bar[] = [];
    for (const [x, dark] of row.entries()) {
      const last = bars.at(-1);
      if (!dark) continue;
      if (last !== undefined && last.x + last.width === x) {
        bars[bars.length - 1] = { ...last, width: last.width + 1 };
      } else bars.push({ x, y, width: 1 });
    }
    return bars;
  });

/** A code as one path of an svg, in modules. */
export const codePath = (rows: CodeRows): string =>
  barsOf(rows)
    .map(({ x, y, width }) => `M${x} ${y}h${width}v1h-${width}z`)
    .join("");
