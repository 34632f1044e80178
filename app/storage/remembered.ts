// What the page must know, or must not lose, where the database is too far away: small things that
// are read and written at once. A browser that keeps nothing is lived with. Words never change.
const PREFIX = "second-pour";

const nameOf = (what: string): string => `${PREFIX}-${what}`;

function read(what: string): string | null {
  try {
    return globalThis.localStorage.getItem(nameOf(what));
  } catch {
    return null;
  }
}

function write(what: string, text: string | undefined): void {
  try {
    if (text === undefined) globalThis.localStorage.removeItem(nameOf(what));
    else globalThis.localStorage.setItem(nameOf(what), text);
  } catch {
    // No room, or not allowed: the page itself still has it.
  }
}

/** The language that was chosen last on this phone, or `auto`. The first paint needs it. */
export const rememberedLanguage = (): string => read("language") ?? "auto";

/** Keeps the choice for the next first paint. */
export const rememberLanguage = (choice: string): void => write("language", choice);

/** Some values by name, kept together. */
export interface KeptShelf {
  /** What lies there, unchecked; nothing where it is damaged. */
  readonly read: () => object;
  readonly write: (all: object) => void;
}

/** A place for values of one kind. */
export const keptShelf = (what: string): KeptShelf => ({
  read: () => {
    try {
      const all: unknown = JSON.parse(read(what) ?? "{}");
      return typeof all === "object" && all !== null ? all : {};
    } catch {
      return {};
    }
  },
  write: (all) => write(what, Object.keys(all).length === 0 ? undefined : JSON.stringify(all)),
});
