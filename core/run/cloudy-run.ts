import { openVisit, type RePour, type Run, stepOfVisit, type Visit } from "./run.ts";
import { mostInVessel } from "./wash-progress.ts";

/** The cloudy run so far. */
export interface CloudyRun {
  /** How often it was poured back. */
  readonly passes: number;
  /** All that was poured back, pass by pass, ml. */
  readonly pouredBackMl: number;
  /** What has come through since the last pour, ml, by how fast the pass before ran. */
  readonly runningMl?: number;
}

const isPass = (run: Run, visit: Visit): boolean => stepOfVisit(run, visit).work === "pass";

/** One pour a visit: two phones that both noted it mean the same one, and the later word counts. */
const poursOf = (run: Run): readonly RePour[] => [
  ...new Map(run.rePours.map((pour) => [pour.visit, pour])).values(),
];

/** ml per ms of a pass that was poured back: what came through while it ran. */
function rateOf(run: Run, pour: RePour): number | undefined {
  const at = run.visits.findIndex((visit) => visit.key === pour.visit);
  const ran = run.visits.slice(0, Math.max(0, at)).findLast((visit) => isPass(run, visit));
  const took = (ran?.finishedAt ?? 0) - (ran?.startedAt ?? 0);
  return ran !== undefined && took > 0 ? pour.ml / took : undefined;
}

/**
 * How much cloudy run there is and was.
 *
 * @param run - as its log tells it
 * @param now - epoch ms
 * @source the running pass: rate of the pass before, times the time since; judgement
 * @limits the bed thickens and each pass runs slower, so it comes to less; never more than the vessel
 *   holds
 */
export function cloudyRunOf(run: Run, now: number): CloudyRun {
  const pours = poursOf(run);
  const pouredBackMl = pours.reduce((sum, { ml }) => sum + ml, 0);
  const sofar = { passes: pours.length, pouredBackMl };
  const visit = openVisit(run);
  const last = pours.at(-1);
  const rate = last && rateOf(run, last);
  if (visit === undefined || rate === undefined || !isPass(run, visit)) return sofar;
  const gone = Math.max(0, now - visit.startedAt);
  return { ...sofar, runningMl: Math.min(rate * gone, mostInVessel(run)) };
}
