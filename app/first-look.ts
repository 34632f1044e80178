import type { Clock } from "./clock.ts";

/** A page that nobody looks at paints nothing: it goes on after this long all the same, ms. */
const UNSEEN = 300;

let open: () => void = () => undefined;

/**
 * Kept once the first screen stands before somebody's eyes. What that screen does not need waits
 * for it: on a slow phone each file fetched meanwhile makes the screen come later.
 */
export const firstLook = new Promise<void>((resolve) => {
  open = resolve;
});

/** Says that the first screen is drawn; `firstLook` is kept when the browser has painted it. */
export function drawn(clock: Clock): void {
  clock.after(UNSEEN, open);
  // The frame that is coming paints it; what is asked for within that frame runs after it.
  requestAnimationFrame(() => clock.after(0, open));
}
