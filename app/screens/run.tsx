import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { glassOf } from "../../core/board/glass.ts";
import { safetyClockOf } from "../../core/board/safety-clock.ts";
import { usualPath } from "../../core/method/usual-path.ts";
import { MINUTE } from "../../core/quantity/time-units-table.ts";
import { alarmsOf } from "../../core/run/alarm.ts";
import { asksShape } from "../../core/run/drip-outlook.ts";
import {
  endingOf,
  openVisit,
  type Run,
  roundOf,
  stepOfVisit,
  type Visit,
} from "../../core/run/run.ts";
import { secondWatchOf } from "../../core/run/second-watch.ts";
import { statusNow } from "../known-status.ts";
import { later } from "../later.tsx";
import { Column } from "../parts/column.tsx";
import { usePageKeys } from "../parts/page-keys.ts";
import { StatusLine } from "../parts/status-line.tsx";
import { isPractice } from "../practice.ts";
import { routes } from "../routes.ts";
import { WhichYield } from "../settle/which-yield.tsx";
import { now, runOf } from "../state.ts";
import { isWet } from "../wet-hands.ts";
import { dueTime, duration } from "../words/format.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { stepTitle } from "../words/step-title.ts";
import { BottleWork } from "./run/bottle.tsx";
import { BuildWork } from "./run/build.tsx";
import { DripWork, Shape } from "./run/drip.tsx";
import { Ended } from "./run/ended.tsx";
import { asksForWatch, HandOver } from "./run/hand-over.tsx";
import { LookWork } from "./run/look.tsx";
import { MeasureWork } from "./run/measure.tsx";
import { More, MoreButton } from "./run/more.tsx";
import { PassSoFar } from "./run/pass.tsx";
import { HandsWork, WaitWork } from "./run/plain.tsx";
import { useReadAddress } from "./run/read-address.ts";
import { Says } from "./run/says.tsx";
import { TopUpWork } from "./run/top-up.tsx";
import { Verb } from "./run/verb.tsx";
import { Countdown } from "./run/wait.tsx";
import { AskWet, BackToAll } from "./run/wet.tsx";
import "./run.css";
import "./run/low.css";

const PracticeMark = later(
  async () => (await import("../demo/practice/in-run.tsx")).PracticeMark,
  true,
);
const PracticeOver = later(async () => (await import("../demo/practice/in-run.tsx")).PracticeOver);

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

/** The controls of a step, by what it asks for. */
function Work({ run, visit }: WorkProps) {
  const step = stepOfVisit(run, visit);
  switch (step.work) {
    case "build":
      return <BuildWork run={run} visit={visit} />;
    case "milk":
    case "re-pour":
    case "yield":
      return <MeasureWork run={run} visit={visit} />;
    case "top-up":
      return <TopUpWork run={run} visit={visit} />;
    case "drip":
      return <DripWork run={run} visit={visit} />;
    case "bottle":
      return <BottleWork run={run} visit={visit} />;
    default:
      if (step.asks !== undefined) return <LookWork run={run} visit={visit} />;
      if (step.needs === "top-up") return <TopUpWork run={run} visit={visit} />;
      if (step.needs === "bottled") return <BottleWork run={run} visit={visit} />;
      if (step.needs !== undefined) return <MeasureWork run={run} visit={visit} />;
      return step.kind === "hands-on" ? (
        <HandsWork run={run} visit={visit} />
      ) : (
        <WaitWork run={run} visit={visit} />
      );
  }
}

function Where({ run, visit }: WorkProps) {
  // Steps that only a run in trouble takes are not counted.
  const path = usualPath(run.procedure);
  const at = path.findIndex((step) => step.id === visit.step) + 1;
  const round = roundOf(visit);
  return (
    <p class="run-where">
      {at > 0 && sayLater.run.stepOf(at, path.length)}
      {round > 1 && `, ${sayLater.run.round(round)}`}
    </p>
  );
}

