import type { Label } from "../../../core/label/label.ts";
import type { ServeCard } from "../../../core/label/serve-card.ts";
import type { Allergen } from "../../../core/spec/allergen-table.ts";
import type { CardRow, label as english } from "../en/label.ts";
import { abv, dateYear, decimals, percent, type VolumeStyle, volume } from "../format.ts";
import type { Spoken } from "../spoken.ts";
import { cautions } from "./cautions.ts";

const ALLERGENS: Readonly<Record<Allergen, string>> = {
  gluten: "CÉRÉALES CONTENANT DU GLUTEN",
  crustaceans: "CRUSTACÉS",
  egg: "ŒUF",
  fish: "POISSON",
  peanut: "ARACHIDE",
  soy: "SOJA",
  milk: "LAIT",
  nuts: "FRUITS À COQUE",
  celery: "CÉLERI",
  mustard: "MOUTARDE",
  sesame: "SÉSAME",
  sulphites: "SULFITES",
  lupin: "LUPIN",
  molluscs: "MOLLUSQUES",
};

const METHODS: Readonly<Record<ServeCard["method"], string>> = {
  stirred: "Remuer sur glace",
  shaken: "Frapper au shaker",
  "over-ice": "Sur glace",
  blended: "Mixer avec glace",
  straight: "Direct du frigo",
};

const contains = (allergens: readonly Allergen[]): string =>
  allergens.length === 0
    ? "Aucun allergène dans les entrées du placard : vérifier les emballages"
    : `Contient ${allergens.map((one) => ALLERGENS[one]).join(", ")}`;

function waterWords({ method, water }: ServeCard, style: VolumeStyle): string {
  if (water < 0.5) return "Rien à ajouter";
  const amount = volume(water, style);
  if (method === "blended") return `${amount}, en glace`;
  return method === "straight" ? `Ajouter ${amount}` : `${amount}, de la glace`;
}

const labelAbv = (strength: number): string => `environ ${decimals(strength * 100, 1)} % vol`;

function labelRows(label: Label, size: number | undefined, style: VolumeStyle): readonly CardRow[] {
  return [
    { term: "Lot", says: label.batch },
    { term: "Fabriqué le", says: dateYear(label.madeAt) },
    { term: "Titre", says: labelAbv(label.strength) },
    ...(size === undefined ? [] : [{ term: "Bouteille", says: volume(size, style) }]),
  ];
}

function serveRows(card: ServeCard, style: VolumeStyle): readonly CardRow[] {
  const inGlass = `${volume(card.inGlass, style)} à environ ${abv(card.strength)} vol`;
  const ice = card.ice > 0.005 ? `, ${percent(card.ice)} de glace` : "";
  return [
    { term: "Dose", says: volume(card.pour, style) },
    { term: "Méthode", says: METHODS[card.method] },
    { term: "Eau", says: waterWords(card, style) },
    { term: "Dans le verre", says: inGlass + ice },
    ...(card.glass === "" ? [] : [{ term: "Verre", says: card.glass }]),
    ...(card.garnish === "" ? [] : [{ term: "Garniture", says: card.garnish }]),
  ];
}

const useBy = (label: Label): CardRow => ({
  term: "À consommer jusqu’au",
  says: dateYear(label.useBy),
});
const inLine = ({ term, says }: CardRow): string => `${term} : ${says}`;

function asText(label: Label, card: ServeCard | undefined, style: VolumeStyle): string {
  const sizes = label.bottles.map(({ count, size }) => `${count} × ${volume(size, style)}`);
  const lines = [
    label.name,
    inLine(useBy(label)),
    ...labelRows(label, undefined, style).map(inLine),
    ...(sizes.length === 0 ? [] : [`Bouteilles : ${sizes.join(", ")}`]),
    contains(label.allergens),
    ...label.cautions.map(cautions.short),
  ];
  const serve = card === undefined ? [] : ["", ...serveRows(card, style).map(inLine), GARNISH];
  return [...lines, ...serve].join("\n");
}

const PAPERS: Readonly<Record<string, string>> = {
  "roll-62x100": "Rouleau, 62 × 100 mm",
  "roll-102x152": "Rouleau, 102 × 152 mm (4 × 6 in)",
  "roll-102x51": "Rouleau, 102 × 51 mm (4 × 2 in)",
  "roll-57x32": "Rouleau, 57 × 32 mm",
  "roll-50x25": "Rouleau, 50 × 25 mm",
  "a4-2x7": "A4, 2 × 7 de 99,1 × 38,1 mm",
  "a4-3x8": "A4, 3 × 8 de 70 × 37 mm",
  "letter-2x5": "Lettre US, 2 × 5 de 101,6 × 50,8 mm",
  "letter-3x10": "Lettre US, 3 × 10 de 66,7 × 25,4 mm",
};

