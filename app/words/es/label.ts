import type { Label } from "../../../core/label/label.ts";
import type { ServeCard } from "../../../core/label/serve-card.ts";
import type { Allergen } from "../../../core/spec/allergen-table.ts";
import type { CardRow, label as english } from "../en/label.ts";
import { abv, dateYear, decimals, percent, type VolumeStyle, volume } from "../format.ts";
import type { Spoken } from "../spoken.ts";
import { cautions } from "./cautions.ts";

const ALLERGENS: Readonly<Record<Allergen, string>> = {
  gluten: "CEREALES CON GLUTEN",
  crustaceans: "CRUSTÁCEOS",
  egg: "HUEVO",
  fish: "PESCADO",
  peanut: "CACAHUETE",
  soy: "SOJA",
  milk: "LECHE",
  nuts: "FRUTOS DE CÁSCARA",
  celery: "APIO",
  mustard: "MOSTAZA",
  sesame: "SÉSAMO",
  sulphites: "SULFITOS",
  lupin: "ALTRAMUCES",
  molluscs: "MOLUSCOS",
};

const METHODS: Readonly<Record<ServeCard["method"], string>> = {
  stirred: "Remover con hielo",
  shaken: "Agitar con hielo",
  "over-ice": "Sobre hielo",
  blended: "Batir con hielo",
  straight: "Directo del refrigerador",
};

const contains = (allergens: readonly Allergen[]): string =>
  allergens.length === 0
    ? "Sin alérgenos en las entradas de la despensa: revisa los envases"
    : `Contiene ${allergens.map((one) => ALLERGENS[one]).join(", ")}`;

function waterWords({ method, water }: ServeCard, style: VolumeStyle): string {
  if (water < 0.5) return "No se añade";
  const amount = volume(water, style);
  if (method === "blended") return `${amount}, como hielo`;
  return method === "straight" ? `Añadir ${amount}` : `${amount}, del hielo`;
}

const labelAbv = (strength: number): string => `unos ${decimals(strength * 100, 1)} % vol`;

function labelRows(label: Label, size: number | undefined, style: VolumeStyle): readonly CardRow[] {
  return [
    { term: "Lote", says: label.batch },
    { term: "Elaborado", says: dateYear(label.madeAt) },
    { term: "Grado", says: labelAbv(label.strength) },
    ...(size === undefined ? [] : [{ term: "Botella", says: volume(size, style) }]),
  ];
}

function serveRows(card: ServeCard, style: VolumeStyle): readonly CardRow[] {
  const inGlass = `${volume(card.inGlass, style)} a unos ${abv(card.strength)} vol`;
  const ice = card.ice > 0.005 ? `, ${percent(card.ice)} de hielo` : "";
  return [
    { term: "Dosis", says: volume(card.pour, style) },
    { term: "Cómo", says: METHODS[card.method] },
    { term: "Agua", says: waterWords(card, style) },
    { term: "En la copa", says: inGlass + ice },
    ...(card.glass === "" ? [] : [{ term: "Copa", says: card.glass }]),
    ...(card.garnish === "" ? [] : [{ term: "Decoración", says: card.garnish }]),
  ];
}

const useBy = (label: Label): CardRow => ({ term: "Caducidad", says: dateYear(label.useBy) });
const inLine = ({ term, says }: CardRow): string => `${term}: ${says}`;

function asText(label: Label, card: ServeCard | undefined, style: VolumeStyle): string {
  const sizes = label.bottles.map(({ count, size }) => `${count} × ${volume(size, style)}`);
  const lines = [
    label.name,
    inLine(useBy(label)),
    ...labelRows(label, undefined, style).map(inLine),
    ...(sizes.length === 0 ? [] : [`Botellas: ${sizes.join(", ")}`]),
    contains(label.allergens),
    ...label.cautions.map(cautions.short),
  ];
  const serve = card === undefined ? [] : ["", ...serveRows(card, style).map(inLine), GARNISH];
  return [...lines, ...serve].join("\n");
}

const PAPERS: Readonly<Record<string, string>> = {
  "roll-62x100": "Rollo, 62 × 100 mm",
  "roll-102x152": "Rollo, 102 × 152 mm (4 × 6 in)",
  "roll-102x51": "Rollo, 102 × 51 mm (4 × 2 in)",
  "roll-57x32": "Rollo, 57 × 32 mm",
  "roll-50x25": "Rollo, 50 × 25 mm",
  "a4-2x7": "A4, 2 × 7 de 99,1 × 38,1 mm",
  "a4-3x8": "A4, 3 × 8 de 70 × 37 mm",
  "letter-2x5": "Carta, 2 × 5 de 101,6 × 50,8 mm",
  "letter-3x10": "Carta, 3 × 10 de 66,7 × 25,4 mm",
};

