import { useMemo } from "preact/hooks";
import { ounceInMl } from "../../../core/quantity/ounce.ts";
import { cloudyRunOf } from "../../../core/run/cloudy-run.ts";
import { type Run, stepOfVisit, type Visit } from "../../../core/run/run.ts";
import { lessonFor } from "../../known-lesson.ts";
import { now, records, recordsRead, settings } from "../../state.ts";
import { duration, volume } from "../../words/format.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";

interface PassProps {
  readonly run: Run;
  readonly visit: Visit;
}

const show = (ml: number): string => volume(Math.round(ml), settings.value);

/** An estimate in steps that a jug shows: a figure that changes each second cannot be read. */
function inSteps(ml: number): number {
  const { volumes, ounce } = settings.value;
  const step = volumeUnit(volumes) === "oz" ? 2 * ounceInMl(ounce) : 50;
  return Math.floor(ml / step) * step;
}

/** How much cloudy run there is, and how often it was poured back. */
export function CloudySoFar({ run }: { readonly run: Run }) {
  const { passes, pouredBackMl, runningMl } = cloudyRunOf(run, now.value);
  const words = sayLater.drip.pass;
  const running = inSteps(runningMl ?? 0);
  if (passes === 0) return null;
  return (
    <>
      <p class="run-note">{words.cloudy(show(pouredBackMl), passes)}</p>
      {running > 0 && <p class="run-note">{words.running(show(running))}</p>}
    </>
  );
}

/** When this bar's batches usually run clear, and whether this wait was learnt from them. */
function Usually({ run, visit }: PassProps) {
  const learnt = useMemo(() => lessonFor(run.id), [run.id, records.value, recordsRead.value]);
  const words = sayLater.drip.pass;
  const { waitFor, learntFrom } = stepOfVisit(run, visit);
  return (
    <>
      {learnt !== undefined && (
        <p class="run-note">
          {words.usually(
            duration(learnt.took.mean),
            Math.round(learnt.passes),
            learnt.batches,
            duration(learnt.took.low),
            duration(learnt.took.high),
          )}
        </p>
      )}
      {waitFor !== undefined && learntFrom !== undefined && (
        <p class="run-note">{words.learnt(duration(waitFor), learntFrom)}</p>
      )}
    </>
  );
}

/** What helps to judge a pass: how it usually goes here, and how much was cloudy so far. */
export function PassSoFar(props: PassProps) {
  return (
    <>
      <Usually {...props} />
      <CloudySoFar run={props.run} />
    </>
  );
}
