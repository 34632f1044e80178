/** Addresses of the app, all after the #. */
export const routes = {
  bench: "#/bench",
  specs: "#/specs",
  shelf: "#/shelf",
  logbook: "#/logbook",
  kit: "#/kit",
  cupboard: "#/cupboard",
  sums: "#/sums",
  run: (runId: string) => `#/run/${runId}`,
  spec: (specId: string) => `#/spec/${specId}`,
  plan: (specId: string) => `#/plan/${specId}`,
  ingredient: (id: string) => `#/ingredient/${id}`,
  label: (runId: string) => `#/label/${runId}`,
  sum: (id: string) => `#/sums/${id}`,
  sheet: (runId: string) => `#/sheet/${runId}`,
  batch: (runId: string) => `#/batch/${runId}`,
} as const;
