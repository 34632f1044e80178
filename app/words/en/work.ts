/** Verbs are short: they are read from two metres away. */
const verbs: Readonly<Record<string, string>> = {
  build: "Build",
  milk: "Milk in",
  pour: "Pour",
  curdle: "Rest",
  "wet-filter": "Wet filter",
  "first-pass": "First pass",
  "re-pour": "Pour back",
  "check-clear": "Clear?",
  "slow-drip": "Slow drip",
  yield: "Yield",
  "top-up": "Top up",
  bottle: "Bottle",
  label: "Label",
};

/** What every screen may say about work in hand. */
export const work = {
  hints: {
    rest: "Hold",
    short: "Hold longer, until it fills",
    wet: "Wipe the glass and your finger, then hold",
  },
  verbs,
  due: (time: string) => `until ${time}`,
  since: (length: string) => `for ${length}`,
};
