import { useState } from "preact/hooks";
import { tell } from "../../commands.ts";
import { putDemoHistory, removeDemoHistory } from "../../commands-demo.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { records, recordsRead } from "../../state.ts";
import { DEMO_RUN } from "../../storage/demo.ts";
import { decimals } from "../../words/format.ts";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";
import { Offer } from "../offer.tsx";

/** Offers the invented history where it is not, and its removal where it is. */
export function DemoHistory() {
  const [fault, setFault] = useState<string>();
  const words = sayLater.learnt.demo;
  if (!recordsRead.value) return null;
  const there = records.value.some(({ runId }) => runId.startsWith(DEMO_RUN));
  const put = async () => {
    const stored = await putDemoHistory();
    setFault(stored.ok ? undefined : sentence(stored));
    if (stored.ok) tell(words.done);
  };
  const remove = async () => {
    const removed = await removeDemoHistory();
    setFault(removed.ok ? undefined : sentence(removed));
    if (removed.ok) tell(words.removed(decimals(removed.value, 0)));
  };
  return (
    <Offer why={there ? words.removeWhy : words.why} fault={fault}>
      {there ? (
        <HoldButton
          label={words.remove}
          hints={say.work.hints}
          size="secondary"
          tone="plain"
          onAct={() => void remove()}
        />
      ) : (
        <TapButton onAct={() => void put()}>{words.put}</TapButton>
      )}
    </Offer>
  );
}
