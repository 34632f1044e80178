import { measuredYield, openVisit, type Run, stepOfVisit, topUpOf } from "../run/run.ts";
import { collectedSoFar, milkPoured, mostInVessel, passesOf } from "../run/wash-progress.ts";
import { punchMeasuredOut } from "../spec/plan-use.ts";

/** What a band of the glass holds. */
export type BandLook = "milk" | "curd" | "cloudy" | "hazy" | "clear" | "spirit" | "punch";

/** The glass of a run: what is in it now, from the bottom up, as shares of its height. */
export interface Glass {
  readonly bands: readonly { readonly look: BandLook; readonly share: number }[];
  /** Where the clear liquid is expected to reach, with its interval. */
  readonly line?: { readonly share: number; readonly low: number; readonly high: number };
}

/** The brim stands a little above everything that is poured in. */
const HEADROOM = 1.08;

const punchMl = (run: Run): number => mostInVessel(run) - milkPoured(run);

/** Clear liquid after the wash: as measured, or as the plan expects. ml */
const clearMl = (run: Run): number =>
  measuredYield(run) ?? run.plan.yield?.expected ?? mostInVessel(run);

const spiritMl = (run: Run): number => topUpOf(run)?.ml ?? run.plan.heldBackMl;

/** The glass is as tall as the most it holds at any step. */
function fullOf(run: Run): number {
  const most = Math.max(
    mostInVessel(run),
    clearMl(run) + spiritMl(run),
    collectedSoFar(run) ?? 0,
    run.plan.yield?.high ?? 0,
    1,
  );
  return most * HEADROOM;
}

function lineOf(run: Run, full: number): Glass["line"] {
  const expected = run.plan.yield;
  if (expected === undefined) return undefined;
  return { share: expected.expected / full, low: expected.low / full, high: expected.high / full };
}

/** While the punch is built: as many of its lines as are in, each counted once. */
function builtMl(run: Run): number {
  const within = new Set(run.poured.map((one) => one.line));
  const inMl = run.plan.lines.reduce(
    (sum, line) => sum + (within.has(line.lineId) ? line.before.ml : 0),
    0,
  );
  const allMl = punchMeasuredOut(run.plan);
  return allMl > 0 ? (inMl / allMl) * punchMl(run) : 0;
}

/** While it drips: clear below as far as was read, the curd still soaked above it. */
function dripping(run: Run, full: number, look: "hazy" | "clear"): Glass["bands"] {
  const collected = collectedSoFar(run) ?? 0;
  const left = Math.max(0, mostInVessel(run) - collected);
  return [
    { look, share: collected / full },
    { look: "curd", share: left / full },
  ];
}

function bandsOf(run: Run, full: number): Glass["bands"] {
  const visit = openVisit(run);
  const work = visit === undefined ? "done" : stepOfVisit(run, visit).work;
  const milk = milkPoured(run) / full;
  const punch = punchMl(run) / full;
  switch (work) {
    case "build":
      return [{ look: "punch", share: builtMl(run) / full }];
    case "milk":
      return [{ look: "punch", share: punch }];
    case "pour":
      return [{ look: "milk", share: milk }];
    case "rest":
    case "filter":
      return [
        { look: "curd", share: milk },
        { look: "cloudy", share: punch },
      ];
    case "pass":
    case "re-pour":
      return passesOf(run) === 0
        ? [{ look: "cloudy", share: milk + punch }]
        : dripping(run, full, "hazy");
    case "drip":
      return dripping(run, full, "clear");
    case "yield":
      // An unwashed drink has no curd to be measured clear of.
      return run.plan.milk === undefined
        ? [{ look: "punch", share: punch }]
        : dripping(run, full, "clear");
    case "steep":
    case "strain":
    case "chill":
    case "stir":
    case "brix":
      return [{ look: "punch", share: punch }];
    default:
      return [
        { look: "clear", share: clearMl(run) / full },
        { look: "spirit", share: (topUpOf(run)?.ml ?? 0) / full },
      ];
  }
}

/**
 * What the glass of a run shows now.
 *
 * @param run - as its log tells it
 * @returns bands from the bottom up, those that hold something; shares of the glass's height, together
 *   below 1
 * @limits a picture, not a measure: curd and what it still holds are one band
 */
export function glassOf(run: Run): Glass {
  const full = fullOf(run);
  const bands = bandsOf(run, full).filter((band) => band.share > 0);
  const line = lineOf(run, full);
  return line === undefined ? { bands } : { bands, line };
}
