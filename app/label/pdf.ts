import type { Mark } from "../../core/label/set-part.ts";
import { barsOf } from "./code.ts";
import type { Drawn, Page } from "./drawn.ts";

/** A label that has letters a PDF's own fonts lack, as a picture: grey, deflated (zlib). */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly deflated: Uint8Array;
}

/** Points a mm: 72 to the inch of 25.4 mm. */
const POINTS = 72 / 25.4;
const pt = (mm: number): string => String(Number((mm * POINTS).toFixed(3)));

/** What the 8-bit letters of a PDF have where Latin-1 has nothing. @source ISO 32000-1, annex D */
const HIGH = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";

function byteOf(letter: string): number {
  const at = letter === " " ? -1 : HIGH.indexOf(letter);
  return at < 0 ? (letter.codePointAt(0) ?? 63) : 0x80 + at;
}

/** A text as a string of PDF: ASCII, with everything else by its octal number. */
const literal = (text: string): string =>
  `(${[...text]
    .map((letter) => {
      const byte = byteOf(letter);
      if (letter === "(" || letter === ")" || letter === "\\") return `\\${letter}`;
      return byte < 127 ? letter : `\\${byte.toString(8).padStart(3, "0")}`;
    })
    .join("")})`;

/** A text in any letters, as PDF writes titles. */
const hex = (text: string): string =>
  `<FEFF${Array.from({ length: text.length }, (_, at) =>
    text.charCodeAt(at).toString(16).padStart(4, "0"),
  ).join("")}>`;

/** A mark in the label's own space, which a PDF counts from the foot. */
function drawMark(mark: Mark, label: Drawn): string {
  const up = (y: number): string => pt(label.height - y);
  switch (mark.type) {
    case "text": {
      const font = `/${mark.strong ? "B" : "R"} ${pt(mark.size)} Tf`;
      return `BT ${font} ${pt(mark.x)} ${up(mark.y)} Td ${literal(mark.text)} Tj ET`;
    }
    case "box": {
      const { x, y, width, height, line } = mark;
      return `${pt(line)} w ${pt(x)} ${up(y + height)} ${pt(width)} ${pt(height)} re S`;
    }
    case "rule":
      return `${pt(mark.line)} w ${pt(mark.x)} ${up(mark.y)} m ${pt(mark.x + mark.width)} ${up(mark.y)} l S`;
    case "code": {
      const module = mark.side / label.code.length;
      const bars = barsOf(label.code).map(
        ({ x, y, width }) =>
          `${pt(mark.x + x * module)} ${up(mark.y + (y + 1) * module)} ${pt(width * module)} ${pt(module)} re`,
      );
      return `${bars.join("\n")} f`;
    }
  }
}

const stream = (head: string, body: string): string =>
  `<< ${head} /Length ${body.length} >>\nstream\n${body}\nendstream`;

function formOf(label: Drawn): string {
  const box = `/BBox [0 0 ${pt(label.width)} ${pt(label.height)}]`;
  const fonts = "/Resources << /Font << /R 3 0 R /B 4 0 R >> >>";
  const body = label.layout.marks.map((mark) => drawMark(mark, label)).join("\n");
  return stream(`/Type /XObject /Subtype /Form ${box} ${fonts}`, body);
}

function imageOf({ width, height, deflated }: Grey): string {
  const body = `${[...deflated].map((byte) => byte.toString(16).padStart(2, "0")).join("")}>`;
  const kind = "/ColorSpace /DeviceGray /BitsPerComponent 8";
  const head = `/Type /XObject /Subtype /Image /Width ${width} /Height ${height} ${kind}`;
  return stream(`${head} /Filter [/ASCIIHexDecode /FlateDecode]`, body);
}

/** Objects that come first: catalogue, pages, two fonts, and what the file is called. */
const FIRST = 5;

function pageObjects(
  page: Page,
  at: number,
  labels: readonly Drawn[],
  greys: ReadonlyMap<Drawn, Grey>,
): readonly string[] {
  const named = page.labels.map(({ label, x, y }) => {
    // A picture is drawn into a square of 1 by 1, a form at its own size.
    const scale = greys.has(label) ? `${pt(label.width)} 0 0 ${pt(label.height)}` : "1 0 0 1";
    const foot = page.height - y - label.height;
    return `q ${scale} ${pt(x)} ${pt(foot)} cm /L${labels.indexOf(label)} Do Q`;
  });
  const used = labels.map((_, index) => `/L${index} ${FIRST + index + 1} 0 R`).join(" ");
  const box = `/MediaBox [0 0 ${pt(page.width)} ${pt(page.height)}]`;
  return [
    `<< /Type /Page /Parent 2 0 R ${box} /Resources << /XObject << ${used} >> >> /Contents ${at + 1} 0 R >>`,
    stream("", named.join("\n")),
  ];
}

const fontObject = (name: string): string =>
  `<< /Type /Font /Subtype /Type1 /BaseFont /${name} /Encoding /WinAnsiEncoding >>`;

/** Objects with their numbers, and the table that says at which byte each begins. */
function fileOf(objects: readonly string[]): string {
  let file = "%PDF-1.4\n";
  const starts = objects.map((body, index) => {
    const start = file.length;
    file += `${index + 1} 0 obj\n${body}\nendobj\n`;
    return `${String(start).padStart(10, "0")} 00000 n \n`;
  });
  const count = objects.length + 1;
  const table = `xref\n0 ${count}\n0000000000 65535 f \n${starts.join("")}`;
  return `${file}${table}trailer\n<< /Size ${count} /Root 1 0 R /Info 5 0 R >>\nstartxref\n${file.length}\n%%EOF\n`;
}

/**
 * The pages as a PDF of their exact size, each label drawn once and placed as often as it stands
 * there. It holds ASCII alone, so its length is its bytes.
 *
 * @param greys - the labels that are placed as pictures, for their letters are not the PDF's
 * @source ISO 32000-1
 */
export function pdfOf(
  title: string,
  pages: readonly Page[],
  greys: ReadonlyMap<Drawn, Grey>,
): string {
  const labels = [...new Set(pages.flatMap((page) => page.labels.map(({ label }) => label)))];
  const firstPage = FIRST + labels.length + 1;
  const kids = pages.map((_, index) => `${firstPage + 2 * index} 0 R`);
  const shown = labels.map((label) => {
    const grey = greys.get(label);
    return grey === undefined ? formOf(label) : imageOf(grey);
  });
  return fileOf([
    "<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None >> >>",
    `<< /Type /Pages /Count ${pages.length} /Kids [${kids.join(" ")}] >>`,
    fontObject("Helvetica"),
    fontObject("Helvetica-Bold"),
    `<< /Title ${hex(title)} >>`,
    ...shown,
    ...pages.flatMap((page, index) => pageObjects(page, firstPage + 2 * index, labels, greys)),
  ]);
}
