import { type DatabaseNews, type Opened, openDatabase } from "./storage/database.ts";

let superseded = false;
let onSuperseded = (): void => {
  superseded = true;
};

// Asked for while the rest of the page is still being read: a slow phone opens it meanwhile.
const opened = openDatabase({ onSuperseded: () => onSuperseded(), onLost: () => undefined });
opened.catch(() => undefined);

/**
 * The database that was asked for when the page began.
 *
 * @throws DOMException when the browser refuses storage
 */
export function openedEarly(news: DatabaseNews): Promise<Opened> {
  onSuperseded = news.onSuperseded;
  if (superseded) onSuperseded();
  return opened;
}
