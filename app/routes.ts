/** Addresses of the app, all after the #. */
export const routes = {
  bench: "#/bench",
  specs: "#/specs",
  shelf: "#/shelf",
  logbook: "#/logbook",
  kit: "#/kit",
  cupboard: "#/cupboard",
  sums: "#/sums",
  days: "#/days",
  procedures: "#/procedures",
  run: (runId: string) => `#/run/${runId}`,
  /** The same, with the pad for a reading of the drip open. */
  read: (runId: string) => `#/read/${runId}`,
  spec: (specId: string) => `#/spec/${specId}`,
  plan: (specId: string) => `#/plan/${specId}`,
  procedure: (id: string) => `#/procedure/${id}`,
  /** By its id, or the errand that is to be done there. */
  ingredient: (id: string) => `#/ingredient/${encodeURIComponent(id)}`,
  /** The batch is where it leads back to. */
  dim: (runId: string) => `#/dim/${runId}`,
  vessel: (runId: string) => `#/vessel/${runId}`,
  label: (runId: string) => `#/label/${runId}`,
  sum: (id: string) => `#/sums/${id}`,
  hand: (what: string) => `#/hand/${what}`,
  sheet: (runId: string) => `#/sheet/${runId}`,
  batch: (runId: string) => `#/batch/${runId}`,
  /** Two to four batches; one alone stands beside its plan. */
  compare: (runIds: readonly string[]) => `#/compare/${runIds.join("~")}`,
  /** One drink in several services. */
  services: (specId: string) => `#/services/${specId}`,
  learnt: "#/learnt",
  learntOf: (specId: string) => `#/learnt/${specId}`,
} as const;
