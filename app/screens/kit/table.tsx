import type { Watch } from "../../commands-backup.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { batchesTable, readingsTable, type Table } from "../../spreadsheet.ts";
import { now } from "../../state.ts";
import { fileDate } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { FileLine, useFileMaking, type Write } from "./make-file.tsx";

const writeTable =
  (name: string, table: (watch: Watch) => Promise<Table>): Write =>
  async (watch) => {
    const made = await table(watch);
    if (!made.ok) return made;
    const file = `second-pour-${name}-${fileDate(now.value)}.csv`;
    return { ok: true, value: { file: { name: file, type: "text/csv", text: made.value } } };
  };

const writeBatches = writeTable("batches", batchesTable);
const writeReadings = writeTable("readings", readingsTable);

/** Batches and readings as tables: through the share sheet, or into the browser's downloads. */
export function Tables() {
  const making = useFileMaking();
  const words = sayLater.kit.table;
  const busy = making.work.progress !== undefined;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      <TapButton disabled={busy} onAct={() => void making.share(writeBatches)}>
        {words.batches}
      </TapButton>
      <TapButton disabled={busy} onAct={() => void making.share(writeReadings)}>
        {words.readings}
      </TapButton>
      <FileLine making={making} says={words.writing} />
    </section>
  );
}
