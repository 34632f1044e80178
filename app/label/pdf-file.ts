import { isPlainlySet } from "../../core/label/type-width.ts";
import { canvasOf } from "./bitmap.ts";
import type { Drawn, Page } from "./drawn.ts";
import { type Grey, pdfOf } from "./pdf.ts";

/** Whether a label has letters that a PDF's own fonts lack. */
export const needsPicture = ({ layout }: Drawn): boolean =>
  layout.marks.some((mark) => mark.type === "text" && !isPlainlySet(mark.text));

async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const packed = new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate"));
  return new Uint8Array(await new Response(packed).arrayBuffer());
}

async function greyOf(label: Drawn): Promise<Grey | undefined> {
  const canvas = canvasOf(label);
  const pen = canvas?.getContext("2d");
  if (canvas === undefined || !pen) return undefined;
  const { width, height } = canvas;
  const { data } = pen.getImageData(0, 0, width, height);
  // Black letters on white, softened at their edges: one channel says it all.
  const grey = Uint8Array.from({ length: width * height }, (_, at) => data[at * 4] ?? 255);
  return { width, height, deflated: await deflated(grey) };
}

/** The pages as a PDF file. */
export async function pdfFile(title: string, pages: readonly Page[]): Promise<Blob> {
  const labels = new Set(pages.flatMap((page) => page.labels.map(({ label }) => label)));
  const greys = new Map<Drawn, Grey>();
  for (const label of labels) {
    const grey = needsPicture(label) ? await greyOf(label) : undefined;
    if (grey !== undefined) greys.set(label, grey);
  }
  return new Blob([pdfOf(title, pages, greys)], { type: "application/pdf" });
}
