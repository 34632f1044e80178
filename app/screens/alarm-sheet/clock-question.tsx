import { alarmsOf } from "../../../core/run/alarm.ts";
import { perform } from "../../commands.ts";
import { movedInAll } from "../../moved-in-all.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { type ClockMoved, clockMoved, now, openRuns } from "../../state.ts";
import { dueTime, duration } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

async function settle(asked: ClockMoved, keepElapsed: boolean): Promise<void> {
  const { byMs } = asked;
  for (const run of openRuns.value) {
    await perform(run.id, { type: "shift-clock", byMs, keepElapsed });
  }
  // Asked until the answer is stored, and asked again of as much as it moved meanwhile.
  const rest = movedInAll(clockMoved.value?.byMs, -byMs);
  clockMoved.value = rest === undefined ? undefined : { ...asked, byMs: rest };
}

/** When somebody is wanted next, if due times move by so much; and by how much that is late. */
function nextDue(byMs: number): string | undefined {
  const due = openRuns.value.flatMap((run) => alarmsOf(run).map((one) => one.dueAt + byMs));
  if (due.length === 0) return undefined;
  const next = Math.min(...due);
  const time = dueTime(next, now.value);
  return next <= now.value ? sayLater.clock.late(time, duration(now.value - next)) : time;
}

/** What only a person can know: whether time went by, or somebody set the clock. */
export function ClockQuestion({ moved }: { readonly moved: ClockMoved }) {
  const words = sayLater.clock;
  const by = duration(Math.abs(moved.byMs));
  const kept = nextDue(moved.byMs);
  const trusted = nextDue(0);
  return (
    <section class="alarm-sheet alarm-sheet-asks" role="alertdialog" aria-label={words.ask}>
      <p class="alarm-sheet-what">{moved.seen === "here" ? words.moved(by) : words.behind(by)}</p>
      <p>{words.ask}</p>
      <HoldButton
        label={words.keep}
        detail={kept === undefined ? words.noWait : words.keepMeans(kept)}
        hints={say.work.hints}
        tone="plain"
        onAct={() => settle(moved, true)}
      />
      <HoldButton
        label={words.trust}
        detail={trusted === undefined ? words.noWait : words.trustMeans(trusted)}
        hints={say.work.hints}
        tone="plain"
        onAct={() => settle(moved, false)}
      />
    </section>
  );
}
