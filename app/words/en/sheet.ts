import { degrees, degreesBare, degreesTyped } from "../degrees.ts";
import { degreeSign } from "../house-units.ts";
/** What the control sheet of a batch says. */
export const sheet = {
  title: "Control sheet",
  batch: "Batch",
  spec: "Spec",
  started: "Started",
  ended: "Ended",
  running: "still running",
  useBy: "Use by",
  get warm() {
    return `Time above ${degrees(5)}`;
  },
  none: "none counted",
  steps: "Steps",
  from: "From",
  to: "To",
  by: "By",
  temperatures: "Temperatures",
  lots: "Lots",
  lotUseBy: (date: string) => `use by ${date}`,
  earliest: (date: string) =>
    `The earliest date among the lots is ${date}: a mixed drink is kept no longer than that.`,
  hands: "Hands",
  empty: "Nothing noted.",
  get addTemperature() {
    return `Temperature now, ${degreeSign()}`;
  },
  noteTemperature: "Note the temperature",
  /** Degrees C. */
  temperatureFault: (low: number, high: number) =>
    `Type a temperature from ${degreesBare(low)} to ${degreesBare(high)}, such as ${degreesTyped(4.5)}.`,
  addLot: "Lot number on the pack",
  lotOf: "Lot of",
  lotDate: "Days until its use-by date, if it has one",
  lotDateHint: "0 for today. Leave empty where there is none.",
  lotDateFault: "Type a whole number of days from 0 to 3650, or leave it empty.",
  noteLot: "Note the lot",
  lotFault: "Type the lot number first.",
  addHands: "Initials",
  noteHands: "Take it over",
  handsFault: "Type one to eight letters.",
  noted: "Noted",
  print: "Print",
  cautions:
    "This sheet lists what was noted here. It does not say that a drink is safe: your local code and people licensed to judge decide.",
  toRun: "Back to the batch",
};
