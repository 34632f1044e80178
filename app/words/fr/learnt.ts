import type * as english from "../en/learnt.ts";
import type { Spoken } from "../spoken.ts";

const batches = (count: string): string =>
  count === "0" || count === "1" ? `${count} lot` : `${count} lots`;

export const learnt: Spoken<typeof english.learnt> = {
  title: "Ce que disent vos lots",
  demoTitle: "Ce que disent les lots de la démo",
  none: "Rien encore. Dès la troisième clarification terminée, vos propres lots commencent à fixer l’attendu.",
  back: "Carnet",
  specs: "Boisson par boisson",
  specLine: (count) => batches(count),
  kind: (procedure, shape, dairy) => `${procedure}, ${shape}, ${dairy}`,
  kinds: "Ce qu’on attend du prochain lot",
  kindsWhy:
    "D’après vos propres lots et, tant qu’ils sont peu, la pratique courante. 8 lots sur 10 devraient tomber dans la fourchette. Un lot très écarté compte peu, pour qu’un seul ne la fasse pas basculer.",
  source:
    "Moyennes normales dans un niveau de maison (Gelman et autres, Bayesian Data Analysis) ; t de Student à 4 degrés de liberté contre les lots atypiques (Lange, Little et Taylor 1989). En simulation, 80 à 85 % des lots suivants tombaient dans la fourchette.",
  lesson: "Quoi",
  expect: "Attendu",
  range: "8 sur 10",
  from: "D’après",
  lessons: {
    curd: "Gardé dans le caillé, L par L de lait entier",
    share: "Passe",
    clear: "Jusqu’au clair",
    drip: "Égouttage, face à l’habituel",
    passes: "Reversé",
  },
  times: (factor) => `× ${factor}`,
  n: (own, house) =>
    own === house ? batches(own) : `${batches(own)} de ce genre, ${house} en tout`,
  stated: "pratique courante, aucun lot encore",
  yields: {
    title: "Le rendement, de lot en lot",
    says: (count, mean, low, high) =>
      `${batches(count)} : ${mean} passés en moyenne ; d’habitude entre ${low} et ${high}.`,
    outside: (names) => `En dehors : ${names}.`,
    inside: "Aucun n’est en dehors.",
    few: (count, least) => `${batches(count)} : les limites se tracent dès ${least} lots.`,
    widened: (low, high) =>
      `Un lot atypique a élargi ces limites ; sans lui elles iraient de ${low} à ${high}.`,
    reading:
      "Moyenne ± 2,66 × l’écart moyen d’un lot au suivant (carte aux valeurs individuelles, NIST/SEMATECH e-Handbook 6.3.2.2). Un losange plein est en dehors.",
    high: "limite haute",
    mean: "moyenne",
    low: "limite basse",
    batch: "Lot",
    share: "Passé",
    date: "Date",
  },
  matters: {
    title: "Ce qui semble aller ensemble",
    few: (count) =>
      `${batches(count)} : n est trop petit pour le dire. À partir de huit, la recherche commence.`,
    why: "Des choses qui ont monté et baissé ensemble dans vos lots. Cela ne dit pas que l’une a fait l’autre : d’autres ont pu changer en même temps.",
    looked: (count, batchCount) =>
      `${count} paires d’un facteur et d’un résultat ont été examinées dans ${batches(batchCount)}.`,
    nothing: "Aucune ne sort de ce que donnerait le hasard.",
    rest: "Toutes les autres paires",
    more: (input, result) =>
      `Quand « ${input} » était plus haut, « ${result} » l’était le plus souvent aussi`,
    less: (input, result) =>
      `Quand « ${input} » était plus haut, « ${result} » était le plus souvent plus bas`,
    order: (result, way) =>
      `Quand le punch était versé dans le lait, « ${result} » était le plus souvent plus ${way === "higher" ? "haut" : "bas"}`,
    figures: (rho, n, p) => `corrélation de rangs ${rho}, n = ${n}, p ${p}`,
    p: "p est corrigée pour tout ce qui a été examiné (Holm 1979) : sous 0,05, moins d’une telle liste sur 20 en montrerait une seule par hasard. Corrélation de rangs de Spearman.",
    scatter: (input, result) => `${input} en largeur, ${result} en hauteur`,
    table: "Les plus probables d’abord ; p est corrigée",
    pair: "Paire",
    rho: "ρ",
  },
  figures: "Les chiffres",
  plan: {
    own: (amount, low, high, count) =>
      `${amount} devraient passer (${low} à ${high}) : d’après ${batches(count)} à vous.`,
    practice: (amount, low, high) =>
      `${amount} devraient passer (${low} à ${high}) : pratique courante, en attendant trois lots à vous.`,
    drip: (time, low, high, count) =>
      `L’égouttage devrait durer ${time} (${low} à ${high}) : d’après ${batches(count)} à vous.`,
    link: "Ce que disent vos lots",
  },
  demo: {
    title: "Historique de démo",
    why: "Une vingtaine de lots inventés, sur six mois : un raté, un meilleur par chance, une tendance à trouver. Marqués démo ; vos plans n’en apprennent rien.",
    put: "Mettre l’historique de démo",
    remove: "Retirer l’historique de démo",
    removeWhy: "Retire ces lots inventés et ce qui y a été ajouté. Les vôtres restent.",
    done: "L’historique de démo est dans le Carnet",
    removed: (count) =>
      count === "0" || count === "1"
        ? `${count} lot de la démo retiré`
        : `${count} lots de la démo retirés`,
  },
};
