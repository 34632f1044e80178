import { effect } from "@preact/signals";
import { type JSX, render } from "preact";
import type { Clock } from "./clock.ts";
import { opening } from "./state.ts";

/** The times in an outline stand still: nobody may take them for a clock, ms. */
const STILL_FOR = 2000;

/**
 * Draws the page: at once or, where the worker began it with the Bench's outline, as soon as there
 * is more to say than that.
 *
 * @returns to be called when storage is open and the screen fetched
 */
export function drawInto(
  root: HTMLElement | null,
  page: () => JSX.Element,
  clock: Clock,
): () => void {
  let drawn = false;
  const draw = () => {
    if (drawn || root === null) return;
    drawn = true;
    delete root.dataset.outline;
    render(page(), root);
  };
  if (root?.dataset.outline === undefined) draw();
  else clock.after(STILL_FOR, draw);
  effect(() => {
    const { type } = opening.value;
    if (type === "failed" || type === "working-out") draw();
  });
  return draw;
}
