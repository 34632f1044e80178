import { routes } from "../../../app/routes.ts";
import type { Settings } from "../../../app/storage/settings.ts";
import type { World } from "../world/afternoon.ts";
import { type Bar, emptyPhone, OPENS, putOn } from "./walk-page.ts";

/** Chooses in the phone's own database what Kit would; the page must be opened anew. */
export const choose = ({ page }: Bar, chosen: Partial<Settings>): Promise<void> =>
  page.evaluate((settings) => {
    if (settings.language !== undefined) {
      localStorage.setItem("second-pour-language", settings.language);
    }
    return new Promise<void>((resolve, reject) => {
      const opening = indexedDB.open("second-pour");
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const db = opening.result;
        const tx = db.transaction("settings", "readwrite");
        tx.objectStore("settings").put(settings, "settings");
        tx.onerror = () => reject(tx.error);
        tx.oncomplete = () => {
          db.close();
          resolve();
        };
      };
    });
  }, chosen);

/** Runs in the page before the app: counts what goes to the printer, and prints nothing. */
export function countPrints(): void {
  Reflect.set(globalThis, "printed", 0);
  Reflect.set(globalThis, "print", () => {
    Reflect.set(globalThis, "printed", Number(Reflect.get(globalThis, "printed")) + 1);
  });
}

/** Empties the phone, furnishes it anew, and opens its Bench. The sound was checked in this shift. */
export async function openBench(bar: Bar, world: World, chosen: Partial<Settings>): Promise<void> {
  const { page, server } = bar;
  await page.goto("about:blank");
  await emptyPhone(bar);
  await page.goto(server.url);
  await page.locator("main").waitFor();
  await putOn(page, "events", world.events);
  await putOn(page, "planned", world.planned);
  await putOn(page, "specs", world.specs);
  await choose(bar, { soundHeardAt: OPENS, ...chosen });
  await page.goto("about:blank");
  await page.goto(server.url + routes.bench);
  await page.locator(".bench-row").first().waitFor();
  await page.locator(".ahead-next").waitFor();
}
