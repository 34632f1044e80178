import { pressGuard } from "./page-guard.ts";
import { LEAST_CONTACT } from "./press-rules.ts";

/** A touch reader presses for its user with a touch of no size (from memory). */
const isAssistant = ({ radiusX, radiusY, force }: Touch): boolean =>
  radiusX === 0 && radiusY === 0 && force === 0;

/**
 * Keeps links from drops, and from the finger that has just acted on a control which then uncovered
 * a link. What controls ask of a touch is asked before it becomes a click; keys, mice and touch
 * readers are not asked.
 */
export function guardLinks(): void {
  const guard = pressGuard();
  let began = 0;
  let alone = true;
  const settle = (event: Event) => {
    if (!(event instanceof TouchEvent) || !event.cancelable) return;
    const [touch] = event.changedTouches;
    if (touch === undefined || isAssistant(touch)) return;
    const drop = !alone || event.timeStamp - began < LEAST_CONTACT;
    // Nothing becomes a click while controls are deaf, nor where one acted meanwhile.
    if (drop || began < guard.quietUntil()) event.preventDefault();
  };
  document.addEventListener(
    "touchstart",
    ({ touches, timeStamp, target }) => {
      alone = touches.length === 1;
      if (alone) began = timeStamp;
      // A touch ends at what it began on, and that may have left the page by then.
      target?.addEventListener("touchend", settle, { passive: false });
    },
    { capture: true, passive: true },
  );
}
