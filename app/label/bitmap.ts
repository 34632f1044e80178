import type { Mark } from "../../core/label/set-part.ts";
import { barsOf, type CodeRows } from "./code.ts";
import type { Drawn } from "./drawn.ts";
import { fontOf } from "./measure.ts";
import { withSize } from "./png.ts";

/** Dots an inch of a label's picture. */
export const DOTS = 300;
const INCH = 25.4;

/** Draws a code with modules of whole dots, so that each edge is sharp: never smaller than 4 dots. */
function drawCode(
  pen: CanvasRenderingContext2D,
  rows: CodeRows,
  x: number,
  y: number,
  side: number,
) {
  const module = Math.floor(side / rows.length);
  const left = Math.round(x + (side - module * rows.length) / 2);
  const top = Math.round(y + (side - module * rows.length) / 2);
  for (const bar of barsOf(rows)) {
    pen.fillRect(left + bar.x * module, top + bar.y * module, bar.width * module, module);
  }
}

function drawMark(pen: CanvasRenderingContext2D, mark: Mark, code: CodeRows, dots: number): void {
  const [x, y] = [mark.x * dots, mark.y * dots];
  switch (mark.type) {
    case "text": {
      pen.font = fontOf(mark.size * dots, mark.strong);
      const own = pen.measureText(mark.text).width;
      pen.save();
      pen.translate(x, y);
      // A phone's own letters may be wider than those that the label was laid out with.
      if (own > 0) pen.scale((mark.width * dots) / own, 1);
      pen.fillText(mark.text, 0, 0);
      pen.restore();
      return;
    }
    case "box":
      pen.lineWidth = mark.line * dots;
      pen.strokeRect(x, y, mark.width * dots, mark.height * dots);
      return;
    case "rule":
      pen.fillRect(x, y - (mark.line * dots) / 2, mark.width * dots, mark.line * dots);
      return;
    case "code":
      drawCode(pen, code, x, y, mark.side * dots);
  }
}

/** A label as a picture at 300 dots an inch; nothing where this browser has no canvas to give. */
export function canvasOf(label: Drawn): HTMLCanvasElement | undefined {
  const dots = DOTS / INCH;
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(label.width * dots);
  canvas.height = Math.round(label.height * dots);
  const pen = canvas.getContext("2d");
  if (pen === null) return undefined;
  pen.fillStyle = "white";
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = "black";
  pen.strokeStyle = "black";
  for (const mark of label.layout.marks) drawMark(pen, mark, label.code, dots);
  return canvas;
}

const MEDIA = "image/png";

/** A label as a PNG that carries its size. */
export async function pngOf(label: Drawn): Promise<Blob | undefined> {
  const canvas = canvasOf(label);
  const plain = await new Promise<Blob | null>((done) => {
    if (canvas === undefined) done(null);
    else canvas.toBlob(done, MEDIA);
  });
  if (plain === null) return undefined;
  const bytes = new Uint8Array(await plain.arrayBuffer());
  return new Blob([withSize(bytes, DOTS)], { type: MEDIA });
}
