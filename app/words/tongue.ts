import { signal } from "@preact/signals";
import type { NumberStyle } from "../../core/quantity/leading-number.ts";
import type { Unit } from "../../core/quantity/measures-table.ts";

/** The languages there are, as their tags. */
export const LANGUAGES = ["en", "es", "fr"] as const;
export type Language = (typeof LANGUAGES)[number];

/** What is spoken now. English has no words of its own here: it lies under all others. */
export interface Tongue {
  readonly language: Language;
  /** For numbers, dates and times. */
  readonly locale: string;
  /** For numbers, where the phone's country writes them otherwise. */
  readonly figures?: string;
  readonly numbers: NumberStyle;
  /** What parts a figure from its unit. */
  readonly gap: string;
  /** What stands before a colon and a semicolon. */
  readonly gapBeforeColon: string;
  /** A thousand, a million and a thousand million bytes. */
  readonly sizes: readonly [string, string, string];
  /** The sign of a day's length: "2 d 3 h". */
  readonly day: string;
  /** Whether the sign of the money stands before the figure. */
  readonly signFirst: boolean;
  /** What one and many of a unit are called, where that is not its own sign. */
  readonly units: { readonly [Name in Unit]?: readonly [one: string, many: string] };
  /** Each place's words. */
  readonly words?: Readonly<Record<string, object>>;
}

export const ENGLISH: Tongue = {
  language: "en",
  locale: "en-GB",
  numbers: "1,000.5",
  gap: " ",
  gapBeforeColon: "",
  day: "d",
  sizes: ["kB", "MB", "GB"],
  signFirst: true,
  units: {
    dash: ["dash", "dashes"],
    drop: ["drop", "drops"],
    barspoon: ["barspoon", "barspoons"],
    cup: ["cup", "cups"],
    pint: ["pint", "pints"],
    quart: ["quart", "quarts"],
    gallon: ["gallon", "gallons"],
  },
};

export const tongue = signal<Tongue>(ENGLISH);

function view<T extends object>(english: T, spoken: () => object | undefined): T {
  const parts = new Map<PropertyKey, object>();
  return new Proxy(english, {
    get(_, key) {
      const base: unknown = Reflect.get(english, key);
      if (typeof base !== "object" || base === null) {
        const words = spoken();
        return words !== undefined && Object.hasOwn(words, key) ? Reflect.get(words, key) : base;
      }
      let part = parts.get(key);
      if (part === undefined) {
        part = view(base, () => {
          const words = spoken();
          return words && Reflect.get(words, key);
        });
        parts.set(key, part);
      }
      return part;
    },
  });
}

/**
 * Words that are read anew at every use, so that a screen which keeps a part of them in a constant
 * still speaks the language of the moment, and is drawn again when that changes.
 */
export const live = <T extends object>(place: string, english: T): T =>
  view(english, () => tongue.value.words?.[place]);
