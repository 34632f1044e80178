import { accepted, type Result, refused } from "../quantity/result.ts";
import { MINUTE } from "../quantity/time-units-table.ts";
import { ANSWERS, type Procedure, type Step } from "./procedure.ts";
import { usuallyAfter } from "./usual-path.ts";

/** A copy that a house can change: its own name, its first version. */
export const copyProcedure = (procedure: Procedure, id: string, name: string): Procedure => ({
  ...procedure,
  id,
  name,
  version: 1,
});

/** What a new step is: the rest is typed. */
export type NewStep = "by-hand" | "timed" | "look" | "taste" | "reading";

/** Laid out plainly: the other kinds of work speak of curd and drip. */
const NEW_STEPS: Readonly<Record<NewStep, Omit<Step, "id">>> = {
  "by-hand": { kind: "hands-on", work: "other", branches: [] },
  timed: {
    kind: "timed-wait",
    work: "other",
    waitFor: 60 * MINUTE,
    askEvery: 15 * MINUTE,
    branches: [],
  },
  look: {
    kind: "watched-wait",
    work: "other",
    asks: "look",
    waitFor: MINUTE,
    askEvery: MINUTE,
    branches: [],
  },
  taste: {
    kind: "watched-wait",
    work: "other",
    asks: "taste",
    waitFor: 10 * MINUTE,
    askEvery: 10 * MINUTE,
    longestFor: 60 * MINUTE,
    branches: [],
  },
  reading: { kind: "reading", work: "other", needs: "temperature", branches: [] },
};

/** An id that no step has. */
function freeId(steps: readonly Step[]): string {
  const taken = new Set(steps.map(({ id }) => id));
  let number = steps.length + 1;
  while (taken.has(`own-${number}`)) number += 1;
  return `own-${number}`;
}

/**
 * The same procedure with a new step in it, to be given its title.
 *
 * @param at - how many steps stand before it, from 0
 * @returns the procedure, and the id of the new step
 */
export function addStep(
  procedure: Procedure,
  at: number,
  what: NewStep,
): { readonly procedure: Procedure; readonly id: string } {
  const id = freeId(procedure.steps);
  const step: Step = { id, ...NEW_STEPS[what] };
  return { procedure: { ...procedure, steps: procedure.steps.toSpliced(at, 0, step) }, id };
}

/** Whether a step asks, and each answer has a way of its own from the first round on. */
export const everyAnswerLed = ({ asks, branches }: Step): boolean =>
  asks !== undefined &&
  ANSWERS[asks].every((answer) =>
    branches.some(({ on, fromRound = 1 }) => on === answer && fromRound === 1),
  );

/** Whether a step goes on to whatever stands below it. */
const fallsThrough = (step: Step): boolean => step.next === undefined && !everyAnswerLed(step);

/** A step whose ways to a removed one lead to what followed that, or to the end. */
function redirected(step: Step, gone: string, follower: string | undefined): Step {
  const { next, ...rest } = step;
  const branches = step.branches.flatMap((branch) => {
    if (branch.to !== gone) return [branch];
    return follower === undefined ? [] : [{ ...branch, to: follower }];
  });
  const goal = next === gone ? follower : next;
  return { ...rest, branches, ...(goal === undefined ? {} : { next: goal }) };
}

const leadsTo = ({ next, branches }: Step, id: string): boolean =>
  next === id || branches.some(({ to }) => to === id);

/**
 * The same procedure without a step: what led to it leads to what came after it when all went well.
 *
 * @returns refused for the only step, and for the last one while a step further up leads straight to
 *   it: nothing would say any more that the work is over there. `about.by` is the id of that step
 */
export function removeStep(
  procedure: Procedure,
  id: string,
): Result<Procedure, "only-step" | "step-is-led-to"> {
  const { steps, perishableFrom, ...same } = procedure;
  const at = steps.findIndex((step) => step.id === id);
  const step = steps[at];
  if (step === undefined) return accepted(procedure);
  const rest = steps.toSpliced(at, 1);
  if (rest.length === 0) return refused("only-step");
  const after = usuallyAfter(procedure, step)?.id;
  const follower = after === id ? steps[at + 1]?.id : after;
  const by = rest.slice(0, -1).find((one) => leadsTo(one, id));
  if (follower === undefined && by !== undefined) return refused("step-is-led-to", { by: by.id });
  const before = steps[at - 1];
  const kept = rest.map((one) => {
    const led = redirected(one, id, follower);
    // What simply went on to it would otherwise go on to whatever stands there now.
    const lost = one === before && fallsThrough(one) && follower !== steps[at + 1]?.id;
    return lost && follower !== undefined ? { ...led, next: follower } : led;
  });
  const from = perishableFrom === id ? follower : perishableFrom;
  return accepted({
    ...same,
    steps: kept,
    ...(from === undefined ? {} : { perishableFrom: from }),
  });
}

/**
 * The same procedure with a step one place up or down.
 *
 * @returns the very same procedure where there is no place to go to
 */
export function moveStep(procedure: Procedure, id: string, by: -1 | 1): Procedure {
  const { steps } = procedure;
  const at = steps.findIndex((step) => step.id === id);
  const step = steps[at];
  const to = at + by;
  if (step === undefined || to < 0 || to >= steps.length) return procedure;
  return { ...procedure, steps: steps.toSpliced(at, 1).toSpliced(to, 0, step) };
}

/** The same procedure with something about a step changed; what is given as undefined goes. */
export function changeStep(
  procedure: Procedure,
  id: string,
  change: { readonly [Field in keyof Omit<Step, "id">]?: Step[Field] | undefined },
): Procedure {
  const steps = procedure.steps.map((step): Step => {
    if (step.id !== id) return step;
    const changed = { ...step, ...change };
    const { kind = step.kind, work = step.work, branches = step.branches } = change;
    const kept = Object.entries(changed).filter(([, value]) => value !== undefined);
    return { ...Object.fromEntries(kept), id, kind, work, branches };
  });
  return { ...procedure, steps };
}
