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
  spec: (specId: string) => `#/spec/${specId}`,
  plan: (specId: string) => `#/plan/${specId}`,
  procedure: (id: string) => `#/procedure/${id}`,
  ingredient: (id: string) => `#/ingredient/${id}`,
  /** The batch is where it leads back to. */
  dim: (runId: string) => `#/dim/${runId}`,
  vessel: (runId: string) => `#/vessel/${runId}`,
  label: (runId: string) => `#/label/${runId}`,
  sum: (id: string) => `#/sums/${id}`,
  sheet: (runId: string) => `#/sheet/${runId}`,
  batch: (runId: string) => `#/batch/${runId}`,
} as const;
