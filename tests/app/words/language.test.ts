import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { rememberedLanguage, rememberLanguage } from "../../../app/storage/remembered.ts";
import { CHOICES, speak } from "../../../app/words/language.ts";
import { tongue } from "../../../app/words/tongue.ts";

const root = { lang: "en" };

/** A phone that prefers these languages, the dearest first. */
function phoneOf(...languages: readonly string[]): void {
  vi.stubGlobal("navigator", { languages });
}

beforeEach(() => {
  vi.stubGlobal("document", { documentElement: root });
  phoneOf("en-GB");
});
afterEach(async () => {
  await speak("en");
  vi.unstubAllGlobals();
});

test("the phone's language and the three there are may be chosen", () => {
  expect(CHOICES).toEqual(["auto", "en", "es", "fr"]);
});

test.each([
  ["auto", ["es-MX", "en"], "es"],
  ["auto", ["de-AT", "fr-CA", "es"], "fr"],
  ["auto", ["de", "ja"], "en"],
  ["auto", [], "en"],
  ["fr", ["es"], "fr"],
  ["en", ["es"], "en"],
  ["something stored by another version", ["es"], "es"],
] as const)("chosen %s on a phone of %j: %s is spoken", async (choice, languages, spoken) => {
  phoneOf(...languages);
  await speak(choice);
  expect([tongue.value.language, root.lang]).toEqual([spoken, spoken]);
});

test("Spanish takes the figures of the phone's own country", async () => {
  phoneOf("es-MX", "en-US");
  await speak("auto");
  expect([tongue.value.figures, tongue.value.numbers]).toEqual(["es-MX", "1,000.5"]);
  phoneOf("es-ES");
  await speak("auto");
  expect([tongue.value.figures, tongue.value.numbers]).toEqual([undefined, "1.000,5"]);
});

test("of two asked for at once, the later is spoken", async () => {
  await Promise.all([speak("es"), speak("fr"), speak("en")]);
  expect(tongue.value.language).toBe("en");
  await Promise.all([speak("en"), speak("fr")]);
  expect(tongue.value.language).toBe("fr");
});

test("the choice is kept for the next first paint; a browser that keeps nothing does no harm", () => {
  const kept = new Map<string, string>();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  });
  expect(rememberedLanguage()).toBe("auto");
  rememberLanguage("fr");
  expect(rememberedLanguage()).toBe("fr");
  const refuse = () => {
    throw new Error("denied");
  };
  vi.stubGlobal("localStorage", { getItem: refuse, setItem: refuse });
  rememberLanguage("es");
  expect(rememberedLanguage()).toBe("auto");
});
