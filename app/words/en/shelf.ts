import type { StockEnd, StockUnit } from "../../../core/run/event.ts";

const days = (count: number): string => (count === 1 ? "1 day" : `${count} days`);
const serves = (count: number): string => (count === 1 ? "1 serve" : `${count} serves`);

const units: Readonly<Record<"serves" | "bottles", string>> = {
  serves: "serves",
  bottles: "bottles",
};

const pourWays: Readonly<Record<StockUnit, string>> = {
  serves: "Serves",
  bottles: "Bottles",
  ml: "Measured",
};

const endWays: Readonly<Record<StockEnd, string>> = {
  spent: "All gone",
  discarded: "Discarded",
};

/** The first is the one for what is past its use-by. */
const reasons: readonly string[] = [
  "past its use-by",
  "tastes off",
  "gone cloudy",
  "spilt or broken",
  "for another reason",
];

/** What the Shelf says. */
export const shelf = {
  title: "Shelf",
  empty:
    "Nothing is bottled now. Each bottled batch stands here, the earliest use-by first. It shows what is left, and when to make the next.",
  count: (batches: number, past: number) =>
    `${batches === 1 ? "1 batch" : `${batches} batches`}${past > 0 ? `, ${past} past use-by` : ""}`,
  useBy: (date: string) => `Use by ${date}`,
  left: (count: number) => `${days(count)} left`,
  lastDay: "last day today",
  past: "past use-by: discard",
  ago: (count: number) => (count === 0 ? "earlier today" : `${days(count)} ago`),
  bottle: (count: number, size: string) => `${count} × ${size}`,
  serves: (count: number) => `${serves(count)} left`,
  of: (left: string, total: string) => `${left} of ${total}`,
  label: "Label",
  labelOf: (batch: string) => `Label of ${batch}`,
  log: "Record",
  logOf: (batch: string) => `Record of ${batch}`,
  note: "Dates are the house's rule, the day of making being day 1. What is left is what was noted. Follow your local code.",
  more: (count: number) => `Show more (${count})`,
  pour: {
    begin: "Pour out",
    open: (batch: string) => `Pour out of ${batch}`,
    how: "Counted in",
    ways: pourWays,
    units,
    label: (batch: string) => `Poured or served of ${batch}`,
    leaves: (amount: string, left: number) => `${amount}; leaves ${serves(left)}`,
    more: (amount: string, left: string) => `${amount} is more than is left by the log (${left})`,
    take: "Note it",
    done: (amount: string) => `${amount} poured out`,
  },
  end: {
    begin: "Off the shelf",
    open: (batch: string) => `Take ${batch} off the shelf`,
    how: "What became of it?",
    ways: endWays,
    why: "Why?",
    reasons,
    take: "Take it off the shelf",
  },
  over: {
    ask: (amount: string) =>
      `${amount} more was noted than was bottled. Is it all gone, or is one entry wrong?`,
    gone: "It is all gone",
    look: "Look for the wrong one",
  },
  goneTitle: "Off the shelf this week",
  forgotten: {
    title: "Long past use-by",
    says: (count: number) =>
      count === 1
        ? "One batch is two weeks or more past its use-by, and nobody took it off the shelf."
        : `${count} batches are two weeks or more past their use-by, and nobody took them off the shelf.`,
    show: "Show them",
    hide: "Hide them",
  },
  next: {
    title: "What to make next",
    lasts: (when: string) => `Lasts until about ${when}.`,
    out: "None is left.",
    startBy: (when: string) => `Start the next batch by ${when}.`,
    startNow: "Start the next batch now.",
    rate: (perDay: number, evenings: number, of: number) =>
      `About ${serves(perDay < 10 ? Math.round(perDay * 10) / 10 : Math.round(perDay))} a day: an estimate from ${evenings} evenings in ${of} days that were noted here.`,
    doing: {
      planned: "The next batch is on the prep list.",
      made: "The next batch is being made.",
    },
    put: "Onto the prep list",
    noSpec: "Its spec cannot be planned any more: it was removed, or lacks an ingredient.",
    note: "Hours in which nobody works are not counted here; the prep list counts them.",
  },
};
