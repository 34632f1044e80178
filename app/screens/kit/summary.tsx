import type { OpenedBackup } from "../../commands-backup.ts";
import { HoldButton } from "../../parts/hold-button.tsx";
import { say } from "../../words/say.ts";
import { sayLater } from "../../words/say-later.ts";

interface SummaryProps {
  readonly opened: OpenedBackup;
  readonly fault: string | undefined;
  readonly onAdd: () => void;
}

/** What would happen, before it does. */
export function Summary({ opened: { backup, fresh, known }, fault, onAdd }: SummaryProps) {
  const words = sayLater.kit.restore;
  const unread = backup.unreadLines.length;
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
        <HoldButton label={words.add(fresh)} hints={say.work.hints} onAct={onAdd} />
      )}
      {fault !== undefined && (
        <p class="kit-fault" role="alert">
          {fault}
        </p>
      )}
    </>
  );
}
