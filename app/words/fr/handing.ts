import type * as english from "../en/handing.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

const frames = (count: number): string => counted(count, "code", "codes");

export const handing: Spoken<typeof english.handing> = {
  title: "Transmettre",
  lost: "Il n’y a rien à transmettre ici. Cela a peut-être été retiré.",
  what: {
    run: (name) => `${name}, avec tout son journal`,
    spec: (name) => `La fiche de ${name}, avec ce qui la compose`,
    day: "Tous les lots en cours et planifiés",
  },
  how: "Sur l’autre téléphone, ouvrir Outils, puis « Recevoir d’un autre téléphone », et tenir sa caméra au-dessus de ce code. Aucun réseau n’est nécessaire.",
  loop: (count) => `${frames(count)}, l’un après l’autre, en boucle, dans n’importe quel ordre.`,
  at: (at, count) => `${at} sur ${count}`,
  pause: "Figer ce code",
  goOn: "Continuer",
  packing: "Préparation…",
  tooMuch: "C’est trop pour des codes : transmettre un fichier.",
  file: "En fichier",
  stays:
    "Tout reste aussi sur ce téléphone. Dire qui continue, pour qu’un seul sonne et non les deux.",
  take: {
    title: "Recevoir d’un autre téléphone",
    why: "Tenir la caméra au-dessus du code que l’autre téléphone montre dans « Transmettre ». Ce qui a été fait sur les deux est gardé. Au-dessus du code d’une étiquette, elle ouvre ce lot.",
    open: "Ouvrir la caméra",
    stop: "Fermer la caméra",
    seen: (seen, count) => `Lecture : ${seen} sur ${frames(count)}`,
    looking: "Recherche d’un code…",
    refused:
      "La caméra n’est pas autorisée ici. L’autoriser pour ce site dans les réglages du téléphone, ou faire transmettre un fichier.",
    absent:
      "Aucune caméra trouvée. Faire transmettre un fichier par l’autre téléphone, et l’importer comme sauvegarde.",
    damaged: "Ce qui a été lu est abîmé. Fermer la caméra, la rouvrir, et lire à nouveau.",
    done: (count) => `${counted(count, "entrée reçue", "entrées reçues")}.`,
    toBench: "Au Poste",
  },
};
