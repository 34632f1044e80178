import { computed, effect } from "@preact/signals";
import { watchWater } from "./parts/wet-watch.ts";
import { now, settings, wetHands } from "./state.ts";

/** How long the question stands, ms; more water renews it. Judgement. */
const ASK_FOR = 30_000;

/** Whether the page is worked by one giant target a step. */
export const isWet = computed(() => {
  const choice = settings.value.wetHands;
  if (choice === "never") return false;
  return choice === "always" ? wetHands.value.type !== "dry-now" : wetHands.value.type === "wet";
});

/** Whether to ask if the hands are wet. */
export const asksWet = computed(() => {
  const asked = wetHands.value;
  const open = asked.type === "asked" && asked.until > now.value;
  return open && settings.value.wetHands === "offer";
});

let watching = false;

/** From now on water on the glass is noticed, and every hold of the page takes longer while wet. */
export function watchWetHands(): void {
  if (watching) return;
  watching = true;
  watchWater(() => {
    if (!isWet.value) wetHands.value = { type: "asked", until: now.value + ASK_FOR };
  });
  effect(() => {
    document.documentElement.toggleAttribute("data-wet", isWet.value);
  });
}
