/** What a wait says of everything else that watches it. */
export const handOver = {
  leaving: "If you leave this screen, nothing here rings.",
  asks: (length: string) => `This wait takes ${length}. What else watches it?`,
  answer: "Say what",
  which: "What else watches it",
  ways: { "phone-clock": "Phone's alarm", person: "Somebody", vessel: "Vessel" },
  others: "Other ways",
  fewer: "Fewer ways",
  setClock: (time: string) => `Also set the phone's own alarm for ${time}`,
  clockDone: "The phone's alarm is set",
  whoWatches: "Who watches it",
  anotherName: "Other initials",
  personDone: (who: string) => `${who} watches it`,
  nobody: "Choose who watches it",
  write: "Write on it, large:",
  vesselDone: "It is written on the vessel",
  printLabel: "Print a label",
  told: {
    "phone-clock": (time: string) => `The phone's alarm is set for ${time}: you said so`,
    person: (time: string, who: string) => `${who} watches it until ${time}: you said so`,
    vessel: (time: string) => `On the vessel, until ${time}: you said so`,
  },
  somebody: "Somebody",
  calendar: "Calendar file",
  calendarNote: "A calendar gives one short sign at most: some calendars drop the alarm.",
  calendarEntry: (name: string, verb: string) => `${name}: ${verb}`,
  calendarDetail: (batch: string) => `${batch}. Look at it now.`,
  calendarFailed: "The calendar file could not be made. Set the phone's own alarm.",
  calendarSaved: "It is in the browser's downloads: open it there.",
  dim: "Dim",
};

/** What the dim face says while it waits. */
export const dim = {
  title: "Dim",
  leave: "Tap anywhere to leave",
  others: (count: number) => (count === 1 ? "and 1 more waits" : `and ${count} more wait`),
  none: "Nothing waits",
};

/** What the label of a vessel says. */
export const vessel = {
  title: "Label for the vessel",
  card: "Label for the vessel",
  due: "Due",
  since: (when: string) => `Since ${when}`,
  keep: { fridge: "Keep cold", freezer: "Keep frozen" },
  watched: "Watched by",
  otherPaper: "Other paper, PDF or picture",
  byHand: "No printer? Write this on it, large:",
  line: (batch: string, verb: string, when: string) => `${batch} · ${verb} · ${when}`,
  print: "Print",
  cannotPrint: "This browser cannot print. Write it by hand.",
  moves: "The due time is that of now: where it moves, write the new one over it.",
  none: "This batch waits for nothing now, so there is no label for its vessel.",
  back: "Back to the batch",
};
