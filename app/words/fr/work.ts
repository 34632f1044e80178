import type * as english from "../en/work.ts";
import type { Spoken } from "../spoken.ts";

/** Lus à deux mètres : courts. */
const verbs: Readonly<Record<string, string>> = {
  build: "Réunir",
  milk: "Lait",
  pour: "Verser",
  curdle: "Repos",
  "wet-filter": "Filtre mouillé",
  "first-pass": "1re passe",
  "re-pour": "Reverser",
  "check-clear": "Clair ?",
  "slow-drip": "Égoutter",
  yield: "Mesure",
  "top-up": "Appoint",
  bottle: "Emplir",
  label: "Étiqueter",
  rescue: "Encore trouble",
  finer: "Filtre plus fin",
  "cold-rest": "Repos au froid",
  rack: "Tirer au clair",
  steep: "Infuser",
  "strain-mesh": "Passer",
  "strain-paper": "Papier",
  melt: "Fondre",
  mingle: "Laisser agir",
  freeze: "Congeler",
  "lift-fat": "Retirer le gras",
  skins: "Zestes",
  "draw-oil": "Tirer l’huile",
  stir: "Remuer",
  brix: "°Brix",
  cool: "Au frais",
  correct: "Ajuster",
};

export const work: Spoken<typeof english.work> = {
  hints: {
    rest: "Maintenir",
    short: "Plus longtemps, jusqu’au bout",
    wet: "Essuyer l’écran et le doigt, puis maintenir",
  },
  verbs,
  due: (time) => `jusqu’à ${time}`,
  since: (length) => `depuis ${length}`,
};
