import fc from "fast-check";
import { expect, test } from "vitest";
import { bottleContent, serveContent, vesselContent } from "../../../app/label/content.ts";
import { labelOf } from "../../../core/label/label.ts";
import {
  type Content,
  type LaidOut,
  LEAST_MODULE,
  LEAST_TYPE,
  layOut,
} from "../../../core/label/lay-out.ts";
import { edgeOf, PAPERS, type Paper, paperOf } from "../../../core/label/paper.ts";
import { serveCardOf } from "../../../core/label/serve-card.ts";
import type { Look, Part } from "../../../core/label/set-part.ts";
import { setText, typeWidth } from "../../../core/label/type-width.ts";
import { vesselLabelOf } from "../../../core/label/vessel-label.ts";
import { foldRun } from "../../../core/run/fold.ts";
import { ALLERGENS } from "../../../core/spec/allergen-table.ts";
import { dripped, started } from "../../support/world/play-run.ts";
import { waiting } from "../../support/world/waiting.ts";

const MADE = Date.parse("2025-11-25T10:00:00Z");
const style = { volumes: "ml", ounce: "bar" } as const;
const run = dripped(started("r", "PB-2511", MADE)).run;
const label = labelOf(run);
/** A code of the least version: 21 modules, and four quiet ones on each side (ISO/IEC 18004). */
const CODE = 29;

