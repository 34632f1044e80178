import { saveSettings, tell } from "./commands.ts";
import { atDesk } from "./desk.ts";
import { askToKeep, keepingNow } from "./device/keeping.ts";
import { sayLater } from "./words/say-later.ts";

/** As long as what was just done can be taken back, nothing is said in its place, ms. */
const AFTER = 9000;

/** Asks the browser to keep what is stored, and says so where it does not promise to. */
export async function askOnce(): Promise<void> {
  const { persisted } = await keepingNow();
  const kept = persisted === true || (await askToKeep()) === true;
  await saveSettings({ askedToKeep: true });
  if (!kept) atDesk().clock.after(AFTER, () => tell(sayLater.kit.keeping.mayBeCleared));
}
