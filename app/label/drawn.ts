import { type Content, type LaidOut, layOut } from "../../core/label/lay-out.ts";
import { type Paper, pageOf, placeOf, places } from "../../core/label/paper.ts";
import type { CodeRows } from "./code.ts";
import { labelWidth } from "./measure.ts";

/** A label that is ready to be drawn. */
export interface Drawn {
  /** All that it says, for who cannot see it. */
  readonly text: string;
  /** mm */
  readonly width: number;
  readonly height: number;
  readonly layout: LaidOut;
  readonly code: CodeRows;
}

/** A label with its place on a page, mm. */
export interface OnPage {
  readonly label: Drawn;
  readonly x: number;
  readonly y: number;
}

/** A page as it is printed, mm. */
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly labels: readonly OnPage[];
}

/** A label on a paper; nothing where it does not fit. */
export function drawn(content: Content, code: CodeRows, paper: Paper): Drawn | undefined {
  const layout = layOut(content, paper, labelWidth);
  if (layout === undefined) return undefined;
  const text = content.parts.map((part) => `${part.lead ?? ""} ${part.text}`.trim()).join(". ");
  return { text, width: paper.width, height: paper.height, layout, code };
}

/** What is to be printed, one label after another, the first at a place from 0. */
export function pagesOf(labels: readonly Drawn[], paper: Paper, first: number): readonly Page[] {
  const pages: OnPage[][] = [];
  for (const [index, { page, at }] of places(paper, labels.length, first).entries()) {
    const label = labels[index];
    if (label === undefined) continue;
    const onPage = pages[page] ?? [];
    onPage.push({ label, ...placeOf(paper, at) });
    pages[page] = onPage;
  }
  return pages.map((labels) => ({ ...pageOf(paper), labels }));
}
