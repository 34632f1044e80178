import { type Language, tongue } from "../words/tongue.ts";
import type { DemoWords } from "./written.ts";

const WORDS: { readonly [One in Language]: () => Promise<DemoWords> } = {
  en: async () => (await import("./words/en.ts")).english,
  es: async () => (await import("./words/es.ts")).spanish,
  fr: async () => (await import("./words/fr.ts")).french,
};

/**
 * What the invented bar wrote, in the language that is spoken now; nothing where it cannot be fetched.
 * Once it lies among what is stored it stays as it is, like all that anybody wrote.
 */
export const demoWords = (): Promise<DemoWords | undefined> =>
  WORDS[tongue.value.language]().catch(() => undefined);
