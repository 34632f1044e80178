import { makeBackup, noteBackup } from "../../commands-backup.ts";
import { TapButton } from "../../parts/tap-button.tsx";
import { useBackupDue } from "../../since-backup.ts";
import { now, settings } from "../../state.ts";
import { dueTime, fileDate } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { FileLine, useFileMaking, type Write } from "./make-file.tsx";

const writeBackup: Write = async (watch) => {
  const name = `second-pour-${fileDate(now.value)}.txt`;
  const made = await makeBackup(watch);
  if (!made.ok) return made;
  const file = { name, type: "text/plain", text: made.value.file };
  return { ok: true, value: { file, onHanded: () => void noteBackup(made.value) } };
};

/** When it was last done, and whether it is time again. */
function Standing() {
  const due = useBackupDue();
  const words = sayLater.kit.backup;
  const last = settings.value.lastBackupAt;
  return (
    <>
      {due !== undefined && <p class="kit-strong kit-due">{due}</p>}
      {last > 0 && <p class="soft">{words.last(dueTime(last, now.value))}</p>}
      {last === 0 && due === undefined && <p class="soft">{words.never}</p>}
    </>
  );
}

/** Everything as one file: through the share sheet, or into the browser's downloads. */
export function MakeBackup() {
  const making = useFileMaking();
  const words = sayLater.kit.backup;
  const busy = making.work.progress !== undefined;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <p>{words.why}</p>
      <Standing />
      <TapButton disabled={busy} onAct={() => void making.share(writeBackup)}>
        {words.make}
      </TapButton>
      <TapButton tone="quiet" disabled={busy} onAct={() => void making.save(writeBackup)}>
        {words.download}
      </TapButton>
      <FileLine making={making} says={words.writing} />
    </section>
  );
}