const GARNISH = "Lo que aporta la decoración no figura.";

export const label: Spoken<typeof english> = {
  title: "Etiqueta",
  lost: "Este lote no está en este teléfono, así que no hay nada que etiquetar. En Ajustes, tómalo del teléfono que lo hizo.",
  toLog: "Su ficha",
  toShelf: "Estante",
  planned: "Aún sin embotellar: grado y botellas son los del plan.",
  card: "Etiqueta",
  serveCard: "Ficha de servicio",
  useBy,
  rows: labelRows,
  serveRows,
  contains,
  asText,
  garnishNote: GARNISH,
  copies: (count, size) =>
    count === 1 ? `1 botella de ${size}` : `${count} botellas de ${size}, una etiqueta cada una`,
  noServe: "No hay ficha de servicio: según su registro no hay nada en la botella.",
  which: "Qué imprimir",
  kinds: {
    bottle: "Etiqueta de botella",
    serve: "Ficha de servicio",
    vessel: "Etiqueta del recipiente",
  },
  paper: "Papel",
  papers: PAPERS,
  tooSmall: (paper) =>
    `Todo lo que debe figurar no cabe en ${paper} con letras legibles. No se corta nada: elige uno más grande.`,
  noneFits: "No cabe en ningún papel. Acorta en su receta el nombre, la copa o la decoración.",
  takeLarger: (paper) => `Usar ${paper}`,
  leftOut: (what) => `Aquí no cabe: ${what.join("; ")}.`,
  code: "el código con el nombre del lote",
  codeNote:
    "El código lleva el nombre del lote. Con él, Ajustes, Tomar de otro teléfono, abre el lote.",
  howMany: "Cuántas",
  copiesEach: "Una por botella",
  copiesNumber: "Un número de cada una",
  number: "De cada una",
  fewer: "Una menos",
  more: "Una más",
  from: "Primer hueco libre de la hoja",
  fromShown: (place, all) => `${place} de ${all}`,
  earlier: "Un hueco antes",
  later: "Un hueco después",
  sheetMap: (count, pages, from) =>
    pages === 1
      ? `${count} en una hoja, desde el hueco ${from}`
      : `${count} en ${pages} hojas, desde el hueco ${from}`,
  rollMap: (count) => (count === 1 ? "1 etiqueta" : `${count} etiquetas`),
  tooMany: (most) => `No se imprimen más de ${most} a la vez: imprime el resto después.`,
  print: "Imprimir",
  printNote:
    "En la ventana de impresión elige el mismo papel, 100 %, sin márgenes. Si no se abre ninguna, este navegador no puede imprimir: comparte el PDF.",
  cannotPrint: "Este navegador no puede imprimir. Comparte el PDF.",
  sharePdf: "Compartir como PDF",
  sharePng: "Compartir como imagen",
  pngNote: "La imagen es una etiqueta a 300 puntos por pulgada y dice su tamaño.",
  asPicture:
    "Algunas letras de esta etiqueta no están en las fuentes propias de un PDF, así que el PDF la lleva como imagen.",
  saved: "Este navegador no tiene hoja de compartir para ello. Queda guardado en descargas.",
  notDrawn: "Este navegador no pudo dibujar la etiqueta. Comparte el texto.",
  share: "Compartir como texto",
  shareTitle: (name, batch) => `${name}, ${batch}`,
  shared: "Pasado a la hoja de compartir.",
  copied:
    "Este navegador no tiene hoja de compartir. El texto está copiado: pégalo donde haga falta.",
  neither: "Este navegador no puede compartir ni copiar. Marca el texto de abajo y cópialo a mano.",
  means: "Qué dice la etiqueta y por qué",
  sizeRule:
    "Tamaño: la letra nunca baja de 2,3 mm (6,5 pt), sus minúsculas de 1,2 mm de alto (UE 1169/2011, artículo 13). Un nombre largo se encoge y luego salta de línea. Si falta sitio se van primero los recordatorios, luego el día de elaboración, luego el código. Lo que se vende en botella puede necesitar cifras mayores según tu normativa local.",
  strengthRule:
    "Grado: calculado con lo que se vertió, no medido, y redondeado a 0,5 % vol. El redondeo lo mueve 0,25 % vol como mucho; las etiquetas de destilados pueden desviarse 0,3 % vol (US 27 CFR 19.356 y la UE por igual). Donde haya que declarar el grado, haz que lo midan.",
  allergenRule:
    "Alérgenos: de las entradas de la despensa de todo lo que entró, con la leche de la clarificación, en el orden de la lista de la UE. Revisa cada envase.",
};
