import { degrees, degreesBare } from "../degrees.ts";

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

const steps: Readonly<Record<string, string>> = {
  rescue: "Three passes and still not clear. What now?",
  finer: "Set a fresh, finer paper, wetted, and lift the curd bed onto it.",
  get "cold-rest"() {
    return `Covered, at ${degreesBare(2)} to ${degrees(4)}, without moving it.`;
  },
  rack: "Draw the clear liquid off the sediment without stirring it up.",
  steep: "Covered. Taste when it asks; strain when it is right.",
  "strain-mesh": "Strain through mesh. Do not press.",
  "strain-paper": "Then through wetted paper.",
  melt: "Melt the fat until just liquid, away from flames. Pour it into the spirit and shake.",
  mingle: "Leave it covered; shake now and then.",
  freeze: "Into the freezer.",
  "lift-fat": "Break the hard fat and lift it off cold.",
  skins: "Peel the skins without pith onto the sugar, and press them together.",
  "draw-oil": "Covered, until the sugar is wet with oil.",
  stir: "Stir until everything is dissolved.",
  cool: "Cool it before reading: a warm reading reads wrong.",
  brix: "Read the °Brix at room temperature.",
  correct: "Too thin: add sugar. Too thick: add water. Note what you added.",
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
    steps,
    measureAll: "Measure all there is.",
    bottle: "Fill clean bottles. Count them.",
    label: "Put the label on every bottle.",
  },
  done,
  missing: (count: number) =>
    count === 1 ? "1 ingredient is not ticked" : `${count} ingredients are not ticked`,
  asPlanned: (amount: string) => `${amount} is in`,
  otherAmount: "Another amount",
  typeAmount: "Type the amount",
  typeFigure: "Type the figure",
  backToStep: "Back to the step",
  outcomes: {
    clear: "It is clear",
    hazy: "Hazy: pour back again",
    cloudy: "Cloudy: pour back again",
    right: "It is right",
    "not-yet": "Not yet: taste later",
    "too-far": "Too far: stop now",
    "finer-filter": "Finer filter",
    "cold-rest": "Cold rest, then rack",
    accept: "Accept it as it is",
  },
  /** For a look that leads somewhere else than back over the curd. */
  plainLooks: { clear: "It is clear", hazy: "It is hazy", cloudy: "It is cloudy" },
  lastTasted: (time: string) => `Tasted last at ${time}`,
  stopBy: (time: string) => `Stop by ${time}, whatever it tastes like`,
  askAt: (time: string) => `asks at ${time}`,
  askedAt: (time: string) => `asked at ${time}`,
  overdue: (late: string) => `${late} late`,
  collected: "Note a reading",
  collectedSoFar: (amount: string, share: string) =>
    `${amount} so far, ${share} of what is expected`,
  noneCollected: "Nothing noted yet",
  around: {
    stands: "Where it stands",
    standing: { counter: "Counter", fridge: "Fridge", freezer: "Freezer" },
    pause: "Pause: silence its alarms",
    resume: "Resume: its alarms ring again",
    paused: "Paused",
    resumed: "Resumed",
    pausedSince: (time: string) =>
      `Paused since ${time}. Its alarms are silent; what waits goes on waiting.`,
  },
  warm: {
    within: (length: string) => `Above ${degrees(5)} for ${length}`,
    near: (length: string, full: string) =>
      `Above ${degrees(5)} for ${length}: 4 h is reached at ${full}. Chill it. Follow your local code.`,
    nearCold: (length: string) =>
      `It was above ${degrees(5)} for ${length}. Keep it cold. Follow your local code.`,
    past: (length: string) =>
      `Above ${degrees(5)} for ${length}, more than 4 h. Your local code decides whether it may be kept.`,
  },
  pads: {
    milk: "Milk in the vessel",
    "cloudy-run": "Cloudy run poured back",
    collected: "Collected so far",
    yield: "Everything that came through",
    "top-up": "Spirit poured in",
    brix: "°Brix read",
    temperature: "Temperature read",
  },
  unit: "ml",
  ozUnit: "oz",
  brixUnit: "°Bx",
  below: "Below 0",
  belowName: "Below zero",
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
      `The target strength cannot be reached with this spirit. This amount makes ${abv}.`,
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
  pressAgain: "Press once more now, or keep the key down.",
  wet: {
    ask: "Wet hands?",
    means: "One giant button for each step",
    all: "Back to all",
  },
  undone: "Taken back",
  collectedIs: (amount: string) => `${amount} collected`,
  finished: "Finished",
  stopped: "Stopped",
  ended: "This batch is finished. It stands on the Shelf, and its record in the Logbook.",
  abandonedBecause: (reason: string) => `Given up: ${reason}`,
  toShelf: "Shelf",
  toLog: "Its record",
  toSheet: "Control sheet",
  seeLabel: "See and print the label",
  toLabel: "Its label",
  toHand: "Hand it to another phone",
  abandon: "Give this batch up",
  abandonSure: "Say why; its log is kept.",
  abandonReasons: [
    "Milk went off",
    "Curd did not form",
    "Filter blocked",
    "Spilt",
    "Started by mistake",
  ],
  abandonDone: "Give it up",
  more: "More",
  less: "Less",
  undoLast: "Take back the last step",
};
