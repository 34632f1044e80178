import type { Draft, RunEvent, Stamp } from "../../../core/run/event.ts";
import { clockTime, day, duration, type VolumeStyle, volume } from "../format.ts";

/** What the wording of an event needs to know beside the event. */
export interface EventAbout {
  readonly style: VolumeStyle;
  /** The name of a step, for a visit. */
  readonly step: (visit: string) => string;
  /** The name of an ingredient, for a line of the plan. */
  readonly line: (lineId: string) => string;
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
};

function measuredValue({ value, unit }: EventMap["reading.logged"], style: VolumeStyle): string {
  switch (unit) {
    case "ml":
      return volume(value, style);
    case "g":
      return `${value} g`;
    case "degC":
      return `${value} °C`;
    case "count":
      return String(value);
  }
}

const HANDED: Readonly<Record<EventMap["alarm.handed"]["to"], string>> = {
  "phone-clock": "also set in the phone's clock",
  person: "also watched by somebody",
  vessel: "also written on the vessel",
};

const late = (ms: number): string => (ms < 1500 ? "" : `, ${duration(ms)} after it was due`);

const sayings: Sayings = {
  "run.started": ({ batch, plan, appVersion }, { style }) =>
    `Started ${batch}: ${plan.spec.name}, ${volume(plan.finalMl, style)} planned. App version ${appVersion}.`,
  "step.started": ({ visit }, { step }) => `Step begun: ${step(visit)}`,
  "step.finished": ({ visit }, { step }) => `Step finished: ${step(visit)}`,
  "line.poured": ({ line }, about) => `In the vessel: ${about.line(line)}`,
  "reading.logged": (event, { style }) => `${READINGS[event.what]}: ${measuredValue(event, style)}`,
  "look.noted": ({ look }) => `It ran ${look}`,
  "run.repoured": ({ ml }, { style }) => `Cloudy run poured back: ${volume(ml, style)}`,
  "yield.logged": ({ ml }, { style }) => `Yield measured: ${volume(ml, style)}`,
  "topup.poured": ({ ml, planned, advised }, { style }) =>
    `Topped up with ${volume(ml, style)} (planned ${volume(planned, style)}, advised ${volume(advised, style)})`,
  "alarm.heard": ({ visit, at, dueAt }, { step }) =>
    `Alarm answered: ${step(visit)}${late(at - dueAt)}`,
  "alarm.handed": ({ dueAt, to }) => `The wait until ${clockTime(dueAt)} is ${HANDED[to]}`,
  "due.moved": ({ visit, dueAt }, { step }) =>
    `${step(visit)} is now due ${day(dueAt)}, ${clockTime(dueAt)}`,
  "note.added": ({ text }) => `Note: ${text}`,
  "clock.shifted": ({ byMs, keepElapsed }) =>
    `The phone's clock moved ${byMs < 0 ? "back" : "on"} by ${duration(Math.abs(byMs))}; ${
      keepElapsed ? "waits kept their length" : "due times stayed"
    }`,
  "event.undone": ({ undoes }, { act }) => `Taken back: ${act(undoes)}`,
  "run.bottled": ({ bottles, useBy }, { style }) =>
    `Bottled ${bottles.map(({ count, size }) => `${count} × ${volume(size, style)}`).join(", ")}, use by ${day(useBy)}`,
  "run.abandoned": ({ reason }) => `Given up: ${reason === "" ? "no reason given" : reason}`,
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
  unknownStep: "a step this version does not know",
  unknownAct: "something no longer in the log",
  anUndo: "an earlier taking back",
  round: (name: string, round: number) => (round > 1 ? `${name}, round ${round}` : name),
  undone: "taken back",
  thisPhone: "this phone",
  otherPhone: (number: number) => `phone ${number}`,
};
