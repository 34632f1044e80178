import type { Label } from "../../../core/label/label.ts";
import type { ServeCard } from "../../../core/label/serve-card.ts";
import type { Allergen } from "../../../core/spec/allergen-table.ts";
import { abv, dateYear, decimals, percent, type VolumeStyle, volume } from "../format.ts";
import { cautions } from "./cautions.ts";

/** As they are declared, in capitals as many codes ask. */
const ALLERGENS: Readonly<Record<Allergen, string>> = {
  gluten: "CEREALS WITH GLUTEN",
  crustaceans: "CRUSTACEANS",
  egg: "EGG",
  fish: "FISH",
  peanut: "PEANUT",
  soy: "SOY",
  milk: "MILK",
  nuts: "TREE NUTS",
  celery: "CELERY",
  mustard: "MUSTARD",
  sesame: "SESAME",
  sulphites: "SULPHITES",
  lupin: "LUPIN",
  molluscs: "MOLLUSCS",
};

const METHODS: Readonly<Record<ServeCard["method"], string>> = {
  stirred: "Stir on ice",
  shaken: "Shake on ice",
  "over-ice": "Over ice",
  blended: "Blend with ice",
  straight: "Straight from the fridge",
};

/** A line of a card: what it is, and what it says. */
export interface CardRow {
  readonly term: string;
  readonly says: string;
}

const contains = (allergens: readonly Allergen[]): string =>
  allergens.length === 0
    ? "No allergens in the cupboard's entries: check the packs"
    : `Contains ${allergens.map((one) => ALLERGENS[one]).join(", ")}`;

/** Where the water comes from: nobody is to pour in what the ice brings. */
function waterWords({ method, water }: ServeCard, style: VolumeStyle): string {
  if (water < 0.5) return "Nothing is added";
  const amount = volume(water, style);
  if (method === "blended") return `${amount}, as ice`;
  return method === "straight" ? `Add ${amount}` : `${amount}, from the ice`;
}

/** A strength on a label: to half a percent. */
const labelAbv = (strength: number): string => `about ${decimals(strength * 100, 1)} % vol`;

function labelRows(label: Label, size: number | undefined, style: VolumeStyle): readonly CardRow[] {
  return [
    { term: "Batch", says: label.batch },
    { term: "Made", says: dateYear(label.madeAt) },
    { term: "Strength", says: labelAbv(label.strength) },
    ...(size === undefined ? [] : [{ term: "Bottle", says: volume(size, style) }]),
  ];
}

function serveRows(card: ServeCard, style: VolumeStyle): readonly CardRow[] {
  const inGlass = `${volume(card.inGlass, style)} at about ${abv(card.strength)} vol`;
  const ice = card.ice > 0.005 ? `, ${percent(card.ice)} of it ice` : "";
  return [
    { term: "Pour", says: volume(card.pour, style) },
    { term: "How", says: METHODS[card.method] },
    { term: "Water", says: waterWords(card, style) },
    { term: "In the glass", says: inGlass + ice },
    ...(card.glass === "" ? [] : [{ term: "Glass", says: card.glass }]),
    ...(card.garnish === "" ? [] : [{ term: "Garnish", says: card.garnish }]),
  ];
}

const useBy = (label: Label): CardRow => ({ term: "Use by", says: dateYear(label.useBy) });
const inLine = ({ term, says }: CardRow): string => `${term}: ${says}`;

/** Both cards as plain text, to be shared. */
function asText(label: Label, card: ServeCard | undefined, style: VolumeStyle): string {
  const sizes = label.bottles.map(({ count, size }) => `${count} × ${volume(size, style)}`);
  const lines = [
    label.name,
    inLine(useBy(label)),
    ...labelRows(label, undefined, style).map(inLine),
    ...(sizes.length === 0 ? [] : [`Bottles: ${sizes.join(", ")}`]),
    contains(label.allergens),
    ...label.cautions.map(cautions.short),
  ];
  const serve = card === undefined ? [] : ["", ...serveRows(card, style).map(inLine), GARNISH];
  return [...lines, ...serve].join("\n");
}

