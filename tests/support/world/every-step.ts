import { DAIRY_WASH } from "../../../core/method/dairy-wash.ts";
import type { Procedure } from "../../../core/method/procedure.ts";
import { PROCEDURES } from "../../../core/method/procedures.ts";
import { alarmsOf } from "../../../core/run/alarm.ts";
import type { RunEvent } from "../../../core/run/event.ts";
import { openVisit } from "../../../core/run/run.ts";
import type { Plan } from "../../../core/spec/plan.ts";
import { DEMO_SPECS } from "./demo-bar.ts";
import { demoSpec, type Played, planned, resumed, started } from "./play-run.ts";
import { stationAt, stationsOf } from "./wash-stations.ts";
import { finishOpenStep } from "./wash-walk.ts";

const MINUTE = 60_000;
/** No walk takes more. */
const MOST_STEPS = 20;

/** A spec that is made that way, or else any: its steps look the same. */
const planBy = ({ id }: Procedure): Plan =>
  planned(DEMO_SPECS.find((spec) => spec.procedure?.id === id) ?? demoSpec("Harbour Slush"));

/** A log that is made anew for any start, epoch ms; nothing where it cannot come there. */
type Story = (runId: string, at: number) => Played | undefined;

/** Up to a step, by the usual answers. */
const upTo =
  (procedure: Procedure, step: string): Story =>
  (runId, at) => {
    let run = started(runId, "TW-1003", at, planBy(procedure), procedure);
    for (let walked = 0; walked < MOST_STEPS; walked += 1) {
      if (openVisit(run.run)?.step === step) return run;
      const order = finishOpenStep(run.run);
      if (order === undefined) return undefined;
      run = run.then(order);
    }
    return undefined;
  };

const washedTo =
  (step: string): Story =>
  (runId, at) =>
    resumed(stationAt(runId, "PB-1003", at, step).events);

/** Twenty minutes past the moment at which it first asked; somebody heard it. */
const overdue =
  (story: Story): Story =>
  (runId, at) => {
    const came = story(runId, at);
    const visit = came && openVisit(came.run);
    const [alarm] = came === undefined ? [] : alarmsOf(came.run);
    if (came === undefined || visit === undefined || alarm === undefined) return undefined;
    const minutes = (alarm.dueAt - visit.startedAt) / MINUTE + 20;
    return came.then({ type: "hear-alarm", visit: visit.key, dueAt: alarm.dueAt }, minutes);
  };

/** Twice read, half an hour apart, through a filter whose shape was noted. */
const read =
  (story: Story): Story =>
  (runId, at) => {
    const came = story(runId, at);
    const visit = (came && openVisit(came.run)?.key) ?? "";
    const collected = (value: number) =>
      ({ type: "log-reading", visit, what: "collected", value, unit: "ml" }) as const;
    return came
      ?.then({ type: "note-shape", visit, shape: "straight" })
      .then(collected(1400), 30)
      .then(collected(2300), 30);
  };

/** Tasted when it asked, and left to go on. */
const tasted =
  (story: Story): Story =>
  (runId, at) => {
    const came = overdue(story)(runId, at);
    const visit = (came && openVisit(came.run)?.key) ?? "";
    return came?.then({ type: "note-look", visit, look: "not-yet" });
  };

const named = (
  name: string,
  story: Story,
  more: Readonly<Record<string, (story: Story) => Story>> = {},
): readonly (readonly [string, Story])[] => [
  [name, story],
  [`${name}-late`, overdue(story)],
  ...Object.entries(more).map(([word, twist]) => [`${name}-${word}`, twist(story)] as const),
];

const stories: readonly (readonly [string, Story])[] = [
  ...stationsOf("run", "PB", 0).flatMap(({ step }) =>
    named(
      `wash-${step.replace(/\W+/gu, "-")}`,
      washedTo(step),
      step === "slow-drip" ? { read } : {},
    ),
  ),
  ...PROCEDURES.filter((one) => one !== DAIRY_WASH).flatMap((procedure) =>
    procedure.steps.flatMap(({ id, asks }) =>
      named(`${procedure.id}-${id}`, upTo(procedure, id), asks === "taste" ? { tasted } : {}),
    ),
  ),
];

/**
 * A batch of every shipped procedure at each of its steps, as it has just come there and, where it
 * waits, long after it was due: by the name of its run, as `fat-wash-freeze-late`.
 *
 * @param now - when all of them came to where they stand, epoch ms
 */
export const everyStep = (
  now: number,
): readonly { readonly runId: string; readonly events: readonly RunEvent[] }[] =>
  stories.flatMap(([runId, story]) => {
    const took = story(runId, 0)?.events.at(-1)?.at;
    const stands = took === undefined ? undefined : story(runId, now - took);
    return stands === undefined ? [] : [{ runId, events: stands.events }];
  });
