/** Shakes the phone: on, off, on ... in ms. False where the phone cannot, or will not now. */
export function vibrate(pattern: readonly number[]): boolean {
  return "vibrate" in navigator && navigator.vibrate([...pattern]);
}

export function stopVibrating(): void {
  if ("vibrate" in navigator) navigator.vibrate(0);
}
