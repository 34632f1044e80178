import { useState } from "preact/hooks";
import type { Shelved } from "../../../core/board/shelf.ts";
import { STOCK_ENDS, type StockEnd } from "../../../core/run/event.ts";
import { noted } from "../../noted.ts";
import { Chips } from "../../parts/chips.tsx";
import { HoldButton } from "../../parts/hold-button.tsx";
import { named } from "../../words/joined.ts";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

/** Takes a batch off the shelf: all spent, or discarded and why. */
export function EndStock({ row }: { readonly row: Shelved }) {
  const past = row.keeping === "past";
  const words = sayLater.shelf.end;
  // Poured dry by the log, it is most likely spent.
  const likely = past ? "discarded" : row.leftMl === 0 ? "spent" : null;
  const [how, setHow] = useState<StockEnd | null>(likely);
  const [reason, setReason] = useState<string | null>(past ? (words.reasons[0] ?? null) : null);
  const [fault, setFault] = useState<string | undefined>(undefined);
  const ready = how === "spent" || (how === "discarded" && reason !== null);
  const end = async () => {
    if (how === null) return;
    const why = how === "discarded" ? (reason ?? "") : "";
    const done = named(row.batch, sayLater.stock.ended(how, why));
    setFault(await noted(row.runId, { type: "end-stock", how, reason: why }, done));
  };
  return (
    <div class="shelf-form">
      <Chips
        label={words.how}
        options={STOCK_ENDS.map((one) => ({ value: one, label: words.ways[one] }))}
        value={how}
        onChange={setHow}
      />
      {how === "discarded" && (
        <Chips
          label={words.why}
          options={words.reasons.map((one) => ({ value: one, label: one }))}
          value={reason}
          onChange={setReason}
        />
      )}
      {fault !== undefined && (
        <p class="shelf-strong" role="alert">
          {fault}
        </p>
      )}
      <HoldButton
        label={words.take}
        hints={say.work.hints}
        tone="plain"
        size="secondary"
        disabled={!ready}
        onAct={() => void end()}
      />
    </div>
  );
}
