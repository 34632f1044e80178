import type { Page } from "playwright-core";

/** Runs in the page before the app: whether the page is in sight is then ours to say. */
export function takeSight(): void {
  let sight: DocumentVisibilityState = "visible";
  Object.defineProperty(document, "visibilityState", { get: () => sight });
  Object.defineProperty(document, "hidden", { get: () => sight === "hidden" });
  Reflect.set(globalThis, "setSight", (next: DocumentVisibilityState) => {
    sight = next;
    document.dispatchEvent(new Event("visibilitychange", { bubbles: true }));
  });
}

/** Puts a page that `takeSight` ran in out of sight, or back into it. */
export const setSight = (page: Page, next: DocumentVisibilityState): Promise<void> =>
  page.evaluate((to) => Reflect.get(globalThis, "setSight")(to), next);
