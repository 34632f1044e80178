import { degrees } from "../degrees.ts";
import { degreeSign } from "../house-units.ts";

const plural = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** What the list of procedures says. */
export const procedures = {
  title: "Procedures",
  why: "How things are made here, step by step. A batch keeps the procedure it was started with, whatever is changed later.",
  own: "Your own",
  ownNone: "None yet. Copy one of those below and make it yours.",
  shipped: "Every house has",
  sum: (steps: number, length: string) => `${plural(steps, "step", "steps")}, about ${length}`,
  sumAtLeast: (steps: number, length: string) =>
    `${plural(steps, "step", "steps")}, ${length} at least`,
  usedBy: (names: string) => `Used by ${names}`,
  open: (name: string) => `Open ${name}`,
  openIt: "Open",
  copy: "Copy",
  copyOf: (name: string) => `Copy ${name}`,
  copyName: (name: string) => `${name}, ours`,
  toSpecs: "All specs",
};

/** What the form of one procedure says. */
export const procedure = {
  toAll: "All procedures",
  lost: "This procedure is no longer there. It may have been removed in another window.",
  shipped: "This one comes with the app and stays as it is. Copy it to change it.",
  name: "Name",
  perishable: "Perishable from",
  perishableNone: "No step: nothing in it spoils",
  get perishableHint() {
    return `From this step on the time above ${degrees(5)} is counted. Your local code comes first.`;
  },
  steps: "Steps",
  at: (number: number, title: string) => `${number}. ${title}`,
  kinds: {
    "hands-on": "by hand",
    "timed-wait": "wait",
    "watched-wait": "watched wait",
    reading: "reading",
  },
  up: "Up",
  upName: (title: string) => `Move ${title} up`,
  down: "Down",
  downName: (title: string) => `Move ${title} down`,
  change: "Change",
  changeName: (title: string) => `Change ${title}`,
  remove: (title: string) => `Remove ${title}`,
  /** Why a step is not taken out. */
  keeps: {
    "only-step": () => "A procedure needs a step. Add another first, then remove this one.",
    "step-is-led-to": (by: string) =>
      `“${by}” leads straight to this last step. Let it lead to another first, then remove this one.`,
  },
  addAt: (title: string) => `Add a step after ${title}`,
  add: "Add a step",
  addFirst: "Add a step before all others",
  addWhat: "What kind of step?",
  newSteps: {
    "by-hand": { label: "Something done by hand", detail: "" },
    timed: { label: "A wait of a set length", detail: "rings when it is over" },
    look: { label: "A wait that is looked at", detail: "ends on clear, hazy or cloudy" },
    taste: { label: "A wait that is tasted", detail: "ends when it is right" },
    reading: { label: "A reading", detail: "ends on a figure" },
  },
  newTitle: "New step",
  title: "What it is called",
  titleHint: (usual: string) => `Usually “${usual}”`,
  titleNone: "Two words at most: it is read from two metres away.",
  detail: "What to do",
  detailHint: "One or two sentences. Left empty, the usual ones stand there.",
  waitFor: "How long",
  firstAsk: "Asks first after",
  askAt: "Then at",
  askAtHint: "From its start, with commas between: 24 h, 30 h",
  askEvery: "Asks again every",
  longestFor: "Stopped at the latest after",
  handsFor: "Hands for",
  handsHint: "Usually 5 min",
  optional: "Left empty for none",
  stands: "Where the vessel stands",
  standing: { "": "Wherever it is", counter: "Counter", fridge: "Fridge", freezer: "Freezer" },
  needs: "What is read",
  readings: {
    milk: "Milk, measured in",
    "cloudy-run": "Cloudy run, poured back",
    collected: "Collected so far",
    yield: "Yield",
    "top-up": "Held-back spirit, topped up",
    bottled: "Bottles filled",
    get temperature() {
      return `Temperature, ${degreeSign()}`;
    },
    brix: "°Brix",
  },
  uses: "Keeps busy",
  usesNone: "none",
  fewer: (what: string) => `${what}: one fewer`,
  moreOf: (what: string) => `${what}: one more`,
  resources: {
    person: "People",
    "filter-stand": "Filter stands",
    blender: "Blenders",
    burner: "Burners",
  },
  asks: "What is asked",
  asked: { "": "Nothing: somebody ends it", look: "How it looks", taste: "How it tastes" },
  next: "Goes on with",
  nextUsual: "The step after it",
  nextOther: "Every other answer goes on with",
  wayUsual: "No way of its own",
  leads: (answer: string) => `“${answer}” leads to`,
  laterWay: (answer: string, round: number) => `“${answer}”, from round ${round} on`,
  wayAnswer: "Answer",
  wayRound: "From round",
  wayTo: "Leads to",
  wayAdd: "Another way from a later round on",
  wayRemove: "Remove this way",
  wayRemoveName: (answer: string, round: number) =>
    `Remove the way of “${answer}” from round ${round} on`,
  answers: {
    clear: "Clear",
    hazy: "Hazy",
    cloudy: "Cloudy",
    "not-yet": "Not yet",
    right: "Right",
    "too-far": "Too far",
    "finer-filter": "Finer filter",
    "cold-rest": "Cold rest",
    accept: "Accept it",
  },
  timeFault: "Type a length of time, such as 45 min, 12 h or 2 days; up to 90 days.",
  timesFault: "Type lengths of time with commas between, such as 24 h, 30 h.",
  faults: {
    "no-name": "Give the procedure a name, so that a spec can ask for it.",
    "no-steps": "Add a step: a procedure needs one.",
    "no-title": "Give this step a name: two words that say what to do.",
    "wait-without-time": "Say how long this waits, or after how long it first asks.",
    "asks-out-of-order": "Each time it asks has to be later than the one before.",
    "stop-before-ask": "It has to be stopped later than it last asks.",
    "reading-without-figure": "Choose what is read here.",
    "same-id": "Two steps go by the same name inside. Remove one and add it again.",
    "two-ways": "One answer leads two ways from the same round on. Remove one of them.",
    "leads-nowhere": "One of its answers leads to a step that is gone. Choose another.",
    endless: "From here nothing ever leads to the end: one way has to lead on.",
    unreachable: "Nothing leads here. Remove it, or let a step before it lead to it.",
    "goes-round":
      "Even when all goes well, the work goes back from here and round again. A good answer has to lead on.",
    "top-up-before-yield": "The top-up follows the yield: put a yield reading before it.",
  },
  warnings: {
    "never-bottled": () =>
      "No step counts the bottles, so the batch will not stand on the Shelf or have a label.",
    "milk-not-perishable": (title: string) =>
      `Milk goes in at “${title}”. Say under “Perishable from” that it spoils, so that its time above ${degrees(5)} is counted.`,
    "warm-for-long": (title: string) =>
      `At “${title}” something perishable stands on the counter for 4 hours or more. Keep it cold, and follow your local code.`,
  },
  save: "Save",
  saved: (version: string) => `Saved, version ${version}.`,
  changed: "Changes not saved. They stay in this form until they are.",
  notYet: "Not saved yet. It stays in this form until it is.",
  faultCount: (count: number) =>
    count === 1 ? "One thing is missing: see above." : `${count} things are missing: see above.`,
  more: "More",
  copyIt: "Copy it",
  forget: "Drop my changes",
  removeAll: "Remove this procedure",
  removeDetail: "Batches made by it keep their own copy.",
  removed: (name: string) => `${name} was removed.`,
  inUse: (names: string) =>
    `${names} is made by it. Choose another procedure there first, then remove this one.`,
};
