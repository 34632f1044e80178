import { appWindows } from "./windows.ts";

/** Brings the app to the front; the page itself then rings what is due. */
export async function comeBack(worker: ServiceWorkerGlobalScope): Promise<void> {
  const [open] = await appWindows(worker);
  if (open) await open.focus();
  else await worker.clients.openWindow(worker.registration.scope);
}
