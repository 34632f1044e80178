import type { Step } from "../../../core/method/procedure.ts";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { Why, type WhyName } from "../../parts/why.tsx";
import { detailOf } from "./detail.ts";
import { DripSays } from "./drip-forecast.tsx";
import { PassSoFar } from "./pass.tsx";
import { Advice } from "./top-up.tsx";

interface SaysProps {
  readonly run: Run;
  readonly visit: Visit;
}

/** Whether it is judged by how it usually goes: that is read before what to do. */
const isJudged = (work: Step["work"], asks: Step["asks"]): boolean =>
  work === "pass" && asks === "look";

/** The question that a step raises, if any. */
function questionOf(run: Run, work: Step["work"]): WhyName | undefined {
  switch (work) {
    case "milk":
      return run.plan.spec.wash?.order === "punch-into-milk" ? "milkFirst" : undefined;
    case "pass":
      return "clearEnough";
    case "re-pour":
      return "pourBack";
    case "yield":
      return "whichYield";
    case "top-up":
      return "topUp";
    default:
      return undefined;
  }
}

/** What is said of a step beside its glass: what to do, what helps to judge it, and why. */
export function Says({ run, visit }: SaysProps) {
  const { work, asks } = stepOfVisit(run, visit);
  if (work === "drip") return <DripSays run={run} visit={visit} />;
  const question = questionOf(run, work);
  return (
    <>
      {isJudged(work, asks) && <PassSoFar run={run} visit={visit} />}
      <p class="run-detail">{detailOf(run, visit)}</p>
      {work === "top-up" && <Advice run={run} />}
      {question !== undefined && <Why of={question} />}
    </>
  );
}
