import type { AlarmKind } from "../../core/run/alarm.ts";

/** On, off, on ... in ms: each fits into the second after which it is begun again. */
const SHAKES: Readonly<Record<AlarmKind, readonly number[]>> = {
  do: [400, 200, 400],
  look: [150, 150, 150],
  done: [600],
};

/** Shakes the phone, by what is asked for. False where the phone cannot, or will not now. */
export function vibrate(kind: AlarmKind): boolean {
  return "vibrate" in navigator && navigator.vibrate([...SHAKES[kind]]);
}

export function stopVibrating(): void {
  if ("vibrate" in navigator) navigator.vibrate(0);
}
