import { useEffect, useLayoutEffect, useState } from "preact/hooks";
import type { Alarm } from "../alarm/alarm.ts";
import { perform } from "../commands.ts";
import { isHalfTyped, watchTyping } from "../half-typed.ts";
import { later } from "../later.tsx";
import { HoldButton } from "../parts/hold-button.tsx";
import { usePageKeys } from "../parts/page-keys.ts";
import { routes } from "../routes.ts";
import { address, clockMoved, now, openRuns, ringing, saving } from "../state.ts";
import { watchWetHands } from "../wet-hands.ts";
import { howLate } from "../words/how-late.ts";
import { say } from "../words/say.ts";
import "./alarm-sheet.css";

/** ms: judgement. */
const SAID_FOR = 8000;

const ClockQuestion = later(
  async () => (await import("./alarm-sheet/clock-question.tsx")).ClockQuestion,
);

/** What came of answering. */
interface Answered {
  /** Why it was refused, as a sentence. */
  readonly refused?: string;
  /** What waits elsewhere, said until then to whoever stays. */
  readonly elsewhere?: { readonly label: string; readonly until: number };
}

async function heard({ runId, visit, dueAt, label }: Alarm): Promise<Answered> {
  const done = await perform(runId, { type: "hear-alarm", visit, dueAt });
  if (!done.ok) return { refused: (await import("../words/say-later.ts")).sentence(done) };
  const to = routes.run(runId);
  if ([to, routes.read(runId)].includes(address.value)) return {};
  // Who has a figure half typed for another batch stays with it, and is told where this one waits.
  if (isHalfTyped()) return { elsewhere: { label, until: now.value + SAID_FOR } };
  location.hash = to;
  return {};
}

/** Above whatever is typed on: it lies in the way of nothing that is pressed. */
function Elsewhere({ answered: { elsewhere } }: { readonly answered: Answered }) {
  if (elsewhere === undefined || elsewhere.until <= now.value) return null;
  return (
    <p class="alarm-sheet-elsewhere" role="status">
      {say.alarm.waitsOnBench(elsewhere.label)}
    </p>
  );
}

/** What could not be stored must not lie under what rings. */
function Unsaved({ refused }: { readonly refused: string | undefined }) {
  const state = saving.value;
  const why =
    state.type === "not-saved"
      ? say.places.notSaved(state.why)
      : state.type === "no-room"
        ? say.places.noRoom
        : refused;
  if (why === undefined) return null;
  return (
    <p class="alarm-sheet-unsaved" role="alert">
      {why}
    </p>
  );
}

/** A sheet that somebody opened would lie over what rings: it gives way. */
function useOnTop(rings: boolean): void {
  useLayoutEffect(() => {
    if (rings) for (const one of document.querySelectorAll("dialog")) one.close();
  }, [rings]);
}

/** What rings now, over whatever screen is shown: the whole lower half answers it. */
export function AlarmSheet() {
  const [answered, setAnswered] = useState<Answered>({});
  useEffect(watchWetHands, []);
  useEffect(watchTyping, []);
  usePageKeys();
  const due = ringing.value;
  const first = due?.alarms[0];
  const moved = clockMoved.value;
  useOnTop(first !== undefined);
  if (moved !== undefined && openRuns.value.length > 0) return <ClockQuestion moved={moved} />;
  if (due === undefined || first === undefined) return <Elsewhere answered={answered} />;
  const words = say.alarm;
  const late = howLate(first.lateBy);
  const more = due.alarms.length - 1;
  return (
    <section class="alarm-sheet" role="alertdialog" aria-label={`${first.label}, ${late}`}>
      <Unsaved refused={answered.refused} />
      <p class="alarm-sheet-what">{first.label}</p>
      <p class="alarm-sheet-late">
        {late} {more > 0 && words.others(more)}
      </p>
      <HoldButton
        label={words.heard}
        hints={say.work.hints}
        tone="signal"
        size="half"
        onAct={() => void heard(first).then(setAnswered)}
      />
    </section>
  );
}
