import { volumeOf } from "../../../core/liquid/liquid.ts";
import type { Step } from "../../../core/method/procedure.ts";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { settings } from "../../state.ts";
import { mass, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const show = (ml: number): string => volume(ml, settings.value);
const words = () => sayLater.run.details;

function pourDetail({ plan }: Run): string {
  const punch = show(volumeOf(plan.mixed));
  return plan.spec.wash?.order === "milk-into-punch"
    ? words().pourMilkIntoPunch(punch)
    : words().pourPunchIntoMilk(punch);
}

function yieldDetail({ plan }: Run): string {
  const expected = plan.yield;
  if (expected === undefined) return words().measureAll;
  return words().yield(show(expected.expected), show(expected.low), show(expected.high));
}

const DETAILS: Partial<Record<Step["work"], (run: Run, step: Step) => string>> = {
  build: () => words().build,
  milk: ({ plan }) => words().milk(show(plan.milk?.ml ?? 0), mass(plan.milk?.g ?? 0)),
  pour: pourDetail,
  rest: () => words().curdle,
  filter: ({ plan }) => words().filter(plan.spec.wash?.filters ?? 1),
  pass: (_, step) => (step.asks === "look" ? words().checkClear : words().firstPass),
  "re-pour": () => words().rePour,
  drip: () => words().slowDrip,
  yield: yieldDetail,
  bottle: () => words().bottle,
  label: () => words().label,
};

/** What a step asks for, in one or two sentences with the amounts of this batch. */
export function detailOf(run: Run, visit: Visit): string {
  const step = stepOfVisit(run, visit);
  const own = step.detail ?? words().steps[step.id];
  return own ?? DETAILS[step.work]?.(run, step) ?? "";
}
