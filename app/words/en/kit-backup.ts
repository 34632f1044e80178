import { decimals } from "../format.ts";

const many = (count: number): string => decimals(count, 0);
const entries = (count: number): string => (count === 1 ? "1 entry" : `${many(count)} entries`);
const batches = (count: number): string => (count === 1 ? "1 batch" : `${many(count)} batches`);

/** What is said of making a backup. */
export const backup = {
  title: "Backup",
  why: "Everything is kept on this phone only: if the phone is lost, so is the log. Save a copy after every batch.",
  make: "Save everything as one file",
  download: "Save it to downloads",
  shared: (name: string) => `${name} was handed to the share sheet.`,
  saved: (name: string) => `${name} is in the browser's downloads.`,
  dismissed: "The share sheet was closed, so nothing was saved.",
  writing: (done: number, all: number) => `Writing: ${many(done)} of ${entries(all)}.`,
  leaveNot: "Stay on this page until it is done.",
  giveUp: "Stop",
  ready: "The file is ready.",
  handOn: "Share the file",
  never: "No backup has been made on this phone yet.",
  last: (when: string) => `Last backup: ${when}.`,
  dueEnded: (count: number, ever: boolean) =>
    ever
      ? `${batches(count)} ended since the last backup.`
      : `${batches(count)} ended, and no backup has been made on this phone yet.`,
  dueEntries: (count: number, ever: boolean) =>
    ever
      ? `${entries(count)} added since the last backup.`
      : `${entries(count)} so far, and no backup has been made on this phone yet.`,
  toKit: "To Backup, in Kit",
};

/** What is said of bringing one in. */
export const restore = {
  title: "Bring a backup in",
  pick: "Backup file",
  hint: "A file this app saved, from this phone or another. Nothing is added before you say so, and nothing here is overwritten.",
  reading: "Reading the file…",
  readingOf: (done: number, all: number) => `Reading: ${many(done)} of ${entries(all)}.`,
  adding: (done: number, all: number) => `Adding: ${many(done)} of ${entries(all)}.`,
  beginsAdding: "Adding…",
  settling: (done: number, all: number) =>
    `Added. Working out the batches: ${many(done)} of ${many(all)}.`,
  fresh: (count: number) => `${entries(count)} new to this phone`,
  known: (count: number) => `${entries(count)} already here, left as they are`,
  left: (count: number) =>
    count === 1 ? "1 line left out: keep the file" : `${many(count)} lines left out: keep the file`,
  leftTitle: "Lines left out",
  line: (number: number, why: string) => `Line ${many(number)}: ${why}`,
  more: (count: number) => `and ${many(count)} more`,
  startless: (count: number) =>
    `${batches(count)} without a beginning, in the file or here: kept, and shown once the beginning is brought in too`,
  missing: (lines: number, found: number) =>
    `This file is damaged: it should hold ${entries(lines)}, and ${many(found)} ${found === 1 ? "is" : "are"} there. Look for a whole copy first.`,
  altered: "This file was altered after it was saved. Look for an unaltered copy first.",
  useRest: "Use what can be read",
  nothing: "There is nothing in it that this phone lacks.",
  add: (count: number) => `Add ${entries(count)}`,
  added: (count: number) => `${entries(count)} added.`,
};

/** What is said of tables for a spreadsheet, and in them. */
export const table = {
  title: "For a spreadsheet",
  why: "Tables to work with elsewhere. They are no backup: they cannot be brought in again.",
  batches: "Batches for a spreadsheet",
  readings: "Readings for a spreadsheet",
  writing: (done: number, all: number) => `Writing: ${many(done)} of ${batches(all)}.`,
  batchHeads: {
    batch: "Batch",
    spec: "Spec",
    procedure: "Procedure",
    started: "Started",
    ended: "Ended",
    how: "How it ended",
    reason: "Reason",
    punch: "Punch ml",
    milk: "Dairy ml",
    poured: "Poured in ml",
    yield: "Yield ml",
    share: "Yield %",
    expected: "Expected yield ml",
    expectedShare: "Expected yield %",
    passes: "Poured back, times",
    clearedAfter: "Ran clear after min",
    strengthPlanned: "Strength planned % ABV",
    strength: "Strength % ABV",
    sugarPlanned: "Sugar planned g/L",
    sugar: "Sugar g/L",
    acidPlanned: "Acid planned g/L",
    acid: "Acid g/L",
    topUpPlanned: "Top-up planned ml",
    topUp: "Top-up ml",
    bottled: "Bottled",
    bottles: "Bottles",
    bottledMl: "Bottled ml",
    useBy: "Use by",
    pour: "Serve ml",
    ingredients: "Ingredients",
    tags: "Tags",
  },
  readingHeads: {
    batch: "Batch",
    spec: "Spec",
    time: "Time",
    step: "Step",
    round: "Round",
    what: "What",
    value: "Value",
    unit: "Unit",
    look: "Look or taste",
    gross: "Weighed g",
    tare: "Empty vessel g",
    phone: "Phone",
  },
  words: {
    finished: "finished",
    abandoned: "given up",
    milk: "dairy",
    "cloudy-run": "cloudy run",
    collected: "collected",
    yield: "yield",
    "top-up": "top-up",
    bottled: "bottled",
    temperature: "temperature",
    brix: "°Brix",
    "poured-back": "poured back",
    seen: "look",
    cloudy: "cloudy",
    hazy: "hazy",
    clear: "clear",
    "not-yet": "not yet",
    right: "right",
    "too-far": "too far",
    "finer-filter": "finer filter",
    "cold-rest": "cold rest",
    accept: "accepted",
  },
};
