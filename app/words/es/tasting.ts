import type { TasteWord } from "../../../core/logbook/taste-words.ts";
import type { Aspect, Repeat, Scores, Verdict } from "../../../core/run/taste.ts";
import type * as english from "../en/tasting.ts";
import type { Spoken } from "../spoken.ts";

const aspects: Readonly<Record<Aspect, string>> = {
  clarity: "Claridad",
  colour: "Color que queda",
  aroma: "Aroma",
  sweetness: "Dulzor",
  acid: "Acidez",
  spirit: "Alcohol",
  texture: "Textura",
  finish: "Final",
};

const ends: Readonly<Record<Aspect, string>> = {
  clarity: "0 turbio, 10 brillante",
  colour: "0 nada, 10 como se vertió",
  aroma: "0 nada, 10 llena la sala",
  sweetness: "0 nada, 10 empalagoso",
  acid: "0 nada, 10 muerde",
  spirit: "0 oculto, 10 es lo único",
  texture: "0 aguado, 10 sedoso",
  finish: "0 se va, 10 se queda",
};

const codes: Readonly<Record<TasteWord, string>> = {
  bright: "vivo",
  clean: "limpio",
  fruity: "afrutado",
  floral: "floral",
  herbal: "herbal",
  spicy: "especiado",
  nutty: "a nuez",
  toasty: "tostado",
  smoky: "ahumado",
  silky: "sedoso",
  round: "redondo",
  creamy: "cremoso",
  milky: "lácteo",
  thin: "ligero",
  chalky: "a tiza",
  grippy: "astringente",
  dry: "seco",
  sharp: "punzante",
  bitter: "amargo",
  hot: "ardiente",
  flat: "plano",
  cooked: "cocido",
  stale: "viejo",
  "sour-milk": "leche agria",
};

const verdicts: Readonly<Record<Verdict, string>> = {
  good: "Bueno",
  fair: "Pasable",
  poor: "Flojo",
};

const repeats: Readonly<Record<Repeat, string>> = {
  yes: "repetirlo",
  "with-changes": "repetirlo con cambios",
  no: "no repetirlo",
};

const scoreWords = (scores: Scores): string =>
  Object.entries(aspects)
    .flatMap(([aspect, name]) => {
      const score: number | undefined = Reflect.get(scores, aspect);
      return score === undefined ? [] : [`${name.toLowerCase()} ${score}`];
    })
    .join(", ");

export const tasting: Spoken<typeof english.tasting> = {
  title: "Cata",
  aspects,
  ends,
  codes,
  verdicts,
  repeats,
  said: (by, scores, words) => {
    const told = words.map((word) => Reflect.get(codes, word) ?? word).join(", ");
    return `Probado por ${by}: ${[scoreWords(scores), told].filter((one) => one !== "").join("; ")}`;
  },
  none: "Nadie lo ha probado aún. Un minuto con una copa dirá luego qué lote repetir.",
  tasters: (count) =>
    count === 1 ? "Un catador" : `Medias de ${count} catadores, la última cata de cada uno`,
  by: (who, when) => `${who}, ${when}`,
  begin: "Probarlo ahora",
  close: "Dejar la hoja",
  notTasted: "–",
  less: (aspect) => `${aspect}: menos`,
  more: (aspect) => `${aspect}: más`,
  words: "Palabras para ello",
  chosen: (word) => `✓ ${word}`,
  own: "Otra palabra",
  addWord: "Añadir la palabra",
  who: "¿Quién probó?",
  another: "Otras iniciales",
  padDone: "Tomar estas iniciales",
  keep: "Anotar esta cata",
  keepAs: (who) => `por ${who}`,
  kept: "Cata anotada",
  verdict: {
    title: "Veredicto",
    none: "Aún sin veredicto. Dice de un vistazo si hay que repetirlo.",
    give: "Dar un veredicto",
    change: "Cambiar el veredicto",
    what: "¿Cómo es?",
    again: "¿Repetirlo?",
    repeat: { yes: "Sí", "with-changes": "Con cambios", no: "No" },
    why: "Por qué, o qué cambiar",
    keep: "Anotar el veredicto",
    kept: "Veredicto anotado",
    close: "Dejarlo",
  },
  tags: {
    title: "Marcadores",
    none: "Aún sin marcadores. El Diario encuentra lotes por ellos.",
    add: "Añadir un marcador",
    field: "Marcador nuevo",
    used: "Usados antes",
    takeOff: (tag) => `Quitar el marcador ${tag}`,
    added: (tag) => `Marcador puesto: ${tag}`,
    removed: (tag) => `Marcador ${tag} quitado`,
  },
};
