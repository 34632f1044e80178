import { plainLetters } from "../quantity/plain-letters.ts";
import { isWait, type Procedure, type Step, WARM_AT_MOST } from "./procedure.ts";
import { usuallyAfter, usualPath } from "./usual-path.ts";
import { astray, comesWithout } from "./ways.ts";

/** What is wrong with a procedure. Most can be seen at one step. */
export type ProcedureFault =
  | { readonly fault: "no-name" }
  | { readonly fault: "no-steps" }
  | { readonly fault: "no-title"; readonly step: string }
  | { readonly fault: "wait-without-time"; readonly step: string }
  | { readonly fault: "asks-out-of-order"; readonly step: string }
  | { readonly fault: "stop-before-ask"; readonly step: string }
  | { readonly fault: "reading-without-figure"; readonly step: string }
  | { readonly fault: "same-id"; readonly step: string }
  /** One answer leads two ways from the same round on. */
  | { readonly fault: "two-ways"; readonly step: string }
  | { readonly fault: "leads-nowhere"; readonly step: string; readonly to: string }
  /** From here no answer leads to the end any more, sooner or later. */
  | { readonly fault: "endless"; readonly step: string }
  /** No answer of any step before it leads here. */
  | { readonly fault: "unreachable"; readonly step: string }
  /** From here the work goes back to an earlier step even when all goes well. */
  | { readonly fault: "goes-round"; readonly step: string }
  | { readonly fault: "top-up-before-yield"; readonly step: string };

/** What is odd about a procedure, and may be meant. */
export type ProcedureWarning =
  | { readonly warning: "never-bottled" }
  /** Milk is poured or spoken of, and no step says that the batch spoils from there on. */
  | { readonly warning: "milk-not-perishable"; readonly step: string }
  /** Something perishable waits for hours on the counter. */
  | { readonly warning: "warm-for-long"; readonly step: string };

/** Everything found. A procedure without faults can be walked to its end. */
export interface CheckedProcedure {
  readonly faults: readonly ProcedureFault[];
  readonly warnings: readonly ProcedureWarning[];
}

/** Faults of the ways between steps, once every way leads to a step. */
function wayFaults(procedure: Procedure): readonly ProcedureFault[] {
  const { unreachable, endless } = astray(procedure);
  const last = usualPath(procedure).at(-1);
  return procedure.steps.flatMap((step): ProcedureFault[] => {
    const { id } = step;
    if (unreachable.includes(id)) return [{ fault: "unreachable", step: id }];
    if (endless.includes(id)) return [{ fault: "endless", step: id }];
    const round = step === last && usuallyAfter(procedure, step) !== undefined;
    return round ? [{ fault: "goes-round", step: id }] : [];
  });
}

/** Ways that lead to no step. */
function lostWays({ steps }: Procedure): readonly ProcedureFault[] {
  const ids = new Set(steps.map(({ id }) => id));
  return steps.flatMap(({ id, next, branches }) =>
    [...(next === undefined ? [] : [next]), ...branches.map(({ to }) => to)]
      .filter((to) => !ids.has(to))
      .map((to) => ({ fault: "leads-nowhere", step: id, to }) as const),
  );
}

/** Faults of one step by itself. */
function stepFaults(step: Step, titled: (id: string) => boolean): readonly ProcedureFault[] {
  const { id, title, waitFor, askAt = [], longestFor, kind, needs } = step;
  const asks = [...(waitFor === undefined ? [] : [waitFor]), ...askAt];
  const rising = asks.every((ask, at) => at === 0 || ask > (asks[at - 1] ?? 0));
  const stopsLate = longestFor === undefined || longestFor > Math.max(0, ...asks);
  const found: ProcedureFault[] = [];
  if ((title ?? "").trim() === "" && !titled(id)) found.push({ fault: "no-title", step: id });
  if (isWait(step) && waitFor === undefined) found.push({ fault: "wait-without-time", step: id });
  if (!rising) found.push({ fault: "asks-out-of-order", step: id });
  if (!stopsLate) found.push({ fault: "stop-before-ask", step: id });
  if (kind === "reading" && needs === undefined) {
    found.push({ fault: "reading-without-figure", step: id });
  }
  const ways = step.branches.map(({ on, fromRound = 1 }) => `${on} ${fromRound}`);
  if (new Set(ways).size < ways.length) found.push({ fault: "two-ways", step: id });
  return found;
}

