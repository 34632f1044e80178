import { signal } from "@preact/signals";

/**
 * Who writes: one window at a time. `elsewhere`: another window does, this one shows what it stores.
 * `newer`: a newer version has written here, and this one only reads.
 */
export type Pen = "asking" | "mine" | "elsewhere" | "newer";

/** Whether this window may write. */
export const pen = signal<Pen>("asking");

const LOCK = "second-pour-pen";

/** A window without locks is taken to be the only one: the log's own count still guards it. */
const locks = (): LockManager | undefined => ("locks" in navigator ? navigator.locks : undefined);

let waiting: AbortController | undefined;
let onTaken: () => Promise<void> = async () => undefined;

let letGo: () => void = () => undefined;

/** Held for as long as the page lives, or until another window takes it or this one lets go. */
const hold = () =>
  new Promise<void>((resolve) => {
    letGo = resolve;
  });

/** Lets go of the pen for good: a newer version in another window has taken the database over. */
export function dropPen(): void {
  pen.value = "newer";
  waiting?.abort();
  letGo();
}

async function become(): Promise<void> {
  waiting = undefined;
  // What the other window stored last is read before anything is written on top of it.
  await onTaken();
  // A newer version may have taken the database over meanwhile.
  if (pen.peek() === "newer") return;
  pen.value = "mine";
  await hold();
}

/**
 * Whether another window took the pen. A browser that forbids locks, or whose page is on its way
 * out, refuses every request alike: asking again would go round for ever, and in WebKit takes the
 * next page down with it.
 */
const isTaken = (fault: unknown): boolean =>
  fault instanceof DOMException && fault.name === "AbortError";

/** Waits its turn: the pen comes here when the window that holds it closes. */
function queue(manager: LockManager): void {
  pen.value = "elsewhere";
  const abort = new AbortController();
  waiting = abort;
  // Taken away, or given up to take it at once: only the first leaves this window waiting.
  manager.request(LOCK, { signal: abort.signal }, become).catch((fault) => {
    if (isTaken(fault) && !abort.signal.aborted) queue(manager);
  });
}

/**
 * Asks for the pen at the start.
 *
 * @param taken - called before this window begins to write after another one did
 * @returns once it is known whether this window may write
 */
export function askForPen(taken: () => Promise<void>): Promise<void> {
  onTaken = taken;
  const manager = locks();
  if (manager === undefined) {
    pen.value = "mine";
    return Promise.resolve();
  }
  return new Promise((resolve) => {
    const asked = manager.request(LOCK, { ifAvailable: true }, (lock) => {
      if (lock === null) {
        queue(manager);
        resolve();
        return undefined;
      }
      pen.value = "mine";
      resolve();
      return hold();
    });
    asked.catch((fault) => {
      if (isTaken(fault)) queue(manager);
      else pen.value = pen.value === "asking" ? "mine" : "elsewhere";
      resolve();
    });
  });
}

/** Takes the pen from the window that holds it; call it only when a person asked for it. */
export function takePen(): void {
  const manager = locks();
  if (manager === undefined || pen.value !== "elsewhere") return;
  waiting?.abort();
  pen.value = "asking";
  manager.request(LOCK, { steal: true }, become).catch((fault) => {
    if (isTaken(fault)) queue(manager);
    else pen.value = "elsewhere";
  });
}
