import type { TasteWord } from "../../../core/logbook/taste-words.ts";
import type { Aspect, Repeat, Scores, Verdict } from "../../../core/run/taste.ts";

const aspects: Readonly<Record<Aspect, string>> = {
  clarity: "Clarity",
  colour: "Colour kept",
  aroma: "Aroma",
  sweetness: "Sweetness",
  acid: "Acid",
  spirit: "Spirit",
  texture: "Texture",
  finish: "Finish",
};

/** What 0 and 10 stand for. */
const ends: Readonly<Record<Aspect, string>> = {
  clarity: "0 cloudy, 10 bright",
  colour: "0 all gone, 10 as poured in",
  aroma: "0 nothing, 10 fills the room",
  sweetness: "0 none, 10 cloying",
  acid: "0 none, 10 biting",
  spirit: "0 hidden, 10 all that is left",
  texture: "0 watery, 10 silky",
  finish: "0 gone at once, 10 stays long",
};

const codes: Readonly<Record<TasteWord, string>> = {
  bright: "bright",
  clean: "clean",
  fruity: "fruity",
  floral: "floral",
  herbal: "herbal",
  spicy: "spicy",
  nutty: "nutty",
  toasty: "toasty",
  smoky: "smoky",
  silky: "silky",
  round: "round",
  creamy: "creamy",
  milky: "milky",
  thin: "thin",
  chalky: "chalky",
  grippy: "grippy",
  dry: "dry",
  sharp: "sharp",
  bitter: "bitter",
  hot: "hot",
  flat: "flat",
  cooked: "cooked",
  stale: "stale",
  "sour-milk": "sour milk",
};

const verdicts: Readonly<Record<Verdict, string>> = {
  good: "Good",
  fair: "Fair",
  poor: "Poor",
};

const repeats: Readonly<Record<Repeat, string>> = {
  yes: "make it again",
  "with-changes": "make it again with changes",
  no: "do not make it again",
};

const scoreWords = (scores: Scores): string =>
  Object.entries(aspects)
    .flatMap(([aspect, name]) => {
      const score: number | undefined = Reflect.get(scores, aspect);
      return score === undefined ? [] : [`${name.toLowerCase()} ${score}`];
    })
    .join(", ");

/** What the tasting sheet, the verdict and the tags say. */
export const tasting = {
  title: "Tasting",
  aspects,
  ends,
  codes,
  verdicts,
  repeats,
  said: (by: string, scores: Scores, words: readonly string[]) => {
    const told = words.map((word) => Reflect.get(codes, word) ?? word).join(", ");
    return `Tasted by ${by}: ${[scoreWords(scores), told].filter((one) => one !== "").join("; ")}`;
  },
  none: "Nobody has tasted it yet. A minute with a glass tells later which batch to make again.",
  tasters: (count: number) =>
    count === 1 ? "One taster" : `Means of ${count} tasters, the latest tasting of each`,
  by: (who: string, when: string) => `${who}, ${when}`,
  begin: "Taste it now",
  close: "Put the sheet away",
  notTasted: "–",
  less: (aspect: string) => `${aspect}: less`,
  more: (aspect: string) => `${aspect}: more`,
  words: "Words for it",
  chosen: (word: string) => `✓ ${word}`,
  own: "Another word",
  addWord: "Add the word",
  who: "Who tasted?",
  another: "Other initials",
  padDone: "Take these initials",
  keep: "Note this tasting",
  keepAs: (who: string) => `by ${who}`,
  kept: "Tasting noted",
  verdict: {
    title: "Verdict",
    none: "No verdict yet. It says at a glance whether to make it again.",
    give: "Give a verdict",
    change: "Change the verdict",
    what: "What is it like?",
    again: "Make it again?",
    repeat: { yes: "Yes", "with-changes": "With changes", no: "No" },
    why: "Why, or what to change",
    keep: "Note the verdict",
    kept: "Verdict noted",
    close: "Leave it",
  },
  tags: {
    title: "Tags",
    none: "No tags yet. The Logbook finds batches by them.",
    add: "Add a tag",
    field: "New tag",
    used: "Used before",
    takeOff: (tag: string) => `Take off the tag ${tag}`,
    added: (tag: string) => `Tagged ${tag}`,
    removed: (tag: string) => `Tag ${tag} taken off`,
  },
};
