import { useState } from "preact/hooks";
import { safetyClockOf } from "../../../core/board/safety-clock.ts";
import { STANDS } from "../../../core/method/procedure.ts";
import { endingOf, type Run } from "../../../core/run/run.ts";
import { lastMove } from "../../../core/run/take-back.ts";
import { Chips } from "../../parts/chips.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { LinkButton } from "../../parts/link-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { routes } from "../../routes.ts";
import { logOf, now } from "../../state.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";

function Abandon({ run }: { readonly run: Run }) {
  const [reason, setReason] = useState<string | null>(null);
  const words = sayLater.run;
  return (
    <div class="run-more">
      <Chips
        label={words.abandonSure}
        options={words.abandonReasons.map((one) => ({ value: one, label: one }))}
        value={reason}
        onChange={setReason}
      />
      <HoldButton
        label={words.abandonDone}
        hints={say.work.hints}
        tone="plain"
        disabled={reason === null}
        onAct={() =>
          reason !== null &&
          void act(run.id, { type: "abandon", reason }, words.abandonedBecause(reason))
        }
      />
    </div>
  );
}

/** Opens what is seldom needed. */
export function MoreButton(props: {
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}) {
  const { open, onOpen } = props;
  return (
    <TapButton size="least" tone="quiet" pressed={open} onAct={() => onOpen(!open)}>
      {open ? sayLater.run.less : sayLater.run.more}
    </TapButton>
  );
}

/** Where the vessel stands, and whether anybody is at it. */
function Around({ run }: { readonly run: Run }) {
  const words = sayLater.run.around;
  const clock = safetyClockOf(run, now.value);
  const paused = run.pausedAt !== undefined;
  return (
    <>
      <Chips
        label={words.stands}
        options={STANDS.map((one) => ({ value: one, label: words.standing[one] }))}
        value={clock?.stands ?? run.stands.at(-1)?.to ?? null}
        onChange={(to) => void act(run.id, { type: "move-vessel", to }, words.standing[to])}
      />
      <TapButton
        onAct={() =>
          void act(
            run.id,
            { type: paused ? "resume" : "pause" },
            paused ? words.resumed : words.paused,
          )
        }
      >
        {paused ? words.resume : words.pause}
      </TapButton>
    </>
  );
}

/** What is seldom needed: where it stands, pause, take back, the log, abandon. */
export function More({ run }: { readonly run: Run }) {
  const [abandoning, setAbandoning] = useState(false);
  const words = sayLater.run;
  const ended = endingOf(run) !== undefined;
  const move = lastMove(logOf(run.id));
  return (
    <div class="run-more">
      {!ended && <Around run={run} />}
      <TapButton
        disabled={move === undefined}
        onAct={() =>
          move !== undefined && void act(run.id, { type: "undo", act: move }, words.undone)
        }
      >
        {words.undoLast}
      </TapButton>
      <LinkButton href={routes.hand(`run~${run.id}`)}>{words.toHand}</LinkButton>
      <LinkButton href={routes.sheet(run.id)}>{words.toSheet}</LinkButton>
      <LinkButton href={routes.batch(run.id)}>{words.toLog}</LinkButton>
      {!ended && !abandoning && (
        <TapButton onAct={() => setAbandoning(true)}>{words.abandon}</TapButton>
      )}
      {!ended && abandoning && <Abandon run={run} />}
    </div>
  );
}
