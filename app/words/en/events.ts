import type { Draft, RunEvent, Stamp, Weighed } from "../../../core/run/event.ts";
import { degreesRead } from "../degrees.ts";
import { clockTime, day, dueTime, duration, mass, type VolumeStyle, volume } from "../format.ts";
import { isLate } from "../how-late.ts";
import { drip } from "./drip.ts";
import { stock } from "./stock.ts";
import { tasting } from "./tasting.ts";

/** What the wording of an event needs to know beside the event. */
export interface EventAbout {
  readonly style: VolumeStyle;
  /** The name of a step, for a visit. */
  readonly step: (visit: string) => string;
  /** The name of an ingredient, for a line of the plan. */
  readonly line: (lineId: string) => string;
  /** The name of an ingredient that the plan is made of, for its id. */
  readonly ingredient: (id: string) => string;
  /** What an act did, in words, for an undo. */
  readonly act: (act: string) => string;
}

type EventMap = { readonly [D in Draft as D["type"]]: Stamp & D };
type Sayings = {
  readonly [Type in keyof EventMap]: (event: EventMap[Type], about: EventAbout) => string;
};

const READINGS: Readonly<Record<EventMap["reading.logged"]["what"], string>> = {
  milk: "Milk measured",
  "cloudy-run": "Cloudy run measured",
  collected: "Collected so far",
  yield: "Yield measured",
  "top-up": "Top-up measured",
  bottled: "Bottled",
  temperature: "Temperature",
  brix: "°Brix read",
};

type ReadingSaid = Pick<EventMap["reading.logged"], "what" | "value" | "unit"> & {
  readonly weighed?: Weighed | undefined;
};

function measuredValue({ value, unit }: ReadingSaid, style: VolumeStyle): string {
  switch (unit) {
    case "ml":
      return volume(value, style);
    case "g":
      return `${value} g`;
    case "degC":
      return degreesRead(value);
    case "count":
      return String(value);
    case "brix":
      return `${value} °Bx`;
  }
}

/** A volume that came off a scale says so. */
const ofWeight = ({ weighed }: { readonly weighed?: Weighed | undefined }): string =>
  weighed === undefined
    ? ""
    : ` (weighed: ${mass(weighed.gross)} − ${mass(weighed.tare)} = ${mass(weighed.gross - weighed.tare)})`;

const readingWords = (one: ReadingSaid, style: VolumeStyle): string =>
  `${READINGS[one.what]}: ${measuredValue(one, style)}${ofWeight(one)}`;

const LOOKS: Readonly<Record<EventMap["look.noted"]["look"], string>> = {
  clear: "It ran clear",
  hazy: "It ran hazy",
  cloudy: "It ran cloudy",
  "not-yet": "Tasted: not yet",
  right: "Tasted: right",
  "too-far": "Tasted: too far",
  "finer-filter": "Would not clear: a finer filter",
  "cold-rest": "Would not clear: a cold rest",
  accept: "Would not clear: accepted as it is",
};

const STANDS: Readonly<Record<EventMap["vessel.moved"]["to"], string>> = {
  counter: "on the counter",
  fridge: "in the fridge",
  freezer: "in the freezer",
};

const EMPTY: Readonly<Record<EventMap["tare.noted"]["vessel"], string>> = {
  "cloudy-run": "The cloudy run's vessel",
  "clear-run": "The vessel under the drip",
};

const HANDED: Readonly<Record<EventMap["alarm.handed"]["to"], string>> = {
  "phone-clock": "also set in the phone's alarms",
  person: "also watched by somebody",
  vessel: "also written on the vessel",
};

const late = (ms: number): string => (isLate(ms) ? `, ${duration(ms)} after it was due` : "");