interface Box {
  readonly what: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

/** What is drawn, each with the room its letters take: accents above, tails below. */
const boxesOf = ({ marks }: LaidOut): readonly Box[] =>
  marks.flatMap((mark): Box[] => {
    if (mark.type !== "text" && mark.type !== "code") return [];
    const { x } = mark;
    if (mark.type === "code") {
      const { y, side } = mark;
      return [{ what: "code", left: x, right: x + side, top: y, foot: y + side }];
    }
    const [top, foot] = [mark.y - 0.93 * mark.size, mark.y + 0.21 * mark.size];
    return [{ what: mark.text, left: x, right: x + mark.width, top, foot }];
  });

const HAIR = 1e-6;
const apart = (one: Box, other: Box): boolean =>
  one.right <= other.left + HAIR ||
  other.right <= one.left + HAIR ||
  one.foot <= other.top + HAIR ||
  other.foot <= one.top + HAIR;

function placeFaults(laid: LaidOut, paper: Paper): readonly string[] {
  const boxes = boxesOf(laid);
  const edge = edgeOf(paper);
  const out = boxes.filter(
    (one) =>
      one.left < edge.x - HAIR ||
      one.right > paper.width - edge.x + HAIR ||
      one.top < edge.y - HAIR ||
      one.foot > paper.height - edge.y + HAIR,
  );
  const on = boxes.flatMap((one, index) =>
    boxes.slice(index + 1).filter((other) => !apart(one, other)),
  );
  return [
    ...out.map(({ what }) => `sticks out: ${what}`),
    ...on.map(({ what }) => `lies on another: ${what}`),
  ];
}

const letters = (text: string): string => setText(text).replace(/[\s·]/gu, "");

function textFaults(laid: LaidOut, { parts, code = 1 }: Content): readonly string[] {
  const shown = letters(
    laid.marks.flatMap((mark) => (mark.type === "text" ? mark.text : [])).join(""),
  );
  const kept = parts.filter(({ key }) => !laid.left.includes(key));
  const cut = kept.filter((part) => !shown.includes(letters(`${part.lead ?? ""} ${part.text}`)));
  const lost = parts.filter((part) => part.rank === 0 && !kept.includes(part));
  const small = laid.marks.filter(
    (mark) =>
      (mark.type === "text" && mark.size < LEAST_TYPE - HAIR) ||
      (mark.type === "code" && mark.side / code < LEAST_MODULE - HAIR),
  );
  return [
    ...cut.map(({ key }) => `cut: ${key}`),
    ...lost.map(({ key }) => `left out: ${key}`),
    ...small.map(({ type }) => `too small: ${type}`),
  ];
}

/** What is wrong with how a label is laid out. */
const faultsOf = (laid: LaidOut, content: Content, paper: Paper): readonly string[] => [
  ...placeFaults(laid, paper),
  ...textFaults(laid, content),
];

const NAMES = {
  short: "Fog",
  usual: "Pear Beacon",
  long: "The Harbour Master's Clarified Pear & Smoked Chamomile Beacon, Second Pour of the Winter",
  oneWord: "Quittenblütenhonigmilchpunschgrundansatzflasche",
};
const MIXES = { none: [], milk: ["milk"], all: ALLERGENS } as const;
const rows = PAPERS.flatMap((paper) =>
  Object.entries(NAMES).flatMap(([named, name]) =>
    Object.entries(MIXES).map(
      ([mix, allergens]) => [paper.id, named, mix, name, allergens] as const,
    ),
  ),
);

test.each(rows)("%s, a name that is %s, allergens: %s", (id, _, __, name, allergens) => {
  const paper = paperOf(id);
  const content = { ...bottleContent({ ...label, name, allergens }, 700, style), code: CODE };
  const laid = layOut(content, paper, typeWidth);
  if (laid === undefined) {
    // Only the smallest have no room, and then a larger one has.
    expect(paper.width * paper.height).toBeLessThan(2000);
    expect(layOut(content, paperOf("roll-62x100"), typeWidth)).toBeDefined();
    return;
  }
  expect(faultsOf(laid, content, paper)).toEqual([]);
});

test("what of the labels has no room for a code, and what for the names", () => {
  const told = PAPERS.map((paper) => {
    const content = (name: string, allergens: typeof label.allergens) => ({
      ...bottleContent({ ...label, name, allergens }, 700, style),
      code: CODE,
    });
    const usual = layOut(content(NAMES.usual, ["milk"]), paper, typeWidth);
    const hard = layOut(content(NAMES.long, ALLERGENS), paper, typeWidth);
    return `${paper.id}: ${usual?.coded ? "code" : "no code"}, ${hard ? "all" : "not all"}`;
  });
  expect(told).toEqual([
    "roll-62x100: code, all",
    "roll-102x152: code, all",
    "roll-102x51: code, all",
    "roll-57x32: code, not all",
    "roll-50x25: no code, not all",
    "a4-2x7: code, all",
    "a4-3x8: code, all",
    "letter-2x5: code, all",
    "letter-3x10: code, not all",
  ]);
});

test("the serve card and the vessel's label are laid out whole too", () => {
  const serve = serveCardOf(run);
  const wait = { runId: "w", batch: "PB-2511", from: MADE, waitFor: 86_400_000 };
  const stands = foldRun(waiting(wait));
  const waits = stands && vesselLabelOf(stands);
  expect(waits).toBeDefined();
  if (serve === undefined) throw new RangeError("a plan has a serve");
  const usual = ["roll-62x100", "roll-102x51", "a4-2x7", "letter-2x5"];
  const hard = { ...serve, name: NAMES.long, allergens: ALLERGENS };
  const wanted: readonly (readonly [Content, readonly string[]])[] = [
    [serveContent(serve, style), usual],
    [serveContent(hard, style), ["roll-62x100", "roll-102x51", "letter-2x5"]],
    ...(waits ? [[vesselContent(waits), usual] as const] : []),
  ];
  for (const [parts, ids] of wanted) {
    const content = { ...parts, code: CODE };
    for (const id of ids) {
      const laid = layOut(content, paperOf(id), typeWidth);
      if (laid === undefined) throw new RangeError(`no room on ${id}`);
      expect(faultsOf(laid, content, paperOf(id))).toEqual([]);
    }
  }
});

test("what may go goes by its rank, the code last of all", () => {
  const filler = (key: string, rank: number): Part => ({
    key,
    look: "plain",
    text: "A line that is as wide as the label, or nearly so",
    rank,
  });
  const needed = (count: number): Content => ({
    parts: [
      ...Array.from({ length: count }, (_, at) => filler(`needed-${at}`, 0)),
      filler("made", 2),
      filler("note", 3),
      filler("last-note", 4),
    ],
    code: 49,
  });
  const orders = Array.from({ length: 30 }, (_, at) => {
    const laid = layOut(needed(at), paperOf("roll-57x32"), typeWidth);
    return laid && [...laid.left, ...(laid.coded ? [] : ["code"])].join(" ");
  });
  const steps = orders.filter((one, at) => one !== orders[at - 1]);
  expect(steps).toEqual([
    "",
    "last-note",
    "note last-note",
    "made note last-note",
    "made note last-note code",
    undefined,
  ]);
});

test("an empty label is an empty label", () => {
  const laid = layOut({ parts: [] }, paperOf("roll-50x25"), typeWidth);
  expect(laid).toMatchObject({ marks: [], left: [], coded: false });
});

const LOOKS: readonly Look[] = ["title", "boxed", "barred", "strong", "plain"];
const words = fc
  .array(fc.string({ minLength: 1, maxLength: 14 }), { minLength: 1, maxLength: 9 })
  .map((all) => all.join(" "));
const parts = fc.array(
  fc.record(
    {
      look: fc.constantFrom(...LOOKS),
      lead: fc.string({ maxLength: 12 }),
      text: words,
      joins: fc.boolean(),
      rank: fc.constantFrom(0, 0, 0, 2, 3, 4),
    },
    { requiredKeys: ["look", "text", "rank"] },
  ),
  { minLength: 1, maxLength: 12 },
);

test("whatever a label says, on whatever paper: nothing is cut, nothing overlaps", () => {
  let laidOut = 0;
  fc.assert(
    fc.property(
      parts,
      fc.constantFrom(...PAPERS),
      fc.integer({ min: 29, max: 49 }),
      (some, paper, code) => {
        const content = { parts: some.map((one, at) => ({ ...one, key: `part-${at}` })), code };
        const laid = layOut(content, paper, typeWidth);
        if (laid === undefined) return;
        laidOut += 1;
        expect(faultsOf(laid, content, paper)).toEqual([]);
      },
    ),
    { numRuns: 200 },
  );
  expect(laidOut).toBeGreaterThan(60);
}, 30_000);
