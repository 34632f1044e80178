import { CALENDAR_TYPE, DUE_FILES } from "../../core/board/calendar/due-file.ts";
import { DAY } from "../../core/quantity/time-units-table.ts";

/** When a file may go, in a header of its own, epoch ms. */
const DUE_AT = "Second-Pour-Due-At";
/** Somebody may open it a while after it was due, ms. */
const KEPT_FOR = DAY;

export interface DueFile {
  /** Below the app's own address. */
  readonly path: string;
  readonly text: string;
  /** Epoch ms. */
  readonly dueAt: number;
}

async function dropOld(files: Cache, now: number): Promise<void> {
  for (const address of await files.keys()) {
    const dueAt = Number((await files.match(address))?.headers.get(DUE_AT) ?? 0);
    if (dueAt + KEPT_FOR < now) await files.delete(address);
  }
}

/**
 * Leaves a calendar file where the worker hands it out from, and clears away old ones. A phone opens
 * an address of its own like a calendar from a web page; a file made in the page it may only show.
 *
 * @param now - epoch ms
 * @returns its address; nothing where no worker is in charge
 */
export async function leaveDueFile(file: DueFile, now: number): Promise<string | undefined> {
  if (!("caches" in window) || !navigator.serviceWorker?.controller) return undefined;
  const { href } = new URL(file.path, document.baseURI);
  const headers = { "Content-Type": CALENDAR_TYPE, [DUE_AT]: String(file.dueAt) };
  try {
    const files = await caches.open(DUE_FILES);
    await dropOld(files, now);
    await files.put(href, new Response(file.text, { headers }));
    return href;
  } catch {
    // No room, or a browser that keeps nothing: the file is saved another way.
    return undefined;
  }
}
