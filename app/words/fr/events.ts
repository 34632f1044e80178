import type { Draft, RunEvent, Stamp, Weighed } from "../../../core/run/event.ts";
import { degreesRead } from "../degrees.ts";
import type { EventAbout, events as english } from "../en/events.ts";
import {
  clockTime,
  day,
  dueTime,
  duration,
  mass,
  typed,
  type VolumeStyle,
  volume,
} from "../format.ts";
import { isLate } from "../how-late.ts";
import type { Spoken } from "../spoken.ts";
import { drip } from "./drip.ts";
import { stock } from "./stock.ts";
import { tasting } from "./tasting.ts";

type EventMap = { readonly [D in Draft as D["type"]]: Stamp & D };
type Sayings = {
  readonly [Type in keyof EventMap]: (event: EventMap[Type], about: EventAbout) => string;
};

const READINGS: Readonly<Record<EventMap["reading.logged"]["what"], string>> = {
  milk: "Lait mesuré",
  "cloudy-run": "Trouble mesuré",
  collected: "Recueilli jusqu’ici",
  yield: "Rendement mesuré",
  "top-up": "Appoint mesuré",
  bottled: "Embouteillé",
  temperature: "Température",
  brix: "°Brix lus",
};

type ReadingSaid = Pick<EventMap["reading.logged"], "what" | "value" | "unit"> & {
  readonly weighed?: Weighed | undefined;
};

function measuredValue({ value, unit }: ReadingSaid, style: VolumeStyle): string {
  switch (unit) {
    case "ml":
      return volume(value, style);
    case "g":
      return `${typed(value)} g`;
    case "degC":
      return degreesRead(value);
    case "count":
      return String(value);
    case "brix":
      return `${typed(value)} °Bx`;
  }
}

const ofWeight = ({ weighed }: { readonly weighed?: Weighed | undefined }): string =>
  weighed === undefined
    ? ""
    : ` (pesé : ${mass(weighed.gross)} − ${mass(weighed.tare)} = ${mass(weighed.gross - weighed.tare)})`;

const readingWords = (one: ReadingSaid, style: VolumeStyle): string =>
  `${READINGS[one.what]} : ${measuredValue(one, style)}${ofWeight(one)}`;

const LOOKS: Readonly<Record<EventMap["look.noted"]["look"], string>> = {
  clear: "Il a coulé clair",
  hazy: "Il a coulé voilé",
  cloudy: "Il a coulé trouble",
  "not-yet": "Goûté : pas encore",
  right: "Goûté : bon",
  "too-far": "Goûté : trop loin",
  "finer-filter": "Restait trouble : filtre plus fin",
  "cold-rest": "Restait trouble : repos au froid",
  accept: "Restait trouble : accepté tel quel",
};

const STANDS: Readonly<Record<EventMap["vessel.moved"]["to"], string>> = {
  counter: "sur le comptoir",
  fridge: "au frigo",
  freezer: "au congélateur",
};

const EMPTY: Readonly<Record<EventMap["tare.noted"]["vessel"], string>> = {
  "cloudy-run": "Le récipient du trouble",
  "clear-run": "Le récipient sous le filtre",
};

const HANDED: Readonly<Record<EventMap["alarm.handed"]["to"], string>> = {
  "phone-clock": "aussi réglée sur l’alarme du téléphone",
  person: "aussi surveillée par quelqu’un",
  vessel: "aussi écrite sur le récipient",
};

const late = (ms: number): string => (isLate(ms) ? `, ${duration(ms)} après l’heure` : "");

