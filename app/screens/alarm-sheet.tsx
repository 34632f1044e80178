import { useEffect, useLayoutEffect, useState } from "preact/hooks";
import type { Alarm } from "../alarm/alarm.ts";
import { perform } from "../commands.ts";
import { later } from "../later.tsx";
import { HoldButton } from "../parts/hold-button.tsx";
import { usePageKeys } from "../parts/page-keys.ts";
import { routes } from "../routes.ts";
import { address, clockMoved, openRuns, ringing, saving } from "../state.ts";
import { watchWetHands } from "../wet-hands.ts";
import { howLate } from "../words/how-late.ts";
import { say } from "../words/say.ts";
import "./alarm-sheet.css";

const ClockQuestion = later(
  async () => (await import("./alarm-sheet/clock-question.tsx")).ClockQuestion,
);

/** @returns why it was refused, as a sentence; nothing when it was stored */
async function heard({ runId, visit, dueAt }: Alarm): Promise<string | undefined> {
  const done = await perform(runId, { type: "hear-alarm", visit, dueAt });
  if (!done.ok) return (await import("../words/say-later.ts")).sentence(done);
  const to = routes.run(runId);
  // Who is at it already, perhaps with a figure half typed, stays there.
  if (![to, routes.read(runId)].includes(address.value)) location.hash = to;
  return undefined;
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
  const [refused, setRefused] = useState<string | undefined>(undefined);
  useEffect(watchWetHands, []);
  usePageKeys();
  const due = ringing.value;
  const first = due?.alarms[0];
  const moved = clockMoved.value;
  useOnTop(first !== undefined);
  if (moved !== undefined && openRuns.value.length > 0) return <ClockQuestion moved={moved} />;
  if (due === undefined || first === undefined) return null;
  const words = say.alarm;
  const late = howLate(first.lateBy);
  const more = due.alarms.length - 1;
  return (
    <section class="alarm-sheet" role="alertdialog" aria-label={`${first.label}, ${late}`}>
      <Unsaved refused={refused} />
      <p class="alarm-sheet-what">{first.label}</p>
      <p class="alarm-sheet-late">
        {late} {more > 0 && words.others(more)}
      </p>
      <HoldButton
        label={words.heard}
        hints={say.work.hints}
        tone="signal"
        size="half"
        onAct={() => void heard(first).then(setRefused)}
      />
    </section>
  );
}
