import { afterEach, expect, test } from "vitest";
import { SUM_RULES } from "../../../app/screens/sums/rules-table.ts";
import { spanish } from "../../../app/words/es.ts";
import { french } from "../../../app/words/fr.ts";
import { ruleText } from "../../../app/words/rule-text.ts";
import { say } from "../../../app/words/say.ts";
import { refusalWords, sayLater } from "../../../app/words/say-later.ts";
import { ENGLISH, type Tongue, tongue } from "../../../app/words/tongue.ts";
import { given, type Rule } from "../../../core/quantity/figure.ts";
import { CUPBOARD } from "../../../core/spec/cupboard-table.ts";
import { RULES } from "../../../core/spec/rules-table.ts";
import { OTHER_TONGUES } from "../../support/world/tongues.ts";

afterEach(() => {
  tongue.value = ENGLISH;
});

const english = { say, sayLater, refusals: refusalWords };

type Saying = (...about: readonly unknown[]) => unknown;

/** Heads and words of a spreadsheet's tables stay English: another program may look for them. */
const FOR_MACHINES = /^sayLater[.]kit[.]table[.](?:batchHeads|readingHeads|words)$/u;

/** Every word and every sentence under a place, by its dotted path. */
function leavesOf(words: object, place = ""): readonly (readonly [string, string | Saying])[] {
  return Object.keys(words).flatMap((key) => {
    const value: unknown = Reflect.get(words, key);
    const path = place === "" ? key : `${place}.${key}`;
    if (FOR_MACHINES.test(path)) return [];
    if (typeof value === "string") return [[path, value] as const];
    if (typeof value === "object" && value !== null) return leavesOf(value, path);
    if (typeof value !== "function") return [];
    const saying: Saying = (...about) => Reflect.apply(value, undefined, about);
    Object.defineProperty(saying, "length", { value: value.length });
    return [[path, saying] as const];
  });
}

const wordsOf = ({ words }: Tongue) =>
  words === undefined
    ? english
    : Object.fromEntries(Object.keys(english).map((place) => [place, words[place] ?? {}]));

const PROBES = [2, "7", ["milk"], { typed: "7", unit: "7", name: "7", nearest: 0.2, most: 2 }];

/** What a saying makes of things as the app may hand it: numbers, texts, a list. */
function saidOf(saying: Saying): readonly string[] {
  const each = PROBES.flatMap((one) => PROBES.map((other) => [one, other]));
  return each.flatMap(([one, other]) => {
    const about = Array.from({ length: saying.length }, (_, at) => (at % 2 === 0 ? one : other));
    try {
      const text = saying(...about);
      return typeof text === "string" ? [text] : [];
    } catch {
      return [];
    }
  });
}

/** Every text of a language by its path; a sentence with gaps filled in a few ways. */
function textsOf(one: Tongue): ReadonlyMap<string, readonly string[]> {
  tongue.value = one;
  return new Map(
    leavesOf(wordsOf(one)).map(([path, leaf]) => [
      path,
      typeof leaf === "string" ? [leaf] : saidOf(leaf),
    ]),
  );
}

test.each(OTHER_TONGUES)(
  "%s has every word, and each takes what the English one takes",
  (_, other) => {
    const shape = (words: object) =>
      leavesOf(words).map(
        ([path, leaf]) => [path, typeof leaf === "string" ? "word" : leaf.length] as const,
      );
    const wanted = shape(english);
    expect(wanted.length).toBeGreaterThan(900);
    expect(new Map(shape(wordsOf(other)).sort())).toEqual(new Map(wanted.toSorted()));
  },
);

/** The same in all three: signs of units, and names. */
const SIGNS = ["ρ", "Brix", "Bx", "C", "F", "g", "ml", "oz", "pH", "Second", "Pour"];
/** Words that are spelt the same in both languages. */
const SPELT_ALIKE: Readonly<Record<string, readonly string[]>> = {
  Spanish: ["No", "punch", "Aroma", "floral", "herbal"],
  French: [
    ...["punch", "Note", "Notes", "Liqueur", "Liqueurs", "Volume", "volume", "Blenders", "Lupin"],
    ...["Version", "Photos", "photos", "Date", "Source", "Gomme", "Parts", "Texture", "Verdict"],
    "litres",
  ],
};

/** What the test itself filled in is no word of the app. */
const FILLED_IN = ["milk", "undefined", "object", "Object", "NaN"];

