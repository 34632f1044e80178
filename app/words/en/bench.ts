/** What the Bench says. */
export const bench = {
  title: "Bench",
  empty:
    "Nothing is being made. Choose a spec, plan a batch, and start it: it stands here, and calls when it wants you.",
  toSpecs: "Choose a spec",
  start: "Start a batch",
  prepList: "Prep list",
  now: "now",
  read: "Note a reading",
  waitsFor: "waiting for you",
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
  waitsOnBench: (what: string) => `Heard. ${what} waits on the Bench.`,
  others: (count: number) => (count === 1 ? "and 1 more" : `and ${count} more`),
  status: {
    "rings-here": "Rings here. Keep this screen on.",
    "rings-here-and-phone-clock": "Rings here, and you set the phone's alarm too.",
    "rings-here-and-person": "Rings here, and somebody watches it too: you said so.",
    "rings-here-and-vessel": "Rings here, and it is written on the vessel.",
    "rings-here-and-several": "Rings here, and each wait is watched another way too.",
    "phone-clock": "May not ring here. You set the phone's own alarm.",
    person: "May not ring here. Somebody watches it: you said so.",
    several: "May not ring here. Each wait is watched another way: you said so.",
    "no-bell": "A part is missing, so nothing rings. Close the app fully and open it again.",
    "out-of-sight": "Out of sight: it rings when you come back.",
    "no-sound": "This browser has no sound. Set the phone's own alarm.",
    "sound-blocked": "Silent until you tap the screen.",
    "sound-unheard": "Sound not checked yet: do it in Kit.",
    "sound-check-old": "Sound checked over 12 h ago: check again in Kit.",
    "screen-lock-refused": "The screen may sleep: keep it on, or it rings late.",
    "screen-lock-absent": "The screen may sleep: keep it on, or it rings late.",
  },
  checkSound: "Check the sound",
};
