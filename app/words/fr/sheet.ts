import { degrees, degreesBare, degreesTyped } from "../degrees.ts";
import type * as english from "../en/sheet.ts";
import { degreeSign } from "../house-units.ts";
import type { Spoken } from "../spoken.ts";

export const sheet: Spoken<typeof english.sheet> = {
  title: "Feuille de contrôle",
  batch: "Lot",
  spec: "Fiche",
  started: "Commencé",
  ended: "Terminé",
  running: "encore en cours",
  useBy: "Date limite",
  get warm() {
    return `Temps au-dessus de ${degrees(5)}`;
  },
  none: "aucun compté",
  steps: "Étapes",
  from: "De",
  to: "À",
  by: "Par",
  temperatures: "Températures",
  lots: "Lots d’origine",
  lotUseBy: (date) => `à consommer jusqu’au ${date}`,
  earliest: (date) =>
    `La date la plus proche de ces lots est ${date} : un mélange ne se garde pas au-delà.`,
  hands: "Équipe",
  empty: "Rien de noté.",
  get addTemperature() {
    return `Température maintenant, ${degreeSign()}`;
  },
  noteTemperature: "Noter la température",
  temperatureFault: (low, high) =>
    `Saisir une température de ${degreesBare(low)} à ${degreesBare(high)}, comme ${degreesTyped(4.5)}.`,
  addLot: "Numéro de lot sur l’emballage",
  lotOf: "Ingrédient",
  lotDate: "Jours jusqu’à sa date limite, s’il en a une",
  lotDateHint: "0 pour aujourd’hui. Laisser vide s’il n’y en a pas.",
  lotDateFault: "Saisir un nombre entier de jours de 0 à 3650, ou laisser vide.",
  noteLot: "Noter ce lot",
  lotFault: "Saisir d’abord le numéro de lot.",
  addHands: "Initiales",
  noteHands: "Prendre le relais",
  handsFault: "Saisir une à huit lettres.",
  noted: "Noté",
  print: "Imprimer",
  cautions:
    "Cette feuille liste ce qui a été noté ici. Elle ne dit pas qu’une boisson est sûre : la réglementation locale et les personnes habilitées décident.",
  toRun: "Retour au lot",
};