test.each(OTHER_TONGUES)("nothing in %s was left in English", (name, other) => {
  const alike = new Set([...SIGNS, ...FILLED_IN, ...(SPELT_ALIKE[name] ?? [])]);
  const texts = textsOf(other);
  const left = [...textsOf(ENGLISH)].flatMap(([path, said]) =>
    said
      .filter((text, at) => text === texts.get(path)?.[at])
      .filter((text) => (text.match(/\p{L}+/gu) ?? []).some((word) => !alike.has(word)))
      .map((text) => `${path}: ${text}`),
  );
  expect(left).toEqual([]);
});

const catalogues = import.meta.glob<string>("../../../app/words/**/*.ts", {
  query: "?raw",
  import: "default",
  eager: true,
});

test("a soft hyphen in a catalogue is written so that whoever edits it sees it", () => {
  const files = Object.entries(catalogues);
  expect(files.length).toBeGreaterThan(100);
  expect(files.some(([, text]) => text.includes("\\u00ad"))).toBe(true);
  expect(files.filter(([, text]) => text.includes("\u00ad")).map(([path]) => path)).toEqual([]);
});

test("nothing in Spanish asks or exclaims without saying so at the beginning", () => {
  const marks = (text: string, sign: string) => text.split(sign).length - 1;
  const texts = [...textsOf(spanish).values()].flat();
  const bare = texts.filter(
    (text) => marks(text, "?") !== marks(text, "¿") || marks(text, "!") !== marks(text, "¡"),
  );
  expect(bare).toEqual([]);
});

test("French parts its marks by a narrow space that does not break, and curls its apostrophes", () => {
  const texts = [...textsOf(french).values()].flat();
  expect(texts.filter((text) => text.includes("\u202f:")).length).toBeGreaterThan(50);
  expect(
    texts.filter((text) => /[ \u00a0\p{L}\d][;:!?»](?!\d)|[ \u00a0]%|«[ \p{L}]/u.test(text)),
  ).toEqual([]);
  expect(texts.filter((text) => /\p{L}'\p{L}/u.test(text))).toEqual([]);
});

test.each(OTHER_TONGUES)(
  "%s names all that a new house's cupboard holds, and nothing else",
  (_, other) => {
    const names = other.words?.ingredientNames ?? {};
    expect(Object.keys(names).sort()).toEqual(CUPBOARD.map(({ id }) => id).sort());
    const given = Object.values(names);
    expect(new Set(given).size).toBe(given.length);
    // A strength in the name is that of the figures.
    for (const { id, name } of CUPBOARD) {
      const figures = /\d+(?:[.:]\d+)?(?= %|:\d)/u.exec(name)?.[0] ?? "";
      expect(Reflect.get(names, id)).toContain(figures);
    }
  },
);

const PARTS = ["formula", "source", "limits"] as const;
/** A text with one of these is English prose, not a formula or a title. */
const ENGLISH_PROSE =
  /\b(?:a|and|as|at|by|chosen|definition|even|for|from|in|is|no|of|or|our|proportion|the|to|where|with)\b/u;
const TITLE = /CRC Handbook of Chemistry and Physics/gu;

test.each(OTHER_TONGUES)("%s says how every figure was worked out", (_, other) => {
  tongue.value = other;
  const rules: readonly Rule[] = [
    ...Object.values(RULES),
    ...Object.values(SUM_RULES),
    given("x", 1, "ml").rule,
  ];
  expect(rules.length).toBeGreaterThan(50);
  const left = rules.flatMap((rule) => {
    const said = ruleText(rule);
    return PARTS.filter(
      (part) =>
        ENGLISH_PROSE.test((said[part] ?? "").replaceAll(TITLE, "")) && said[part] === rule[part],
    ).map((part) => `${rule.key} ${part}: ${said[part]}`);
  });
  expect(left).toEqual([]);
  const keys = Object.keys(other.words?.ruleTexts ?? {});
  expect(keys.sort()).toEqual(rules.map(({ key }) => key).sort());
});

test("a part of the catalogue that a screen keeps speaks the language of the moment", () => {
  const { theme } = sayLater.kit;
  expect(theme.dark).toBe("Dark");
  tongue.value = spanish;
  expect(theme.dark).toBe("Oscura");
  expect(say.places.kit).toBe("Ajustes");
  expect(Object.values(sayLater.cautions.house)).toContain(
    "El alcohol solo no conserva nada: entre lo ensayado no hubo ninguna bebida clarificada con leche.",
  );
  tongue.value = french;
  expect(theme.dark).toBe("Sombre");
  tongue.value = ENGLISH;
  expect(theme.dark).toBe("Dark");
});

test("a word that a language lacks is said in English, a code that none knows in none", () => {
  tongue.value = { ...spanish, words: { say: { places: {} } } };
  expect([say.places.kit, say.bench.title, sayLater.kit.title]).toEqual(["Kit", "Bench", "Kit"]);
  expect(say.work.verbs["no-such-step"]).toBeUndefined();
});
