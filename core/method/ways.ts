import { ANSWERS, type Outcome, type Procedure, type Step, stepAfter } from "./procedure.ts";

/** What a step leads to: the id of another, or nothing for the end. */
type Goal = string | undefined;
type Ways = ReadonlyMap<Goal, ReadonlySet<Goal>>;

/** What a step may lead to in some rounds, whatever is answered. */
function goalsIn(procedure: Procedure, step: Step, rounds: readonly number[]): ReadonlySet<Goal> {
  const { id, asks } = step;
  const answers: readonly (Outcome | undefined)[] =
    asks === undefined ? [undefined] : ANSWERS[asks];
  return new Set(
    rounds.flatMap((round) => answers.map((one) => stepAfter(procedure, id, one, round)?.id)),
  );
}

/** The rounds from which a step leads somewhere else than before, the first one always. */
const roundsOf = ({ branches }: Step): readonly number[] => [
  1,
  ...branches.map(({ fromRound = 1 }) => fromRound),
];

/** Everything that can be come to from somewhere, what it starts from included. */
function comeTo(from: readonly Goal[], ways: Ways): Set<Goal> {
  const found = new Set<Goal>();
  const waiting = [...from];
  while (waiting.length > 0) {
    const goal = waiting.pop();
    if (found.has(goal)) continue;
    found.add(goal);
    waiting.push(...(ways.get(goal) ?? []));
  }
  return found;
}

function turned(ways: Ways): Ways {
  const back = new Map<Goal, Set<Goal>>();
  for (const [from, goals] of ways) {
    for (const goal of goals) back.set(goal, (back.get(goal) ?? new Set()).add(from));
  }
  return back;
}

/** Ids of the steps that can be come to a second time: only these see a second round. */
function repeated({ steps }: Procedure, ways: Ways): ReadonlySet<Goal> {
  const again = steps.filter(({ id }) => comeTo([...(ways.get(id) ?? [])], ways).has(id));
  return new Set(again.map(({ id }) => id));
}

function allWays(procedure: Procedure): Ways {
  const { steps } = procedure;
  const mapped = (rounds: (step: Step) => readonly number[]): Ways =>
    new Map(steps.map((step) => [step.id, goalsIn(procedure, step, rounds(step))]));
  const again = repeated(procedure, mapped(roundsOf));
  return mapped((step) => (again.has(step.id) ? roundsOf(step) : [1]));
}

/** Ways once every step that can be come to again has been passed often enough. */
function lateWays(procedure: Procedure, ways: Ways): Ways {
  const again = repeated(procedure, ways);
  return new Map(
    procedure.steps.map((step) => {
      const last = again.has(step.id) ? Math.max(...roundsOf(step)) : 1;
      return [step.id, goalsIn(procedure, step, [last])];
    }),
  );
}

/** Steps that a walk through a procedure cannot do without, or cannot leave. */
export interface Astray {
  /** Ids of steps to which no answer of any step before them leads. */
  readonly unreachable: readonly string[];
  /** Ids of steps from which no answer leads to the end any more, sooner or later. */
  readonly endless: readonly string[];
}

/**
 * The steps of a procedure that go astray.
 *
 * @param procedure - every way of which leads to a step
 * @throws RangeError when a way leads to none
 * @source reachability: from the first step forwards over all answers and rounds; from the end back
 *   over the ways that are left in late rounds, since whoever answers so as to come nearer to the end
 *   runs out of early rounds
 * @limits a branch from a round that its loop is left before may count as a way all the same
 */
export function astray(procedure: Procedure): Astray {
  const { steps } = procedure;
  const ways = allWays(procedure);
  const reached = comeTo([steps[0]?.id], ways);
  const ending = comeTo([undefined], turned(lateWays(procedure, ways)));
  const ids = steps.map(({ id }) => id);
  return {
    unreachable: ids.filter((id) => !reached.has(id)),
    endless: ids.filter((id) => reached.has(id) && !ending.has(id)),
  };
}

/**
 * Whether some walk comes to a step without having passed another.
 *
 * @param to - the step in question
 * @param without - whether a step is one that should have been passed
 * @throws RangeError when a way leads to no step
 */
export function comesWithout(
  procedure: Procedure,
  to: string,
  without: (step: Step) => boolean,
): boolean {
  const ways = new Map(allWays(procedure));
  for (const step of procedure.steps) if (without(step)) ways.set(step.id, new Set());
  return comeTo([procedure.steps[0]?.id], ways).has(to);
}
