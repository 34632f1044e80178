import { expect, test } from "vitest";
import { codeRows } from "../../../app/label/code.ts";
import { drawn, pagesOf } from "../../../app/label/drawn.ts";
import { pdfOf } from "../../../app/label/pdf.ts";
import { needsPicture } from "../../../app/label/pdf-file.ts";
import { paperOf } from "../../../core/label/paper.ts";

const CODE = codeRows("PB-2511");
const SHEET = paperOf("letter-2x5");

function labelOf(text: string) {
  const parts = [
    { key: "name", look: "title", text, rank: 0 },
    { key: "box", look: "boxed", lead: "Use by", text: "1 Dec 2025", rank: 0 },
    { key: "contains", look: "barred", text: "Contains MILK", rank: 0 },
  ] as const;
  const label = drawn({ parts, code: CODE.length }, CODE, SHEET);
  if (label === undefined) throw new RangeError("three lines have room");
  return label;
}

const fileOf = (text: string, count = 1) => {
  const label = labelOf(text);
  const labels = Array.from({ length: count }, () => label);
  return pdfOf("Ä梨", pagesOf(labels, SHEET, 9), new Map());
};

// ISO 32000-1, 7.5: the table of a PDF says at which byte each object begins.
test("every object stands where the table says, every stream is as long as it says", () => {
  const file = fileOf("Crème (½) \\ 5 µm", 12);
  expect([...file].filter((letter) => letter > "\u007f")).toEqual([]);
  const start = Number(/startxref\n(\d+)\n%%EOF\n$/u.exec(file)?.[1]);
  expect(file.slice(start, start + 5)).toBe("xref\n");
  const entries = [...file.slice(start).matchAll(/^(\d{10}) 00000 n $/gmu)];
  expect(entries.length).toBeGreaterThan(8);
  for (const [index, entry] of entries.entries()) {
    expect(file.slice(Number(entry[1])).startsWith(`${index + 1} 0 obj\n`)).toBe(true);
  }
  const streams = [...file.matchAll(/\/Length (\d+) >>\nstream\n/gu)];
  expect(streams.length).toBeGreaterThan(2);
  for (const stream of streams) {
    const end = stream.index + stream[0].length + Number(stream[1]);
    expect(file.slice(end, end + 10)).toBe("\nendstream");
  }
});

test("one label at the last place of a sheet, eleven on two more; it is drawn once", () => {
  const file = fileOf("Pear Beacon", 12);
  expect(file.match(/\/MediaBox \[0 0 612 792\]/gu)).toHaveLength(3);
  expect(file.match(/\/Subtype \/Form/gu)).toHaveLength(1);
  const drawnOn = [...file.matchAll(/stream\n((?:q .* Q\n?)+)/gu)].map(
    (found) => found[1]?.trim().split("\n").length,
  );
  expect(drawnOn).toEqual([1, 10, 1]);
});

// ISO 32000-1, 7.3.4 and annex D: brackets and backslashes are escaped, other letters by octal.
test("text is written in the PDF's own 8-bit letters", () => {
  const file = fileOf("Crème (½) \\ 5 µm – €");
  expect(file).toContain("(Cr\\350me \\(\\275\\) \\\\ 5 \\265m \\226 \\200) Tj");
  expect(file).toContain("/Title <FEFF00c468a8>");
});

test("a letter that is not among them asks for a picture", () => {
  const label = labelOf("Crème (½) \\ 5 µm – €");
  expect(needsPicture(label)).toBe(false);
  const marks = label.layout.marks.map((mark) =>
    mark.type === "text" ? { ...mark, text: `${mark.text} 梨` } : mark,
  );
  expect(needsPicture({ ...label, layout: { ...label.layout, marks } })).toBe(true);
});
