import { field } from "../core/quantity/field.ts";
import { appWindows } from "./windows.ts";

/** The part of an address after the #, from what a notice carries; nothing where it carries none. */
function placeOf(data: unknown): string {
  const address = field(data, "address");
  return typeof address === "string" && address.startsWith("#/") ? address : "";
}

/**
 * Brings the app to the front; the page itself then rings what is due, over whatever it shows. A
 * page that has to be opened begins at the batch that the notice spoke of.
 */
export async function comeBack(worker: ServiceWorkerGlobalScope, data: unknown): Promise<void> {
  const [open] = await appWindows(worker);
  if (open) await open.focus();
  else await worker.clients.openWindow(worker.registration.scope + placeOf(data));
}
