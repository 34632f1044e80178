import type * as english from "../en/days.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

export const days: Spoken<typeof english.days> = {
  title: "Liste de préparation",
  link: "À la liste de préparation",
  trouble: "Les jours à venir ne vont pas comme prévu.",
  see: "Voir pourquoi",
  empty:
    "Rien n’est planifié. Planifier un lot, dire pour quand il doit être prêt et le mettre sur la liste : le calcul remonte de là.",
  toSpecs: "Choisir une fiche",
  week: "Les jours à venir",
  dayOf: (hands, ready) =>
    ready === 0 ? `${hands} de travail` : `${hands} de travail, ${ready} pour ce jour`,
  free: "rien de planifié",
  today: "Aujourd’hui",
  hands: (length) => `${length} de travail`,
  nothing: "Rien à faire à la main.",
  window: (from, to) => `${from}–${to}`,
  readyBy: (name, time) => `${name} doit être prêt ${time}`,
  now: "À faire maintenant",
  running: "En cours",
  planned: "Planifiés",
  startBy: (time) => `Commencer au plus tard ${time}`,
  startNow: "Commencer maintenant",
  open: (name) => `Ouvrir ${name}`,
  openRun: "Ouvrir",
  saveReady: "Fixer l’échéance",
  more: "Planifier un autre lot",
  mustBe: (time) => `Prêt pour ${time}`,
  noPromise: "Sans échéance : il prend son tour et n’est jamais dit en retard.",
  madeFor: (name) => `Pour ${name}`,
  specChanged:
    "Sa fiche a changé depuis. Il est fait comme planifié : le planifier à nouveau pour en tenir compte.",
  start: (name) => `Commencer ${name}`,
  remove: (name) => `Retirer ${name} de la liste`,
  removed: (name) => `${name} n’est plus sur la liste`,
  setReady: "Fixer ou changer l’échéance",
  readySet: (time) => `Échéance fixée à ${time}`,
  late: (name, by) => `${name} aura ${by} de retard.`,
  stood: (name, step, by) => `${name} : il attend ${by} de trop avant « ${step} ».`,
  breaks: {
    time: (name, by) => `Le temps manque : ${name} aurait ${by} de retard.`,
    standing: (name, by) => `${name} attendrait ${by} de plus que permis.`,
    more: (what, by, name) => `${what} : il en faudrait ${by} de plus. Cela touche ${name}.`,
    instead: "Ou, à la place :",
    also: "En plus :",
    least: "Le plan qui suit s’en écarte le moins possible.",
    unsure: "Aucun ordre possible n’a été trouvé ; il en existe peut-être un.",
  },
  resources: {
    person: "Personnes",
    "filter-stand": "Supports de filtre",
    fridge: "Place au frigo",
    freezer: "Place au congélateur",
    blender: "Blenders",
    burner: "Feux",
  },
  amounts: {
    litres: (value) => `${value} ${/^[01](?:,|$)/u.test(value) ? "litre" : "litres"}`,
    count: (value) => value,
  },
  moved: {
    title: "Déplacé depuis la dernière fois",
    later: (name, step, by, to) => `${name}, à partir de « ${step} » : ${by} plus tard, soit ${to}`,
    earlier: (name, step, by, to) =>
      `${name}, à partir de « ${step} » : ${by} plus tôt, soit ${to}`,
    because: (name, step) => `à cause de ${name}, « ${step} »`,
    seen: "C’est vu",
  },
  quiet: {
    title: "Prochain moment calme",
    from: (from, to) => `${from}–${to}`,
    now: (to) => `Rien à faire à la main avant ${to}.`,
    open: "Plus rien à faire à la main.",
    openFrom: (from) => `À partir de ${from}.`,
    could: "Ce qui y tient :",
    nothing: "Rien de ce qui est planifié n’y tient.",
    task: (name, step, length) => `${name} : ${step}, ${length}`,
  },
  parts: {
    title: "Fait ici d’abord",
    part: (name, amount) => `${amount} de ${name}`,
    add: "Les mettre aussi sur la liste",
    skip: "Non, il y en a",
    unplanned: (names) =>
      `${names} : sa propre fiche n’a pas pu être planifiée. Le faire comme d’habitude, à temps.`,
  },
  put: "Le mettre sur la liste",
  isOn: (count) =>
    count === 0
      ? "Sur la liste."
      : `Sur la liste, avec ${counted(count, "préparation", "préparations")}.`,
  room: (people, stands, hours) =>
    `${counted(people, "personne", "personnes")}, ${counted(stands, "support de filtre", "supports de filtre")}, quelqu’un ${hours}`,
  always: "à toute heure",
  changeRoom: "Le changer dans Outils",
  guess:
    "Cinq minutes pour chaque chose faite à la main ; une infusion au plus long ; un égouttage selon son volume tant qu’il n’est pas mesuré.",
  toHand: "Transmettre",
  print: "Imprimer",
  noPrint:
    "Ce navigateur ne peut pas imprimer. Partager le fichier de calendrier, ou copier la liste à la main.",
  calendar: "Fichier de calendrier",
  calendarDetail: "Calculé en remontant de l’échéance. Les alarmes du lot passent avant.",
  waits: (name, step) => `${name} : ${step} continue`,
};
