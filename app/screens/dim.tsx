import { useEffect, useLayoutEffect, useRef } from "preact/hooks";
import { type BenchRow, benchRows } from "../../core/board/bench.ts";
import { glassOf } from "../../core/board/glass.ts";
import { MINUTE } from "../../core/quantity/time-units-table.ts";
import { stepOfVisit } from "../../core/run/run.ts";
import { Column } from "../parts/column.tsx";
import { usePress } from "../parts/use-press.ts";
import { routes } from "../routes.ts";
import { alarmStatus, now, openRuns, ringing } from "../state.ts";
import { dueTime } from "../words/format.ts";
import { say } from "../words/say.ts";
import { sayLater } from "../words/say-later.ts";
import { stepTitle } from "../words/step-title.ts";
import { dimDigits, wander } from "./dim/digits.ts";
import "./dim.css";

/** Digits are drawn at this size, then as large as the width allows. */
const MEASURED_AT = 100;

/** As wide as the face is, in whatever font the phone has. */
function Digits({ text }: { readonly text: string }) {
  const digits = useRef<HTMLSpanElement>(null);
  useLayoutEffect(() => {
    const widen = () => {
      const one = digits.current;
      const room = one?.parentElement?.clientWidth ?? 0;
      if (!one || room === 0) return;
      one.style.fontSize = `${MEASURED_AT}px`;
      one.style.fontSize = `${Math.floor((MEASURED_AT * room) / one.offsetWidth)}px`;
    };
    widen();
    addEventListener("resize", widen);
    return () => removeEventListener("resize", widen);
    // Figures are all as wide as one another: only another number of signs needs another size.
  }, [text.length, text.replace(/\d/gu, "")]);
  return (
    <span class="dim-room">
      <span class="dim-digits" ref={digits}>
        {text.split(/(?=[dh])|(?<=[dh])/u).map((part) =>
          /[dh]/u.test(part) ? (
            <span class="dim-unit" key={part}>
              {part}
            </span>
          ) : (
            part
          ),
        )}
      </span>
    </span>
  );
}

function Waiting({ row, others }: { readonly row: BenchRow; readonly others: number }) {
  const { run, visit, alarm } = row;
  const dueAt = alarm?.dueAt ?? now.value;
  const glass = glassOf(run);
  const verb = stepTitle(stepOfVisit(run, visit));
  const name = run.plan.spec.name;
  return (
    <>
      <span class="dim-glass">
        {/* Nothing moves, and nothing is bright: the picture is only recognised. */}
        <Column
          size="rack"
          layers={glass.bands}
          line={glass.line}
          mood="still"
          label={say.bench.column(name, verb)}
        />
      </span>
      <span class="dim-verb">{verb}</span>
      <Digits text={dimDigits(dueAt - now.value)} />
      <span class="dim-when">{say.work.due(dueTime(dueAt, now.value))}</span>
      <span class="dim-small">
        {name} {run.batch}
      </span>
      {others > 0 && <span class="dim-small">{sayLater.dim.others(others)}</span>}
    </>
  );
}

/** The place of the face this minute; set through the CSSOM, which a strict policy allows. */
const placeAt = (at: number) => {
  const { x, y } = wander(Math.floor(at / MINUTE));
  return { transform: `translate(${x}px, ${y}px)` };
};

/**
 * A dark screen that is read from two metres: the soonest wait of all, in digits as large as fit. It
 * gives way to an alarm by itself, and to a tap anywhere.
 *
 * @param id - the batch it was opened from, and goes back to
 */
export function DimScreen({ id }: { readonly id: string }) {
  const face = useRef<HTMLButtonElement>(null);
  const waits = benchRows(openRuns.value, now.value).filter(({ alarm }) => alarm !== undefined);
  const [soonest] = waits;
  const due = ringing.value?.alarms[0];
  const leave = (runId: string) => location.replace(routes.run(runId));
  const { on } = usePress({
    kind: "tap",
    subject: "dim",
    keys: ["ArrowRight", "Escape"],
    onAct: () => leave(id),
  });
  // Before anybody sees it: a key pressed at once is heard.
  useLayoutEffect(() => face.current?.focus(), []);
  useEffect(() => {
    if (due !== undefined) leave(due.runId);
  }, [due]);
  const status = alarmStatus.value;
  return (
    <main class="dim">
      <h1 class="visually-hidden">{sayLater.dim.title}</h1>
      <button type="button" class="dim-face" ref={face} {...on}>
        <span class="dim-block" style={placeAt(now.value)}>
          {soonest === undefined ? (
            <span class="dim-verb">{sayLater.dim.none}</span>
          ) : (
            <Waiting row={soonest} others={waits.length - 1} />
          )}
          {status !== undefined && <span class="dim-small">{say.alarm.status[status.code]}</span>}
          <span class="dim-small">{sayLater.dim.leave}</span>
        </span>
      </button>
    </main>
  );
}
