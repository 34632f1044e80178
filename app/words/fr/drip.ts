import type { NextReading } from "../../../core/method/drip/next-reading.ts";
import type { FilterShape } from "../../../core/spec/spec.ts";
import type * as english from "../en/drip.ts";
import type { Spoken } from "../spoken.ts";
import { counted, whole } from "./count.ts";

const shapes: Readonly<Record<FilterShape, string>> = {
  cone: "Un cône",
  straight: "Parois droites",
  "topped-up": "Tenu plein",
  unknown: "Je ne sais pas",
};

const looked: Readonly<Record<FilterShape, string>> = {
  cone: "Le filtre pend dans un cône",
  straight: "Le filtre pend dans un récipient droit",
  "topped-up": "Le filtre est tenu plein",
  unknown: "Personne ne sait comment pend le filtre",
};

const next: Readonly<Record<NextReading["why"], (time: string) => string>> = {
  narrows: (time) => `Mesurer vers ${time} : c’est ce qui précise le plus.`,
  "is-it-clogging": (time) => `Mesurer vers ${time}, pour voir si le filtre se bouche.`,
  "nearly-through": (time) => `Revoir vers ${time} : un relevé avant n’apprend guère.`,
};

export const drip: Spoken<typeof english.drip> = {
  shape: "Dans quoi pend le filtre ?",
  shapes,
  looked,
  forecast: {
    none: "Deux relevés font une prévision. Mesurer ce qu’il y a dans le récipient, sans presser.",
    second: (time) => `Un deuxième relevé fait la prévision. Le plus utile : vers ${time}.`,
    secondNow: "Un deuxième relevé fait la prévision. Le faire maintenant.",
    next,
    nextNow: "Mesurer à nouveau maintenant.",
    through: (share, time) => `${share} passés vers ${time}`,
    reached: (share, time) => `${share} passés depuis ${time} environ`,
    between: (early, late) => `8 fois sur 10 entre ${early} et ${late}`,
    never: (share) =>
      `À cette allure il n’atteindra peut-être jamais ${share} : donner une heure serait deviner.`,
    // Pratique courante, sans source, comme en anglais.
    help: "Ce qui aide : un filtre neuf, mouillé. Y porter le caillé entier, sans racler ni presser.",
    blinding: {
      suspected: (rate, promised) =>
        `Le filtre se bouche peut-être : ${rate} par heure, là où ${promised} étaient attendus. Mesurer à nouveau bientôt.`,
      yes: (rate, promised) =>
        `Le filtre se bouche : ${rate} par heure, là où ${promised} étaient attendus.`,
    },
  },
  chart: {
    title: "L’égouttage",
    now: "maintenant",
    key: "Points : relevés. Ligne : la courbe qui leur va. Hachures : 8 fois sur 10.",
    keyOut: "Croix : relevés écartés.",
    told: (count, last, time) =>
      `${counted(count, "relevé", "relevés")}, le dernier ${last} à ${time}.`,
    ahead: (share, amount, time, early, late) =>
      `${share}, ${amount}, vers ${time}, 8 fois sur 10 entre ${early} et ${late}.`,
    reached: (share, amount) => `${share}, ${amount}, c’est atteint.`,
    unending: (share, amount) => `${share}, ${amount}, peut-être jamais atteint.`,
    table: "Relevés et prévision de l’égouttage",
    time: "Heure",
    amount: "Recueilli",
    what: "Quoi",
    read: "mesuré",
    leftOut: "mesuré, écarté",
    likely: (early, late) => `attendu, ${early} à ${late}`,
  },
  weigh: {
    how: "Comment on mesure",
    volume: "Volume",
    weight: "Poids",
    unit: "g",
    tare: {
      "cloudy-run": "Le récipient du trouble, vide",
      "clear-run": "Le récipient sous le filtre, vide",
    },
    tareLast: (weight) => `${weight} la dernière fois`,
    tareHint: "0 si la balance a été mise à zéro avec lui.",
    gross: "Avec son récipient",
    vesselIs: (weight) => `Récipient ${weight}`,
    net: (gross, tare, net, amount) =>
      `${whole(gross)} − ${whole(tare)} = ${whole(net)}, soit ${whole(amount)}`,
    other: "Autre récipient",
    backSign: "‹",
    tareIs: (weight) => `Récipient : ${weight} vide`,
  },
  pass: {
    cloudy: (amount, count) =>
      `Trouble reversé : ${amount} en ${counted(count, "passe", "passes")}`,
    running: (amount) => `Environ ${amount} sont passés depuis`,
    usually: (time, passes, batches, low, high) =>
      `D’habitude clair vers ${time}, ${counted(passes, "passe", "passes")} (${counted(batches, "lot", "lots")}, surtout ${low === high ? low : `${low} à ${high}`})`,
    learnt: (wait, batches) =>
      `Demande après ${wait} : appris de ${counted(batches, "lot", "lots")} d’ici.`,
  },
};
