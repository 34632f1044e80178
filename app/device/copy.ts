/** Puts a text on the clipboard; call inside a tap. False where the browser will not. */
export async function copyText(text: string): Promise<boolean> {
  if (!("clipboard" in navigator)) return false;
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
