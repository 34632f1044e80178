import { makePressGuard, type PressGuard } from "./press-guard.ts";

let guard: PressGuard | null = null;

/** The one guard of this page; it begins to watch when the first control asks. */
export function pressGuard(): PressGuard {
  if (guard) return guard;
  const made = makePressGuard();
  const early = { capture: true, passive: true };
  document.addEventListener(
    "pointerdown",
    (event) => made.touched(event.pointerId, event.pointerType, event.isPrimary),
    early,
  );
  document.addEventListener("pointerup", (event) => made.lifted(event.pointerId), early);
  document.addEventListener("pointercancel", (event) => made.lifted(event.pointerId), early);
  document.addEventListener("visibilitychange", made.lost);
  window.addEventListener("blur", made.lost);
  guard = made;
  return made;
}
