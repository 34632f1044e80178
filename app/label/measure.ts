import { isPlainlySet, type Measure, typeWidth } from "../../core/label/type-width.ts";

/** As in tokens.css, but fonts of the printed widths first. */
export const LABEL_FONT = 'Helvetica, Arial, "Liberation Sans", sans-serif';

/** How a text is asked of a canvas. */
export const fontOf = (size: number, strong: boolean): string =>
  `${strong ? "bold" : "normal"} ${size}px ${LABEL_FONT}`;

const AT = 100;
let pen: CanvasRenderingContext2D | null | undefined;

/** The width of any text, times its size: letters outside the table as this phone draws them. */
export const labelWidth: Measure = (text, strong) => {
  if (isPlainlySet(text)) return typeWidth(text, strong);
  pen ??= document.createElement("canvas").getContext("2d");
  if (pen === null) return typeWidth(text, strong);
  pen.font = fontOf(AT, strong);
  return pen.measureText(text).width / AT;
};