const sayings: Sayings = {
  "run.started": ({ batch, plan, appVersion }, { style }) =>
    `Commencé ${batch} : ${plan.spec.name}, ${volume(plan.finalMl, style)} prévus. Version de l’application ${appVersion}.`,
  "step.started": ({ visit }, { step }) => `Étape commencée : ${step(visit)}`,
  "step.finished": ({ visit }, { step }) => `Étape finie : ${step(visit)}`,
  "line.poured": ({ line }, about) => `Dans le récipient : ${about.line(line)}`,
  "reading.logged": (event, { style }) => readingWords(event, style),
  "look.noted": ({ look }) => LOOKS[look],
  "run.paused": () => "En pause : ses alarmes se taisent, ses attentes continuent",
  "run.resumed": () => "Repris",
  "ready.set": ({ by }) => `À tenir prêt pour ${day(by)}, ${clockTime(by)}`,
  "vessel.moved": ({ to }) => `Mis ${STANDS[to]}`,
  "hands.changed": ({ initials }) => `Relais pris par ${initials}`,
  "lot.noted": ({ ingredient, lot, useBy }, about) =>
    `Numéro de lot, ${about.ingredient(ingredient)} : ${lot}${useBy === undefined ? "" : `, à consommer jusqu’au ${day(useBy)}`}`,
  "run.repoured": (event, { style }) =>
    `Trouble reversé : ${volume(event.ml, style)}${ofWeight(event)}`,
  "yield.logged": (event, { style }) =>
    `${event.settles ? "Le rendement qui compte" : "Rendement mesuré"} : ${volume(event.ml, style)}${ofWeight(event)}`,
  "tare.noted": ({ vessel, grams }) => `${EMPTY[vessel]}, pesé vide : ${mass(grams)}`,
  "shape.noted": ({ shape }) => drip.looked[shape],
  "topup.poured": ({ ml, planned, advised }, { style }) =>
    `Appoint de ${volume(ml, style)} (prévu ${volume(planned, style)}, conseillé ${volume(advised, style)})`,
  "alarm.heard": ({ visit, at, dueAt }, { step }) =>
    `Alarme acquittée : ${step(visit)}${late(at - dueAt)}`,
  "alarm.handed": ({ at, dueAt, to, who }) =>
    `L’attente jusqu’à ${dueTime(dueAt, at)} est ${who === undefined ? HANDED[to] : `aussi surveillée par ${who}`}`,
  "due.moved": ({ visit, dueAt }, { step }) =>
    `${step(visit)} tombe maintenant ${day(dueAt)}, ${clockTime(dueAt)}`,
  "note.added": ({ text }) => `Note : ${text}`,
  "clock.shifted": ({ byMs, keepElapsed }) =>
    `L’horloge du téléphone a ${byMs < 0 ? "reculé" : "avancé"} de ${duration(Math.abs(byMs))} ; ${
      keepElapsed ? "les attentes gardent leur durée" : "les échéances restent"
    }`,
  "phone.slept": ({ at, fromMs, forMs }) =>
    `Le téléphone a dormi ${duration(forMs)}, depuis ${dueTime(fromMs, at)} : rien ne pouvait sonner ici`,
  "event.undone": ({ undoes }, { act }) => `Annulé : ${act(undoes)}`,
  "run.bottled": ({ bottles, useBy }, { style }) =>
    `Embouteillé ${bottles.map(({ count, size }) => `${count} × ${volume(size, style)}`).join(", ")}, à consommer jusqu’au ${day(useBy)}`,
  "run.abandoned": ({ reason }) => `Abandonné : ${reason === "" ? "sans raison donnée" : reason}`,
  "taste.noted": ({ by, scores, words }) => tasting.said(by, scores, words),
  "verdict.given": ({ verdict, repeat, text }) =>
    [tasting.verdicts[verdict], tasting.repeats[repeat], ...(text === "" ? [] : [text])].join(", "),
  "tag.added": ({ tag }) => `Repère mis : ${tag}`,
  "tag.removed": ({ tag }) => `Repère retiré : ${tag}`,
  "photo.added": () => "Photo prise",
  "photo.removed": () => "Photo retirée",
  "stock.poured": ({ count, unit, ml }, { style }) =>
    unit === "ml"
      ? `Servi : ${volume(ml, style)}`
      : `Servi : ${stock.amounts[unit](count)} (${volume(ml, style)})`,
  "stock.ended": ({ how, reason }) => stock.ended(how, reason),
};

function saying<Type extends keyof EventMap>(
  type: Type,
  event: EventMap[Type],
  about: EventAbout,
): string {
  return sayings[type](event, about);
}

export const events: Spoken<typeof english> = {
  of: (event: RunEvent, about: EventAbout): string => saying(event.type, event, about),
  reading: readingWords,
  unknownStep: "une étape que cette version ne connaît pas",
  unknownAct: "une chose qui n’est plus au journal",
  anUndo: "une annulation d’avant",
  round: (name, round) => (round > 1 ? `${name}, tour ${round}` : name),
  undone: "annulé",
  thisPhone: "ce téléphone",
  otherPhone: (number) => `téléphone ${number}`,
};