/** How long something perishable has been warm; said from the first minute, louder from 3 h on. */
function Warm({ run }: { readonly run: Run }) {
  const clock = safetyClockOf(run, now.value);
  if (clock === undefined || clock.warmFor < MINUTE) return null;
  const words = sayLater.run.warm;
  const length = duration(clock.warmFor);
  if (clock.level === "within") return <p class="run-warm">{words.within(length)}</p>;
  const full = clock.fullAt === undefined ? undefined : dueTime(clock.fullAt, now.value);
  const near = full === undefined ? words.nearCold(length) : words.near(length, full);
  return (
    <p class="run-warm run-strong" role="alert">
      {clock.level === "past" ? words.past(length) : near}
    </p>
  );
}

function Doing({ run, visit }: WorkProps) {
  const glass = glassOf(run);
  const [alarm] = alarmsOf(run);
  const mood = alarm === undefined ? "still" : alarm.dueAt <= now.value ? "due" : "waiting";
  const verb = stepTitle(stepOfVisit(run, visit));
  const body = useRef<HTMLDivElement>(null);
  // A new step is read from its top, however far down the one before was left.
  useLayoutEffect(() => body.current?.closest("main")?.scrollIntoView(), []);
  const { work, asks } = stepOfVisit(run, visit);
  // Longer than anybody stands by: asked before anything else is read.
  const asked = asksForWatch(secondWatchOf(run));
  const clock = visit.dueAt !== undefined && <Countdown run={run} visit={visit} />;
  return (
    <>
      {/* What a long wait is looked at for; during a pass the eye is on the glass. */}
      {/* Asked once, at the top: the first reading is half an hour away. */}
      {asksShape(run) ? <Shape run={run} visit={visit} /> : work !== "pass" && clock}
      {asked && <HandOver run={run} />}
      <div class="run-body" data-work={work} ref={body}>
        <Column
          size="rack"
          layers={glass.bands}
          line={glass.line}
          mood={mood}
          label={say.bench.column(run.plan.spec.name, verb)}
        />
        <div class="run-words">
          <Where run={run} visit={visit} />
          <Verb verb={verb} />
          <Says run={run} visit={visit} />
        </div>
      </div>
      {work === "pass" && (
        <>
          {clock}
          {asks !== "look" && <PassSoFar run={run} visit={visit} />}
        </>
      )}
      {/* Of a drip one wants to know more first. */}
      {visit.dueAt !== undefined && !asked && work !== "drip" && <HandOver run={run} />}
      <Work run={run} visit={visit} />
    </>
  );
}

/** The step that is open, or what is left to do once the batch has ended. */
function Here({ run }: { readonly run: Run }) {
  const visit = openVisit(run);
  const practice = isPractice(run.id);
  if (endingOf(run) !== undefined || visit === undefined) {
    return practice ? <PracticeOver run={run} /> : <Ended run={run} />;
  }
  return (
    <>
      <Doing key={visit.key} run={run} visit={visit} />
      {practice && <PracticeMark />}
    </>
  );
}

/** One batch being made: what to do now, and one thing to press when it is done. */
export function RunScreen({ id }: { readonly id: string }) {
  const [more, setMore] = useState(false);
  const once = usePageKeys();
  const run = runOf(id);
  useReadAddress(run);
  if (run === undefined) return <p class="app-say">{say.places.lost}</p>;
  const visit = openVisit(run);
  const ended = endingOf(run);
  const wet = ended === undefined && isWet.value;
  return (
    <main class="run" data-wet={wet}>
      <header class="run-head">
        {wet ? (
          <BackToAll />
        ) : (
          <a class="run-back" href={routes.bench} aria-label={say.places.bench}>
            ‹
          </a>
        )}
        <p class="run-name">
          {run.plan.spec.name} <span class="run-batch">{run.batch}</span>
        </p>
        {!wet && <MoreButton open={more} onOpen={setMore} />}
      </header>
      {ended === undefined && <AskWet step={visit?.key} />}
      {once && (
        <p class="run-note" role="status">
          {sayLater.run.pressAgain}
        </p>
      )}
      {more && <More run={run} />}
      {ended === undefined && <StatusLine status={statusNow()} />}
      {ended === undefined && <Warm run={run} />}
      {run.pausedAt !== undefined && (
        <p class="run-warm run-strong">
          {sayLater.run.around.pausedSince(dueTime(run.pausedAt, now.value))}
        </p>
      )}
      <WhichYield run={run} />
      <Here run={run} />
    </main>
  );
}
