import type * as english from "../en/bench.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

export const bench: Spoken<typeof english.bench> = {
  title: "Poste",
  empty:
    "Rien n’est en cours. Choisir une fiche, planifier un lot et le commencer : il sera ici, et appellera quand il faut venir.",
  toSpecs: "Choisir une fiche",
  start: "Commencer un lot",
  prepList: "Liste de préparation",
  now: "maintenant",
  read: "Noter un relevé",
  waitsFor: "vous attend",
  left: "reste",
  running: (count) => counted(count, "lot en cours", "lots en cours"),
  column: (name, what) => `${name} : ${what}`,
  bands: {
    milk: "lait",
    curd: "caillé",
    cloudy: "trouble",
    hazy: "voilé",
    clear: "clair",
    spirit: "spiritueux",
    punch: "punch",
    empty: "vide",
  },
};

export const alarm: Spoken<typeof english.alarm> = {
  heard: "Je suis là",
  lateBy: (length) => `${length} de retard`,
  dueNow: "c’est l’heure",
  waitsOnBench: (what) => `Entendu. ${what} attend au Poste.`,
  others: (count) => `et ${counted(count, "autre", "autres")}`,
  status: {
    "rings-here": "Sonne ici. Laisser cet écran allumé.",
    "rings-here-and-phone-clock": "Sonne ici, et l’alarme du téléphone est réglée aussi.",
    "rings-here-and-person": "Sonne ici, et quelqu’un surveille aussi, selon vous.",
    "rings-here-and-vessel": "Sonne ici, et c’est écrit sur le récipient.",
    "rings-here-and-several": "Sonne ici, et chaque attente est surveillée autrement aussi.",
    "phone-clock": "Ne sonnera peut-être pas ici. L’alarme du téléphone est réglée.",
    person: "Ne sonnera peut-être pas ici. Quelqu’un surveille, selon vous.",
    several: "Ne sonnera peut-être pas ici. Chaque attente est surveillée autrement, selon vous.",
    "no-bell":
      "Il manque une partie : rien ne sonne. Fermer tout à fait l’application et la rouvrir.",
    "out-of-sight": "Hors de vue : sonne au retour.",
    "no-sound": "Ce navigateur n’a pas de son. Régler l’alarme du téléphone.",
    "sound-blocked": "Muet tant que l’écran n’est pas touché.",
    "sound-unheard": "Son pas encore essayé : le faire dans Outils.",
    "sound-check-old": "Son essayé il y a plus de 12 h : à refaire dans Outils.",
    "screen-lock-refused": "L’écran peut s’éteindre : le garder allumé, sinon sonnerie tardive.",
    "screen-lock-absent": "L’écran peut s’éteindre : le garder allumé, sinon sonnerie tardive.",
  },
  checkSound: "Essayer le son",
};
