import { useState } from "preact/hooks";
import { type OpenedBackup, takeBackup } from "../../commands-backup.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { say } from "../../words/say.ts";
import { sayLater, sentence } from "../../words/say-later.ts";

interface SummaryProps {
  readonly opened: OpenedBackup;
  /** Hears how many records were added. */
  readonly onAdded: (count: number) => void;
}

/** What would happen, before it does; it is added on a hold. */
export function Summary({ opened: { backup, fresh, known }, onAdded }: SummaryProps) {
  const [fault, setFault] = useState<string>();
  const words = sayLater.kit.restore;
  const unread = backup.unreadLines.length;
  const add = async () => {
    const taken = await takeBackup(backup);
    if (taken.ok) onAdded(taken.value);
    else setFault(sentence(taken));
  };
  return (
    <>
      <ul class="kit-list" role="status">
        <li>{words.fresh(fresh)}</li>
        <li>{words.known(known)}</li>
        {unread > 0 && <li>{words.unread(unread)}</li>}
      </ul>
      {fresh === 0 ? (
        <p>{words.nothing}</p>
      ) : (
        <HoldButton label={words.add(fresh)} hints={say.work.hints} onAct={() => void add()} />
      )}
      {fault !== undefined && (
        <p class="kit-fault" role="alert">
          {fault}
        </p>
      )}
    </>
  );
}
