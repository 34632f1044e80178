const typedIn = new WeakSet<EventTarget>();

/** From now on it is known which fields somebody typed in. */
export function watchTyping(): void {
  const note = ({ target }: Event) => {
    if (target !== null) typedIn.add(target);
  };
  document.addEventListener("input", note, { capture: true });
}

/**
 * Whether something stands on the screen that somebody has typed and not handed in: a field that is
 * handed in is emptied, or gone. Only our own pad writes into fields that take no keyboard.
 */
export const isHalfTyped = (): boolean =>
  [...document.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>("input, textarea")].some(
    (field) => field.value !== "" && (field.readOnly || typedIn.has(field)),
  );
