/** The app's own windows: others of the same origin may belong to a neighbour on the same host. */
export async function appWindows(
  worker: ServiceWorkerGlobalScope,
): Promise<readonly WindowClient[]> {
  const windows = await worker.clients.matchAll({ type: "window", includeUncontrolled: true });
  return windows.filter((window) => window.url.startsWith(worker.registration.scope));
}
