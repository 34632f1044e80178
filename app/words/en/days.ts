const plural = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** What the prep list says. */
export const days = {
  title: "Prep list",
  link: "To the prep list",
  trouble: "The days ahead do not work out as planned.",
  see: "See why",
  empty:
    "Nothing is planned. Plan a batch, say by when it has to be ready, and put it on the prep list: it is worked back from there.",
  toSpecs: "Choose a spec",
  week: "The days ahead",
  dayOf: (hands: string, ready: number) =>
    ready === 0 ? `${hands} of hands` : `${hands} of hands, ${ready} to be ready`,
  free: "nothing planned",
  today: "Today",
  hands: (length: string) => `${length} of hands`,
  nothing: "Nothing to do with hands.",
  window: (from: string, to: string) => `${from}–${to}`,
  readyBy: (name: string, time: string) => `${name} has to be ready ${time}`,
  now: "Do now",
  running: "Being made",
  planned: "Planned",
  startBy: (time: string) => `Start by ${time} at the latest`,
  startNow: "Start it now",
  open: (name: string) => `Open ${name}`,
  openRun: "Open",
  saveReady: "Set ready-by",
  more: "Plan another batch",
  mustBe: (time: string) => `Ready by ${time}`,
  noPromise: "No ready-by: it takes its turn and is never called late.",
  madeFor: (name: string) => `For ${name}`,
  specChanged:
    "Its spec was changed since. It is made as it was planned: plan it again to take the change in.",
  start: (name: string) => `Start ${name}`,
  remove: (name: string) => `Take ${name} off the list`,
  removed: (name: string) => `${name} is off the prep list`,
  setReady: "Set or change ready-by",
  readySet: (time: string) => `Ready-by set to ${time}`,
  late: (name: string, by: string) => `${name} will be ${by} late.`,
  stood: (name: string, step: string, by: string) =>
    `${name}: it stands ${by} too long before “${step}”.`,
  breaks: {
    time: (name: string, by: string) => `There is not enough time: ${name} would be ${by} late.`,
    standing: (name: string, by: string) => `${name} would stand ${by} longer than it may.`,
    more: (what: string, by: string, name: string) =>
      `${what}: ${by} more would be needed. It shows on ${name}.`,
    instead: "Or, in its place:",
    also: "Beside it:",
    least: "The plan below keeps it as small as it can.",
    unsure: "No order that fits was found; there may still be one.",
  },
  resources: {
    person: "Hands",
    "filter-stand": "Filter stands",
    fridge: "Room in the fridge",
    freezer: "Room in the freezer",
    blender: "Blenders",
    burner: "Burners",
  },
  amounts: {
    litres: (value: string) => `${value} litres`,
    count: (value: string) => value,
  },
  moved: {
    title: "Moved since you last looked",
    later: (name: string, step: string, by: string, to: string) =>
      `${name}, from “${step}” on: ${by} later, now ${to}`,
    earlier: (name: string, step: string, by: string, to: string) =>
      `${name}, from “${step}” on: ${by} earlier, now ${to}`,
    because: (name: string, step: string) => `because of ${name}, “${step}”`,
    seen: "I have seen it",
  },
  quiet: {
    title: "Next quiet stretch",
    from: (from: string, to: string) => `${from}–${to}`,
    now: (to: string) => `Nothing has to be done by hand before ${to}.`,
    open: "Nothing more has to be done by hand.",
    openFrom: (from: string) => `From ${from} on.`,
    could: "What fits into it:",
    nothing: "Nothing that is planned fits into it.",
    task: (name: string, step: string, length: string) => `${name}: ${step}, ${length}`,
  },
  parts: {
    title: "Made here first",
    part: (name: string, amount: string) => `${amount} of ${name}`,
    add: "Put these on the prep list too",
    skip: "No, they are there",
    unplanned: (names: string) =>
      `${names}: its own spec could not be planned. Make it as you know, in time.`,
  },
  put: "Put it on the prep list",
  isOn: (count: number) =>
    count === 0 ? "On the prep list." : `On the prep list, with ${plural(count, "part", "parts")}.`,
  room: (people: number, stands: number, hours: string) =>
    `${plural(people, "pair of hands", "pairs of hands")}, ${plural(stands, "filter stand", "filter stands")}, somebody in ${hours}`,
  always: "at all hours",
  changeRoom: "Change it in Kit",
  guess:
    "Five minutes for each thing done by hand; an infusion to its longest; a drip by its volume until it is read.",
  toHand: "Hand it over",
  print: "Print it",
  noPrint: "This browser cannot print. Share the calendar file, or copy the list by hand.",
  calendar: "Calendar file",
  calendarDetail: "Worked back from ready-by. The batch's own alarms come first.",
  waits: (name: string, step: string) => `${name}: ${step} goes on`,
};