const sayings: Sayings = {
  "run.started": ({ batch, plan, appVersion }, { style }) =>
    `Started ${batch}: ${plan.spec.name}, ${volume(plan.finalMl, style)} planned. App version ${appVersion}.`,
  "step.started": ({ visit }, { step }) => `Step started: ${step(visit)}`,
  "step.finished": ({ visit }, { step }) => `Step finished: ${step(visit)}`,
  "line.poured": ({ line }, about) => `In the vessel: ${about.line(line)}`,
  "reading.logged": (event, { style }) => readingWords(event, style),
  "look.noted": ({ look }) => LOOKS[look],
  "run.paused": () => "Paused: its alarms are silent, its waits go on",
  "run.resumed": () => "Resumed",
  "ready.set": ({ by }) => `To be ready ${day(by)}, ${clockTime(by)}`,
  "vessel.moved": ({ to }) => `Put ${STANDS[to]}`,
  "hands.changed": ({ initials }) => `Taken over by ${initials}`,
  "lot.noted": ({ ingredient, lot, useBy }, about) =>
    `Lot of ${about.ingredient(ingredient)}: ${lot}${useBy === undefined ? "" : `, use by ${day(useBy)}`}`,
  "run.repoured": (event, { style }) =>
    `Cloudy run poured back: ${volume(event.ml, style)}${ofWeight(event)}`,
  "yield.logged": (event, { style }) =>
    `${event.settles ? "The yield that counts" : "Yield measured"}: ${volume(event.ml, style)}${ofWeight(event)}`,
  "tare.noted": ({ vessel, grams }) => `${EMPTY[vessel]} weighed empty: ${mass(grams)}`,
  "shape.noted": ({ shape }) => drip.looked[shape],
  "topup.poured": ({ ml, planned, advised }, { style }) =>
    `Topped up with ${volume(ml, style)} (planned ${volume(planned, style)}, advised ${volume(advised, style)})`,
  "alarm.heard": ({ visit, at, dueAt }, { step }) =>
    `Alarm answered: ${step(visit)}${late(at - dueAt)}`,
  "alarm.handed": ({ at, dueAt, to, who }) =>
    `The wait until ${dueTime(dueAt, at)} is ${who === undefined ? HANDED[to] : `also watched by ${who}`}`,
  "due.moved": ({ visit, dueAt }, { step }) =>
    `${step(visit)} is now due ${day(dueAt)}, ${clockTime(dueAt)}`,
  "note.added": ({ text }) => `Note: ${text}`,
  "clock.shifted": ({ byMs, keepElapsed }) =>
    `The phone's clock moved ${byMs < 0 ? "back" : "on"} by ${duration(Math.abs(byMs))}; ${
      keepElapsed ? "waits kept their length" : "due times stayed"
    }`,
  "phone.slept": ({ at, fromMs, forMs }) =>
    `The phone was asleep ${duration(forMs)}, from ${dueTime(fromMs, at)}: nothing could ring here`,
  "event.undone": ({ undoes }, { act }) => `Taken back: ${act(undoes)}`,
  "run.bottled": ({ bottles, useBy }, { style }) =>
    `Bottled ${bottles.map(({ count, size }) => `${count} × ${volume(size, style)}`).join(", ")}, use by ${day(useBy)}`,
  "run.abandoned": ({ reason }) => `Given up: ${reason === "" ? "no reason given" : reason}`,
  "taste.noted": ({ by, scores, words }) => tasting.said(by, scores, words),
  "verdict.given": ({ verdict, repeat, text }) =>
    [tasting.verdicts[verdict], tasting.repeats[repeat], ...(text === "" ? [] : [text])].join(", "),
  "tag.added": ({ tag }) => `Tagged: ${tag}`,
  "tag.removed": ({ tag }) => `Tag taken off: ${tag}`,
  "photo.added": () => "Photo taken",
  "photo.removed": () => "Photo removed",
  "stock.poured": ({ count, unit, ml }, { style }) =>
    unit === "ml"
      ? `Poured out: ${volume(ml, style)}`
      : `Poured out: ${stock.amounts[unit](count)} (${volume(ml, style)})`,
  "stock.ended": ({ how, reason }) => stock.ended(how, reason),
};

function saying<Type extends keyof EventMap>(
  type: Type,
  event: EventMap[Type],
  about: EventAbout,
): string {
  return sayings[type](event, about);
}

/** What happened, in words, for the log of a batch. */
export const events = {
  of: (event: RunEvent, about: EventAbout): string => saying(event.type, event, about),
  reading: readingWords,
  unknownStep: "a step this version does not know",
  unknownAct: "something no longer in the log",
  anUndo: "an earlier taking back",
  round: (name: string, round: number) => (round > 1 ? `${name}, round ${round}` : name),
  undone: "taken back",
  thisPhone: "this phone",
  otherPhone: (number: number) => `phone ${number}`,
};
