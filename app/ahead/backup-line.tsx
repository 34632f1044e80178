import { LinkButton } from "../parts/link-button.tsx";
import { routes } from "../routes.ts";
import { useBackupDue } from "../since-backup.ts";
import { sayLater } from "../words/say-later.ts";
import "./backup-line.css";

/** A calm line when it is time for a backup, with the way there; nothing while it is not. */
export function BackupLine() {
  const due = useBackupDue();
  if (due === undefined) return null;
  return (
    <div class="backup-line">
      <p>{due}</p>
      <LinkButton href={routes.kit} tone="quiet">
        {sayLater.kit.backup.toKit}
      </LinkButton>
    </div>
  );
}
