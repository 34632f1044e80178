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
  milk: "Leche medida",
  "cloudy-run": "Turbio medido",
  collected: "Recogido hasta ahora",
  yield: "Rendimiento medido",
  "top-up": "Refuerzo medido",
  bottled: "Embotellado",
  temperature: "Temperatura",
  brix: "°Brix leídos",
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
    : ` (pesado: ${mass(weighed.gross)} − ${mass(weighed.tare)} = ${mass(weighed.gross - weighed.tare)})`;

const readingWords = (one: ReadingSaid, style: VolumeStyle): string =>
  `${READINGS[one.what]}: ${measuredValue(one, style)}${ofWeight(one)}`;

const LOOKS: Readonly<Record<EventMap["look.noted"]["look"], string>> = {
  clear: "Salió claro",
  hazy: "Salió velado",
  cloudy: "Salió turbio",
  "not-yet": "Probado: aún no",
  right: "Probado: en su punto",
  "too-far": "Probado: pasado",
  "finer-filter": "No aclaraba: filtro más fino",
  "cold-rest": "No aclaraba: reposo frío",
  accept: "No aclaraba: aceptado como está",
};

const STANDS: Readonly<Record<EventMap["vessel.moved"]["to"], string>> = {
  counter: "en la barra",
  fridge: "en el refrigerador",
  freezer: "en el congelador",
};

const EMPTY: Readonly<Record<EventMap["tare.noted"]["vessel"], string>> = {
  "cloudy-run": "El recipiente de lo turbio",
  "clear-run": "El recipiente bajo el goteo",
};

const HANDED: Readonly<Record<EventMap["alarm.handed"]["to"], string>> = {
  "phone-clock": "también puesta en la alarma del teléfono",
  person: "también vigilada por alguien",
  vessel: "también escrita en el recipiente",
};

const late = (ms: number): string => (isLate(ms) ? `, ${duration(ms)} después de su hora` : "");

const sayings: Sayings = {
  "run.started": ({ batch, plan, appVersion }, { style }) =>
    `Empezado ${batch}: ${plan.spec.name}, ${volume(plan.finalMl, style)} según el plan. Versión de la aplicación ${appVersion}.`,
  "step.started": ({ visit }, { step }) => `Paso empezado: ${step(visit)}`,
  "step.finished": ({ visit }, { step }) => `Paso terminado: ${step(visit)}`,
  "line.poured": ({ line }, about) => `En el recipiente: ${about.line(line)}`,
  "reading.logged": (event, { style }) => readingWords(event, style),
  "look.noted": ({ look }) => LOOKS[look],
  "run.paused": () => "En pausa: sus alarmas callan, sus esperas siguen",
  "run.resumed": () => "Retomado",
  "ready.set": ({ by }) => `Debe estar listo ${day(by)}, ${clockTime(by)}`,
  "vessel.moved": ({ to }) => `Puesto ${STANDS[to]}`,
  "hands.changed": ({ initials }) => `Relevo: lo sigue ${initials}`,
  "lot.noted": ({ ingredient, lot, useBy }, about) =>
    `Número de lote, ${about.ingredient(ingredient)}: ${lot}${useBy === undefined ? "" : `, caduca ${day(useBy)}`}`,
  "run.repoured": (event, { style }) =>
    `Turbio vertido de nuevo: ${volume(event.ml, style)}${ofWeight(event)}`,
  "yield.logged": (event, { style }) =>
    `${event.settles ? "El rendimiento que vale" : "Rendimiento medido"}: ${volume(event.ml, style)}${ofWeight(event)}`,
  "tare.noted": ({ vessel, grams }) => `${EMPTY[vessel]}, pesado vacío: ${mass(grams)}`,
  "shape.noted": ({ shape }) => drip.looked[shape],
  "topup.poured": ({ ml, planned, advised }, { style }) =>
    `Reforzado con ${volume(ml, style)} (según el plan ${volume(planned, style)}, aconsejado ${volume(advised, style)})`,
  "alarm.heard": ({ visit, at, dueAt }, { step }) =>
    `Alarma atendida: ${step(visit)}${late(at - dueAt)}`,
  "alarm.handed": ({ at, dueAt, to, who }) =>
    `La espera hasta ${dueTime(dueAt, at)} está ${who === undefined ? HANDED[to] : `también vigilada por ${who}`}`,
  "due.moved": ({ visit, dueAt }, { step }) =>
    `${step(visit)} toca ahora ${day(dueAt)}, ${clockTime(dueAt)}`,
  "note.added": ({ text }) => `Nota: ${text}`,
  "clock.shifted": ({ byMs, keepElapsed }) =>
    `El reloj del teléfono fue ${byMs < 0 ? "hacia atrás" : "hacia delante"} ${duration(Math.abs(byMs))}; ${
      keepElapsed ? "las esperas duran lo mismo" : "las horas previstas quedan"
    }`,
  "phone.slept": ({ at, fromMs, forMs }) =>
    `El teléfono estuvo dormido ${duration(forMs)}, desde ${dueTime(fromMs, at)}: aquí nada podía sonar`,
  "event.undone": ({ undoes }, { act }) => `Deshecho: ${act(undoes)}`,
  "run.bottled": ({ bottles, useBy }, { style }) =>
    `Embotellado ${bottles.map(({ count, size }) => `${count} × ${volume(size, style)}`).join(", ")}, caduca ${day(useBy)}`,
  "run.abandoned": ({ reason }) => `Abandonado: ${reason === "" ? "sin motivo dado" : reason}`,
  "taste.noted": ({ by, scores, words }) => tasting.said(by, scores, words),
  "verdict.given": ({ verdict, repeat, text }) =>
    [tasting.verdicts[verdict], tasting.repeats[repeat], ...(text === "" ? [] : [text])].join(", "),
  "tag.added": ({ tag }) => `Marcador puesto: ${tag}`,
  "tag.removed": ({ tag }) => `Marcador quitado: ${tag}`,
  "photo.added": () => "Foto hecha",
  "photo.removed": () => "Foto quitada",
  "stock.poured": ({ count, unit, ml }, { style }) =>
    unit === "ml"
      ? `Servido: ${volume(ml, style)}`
      : `Servido: ${stock.amounts[unit](count)} (${volume(ml, style)})`,
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
  unknownStep: "un paso que esta versión no conoce",
  unknownAct: "algo que ya no está en el registro",
  anUndo: "un deshacer anterior",
  round: (name, round) => (round > 1 ? `${name}, ronda ${round}` : name),
  undone: "deshecho",
  thisPhone: "este teléfono",
  otherPhone: (number) => `teléfono ${number}`,
};
