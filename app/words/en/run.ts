const done: Readonly<Record<string, string>> = {
  build: "All in",
  pour: "It is poured",
  curdle: "The rest is over",
  curdleEarly: "End the rest early",
  "wet-filter": "The filter is wet",
  "first-pass": "It runs clear",
  "slow-drip": "It has stopped",
  label: "Labelled: to the Shelf",
};

/** What the run screen says. Verbs are short: they are read from two metres away. */
export const run = {
  stepOf: (at: number, of: number) => `Step ${at} of ${of}`,
  round: (n: number) => `again, round ${n}`,
  details: {
    build: "Measure each into one vessel. Tick it when it is in.",
    milk: (amount: string, weight: string) =>
      `Measure ${amount} (${weight}) cold milk into the big vessel.`,
    pourPunchIntoMilk: (amount: string) =>
      `Pour the punch (${amount}) slowly into the milk. Fold once, gently.`,
    pourMilkIntoPunch: (amount: string) =>
      `Pour the milk slowly into the punch (${amount}). Fold once, gently.`,
    curdle: "Let the curd settle. Do not stir it again.",
    filter: (count: number) =>
      count === 1
        ? "Wet the filter, let it drain, set a vessel under it."
        : `Wet ${count} filters, let them drain, set a vessel under each.`,
    firstPass: "Pour it all onto the filter. Wait until the drip runs clear.",
    rePour: "Swap the vessel. Pour the cloudy run gently back over the curd. How much was it?",
    checkClear: "Watch the drip from the curd bed. What do you see?",
    slowDrip: "Leave it to drip, cold and covered. Do not squeeze or scrape.",
    yield: (expected: string, low: string, high: string) =>
      `Measure all that came through. Expected ${expected}, or ${low} to ${high}.`,
    bottle: "Fill clean bottles. Count them.",
    label: "Put the label on every bottle.",
  },
  done,
  missing: (count: number) =>
    count === 1 ? "1 ingredient is not ticked" : `${count} ingredients are not ticked`,
  asPlanned: (amount: string) => `${amount} is in`,
  otherAmount: "Another amount",
  typeAmount: "Type the amount",
  backToStep: "Back to the step",
  lookDone: {
    clear: "It is clear",
    hazy: "Hazy: pour back again",
    cloudy: "Cloudy: pour back again",
  },
  passes: (count: number) => (count === 1 ? "Poured back once" : `Poured back ${count} times`),
  askAt: (time: string) => `asks at ${time}`,
  askedAt: (time: string) => `asked at ${time}`,
  overdue: (late: string) => `${late} late`,
  collected: "Log a reading",
  collectedSoFar: (amount: string, share: string) =>
    `${amount} so far, ${share} of what is expected`,
  noneCollected: "Nothing logged yet",
  pads: {
    milk: "Milk in the vessel",
    "cloudy-run": "Cloudy run poured back",
    collected: "Collected so far",
    yield: "Everything that came through",
    "top-up": "Spirit poured in",
  },
  unit: "ml",
  ozUnit: "oz",
  erase: "Erase",
  mark: "Decimal point",
  take: "Note it",
  topUp: {
    pour: (amount: string) => `Pour in ${amount} of the held-back spirit.`,
    planned: "Planned",
    now: "Now",
    fixed: "The spec asks for a fixed top-up, whatever came through.",
    proportion: (share: string) =>
      `${share} of the expected yield came through, so the spirit follows in the same proportion.`,
    strength: (share: string, abv: string) =>
      `${share} of the expected yield came through. This much brings it to ${abv}.`,
    same: "The yield came in as planned, so the top-up stays as planned.",
    none: "Nothing was held back for this spec.",
    beyond: (amount: string) =>
      `${amount} more than was held back: open another bottle for the rest.`,
    refused: (abv: string) =>
      `The target strength cannot be reached with this spirit. The planned amount makes ${abv}.`,
    result: (abv: string) => `In the bottle: ${abv}`,
    nothing: "Nothing to pour: go on",
  },
  bottle: {
    size: "Bottle size",
    count: "Bottles filled",
    fewer: "One bottle fewer",
    more: "One bottle more",
    total: (filled: string, there: string) => `${filled} filled of about ${there}`,
    useBy: "Use by",
    earlier: "A day earlier",
    later: "A day later",
    useByNote:
      "House rule, day of making counts as day 1. Follow your local code, and an earlier date on the milk.",
    done: (count: number) => (count === 1 ? "1 bottle filled" : `${count} bottles filled`),
  },
  did: "Done",
  saved: "Saved.",
  undone: "Taken back",
  collectedIs: (amount: string) => `${amount} collected`,
  finished: "Finished",
  stopped: "Stopped",
  ended: "This batch is finished. It stands on the Shelf, and its log in the Logbook.",
  abandonedBecause: (reason: string) => `Abandoned: ${reason}`,
  toShelf: "Shelf",
  toLog: "Its log",
  seeLabel: "See and print the label",
  toLabel: "Its label",
  abandon: "Abandon this batch",
  abandonSure: "Say why; its log is kept.",
  abandonReasons: [
    "Milk went off",
    "Curd did not form",
    "Filter blocked",
    "Spilt",
    "Started by mistake",
  ],
  abandonDone: "Abandon",
  more: "More",
  less: "Less",
  undoLast: "Take back the last step",
  handOver: (time: string) => `Also set the phone's own clock for ${time}`,
  handedOver: (time: string) => `In the phone's clock for ${time}: you said so`,
  handDone: "It is set in the phone's clock",
};
