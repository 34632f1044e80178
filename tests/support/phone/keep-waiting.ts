import type { Page } from "playwright-core";

/**
 * Keeps everything that is to be written to the log waiting, as a slow phone would.
 *
 * @returns how to let it be written
 */
export async function keepWaiting(page: Page): Promise<() => Promise<void>> {
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("second-pour");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const events = db.transaction("events", "readwrite").objectStore("events");
          // A transaction stays open for as long as something is asked of it.
          const ask = () => {
            if (Reflect.get(globalThis, "letGo") === true) db.close();
            else events.count().onsuccess = ask;
          };
          Reflect.set(globalThis, "letGo", false);
          ask();
          resolve();
        };
      }),
  );
  return () => page.evaluate(() => void Reflect.set(globalThis, "letGo", true));
}
