import { messageSW, Workbox } from "workbox-window";
import type { PageMessage, WorkerReport } from "../service-worker/messages.ts";

const TAKE_OVER_MS = 4000;
const RELOADED_FROM = "second-pour.reloaded-from";

export interface UpdateWatch {
  /** A newer version is stored and waits. It goes on waiting until `applyUpdate`. */
  readonly onWaiting: (version: string) => void;
  /** Called once with the check to make: hourly, and each time the page becomes visible. */
  readonly scheduleChecks?: (check: () => void) => void;
}

/** Whether this phone keeps the app for use without a network. */
export type OfflineCopy = "kept" | "unsupported" | "refused";

/** What came of `applyUpdate`; only the first leaves this page. */
export type UpdateOutcome = "reloading" | "other-window-open" | "close-and-reopen";

const say = (worker: ServiceWorker, message: PageMessage): Promise<unknown> =>
  messageSW(worker, message);

const ask = (worker: ServiceWorker): Promise<WorkerReport> =>
  messageSW(worker, { type: "REPORT" } satisfies PageMessage);

/**
 * Keeps the app on this phone, and says when a newer version waits. Never reloads.
 *
 * The answer comes late: "kept" once every file is stored and the worker runs, "refused" when the
 * browser forbids a worker or found no room for the files.
 */
export async function watchForUpdate(watch: UpdateWatch): Promise<OfflineCopy> {
  if (!("serviceWorker" in navigator)) return "unsupported";
  const workbox = new Workbox("./service-worker.js", { updateViaCache: "none" });
  workbox.addEventListener("waiting", async ({ sw }) => {
    if (sw) watch.onWaiting((await ask(sw)).version);
  });
  try {
    const registration = await workbox.register();
    // A check that finds no network is no news: the next one will do.
    watch.scheduleChecks?.(() => void registration?.update().catch(() => undefined));
  } catch {
    return "refused";
  }
  const gone = new Promise<OfflineCopy>((resolve) =>
    workbox.addEventListener("redundant", () => resolve("refused")),
  );
  const running = navigator.serviceWorker.ready.then((): OfflineCopy => "kept");
  return Promise.race([running, gone]);
}

/**
 * Lets the waiting version in and reloads into it. Call it only when a person asked for it and no
 * step is running.
 *
 * @param pause - resolves after that many milliseconds (the page's clock)
 */
export async function applyUpdate(pause: (ms: number) => Promise<void>): Promise<UpdateOutcome> {
  const registration = await navigator.serviceWorker.getRegistration();
  const waiting = registration?.waiting;
  if (waiting) {
    const report = await Promise.race([ask(waiting), pause(TAKE_OVER_MS)]);
    // The new worker drops the old version's files, under the feet of the other window.
    if (report && report.windows > 1) return "other-window-open";
    const controlling = new Promise<void>((resolve) =>
      navigator.serviceWorker.addEventListener("controllerchange", () => resolve(), { once: true }),
    );
    void say(waiting, { type: "SKIP_WAITING" });
    // Some phones never report the change of worker (WebKit bug 199110): go on after a while.
    await Promise.race([controlling, pause(TAKE_OVER_MS)]);
  }
  return reloadOnce();
}

/** A reload that lands on the old version again would do so for ever. */
function reloadOnce(): UpdateOutcome {
  if (sessionStorage.getItem(RELOADED_FROM) === __APP_VERSION__) return "close-and-reopen";
  sessionStorage.setItem(RELOADED_FROM, __APP_VERSION__);
  location.reload();
  return "reloading";
}
