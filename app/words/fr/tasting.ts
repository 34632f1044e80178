import type { TasteWord } from "../../../core/logbook/taste-words.ts";
import type { Aspect, Repeat, Scores, Verdict } from "../../../core/run/taste.ts";
import type * as english from "../en/tasting.ts";
import type { Spoken } from "../spoken.ts";

const aspects: Readonly<Record<Aspect, string>> = {
  clarity: "Limpidité",
  colour: "Couleur gardée",
  aroma: "Arôme",
  sweetness: "Douceur",
  acid: "Acidité",
  spirit: "Alcool",
  texture: "Texture",
  finish: "Finale",
};

const ends: Readonly<Record<Aspect, string>> = {
  clarity: "0 trouble, 10 brillante",
  colour: "0 partie, 10 comme versée",
  aroma: "0 rien, 10 remplit la salle",
  sweetness: "0 aucune, 10 écœurante",
  acid: "0 aucune, 10 mordante",
  spirit: "0 caché, 10 seul à rester",
  texture: "0 aqueuse, 10 soyeuse",
  finish: "0 file, 10 reste",
};

const codes: Readonly<Record<TasteWord, string>> = {
  bright: "vif",
  clean: "net",
  fruity: "fruité",
  floral: "fleuri",
  herbal: "herbacé",
  spicy: "épicé",
  nutty: "noix",
  toasty: "grillé",
  smoky: "fumé",
  silky: "soyeux",
  round: "rond",
  creamy: "crémeux",
  milky: "lacté",
  thin: "maigre",
  chalky: "crayeux",
  grippy: "astringent",
  dry: "sec",
  sharp: "mordant",
  bitter: "amer",
  hot: "brûlant",
  flat: "plat",
  cooked: "cuit",
  stale: "éventé",
  "sour-milk": "lait aigre",
};

const verdicts: Readonly<Record<Verdict, string>> = {
  good: "Bon",
  fair: "Passable",
  poor: "Mauvais",
};

const repeats: Readonly<Record<Repeat, string>> = {
  yes: "à refaire",
  "with-changes": "à refaire autrement",
  no: "à ne pas refaire",
};

const scoreWords = (scores: Scores): string =>
  Object.entries(aspects)
    .flatMap(([aspect, name]) => {
      const score: number | undefined = Reflect.get(scores, aspect);
      return score === undefined ? [] : [`${name.toLowerCase()} ${score}`];
    })
    .join(", ");

export const tasting: Spoken<typeof english.tasting> = {
  title: "Dégustation",
  aspects,
  ends,
  codes,
  verdicts,
  repeats,
  said: (by, scores, words) => {
    const told = words.map((word) => Reflect.get(codes, word) ?? word).join(", ");
    return `Goûté par ${by} : ${[scoreWords(scores), told].filter((one) => one !== "").join(" ; ")}`;
  },
  none: "Personne ne l’a encore goûté. Une minute avec un verre dira plus tard quel lot refaire.",
  tasters: (count) =>
    count < 2
      ? "Un seul goûteur"
      : `Moyennes de ${count} goûteurs, la dernière dégustation de chacun`,
  by: (who, when) => `${who}, ${when}`,
  begin: "Le goûter maintenant",
  close: "Ranger la feuille",
  notTasted: "–",
  less: (aspect) => `${aspect} : moins`,
  more: (aspect) => `${aspect} : plus`,
  words: "Des mots pour le dire",
  chosen: (word) => `✓ ${word}`,
  own: "Un autre mot",
  addWord: "Ajouter le mot",
  who: "Qui a goûté ?",
  another: "Autres initiales",
  padDone: "Prendre ces initiales",
  keep: "Noter cette dégustation",
  keepAs: (who) => `par ${who}`,
  kept: "Dégustation notée",
  verdict: {
    title: "Verdict",
    none: "Pas encore de verdict. Il dit d’un coup d’œil s’il faut le refaire.",
    give: "Donner un verdict",
    change: "Changer le verdict",
    what: "Comment est-il ?",
    again: "Le refaire ?",
    repeat: { yes: "Oui", "with-changes": "Autrement", no: "Non" },
    why: "Pourquoi, ou quoi changer",
    keep: "Noter le verdict",
    kept: "Verdict noté",
    close: "En rester là",
  },
  tags: {
    title: "Repères",
    none: "Pas encore de repère. Le Carnet retrouve les lots par eux.",
    add: "Ajouter un repère",
    field: "Nouveau repère",
    used: "Déjà employés",
    takeOff: (tag) => `Retirer le repère ${tag}`,
    added: (tag) => `Repère mis : ${tag}`,
    removed: (tag) => `Repère ${tag} retiré`,
  },
};
