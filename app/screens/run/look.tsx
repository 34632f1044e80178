import { type Outcome, type Step, stepAfter } from "../../../core/method/procedure.ts";
import { type Run, roundOf, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { now } from "../../state.ts";
import { dueTime } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

/** What may be answered, the good end last: it stands lowest and is the biggest. */
const OFFERED: Readonly<Record<NonNullable<Step["asks"]>, readonly Outcome[]>> = {
  look: ["cloudy", "hazy", "clear"],
  taste: ["too-far", "not-yet", "right"],
  rescue: ["accept", "cold-rest", "finer-filter"],
};

/** What was answered before, and until when it may go on. */
function Before({ run, visit }: WorkProps) {
  const words = sayLater.run;
  const step = stepOfVisit(run, visit);
  const tasted = run.looks.findLast((one) => one.visit === visit.key);
  if (step.asks !== "taste") return null;
  return (
    <>
      {tasted !== undefined && (
        <p class="run-fact">{words.lastTasted(dueTime(tasted.at, now.value))}</p>
      )}
      {step.longestFor !== undefined && (
        <p class="run-fact">
          {words.stopBy(dueTime(visit.startedAt + step.longestFor, now.value))}
        </p>
      )}
    </>
  );
}

/** What an answer is called: "pour back again" only where it is poured back. */
function answerWords(run: Run, visit: Visit, look: Outcome): string {
  const words = sayLater.run;
  if (look !== "cloudy" && look !== "hazy") return words.outcomes[look];
  const back = stepAfter(run.procedure, visit.step, look, roundOf(visit))?.work === "re-pour";
  const curd = stepOfVisit(run, visit).work === "pass";
  return back || curd ? words.outcomes[look] : words.plainLooks[look];
}

/** A step that ends on what is seen or tasted: only a person says so. */
export function LookWork({ run, visit }: WorkProps) {
  const { asks = "look" } = stepOfVisit(run, visit);
  const offered = OFFERED[asks];
  const best = offered.at(-1);
  const answer = (look: Outcome) =>
    act(
      run.id,
      look === "not-yet"
        ? { type: "note-look", visit: visit.key, look }
        : { type: "finish-step", visit: visit.key, look },
      answerWords(run, visit, look),
    );
  return (
    <>
      <Before run={run} visit={visit} />
      <div class="run-actions" data-asks={asks}>
        {offered.map((look) => (
          <HoldButton
            key={look}
            label={answerWords(run, visit, look)}
            hints={say.work.hints}
            tone={look === best ? "main" : "plain"}
            size={look === best ? "primary" : "secondary"}
            onAct={() => void answer(look)}
          />
        ))}
      </div>
    </>
  );
}
