/** What the Bench says. */
export const bench = {
  title: "Bench",
  empty: "Nothing is being made. Choose a spec, plan a batch, and start it: it will stand here.",
  toSpecs: "Choose a spec",
  start: "Start a batch",
  now: "now",
  waitsFor: "waiting for you",
  late: (length: string) => `${length} late`,
  left: "left",
  running: (count: number) => (count === 1 ? "1 batch running" : `${count} batches running`),
  column: (name: string, what: string) => `${name}: ${what}`,
  bands: {
    milk: "milk",
    curd: "curd",
    cloudy: "cloudy",
    hazy: "hazy",
    clear: "clear",
    spirit: "spirit",
    punch: "punch",
    empty: "empty",
  },
};

/** What an alarm says when it rings, and the one line that tells whether it will. */
export const alarm = {
  heard: "I am here",
  lateBy: (length: string) => `${length} late`,
  dueNow: "due now",
  others: (count: number) => (count === 1 ? "and 1 more" : `and ${count} more`),
  status: {
    "rings-here": "Rings here. Keep this screen on.",
    "rings-here-and-phone-clock": "Rings here, and you set the phone's clock too.",
    "phone-clock": "Will not ring here for sure. You set the phone's own clock.",
    "out-of-sight": "Out of sight: it rings when you come back.",
    "no-sound": "This browser has no sound. Set the phone's own clock.",
    "sound-blocked": "Silent until you tap the screen.",
    "sound-unheard": "Sound not checked yet: do it in Kit.",
    "sound-check-old": "Sound checked over 12 h ago: check again in Kit.",
    "screen-lock-refused": "The screen may sleep: keep it on, or it rings late.",
    "screen-lock-absent": "The screen may sleep: keep it on, or it rings late.",
  },
  ifLeft: "If you leave this screen, nothing rings: set the phone's clock.",
  jumped: (by: string) => `The phone's clock moved by ${by}.`,
  jumpAsk: "Was time really lost, or did only the clock change?",
  jumpKeep: "Only the clock changed: keep the waits as long as they were",
  jumpTrust: "The new time is right: keep the due times as they are",
};
