import type { NextReading } from "../../../core/method/drip/next-reading.ts";
import type { FilterShape } from "../../../core/spec/spec.ts";

/** A figure that no line end parts from its unit. */
const whole = (figure: string): string => figure.replaceAll(" ", "\u00a0");

const shapes: Readonly<Record<FilterShape, string>> = {
  cone: "A cone",
  straight: "Straight walls",
  "topped-up": "Kept full",
  unknown: "Don't know",
};

const looked: Readonly<Record<FilterShape, string>> = {
  cone: "The filter hangs in a cone",
  straight: "The filter hangs in a straight vessel",
  "topped-up": "The filter is kept full",
  unknown: "Nobody knows how the filter hangs",
};

/** Why it is worth the walk. */
const next: Readonly<Record<NextReading["why"], (time: string) => string>> = {
  narrows: (time) => `Read again about ${time}: that narrows it most.`,
  "is-it-clogging": (time) => `Read again about ${time}, to see whether the filter blinds.`,
  "nearly-through": (time) => `Look again about ${time}: another reading before tells little.`,
};

/** What the slow drip says: its forecast, its drawing, and what was weighed or asked. */
export const drip = {
  shape: "What does the filter hang in?",
  shapes,
  looked,
  forecast: {
    none: "Two readings make a forecast. Read what stands in the vessel, without squeezing.",
    second: (time: string) => `A second reading makes the forecast. It helps most about ${time}.`,
    secondNow: "A second reading makes the forecast. Take it now.",
    next,
    nextNow: "Read it again now.",
    through: (share: string, time: string) => `${share} through about ${time}`,
    reached: (share: string, time: string) => `${share} through since about ${time}`,
    between: (early: string, late: string) => `8 in 10 times between ${early} and ${late}`,
    never: (share: string) => `At this pace it may never get to ${share}: a time would be a guess.`,
    // Common practice, no source: a fresh paper, the curd lifted over whole. No claim beyond that.
    help: "What helps: a fresh, wetted filter. Lift the curd over whole; do not scrape or squeeze.",
    blinding: {
      suspected: (rate: string, promised: string) =>
        `The filter may be blinding: ${rate} an hour, where ${promised} was expected. Read again soon.`,
      yes: (rate: string, promised: string) =>
        `The filter is blinding: ${rate} an hour, where ${promised} was expected.`,
    },
  },
  chart: {
    title: "The drip",
    now: "now",
    key: "Dots: readings. Line: what fits them. Hatched: 8 in 10 times.",
    keyOut: "Crosses: readings left out.",
    told: (count: number, last: string, time: string) =>
      `${count === 1 ? "One reading" : `${count} readings`}, the last ${last} at ${time}.`,
    ahead: (share: string, amount: string, time: string, early: string, late: string) =>
      `${share}, ${amount}, about ${time}, 8 in 10 times between ${early} and ${late}.`,
    reached: (share: string, amount: string) => `${share}, ${amount}, is reached.`,
    unending: (share: string, amount: string) => `${share}, ${amount}, may never be reached.`,
    table: "Readings and forecast of the drip",
    time: "Time",
    amount: "Collected",
    what: "What",
    read: "read",
    leftOut: "read, left out",
    likely: (early: string, late: string) => `expected, ${early} to ${late}`,
  },
  weigh: {
    how: "How it is measured",
    volume: "Volume",
    weight: "Weight",
    unit: "g",
    tare: {
      "cloudy-run": "The cloudy run's vessel, empty",
      "clear-run": "The vessel under the drip, empty",
    },
    tareLast: (weight: string) => `${weight} last time`,
    tareHint: "0 where the scale was set to zero with it.",
    gross: "With its vessel",
    vesselIs: (weight: string) => `Vessel ${weight}`,
    net: (gross: string, tare: string, net: string, amount: string) =>
      `${whole(gross)} − ${whole(tare)} = ${whole(net)}, that is ${whole(amount)}`,
    other: "Other vessel",
    backSign: "‹",
    tareIs: (weight: string) => `Vessel: ${weight} empty`,
  },
  pass: {
    cloudy: (amount: string, count: number) =>
      `Cloudy run poured back: ${amount} in ${count === 1 ? "1 pass" : `${count} passes`}`,
    running: (amount: string) => `About ${amount} has come through since`,
    usually: (time: string, passes: number, batches: number, low: string, high: string) =>
      `Usually clear after about ${time}, ${passes === 1 ? "1 pass" : `${passes} passes`} (${batches} batches, mostly ${low === high ? low : `${low} to ${high}`})`,
    learnt: (wait: string, batches: number) =>
      `It asks after ${wait}: learnt from ${batches} batches here.`,
  },
};
