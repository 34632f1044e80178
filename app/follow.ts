import { effect } from "@preact/signals";
import type { Clock } from "./clock.ts";
import { address, notice, now, opening, settings } from "./state.ts";
import { rememberLanguage } from "./storage/remembered.ts";
import { degreesChosen } from "./words/house-units.ts";
import { speak } from "./words/language.ts";

const TICK = 1000;

/** Redraws once a second, and whenever the page comes back into sight. */
export function keepTime(clock: Clock): void {
  const tick = () => {
    now.value = clock.now();
    const shown = notice.value;
    if (shown !== undefined && shown.until <= now.value) notice.value = undefined;
  };
  tick();
  clock.every(TICK, tick);
  document.addEventListener("visibilitychange", tick);
}

/** What is shown follows the address. */
export function followAddress(): void {
  const read = () => {
    address.value = location.hash;
  };
  addEventListener("hashchange", read);
  read();
}

/** What style sheets and words must know of the house's choices. */
export function followChoices(): void {
  const root = document.documentElement;
  effect(() => {
    const { theme, hand, glove, degrees } = settings.value;
    degreesChosen.value = degrees;
    if (theme === "auto") delete root.dataset.theme;
    else root.dataset.theme = theme;
    root.dataset.hand = hand;
    root.toggleAttribute("data-glove", glove);
  });
  effect(() => {
    // Before that nobody knows what was chosen.
    if (opening.value.type !== "ready") return;
    const { language } = settings.value;
    rememberLanguage(language);
    void speak(language);
  });
}
