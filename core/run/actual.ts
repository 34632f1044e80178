import type { Liquid } from "../liquid/liquid.ts";
import { mix } from "../liquid/mixing.ts";
import { type Run, topUpOf } from "./run.ts";
import { clearSoFar, heldBackOf } from "./top-up-advice.ts";

/**
 * What is in the bottle: the measured yield with the spirit that was really poured into it; what
 * the plan expects where something was not measured.
 *
 * @source mass balance: `clearSoFar` and `heldBackOf`
 */
export function actualFinal(run: Run): Liquid {
  const poured = topUpOf(run)?.ml ?? run.plan.heldBackMl;
  return mix([clearSoFar(run), heldBackOf(run, poured)]);
}
