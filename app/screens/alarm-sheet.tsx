import { perform } from "../commands.ts";
import { HoldButton } from "../parts/hold-button.tsx";
import { routes } from "../routes.ts";
import { address, clockMoved, openRuns, ringing } from "../state.ts";
import { duration } from "../words/format.ts";
import { say } from "../words/say.ts";
import "./alarm-sheet.css";

/** Key of an alarm: run, visit, due time. */
function whereTo(key: string): { readonly runId: string; readonly visit: string; dueAt: number } {
  const [runId = "", visit = "", dueAt = "0"] = key.split("/");
  return { runId, visit, dueAt: Number(dueAt) };
}

async function heard(key: string): Promise<void> {
  const { runId, visit, dueAt } = whereTo(key);
  const done = await perform(runId, { type: "hear-alarm", visit, dueAt });
  if (!done.ok) return;
  const to = routes.run(runId);
  if (address.value !== to) location.hash = to;
}

async function settleClock(byMs: number, keepElapsed: boolean): Promise<void> {
  for (const run of openRuns.value) {
    await perform(run.id, { type: "shift-clock", byMs, keepElapsed });
  }
  // Asked until the answer is stored, and asked again where it moved once more meanwhile.
  if (clockMoved.value === byMs) clockMoved.value = undefined;
}

function ClockQuestion({ byMs }: { readonly byMs: number }) {
  const words = say.alarm;
  return (
    <section class="alarm-sheet" role="alertdialog" aria-label={words.jumpAsk}>
      <p class="alarm-sheet-what">{words.jumped(duration(Math.abs(byMs)))}</p>
      <p>{words.jumpAsk}</p>
      <HoldButton
        label={words.jumpKeep}
        hints={say.work.hints}
        tone="plain"
        onAct={() => settleClock(byMs, true)}
      />
      <HoldButton
        label={words.jumpTrust}
        hints={say.work.hints}
        tone="plain"
        onAct={() => settleClock(byMs, false)}
      />
    </section>
  );
}

/** What rings now, over whatever screen is shown: the whole lower half answers it. */
export function AlarmSheet() {
  const due = ringing.value;
  const first = due?.alarms[0];
  const moved = clockMoved.value;
  if (moved !== undefined && openRuns.value.length > 0) return <ClockQuestion byMs={moved} />;
  if (due === undefined || first === undefined) return null;
  const words = say.alarm;
  const late = first.lateBy < 1500 ? words.dueNow : words.lateBy(duration(first.lateBy));
  const more = due.alarms.length - 1;
  return (
    <section class="alarm-sheet" role="alertdialog" aria-label={`${first.label}, ${late}`}>
      <p class="alarm-sheet-what">{first.label}</p>
      <p class="alarm-sheet-late">
        {late} {more > 0 && words.others(more)}
      </p>
      <HoldButton
        label={words.heard}
        hints={say.work.hints}
        tone="signal"
        size="half"
        onAct={() => heard(first.key)}
      />
    </section>
  );
}
