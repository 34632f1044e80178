import type { StockEnd, StockUnit } from "../../../core/run/event.ts";
import type * as english from "../en/shelf.ts";
import { typed } from "../format.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

const days = (count: number): string => counted(count, "jour", "jours");
const serves = (count: number): string => counted(count, "verre", "verres");

const units: Readonly<Record<"serves" | "bottles", string>> = {
  serves: "verres",
  bottles: "bouteilles",
};

const pourWays: Readonly<Record<StockUnit, string>> = {
  serves: "Verres",
  bottles: "Bouteilles",
  ml: "Mesuré",
};

const endWays: Readonly<Record<StockEnd, string>> = {
  spent: "Épuisé",
  discarded: "Jeté",
};

const reasons: readonly string[] = [
  "date limite passée",
  "goût altéré",
  "devenu trouble",
  "renversé ou cassé",
  "autre raison",
];

export const shelf: Spoken<typeof english.shelf> = {
  title: "Étagère",
  empty:
    "Rien n’est en bouteille. Chaque lot embouteillé vient ici, la date la plus proche d’abord, avec ce qu’il en reste et quand faire le suivant.",
  count: (batches, past) =>
    `${counted(batches, "lot", "lots")}${past > 0 ? `, dont ${past} hors date` : ""}`,
  useBy: (date) => `À consommer jusqu’au ${date}`,
  left: (count) => (count < 2 ? `reste ${days(count)}` : `restent ${days(count)}`),
  lastDay: "dernier jour aujourd’hui",
  past: "date passée : jeter",
  ago: (count) => (count === 0 ? "plus tôt aujourd’hui" : `il y a ${days(count)}`),
  bottle: (count, size) => `${count} × ${size}`,
  serves: (count) => (count < 2 ? `reste ${serves(count)}` : `restent ${serves(count)}`),
  of: (left, total) => `${left} sur ${total}`,
  label: "Étiquette",
  labelOf: (batch) => `Étiquette de ${batch}`,
  log: "Dossier",
  logOf: (batch) => `Dossier de ${batch}`,
  note: "Les dates sont la règle de la maison, le jour de fabrication étant le jour 1. Ce qui reste est ce qui a été noté. Suivre la réglementation locale.",
  more: (count) => `Montrer la suite (${count})`,
  pour: {
    begin: "Servir",
    open: (batch) => `Servir du lot ${batch}`,
    how: "Compté en",
    ways: pourWays,
    units,
    label: (batch) => `Servi du lot ${batch}`,
    leaves: (amount, left) => `${amount} ; reste ${serves(left)}`,
    more: (amount, left) => `${amount}, c’est plus qu’il n’en reste d’après le journal (${left})`,
    take: "Noter",
    done: (amount) => `${amount}, c’est servi`,
  },
  end: {
    begin: "Retirer de l’éta\u00adgère",
    open: (batch) => `Retirer ${batch} de l’étagère`,
    how: "Qu’est-il devenu ?",
    ways: endWays,
    why: "Pourquoi ?",
    reasons,
    take: "Le retirer de l’éta\u00adgère",
  },
  over: {
    ask: (amount) =>
      `Noté en trop, face à la mise en bouteille : ${amount}. Est-ce épuisé, ou une entrée est-elle fausse ?`,
    gone: "C’est épuisé",
    look: "Chercher la fausse",
  },
  goneTitle: "Retirés de l’étagère cette semaine",
  forgotten: {
    title: "Hors date depuis longtemps",
    says: (count) =>
      count < 2
        ? "Un lot est hors date depuis deux semaines ou plus, et personne ne l’a retiré de l’étagère."
        : `${count} lots sont hors date depuis deux semaines ou plus, et personne ne les a retirés de l’étagère.`,
    show: "Les montrer",
    hide: "Les cacher",
  },
  next: {
    title: "Que préparer ensuite",
    lasts: (when) => `Dure jusqu’à ${when} environ.`,
    out: "Il n’en reste plus.",
    startBy: (when) => `Commencer le prochain lot avant ${when}.`,
    startNow: "Commencer le prochain lot maintenant.",
    rate: (perDay, evenings, of) =>
      `Verres par jour, environ ${typed(perDay, perDay < 10 ? 1 : 0)} : estimation sur ${counted(evenings, "soirée", "soirées")} de ${counted(of, "jour noté", "jours notés")} ici.`,
    doing: {
      planned: "Le prochain lot est sur la liste de préparation.",
      made: "Le prochain lot est en cours.",
    },
    put: "Sur la liste de préparation",
    noSpec:
      "Sa fiche ne peut plus être planifiée : elle a été retirée, ou il manque un ingrédient.",
    note: "Les heures où personne ne travaille ne comptent pas ici ; la liste de préparation les compte.",
  },
};
