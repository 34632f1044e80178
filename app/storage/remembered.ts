/** The database is open only a moment after the first paint: the page looks here before. */
const LANGUAGE = "second-pour-language";

/** The language that was chosen last on this phone, or `auto`. */
export function rememberedLanguage(): string {
  try {
    return globalThis.localStorage.getItem(LANGUAGE) ?? "auto";
  } catch {
    return "auto";
  }
}

/** Keeps the choice for the next first paint; a browser that keeps nothing paints as the phone speaks. */
export function rememberLanguage(choice: string): void {
  try {
    globalThis.localStorage.setItem(LANGUAGE, choice);
  } catch {
    // The database has it all the same.
  }
}
