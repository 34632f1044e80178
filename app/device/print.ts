/**
 * Opens the print window; call inside a tap. False where the browser has none. Some open nothing
 * from the home screen and do not say so, so the page offers another way beside it.
 */
export function printPage(): boolean {
  if (!("print" in window)) return false;
  window.print();
  return true;
}
