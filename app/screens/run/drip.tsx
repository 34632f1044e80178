import { useEffect, useState } from "preact/hooks";
import { asksShape, shapeOf } from "../../../core/run/drip-outlook.ts";
import type { Run, Visit } from "../../../core/run/run.ts";
import { secondWatchOf } from "../../../core/run/second-watch.ts";
import { collectedSoFar } from "../../../core/run/wash-progress.ts";
import { weigh } from "../../../core/run/weigh.ts";
import { FILTER_SHAPES } from "../../../core/spec/spec.ts";
import { readyDrip } from "../../ahead/ready.ts";
import { Chips } from "../../parts/chips.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { settings } from "../../state.ts";
import { percent, volume } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";
import { act } from "./act.ts";
import { AmountPad } from "./amount-pad.tsx";
import { Outlook } from "./drip-forecast.tsx";
import { asksForWatch, HandOver } from "./hand-over.tsx";
import { cameToRead, leaveReading } from "./read-address.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

const show = (ml: number): string => volume(ml, settings.value);

function Collected({ run }: { readonly run: Run }) {
  const collected = collectedSoFar(run);
  const expected = run.plan.yield?.expected ?? 0;
  if (collected === undefined) return <p class="run-fact">{sayLater.run.noneCollected}</p>;
  const share = expected > 0 ? percent(collected / expected) : "";
  return <p class="run-fact">{sayLater.run.collectedSoFar(show(collected), share)}</p>;
}

/** What stands above the filter, asked once where the spec does not say. */
export function Shape({ run, visit }: WorkProps) {
  const words = sayLater.drip;
  return (
    <div class="run-shape">
      <Chips
        label={words.shape}
        options={FILTER_SHAPES.map((value) => ({ value, label: words.shapes[value] }))}
        value={null}
        onChange={(shape) =>
          void act(run.id, { type: "note-shape", visit: visit.key, shape }, words.looked[shape])
        }
      />
    </div>
  );
}

/** Reads what has dripped: measured out, or weighed with its vessel. */
function ReadingPad({ run, visit, onClose }: WorkProps & { readonly onClose: () => void }) {
  const said = (ml: number) => sayLater.run.collectedIs(show(ml));
  const log = (value: number) =>
    act(
      run.id,
      { type: "log-reading", visit: visit.key, what: "collected", value, unit: "ml" },
      said(value),
    );
  const logWeight = (gross: number) => {
    const weight = weigh(run, "collected", gross);
    const done = weight.ok ? said(weight.value.ml) : "";
    return act(run.id, { type: "log-weight", visit: visit.key, gross }, done);
  };
  return (
    <AmountPad
      what="collected"
      onTake={log}
      scale={{ run, what: "collected", onWeigh: logWeight }}
      onClose={onClose}
    />
  );
}

/** The slow drip: readings of what has come through, and when it will be done. */
export function DripWork({ run, visit }: WorkProps) {
  // Who came to read it finds the pad open; once it is closed this is the batch's own address.
  const [pad, setPad] = useState(cameToRead(run.id));
  useEffect(() => void readyDrip(run), [shapeOf(run)]);
  const words = sayLater.run;
  const done = words.done[visit.step] ?? words.did;
  const close = () => (cameToRead(run.id) ? leaveReading(run.id) : setPad(false));
  if (pad) return <ReadingPad run={run} visit={visit} onClose={close} />;
  return (
    <>
      <Collected run={run} />
      <Outlook run={run} visit={visit} />
      {!asksForWatch(secondWatchOf(run)) && <HandOver run={run} />}
      <div class="run-actions run-side-by-side" data-asking={asksShape(run)}>
        <TapButton size="primary" onAct={() => setPad(true)}>
          {words.collected}
        </TapButton>
        <HoldButton
          label={done}
          hints={say.work.hints}
          tone="plain"
          onAct={() => void act(run.id, { type: "finish-step", visit: visit.key }, done)}
        />
      </div>
    </>
  );
}
