import { ENGLISH, LANGUAGES, type Language, type Tongue, tongue } from "./tongue.ts";

/** What the house may choose: a language, or that of the phone. */
export type LanguageChoice = "auto" | Language;

/** The languages whose words are all there: only these are offered. English needs no fetching. */
const WORDS: { readonly [Other in Language]?: () => Promise<Tongue> } = {
  es: async () => {
    const [{ spanish }, { inCountry }] = await Promise.all([
      import("./es.ts"),
      import("./es/country.ts"),
    ]);
    return inCountry(spanish, navigator.languages);
  },
  fr: async () => (await import("./fr.ts")).french,
};

const offered = LANGUAGES.filter((one) => one === "en" || WORDS[one] !== undefined);

/** What may be chosen in Kit. */
export const CHOICES: readonly LanguageChoice[] = ["auto", ...offered];

/** The language of a choice; an unknown one is that of the phone. */
function languageOf(choice: string): Language {
  const tags = [choice, ...navigator.languages].map((tag) => tag.slice(0, 2).toLowerCase());
  return tags.flatMap((tag) => offered.find((one) => one === tag) ?? [])[0] ?? "en";
}

let asked: Language = "en";

/** Speaks a language from here on; where its words cannot be fetched, that of before goes on. */
export async function speak(choice: string): Promise<void> {
  const language = languageOf(choice);
  asked = language;
  const next = await (WORDS[language]?.().catch(() => undefined) ?? ENGLISH);
  // Another may have been asked for meanwhile.
  if (next === undefined || asked !== language) return;
  tongue.value = next;
  document.documentElement.lang = language;
}
