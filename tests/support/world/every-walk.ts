import { ANSWERS, type Procedure, type Step, stepAfter } from "../../../core/method/procedure.ts";

/** Where somebody stands, and how often those steps were passed whose ways go by rounds. */
interface At {
  readonly id: string;
  readonly rounds: Readonly<Record<string, number>>;
}

const keyOf = ({ id, rounds }: At): string =>
  `${id} ${JSON.stringify(Object.entries(rounds).sort())}`;

const lastRound = (step: Step | undefined): number =>
  Math.max(1, ...(step?.branches ?? []).map(({ fromRound = 1 }) => fromRound));

/** Where every answer leads from there; nothing stands for the end. */
function answered(procedure: Procedure, { id, rounds }: At): readonly (At | undefined)[] {
  const step = procedure.steps.find((one) => one.id === id);
  const last = lastRound(step);
  const round = Math.min(last, (rounds[id] ?? 0) + 1);
  const then = last === 1 ? rounds : { ...rounds, [id]: round };
  const answers = step?.asks === undefined ? [undefined] : ANSWERS[step.asks];
  return answers.map((answer) => {
    const next = stepAfter(procedure, id, answer, round);
    return next && { id: next.id, rounds: then };
  });
}

/**
 * Every walk through a procedure, by trying every answer in every round.
 *
 * @returns the steps that somebody comes to, and whether somebody can come where no answer leads out
 */
export function everyWalk(procedure: Procedure): {
  readonly stood: ReadonlySet<string>;
  readonly shutIn: boolean;
} {
  const leads = new Map<string, readonly (At | undefined)[]>();
  const stood = new Set<string>();
  const waiting: At[] = [{ id: procedure.steps[0]?.id ?? "", rounds: {} }];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    if (leads.has(keyOf(at))) continue;
    const goals = answered(procedure, at);
    leads.set(keyOf(at), goals);
    stood.add(at.id);
    waiting.push(...goals.flatMap((goal) => goal ?? []));
  }
  const out = new Set<string>();
  for (let before = -1; before !== out.size; ) {
    before = out.size;
    for (const [key, goals] of leads) {
      if (goals.some((goal) => goal === undefined || out.has(keyOf(goal)))) out.add(key);
    }
  }
  return { stood, shutIn: out.size < leads.size };
}
