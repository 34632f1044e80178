import { afterEach, expect, test } from "vitest";
import { inventedHistory } from "../../../app/demo/history/invented.ts";
import { demoSpecs } from "../../../app/demo/specs.ts";
import { demoWords } from "../../../app/demo/words.ts";
import { genericCupboard } from "../../../app/pantry.ts";
import { spanish } from "../../../app/words/es.ts";
import { french } from "../../../app/words/fr.ts";
import { ENGLISH, type Tongue, tongue } from "../../../app/words/tongue.ts";
import { TASTE_WORDS } from "../../../core/logbook/taste-words.ts";
import { eventSchema } from "../../../core/run/event.ts";
import { specSchema } from "../../../core/spec/spec.ts";
import { DEMO_SPECS, demoHistory } from "../../support/world/demo-bar.ts";

const NOW = Date.UTC(2026, 10, 26, 3);
const OTHERS = [
  ["Spanish", spanish],
  ["French", french],
] as const;

afterEach(() => {
  tongue.value = ENGLISH;
});

/** What the demo puts on a phone that speaks a language. */
async function laidIn(one: Tongue) {
  tongue.value = one;
  const words = await demoWords();
  if (words === undefined) throw new RangeError(`no demo in ${one.language}`);
  const history = inventedHistory(NOW, words, genericCupboard.value);
  return { specs: demoSpecs(words), history };
}

/** Every text in something, by its dotted path. */
function textsIn(what: unknown, path = ""): readonly (readonly [string, string])[] {
  if (typeof what === "string") return [[path, what]];
  if (typeof what !== "object" || what === null) return [];
  return Object.entries(what).flatMap(([key, held]) => textsIn(held, `${path}.${key}`));
}

/** The same thing with every text taken out: what is left is told in no language. */
const unspoken = (what: unknown): unknown =>
  JSON.parse(JSON.stringify(what), (_, held: unknown) => (typeof held === "string" ? "" : held));

/** Fields of which somebody reads what they hold. */
const READ = /[.](?:name|batch|notes|text|reason|tag|glass|garnish|words[.]\d+)$/u;
/** Drinks that are called so wherever they are poured, and their batches. */
const NAMES = /^(?:Pear Beacon|Boatyard Flip-Side|Harbour Slush|(?:PB|BF|BFS)-\d{4}|)$/u;
/** Spelt the same, and what is stored as a code and shown as a word of the language. */
const ALIKE: readonly string[] = [...TASTE_WORDS, "malt", "Gin 43 %"];

test.each(OTHERS)(
  "put in on a phone that speaks %s, the demo has no English left",
  async (_, one) => {
    const told = await laidIn(one);
    const texts = new Map(textsIn({ specs: DEMO_SPECS, history: demoHistory(NOW) }));
    const read = textsIn(told).filter(([path]) => READ.test(path));
    expect(read.length).toBeGreaterThan(300);
    const left = read.filter(
      ([path, text]) => text === texts.get(path) && !NAMES.test(text) && !ALIKE.includes(text),
    );
    expect(left).toEqual([]);
  },
  30_000,
);

test.each(OTHERS)(
  "in %s it is the same demo: the same ids, moments and figures, whole as the app stores it",
  async (_, one) => {
    const told = await laidIn(one);
    const english = { specs: DEMO_SPECS, history: demoHistory(NOW) };
    const ids = ({ specs, history }: typeof english) =>
      [...specs, ...history.flat()].map(({ id }) => id);
    expect(ids(told)).toEqual(ids(english));
    expect(unspoken(told)).toEqual(unspoken(english));
    for (const spec of told.specs) expect(specSchema.safeParse(spec).success).toBe(true);
    for (const event of told.history.flat())
      expect(eventSchema.safeParse(event).success).toBe(true);
  },
  30_000,
);

test("it speaks the language of the moment", async () => {
  tongue.value = spanish;
  expect((await demoWords())?.history.failedTag).toBe("filtro cegado");
  tongue.value = french;
  expect((await demoWords())?.history.failedTag).toBe("filtre bouché");
  tongue.value = ENGLISH;
  expect((await demoWords())?.history.failedTag).toBe("blinded");
});
