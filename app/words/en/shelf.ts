const days = (count: number): string => (count === 1 ? "1 day" : `${count} days`);

/** What the Shelf says. */
export const shelf = {
  title: "Shelf",
  empty:
    "Nothing is bottled yet. When a batch is bottled it stands here, the earliest use-by first.",
  toBench: "See what is being made",
  count: (batches: number, past: number) =>
    `${batches === 1 ? "1 batch" : `${batches} batches`}${past > 0 ? `, ${past} past use-by` : ""}`,
  useBy: (date: string) => `Use by ${date}`,
  left: (count: number) => `${days(count)} left`,
  lastDay: "last day today",
  past: "past use-by: discard",
  ago: (count: number) => (count === 0 ? "earlier today" : `${days(count)} ago`),
  bottle: (count: number, size: string) => `${count} × ${size}`,
  all: (total: string) => `${total} in all`,
  label: "Label",
  labelOf: (batch: string) => `Label of ${batch}`,
  log: "Log",
  logOf: (batch: string) => `Log of ${batch}`,
  note: "Dates are the house's rule, the day of making being day 1. Follow your local code.",
};
