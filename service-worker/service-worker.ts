import { clientsClaim } from "workbox-core";
import {
  addRoute,
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  precache,
} from "workbox-precaching";
import { NavigationRoute, registerRoute } from "workbox-routing";
import { isDueFile } from "../core/board/calendar/due-file.ts";
import { dueFile } from "./due-file.ts";
import type { PageMessage, WorkerReport } from "./messages.ts";
import { comeBack } from "./notification.ts";
import { pageFor } from "./outline.ts";
import { appWindows } from "./windows.ts";

declare const self: ServiceWorkerGlobalScope;

const appPath = new URL(self.registration.scope).pathname;

precache(self.__WB_MANIFEST);
cleanupOutdatedCaches();
// Asked before what answers every other address with the app itself.
registerRoute(
  ({ url, sameOrigin }) => sameOrigin && isDueFile(url.pathname, appPath),
  ({ url }) => dueFile(url),
);
const builtPage = createHandlerBoundToURL("index.html");
// Before the stored files: they would answer with the page as it is built.
registerRoute(
  ({ request, url }) => request.mode === "navigate" && url.pathname === appPath,
  (asked) => pageFor(asked.request.url, self.registration.scope, async () => builtPage(asked)),
);
addRoute();
registerRoute(new NavigationRoute(builtPage));

// The first page is claimed so that a newer worker waits for it too, instead of taking over
// while it runs. A newer worker is never let in by this: only by SKIP_WAITING.
clientsClaim();

async function report(): Promise<WorkerReport> {
  const windows = await appWindows(self);
  return { version: __APP_VERSION__, windows: windows.length };
}

self.addEventListener("message", (event) => {
  const message: PageMessage = event.data;
  switch (message.type) {
    case "SKIP_WAITING":
      event.waitUntil(self.skipWaiting());
      break;
    case "REPORT":
      event.waitUntil(report().then((answer) => event.ports[0]?.postMessage(answer)));
      break;
  }
});

self.addEventListener("notificationclick", (event) => {
  event.notification.close();
  event.waitUntil(comeBack(self, event.notification.data));
});
