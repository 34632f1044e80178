import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import type { Spec } from "../../../core/spec/spec.ts";
import { HOUR, OPENS } from "../phone/walk-page.ts";
import { fileOfLines } from "./backup-file.ts";
import { plannedBatch } from "./planned-batch.ts";
import { demoSpec, madeWhole, planned, started } from "./play-run.ts";

const RUNS = "globalThis.ran=1";
export const IMAGE = `<img src=x onerror="${RUNS}">`;
export const SCRIPT = `<script>${RUNS}</script>`;
const LINK = `javascript:${RUNS}`;
const ENTITY = "&lt;b&gt;&amp;&#60;";
/** Shows what follows it backwards, up to its end; here nothing ends it. */
const BACKWARDS = "\u202Eturned";
const NOTHING = "nul\u0000end";
export const LONG = "W".repeat(36);

/** Every string that somebody may bring in, as it stands in a backup: none is longer than it may be. */
interface Texts {
  readonly spec: string;
  readonly ingredient: string;
  readonly procedure: string;
  readonly batch: string;
  readonly glass: string;
  readonly garnish: string;
  readonly note: string;
  readonly reason: string;
  readonly lot: string;
  readonly initials: string;
  readonly tag: string;
  readonly taste: string;
  readonly verdict: string;
}

const all = (text: string, short = "<b>x</b>"): Texts => ({
  ...{ spec: text, ingredient: text, procedure: text, batch: text.slice(0, 40), glass: text },
  ...{ garnish: text, note: text, reason: text, lot: text.slice(0, 60), initials: short },
  ...{ tag: text.slice(0, 40), taste: text.slice(0, 40), verdict: text },
});

/** What may be brought in, by what it is. */
export const CASES: Readonly<Record<string, Texts>> = {
  "a picture that runs code": all(IMAGE),
  "a script": all(SCRIPT),
  "an address that runs code": all(LINK),
  "markup already made harmless": all(ENTITY, "&amp;"),
  "a word turned round": all(BACKWARDS, "\u202EAB"),
  "a character that ends strings": all(NOTHING, "A\u0000B"),
  "one word without a gap": all(LONG, "W".repeat(8)),
};

/** Words that mean no harm. */
export const PLAIN = all("plain", "AB");

const line = (record: object) => JSON.stringify(record);
const gin = CUPBOARD.find(({ id }) => id === "gin-43");

/** A backup with hostile words wherever words may stand: two batches, their spec and all that is its. */
export function fileOf(texts: Texts): { readonly text: string; readonly count: number } {
  if (gin === undefined) throw new RangeError("the cupboard has no gin");
  const own: Ingredient = { ...gin, id: "own-gin", name: texts.ingredient };
  const base = demoSpec("Pear Beacon");
  const spec: Spec = {
    ...base,
    id: "hostile",
    name: texts.spec,
    notes: texts.note,
    serve: { ...base.serve, glass: texts.glass, garnish: texts.garnish },
    lines: base.lines.map((one, at) => (at === 0 ? { ...one, ingredientId: own.id } : one)),
    demo: false,
  };
  const plan = planned(spec, undefined, [own]);
  const begun = started("run-made", texts.batch, OPENS - 12 * HOUR, plan)
    .then({ type: "change-hands", initials: texts.initials })
    .then({ type: "note-lot", ingredient: own.id, lot: texts.lot })
    .then({ type: "add-note", text: texts.note });
  const made = madeWhole(begun, { yield: 3700, topUp: 450, useBy: OPENS + 144 * HOUR })
    .then({ type: "note-taste", scores: { clarity: 8 }, words: [texts.taste], by: texts.initials })
    .then({ type: "give-verdict", verdict: "good", repeat: "yes", text: texts.verdict })
    .then({ type: "add-tag", tag: texts.tag });
  const ended = started("run-ended", texts.batch, OPENS - 5 * HOUR, plan).then({
    type: "abandon",
    reason: texts.reason,
  });
  const open = started("run-open", texts.batch, OPENS - HOUR, plan).then({
    type: "add-note",
    text: texts.note,
  });
  const events = [...made.events, ...ended.events, ...open.events];
  const others = [
    { spec },
    { ingredient: own },
    { procedure: { ...DAIRY_WASH, id: "own-wash", name: texts.procedure } },
    { planned: { ...plannedBatch("planned-one", OPENS + 30 * HOUR), plan } },
  ];
  const lines = [...events.map((event) => line({ event })), ...others.map(line)];
  return { text: fileOfLines(lines), count: lines.length };
}
