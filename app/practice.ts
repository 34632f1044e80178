/** Runs of the practice, and no others, are called so. */
export const PRACTICE_RUN = "demo-practice-";

/** Whether a run is only practice: it teaches nothing, is never stock, and does not stay. */
export const isPractice = (runId: string): boolean => runId.startsWith(PRACTICE_RUN);