/** By the paper's id, in mm and in the unit its sheet is sold by. */
const PAPERS: Readonly<Record<string, string>> = {
  "roll-62x100": "Roll, 62 × 100 mm",
  "roll-102x152": "Roll, 102 × 152 mm (4 × 6 in)",
  "roll-102x51": "Roll, 102 × 51 mm (4 × 2 in)",
  "roll-57x32": "Roll, 57 × 32 mm",
  "roll-50x25": "Roll, 50 × 25 mm",
  "a4-2x7": "A4, 2 × 7 of 99.1 × 38.1 mm",
  "a4-3x8": "A4, 3 × 8 of 70 × 37 mm",
  "letter-2x5": "Letter, 2 × 5 of 101.6 × 50.8 mm",
  "letter-3x10": "Letter, 3 × 10 of 66.7 × 25.4 mm",
};

const GARNISH = "What the garnish brings is not listed.";

/** What the label and the serve card say, on paper and on the screen. */
export const label = {
  title: "Label",
  lost: "This batch is not on this phone, so there is nothing to label. Take it from the phone that made it, in Kit.",
  toLog: "Its record",
  toShelf: "Shelf",
  planned: "Not bottled yet: strength and bottles are the plan's.",
  card: "Label",
  serveCard: "Serve card",
  useBy,
  rows: labelRows,
  serveRows,
  contains,
  asText,
  garnishNote: GARNISH,
  copies: (count: number, size: string) =>
    count === 1 ? `1 bottle of ${size}` : `${count} bottles of ${size}, one label each`,
  noServe: "There is no serve card: by its log there is nothing in the bottle.",
  which: "What to print",
  kinds: { bottle: "Bottle label", serve: "Serve card", vessel: "Label for the vessel" },
  paper: "Paper",
  papers: PAPERS,
  tooSmall: (paper: string) =>
    `All that has to stand on it does not fit ${paper} in letters that can be read. Nothing is cut off: choose a larger one.`,
  noneFits: "It fits none of the papers. Shorten the name, the glass or the garnish in its spec.",
  takeLarger: (paper: string) => `Use ${paper}`,
  leftOut: (what: readonly string[]) => `No room here for: ${what.join("; ")}.`,
  code: "the code with the batch's name",
  codeNote: "The code holds the batch's name. Kit, Take from another phone, opens the batch by it.",
  howMany: "How many",
  copiesEach: "One a bottle",
  copiesNumber: "A number of each",
  number: "Of each",
  fewer: "One fewer",
  more: "One more",
  from: "First free place on the sheet",
  fromShown: (place: number, all: number) => `${place} of ${all}`,
  earlier: "One place earlier",
  later: "One place later",
  sheetMap: (count: number, pages: number, from: number) =>
    pages === 1
      ? `${count} on one sheet, from place ${from}`
      : `${count} on ${pages} sheets, from place ${from}`,
  rollMap: (count: number) => (count === 1 ? "1 label" : `${count} labels`),
  tooMany: (most: number) => `No more than ${most} are printed at once: print the rest after that.`,
  print: "Print",
  printNote:
    "In the print window choose the same paper, 100 %, no margins. If no window opens, this browser cannot print: share the PDF instead.",
  cannotPrint: "This browser cannot print. Share the PDF instead.",
  sharePdf: "Share as PDF",
  sharePng: "Share as picture",
  pngNote: "The picture is one label at 300 dots an inch, and says its size.",
  asPicture:
    "Some letters of this label are in no PDF's own fonts, so the PDF holds it as a picture.",
  saved: "This browser has no share sheet for it. It is saved where downloads go.",
  notDrawn: "This browser could not draw the label. Share the text instead.",
  share: "Share as text",
  shareTitle: (name: string, batch: string) => `${name}, ${batch}`,
  shared: "Handed to the share sheet.",
  copied: "This browser has no share sheet. The text is copied: paste it where it is needed.",
  neither: "This browser can neither share nor copy. Mark the text below and copy it by hand.",
  means: "What the label says, and why",
  sizeRule:
    "Size: type is never smaller than 2.3 mm (6.5 pt). Its small letters are 1.2 mm high (EU 1169/2011, Article 13). A long name shrinks, then wraps. Where room is short, reminders go first, then the day it was made, then the code. What is sold in bottles may need larger figures by your local code.",
  strengthRule:
    "Strength: worked out from what was poured, not measured, and rounded to 0.5 % vol. Rounding moves it by 0.25 % vol at most; labels of spirits may be 0.3 % vol out (US 27 CFR 19.356 and the EU alike). Where a strength must be declared, have it measured.",
  allergenRule:
    "Allergens: from the cupboard's entries for everything that went in, with the milk of the wash. They stand in the order of the EU list. Check every pack.",
};