const GARNISH = "Ce qu’apporte la garniture n’est pas listé.";

export const label: Spoken<typeof english> = {
  title: "Étiquette",
  lost: "Ce lot n’est pas sur ce téléphone : il n’y a rien à étiqueter. Le recevoir du téléphone qui l’a fait, dans Outils.",
  toLog: "Son dossier",
  toShelf: "Étagère",
  planned: "Pas encore en bouteille : titre et bouteilles sont ceux du plan.",
  card: "Étiquette",
  serveCard: "Fiche de service",
  useBy,
  rows: labelRows,
  serveRows,
  contains,
  asText,
  garnishNote: GARNISH,
  copies: (count, size) =>
    count < 2
      ? `${count} bouteille de ${size}`
      : `${count} bouteilles de ${size}, une étiquette chacune`,
  noServe: "Pas de fiche de service : d’après son journal il n’y a rien dans la bouteille.",
  which: "À imprimer",
  kinds: {
    bottle: "Étiquette de bouteille",
    serve: "Fiche de service",
    vessel: "Étiquette du récipient",
  },
  paper: "Papier",
  papers: PAPERS,
  tooSmall: (paper) =>
    `Tout ce qui doit y être ne tient pas sur ${paper} en lettres lisibles. Rien n’est coupé : choisir plus grand.`,
  noneFits:
    "Il ne tient sur aucun papier. Raccourcir dans sa fiche le nom, le verre ou la garniture.",
  takeLarger: (paper) => `Prendre ${paper}`,
  leftOut: (what) => `Pas de place ici pour : ${what.join(" ; ")}.`,
  code: "le code avec le nom du lot",
  codeNote:
    "Le code porte le nom du lot. Outils, Recevoir d’un autre téléphone, ouvre le lot avec lui.",
  howMany: "Combien",
  copiesEach: "Une par bouteille",
  copiesNumber: "Un nombre de chacune",
  number: "De chacune",
  fewer: "Une de moins",
  more: "Une de plus",
  from: "Première place libre de la feuille",
  fromShown: (place, all) => `${place} sur ${all}`,
  earlier: "Une place avant",
  later: "Une place après",
  sheetMap: (count, pages, from) =>
    pages === 1
      ? `${count} sur une feuille, à partir de la place ${from}`
      : `${count} sur ${pages} feuilles, à partir de la place ${from}`,
  rollMap: (count) => (count < 2 ? `${count} étiquette` : `${count} étiquettes`),
  tooMany: (most) => `Pas plus de ${most} à la fois : imprimer le reste ensuite.`,
  print: "Imprimer",
  printNote:
    "Dans la fenêtre d’impression, choisir le même papier, 100 %, sans marges. Si aucune ne s’ouvre, ce navigateur ne peut pas imprimer : partager le PDF.",
  cannotPrint: "Ce navigateur ne peut pas imprimer. Partager le PDF.",
  sharePdf: "Partager en PDF",
  sharePng: "Partager en image",
  pngNote: "L’image est une étiquette à 300 points par pouce, et dit sa taille.",
  asPicture:
    "Certaines lettres de cette étiquette manquent aux polices intégrées du PDF : il la porte en image.",
  saved: "Ce navigateur n’a pas de menu de partage pour cela. C’est dans les téléchargements.",
  notDrawn: "Ce navigateur n’a pas pu dessiner l’étiquette. Partager le texte.",
  share: "Partager en texte",
  shareTitle: (name, batch) => `${name}, ${batch}`,
  shared: "Remis au menu de partage.",
  copied: "Ce navigateur n’a pas de menu de partage. Le texte est copié : le coller où il faut.",
  neither:
    "Ce navigateur ne peut ni partager ni copier. Sélectionner le texte ci-dessous et le copier à la main.",
  means: "Ce que dit l’étiquette, et pourquoi",
  sizeRule:
    "Taille : les lettres ne descendent jamais sous 2,3 mm (6,5 pt), leurs minuscules sous 1,2 mm de haut (UE 1169/2011, article 13). Un nom long rétrécit, puis passe à la ligne. Si la place manque, les rappels partent d’abord, puis le jour de fabrication, puis le code. Ce qui se vend en bouteille peut demander des chiffres plus grands selon la réglementation locale.",
  strengthRule:
    "Titre : calculé d’après ce qui a été versé, non mesuré, et arrondi à 0,5 % vol. L’arrondi le déplace de 0,25 % vol au plus ; les étiquettes de spiritueux peuvent s’écarter de 0,3 % vol (US 27 CFR 19.356 et l’UE de même). Là où le titre doit être déclaré, le faire mesurer.",
  allergenRule:
    "Allergènes : d’après les entrées du placard pour tout ce qui est entré, le lait de la clarification compris, dans l’ordre de la liste de l’UE. Vérifier chaque emballage.",
};
