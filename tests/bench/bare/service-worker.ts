import { clientsClaim } from "workbox-core";
import { createHandlerBoundToURL, precacheAndRoute } from "workbox-precaching";
import { NavigationRoute, registerRoute } from "workbox-routing";

/** Only what is used here: a worker's own types do not go with a page's. */
declare const self: {
  readonly __WB_MANIFEST: { readonly url: string; readonly revision: string | null }[];
};

precacheAndRoute(self.__WB_MANIFEST);
registerRoute(new NavigationRoute(createHandlerBoundToURL("index.html")));
clientsClaim();
