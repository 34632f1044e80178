import type * as english from "../en/hand-over.ts";
import type { Spoken } from "../spoken.ts";

export const handOver: Spoken<typeof english.handOver> = {
  leaving: "Si cet écran est quitté, rien ne sonne ici.",
  asks: (length) => `Cette attente dure ${length}. Qui d’autre la surveille ?`,
  answer: "Dire qui",
  which: "Qui d’autre la surveille",
  ways: { "phone-clock": "Alarme du téléphone", person: "Quelqu’un", vessel: "Récipient" },
  others: "Autres moyens",
  fewer: "Moins de moyens",
  setClock: (time) => `Régler aussi l’alarme du téléphone sur ${time}`,
  clockDone: "L’alarme du téléphone est réglée",
  whoWatches: "Qui surveille",
  anotherName: "Autres initiales",
  personDone: (who) => `${who} surveille`,
  nobody: "Choisir qui surveille",
  write: "Écrire dessus, en grand :",
  vesselDone: "C’est écrit sur le récipient",
  printLabel: "Imprimer une étiquette",
  told: {
    "phone-clock": (time) => `Alarme du téléphone réglée sur ${time}, selon vous`,
    person: (time, who) => `${who} surveille jusqu’à ${time}, selon vous`,
    vessel: (time) => `Sur le récipient, jusqu’à ${time}, selon vous`,
  },
  somebody: "Quelqu’un",
  calendar: "Fichier de calendrier",
  calendarNote: "Un calendrier donne au plus un bref signal : certains perdent l’alarme.",
  calendarEntry: (name, verb) => `${name} : ${verb}`,
  calendarDetail: (batch) => `${batch}. À voir maintenant.`,
  calendarFailed: "Le fichier de calendrier n’a pas pu être fait. Régler l’alarme du téléphone.",
  calendarSaved: "Il est dans les téléchargements du navigateur : l’ouvrir là.",
  dim: "Tamiser",
};

export const dim: Spoken<typeof english.dim> = {
  title: "Tamisé",
  leave: "Toucher n’importe où pour sortir",
  others: (count) => (count < 2 ? `et ${count} autre attend` : `et ${count} autres attendent`),
  none: "Rien n’attend",
};

export const vessel: Spoken<typeof english.vessel> = {
  title: "Étiquette du récipient",
  card: "Étiquette du récipient",
  due: "Échéance",
  since: (when) => `Depuis ${when}`,
  keep: { fridge: "Au froid", freezer: "Au congélateur" },
  watched: "Surveillé par",
  otherPaper: "Autre papier, PDF ou image",
  byHand: "Pas d’imprimante ? Écrire ceci dessus, en grand :",
  line: (batch, verb, when) => `${batch} · ${verb} · ${when}`,
  print: "Imprimer",
  cannotPrint: "Ce navigateur ne peut pas imprimer. L’écrire à la main.",
  moves: "L’échéance est celle de maintenant : si elle bouge, écrire la nouvelle par-dessus.",
  none: "Ce lot n’attend rien en ce moment : il n’y a pas d’étiquette pour son récipient.",
  back: "Retour au lot",
};