/** The spirit is topped up to what came through the filter, so that has to be known by then. */
function topUpFaults(procedure: Procedure): readonly ProcedureFault[] {
  const measured = ({ needs }: Step): boolean => needs === "yield";
  return procedure.steps
    .filter(({ id, needs }) => needs === "top-up" && comesWithout(procedure, id, measured))
    .map(({ id }) => ({ fault: "top-up-before-yield", step: id }) as const);
}

/**
 * Words for what spoils, in English, Spanish and French, without accents. A salt of grapes does not,
 * nor does a French liqueur that is called a crème of something.
 */
const DAIRY = new RegExp(
  `\\b(${[
    "milk|cream(?! of tartar)|butter|yogh?urt|eggs?",
    "leche|nata|crema(?! de)|mantequilla|yogur|huevos?",
    "lait|creme(?! de)|beurre|yaourt|oeufs?",
  ].join("|")})\\b`,
  "u",
);

/** Whether a step pours milk, or speaks of something like it. */
const spoils = ({ work, title = "", detail = "" }: Step): boolean =>
  work === "milk" || DAIRY.test(plainLetters(`${title} ${detail}`));

/** Waits of a perishable on the counter, the usual way; a step that says nothing moves nothing. */
function warmWaits(procedure: Procedure): readonly Step[] {
  const path = usualPath(procedure);
  const from = path.findIndex(({ id }) => id === procedure.perishableFrom);
  let stands: Step["stands"] = "counter";
  return path.filter((step, at) => {
    stands = step.stands ?? stands;
    const { waitFor = 0, longestFor = 0 } = step;
    const long = isWait(step) && Math.max(waitFor, longestFor) >= WARM_AT_MOST;
    return from >= 0 && at >= from && stands === "counter" && long;
  });
}

/** What is odd about a procedure, every way of which leads to a step. */
function warningsOf(procedure: Procedure): readonly ProcedureWarning[] {
  const { steps, perishableFrom } = procedure;
  const bottled = usualPath(procedure).some(({ needs }) => needs === "bottled");
  const spoiling = perishableFrom === undefined ? steps.find(spoils) : undefined;
  return [
    ...(bottled ? [] : [{ warning: "never-bottled" } as const]),
    ...(spoiling === undefined
      ? []
      : [{ warning: "milk-not-perishable", step: spoiling.id } as const]),
    ...warmWaits(procedure).map(({ id }) => ({ warning: "warm-for-long", step: id }) as const),
  ];
}

/**
 * Whether a procedure can be walked to its end whatever is answered, and what is odd about it.
 *
 * @param procedure - as edited; its shape is checked by `procedureSchema`
 * @param titled - whether the catalogue has words for a step, so that it needs none of its own
 * @returns every fault, in the order of its steps; warnings say nothing of whether a drink is safe
 */
export function checkProcedure(
  procedure: Procedure,
  titled: (id: string) => boolean,
): CheckedProcedure {
  const { steps, name = "" } = procedure;
  const ids = steps.map(({ id }) => id);
  const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
  const lost = lostWays(procedure);
  const whole = lost.length === 0 && twice.length === 0 && steps.length > 0;
  const faults: readonly ProcedureFault[] = [
    ...(name.trim() === "" ? [{ fault: "no-name" } as const] : []),
    ...(steps.length === 0 ? [{ fault: "no-steps" } as const] : []),
    ...twice.map((step) => ({ fault: "same-id", step }) as const),
    ...steps.flatMap((step) => stepFaults(step, titled)),
    ...lost,
    ...(whole ? [...wayFaults(procedure), ...topUpFaults(procedure)] : []),
  ];
  return { faults, warnings: whole ? warningsOf(procedure) : [] };
}
