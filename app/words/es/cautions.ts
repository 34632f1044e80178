import { degrees } from "../degrees.ts";
import type * as english from "../en/cautions.ts";
import type { Spoken } from "../spoken.ts";

interface Words {
  readonly short: string;
  readonly full: string;
}

const CODES: Readonly<Record<string, Words>> = {
  "keep-cold": {
    get short() {
      return `Conservar a ${degrees(5)} o menos`;
    },
    get full() {
      return `Guárdalo cerrado y a ${degrees(5)} o menos. El tiempo por encima de ${degrees(5)} cuenta; cuánto se permite lo dice tu normativa local.`;
    },
  },
  "milk-stays": {
    short: "Clarificado con leche: queda leche",
    full: "La clarificación quita casi toda la caseína, no toda la leche: quedan proteína del suero y lactosa. Nunca se lo sirvas a quien tenga alergia a la leche, y nunca digas que no lleva leche o lactosa.",
  },
  "raw-egg": {
    short: "Huevo crudo",
    full: "Huevo crudo: avisa al cliente antes de servir y sigue tu normativa local.",
  },
  "oil-infusion": {
    short: "Ajo o hierbas en aceite: usar en 3 días",
    get full() {
      return `Ajo o hierbas en aceite: guárdalo a ${degrees(4)} o menos y úsalo en 3 días. Nunca a temperatura ambiente.`;
    },
  },
  overproof: {
    short: "50 % vol o más: lejos del fuego",
    full: "Con 50 % vol o más suelta vapor que arde: mantenlo lejos de llamas y placas calientes, y mídelo con exactitud.",
  },
  grapefruit: {
    short: "Pomelo (toronja): actúa sobre medicinas",
    full: "El pomelo (toronja) cambia el efecto de algunos medicamentos. Nómbralo en la carta y a quien pregunte.",
  },
  quinine: {
    short: "Contiene quinina",
    full: "La quinina debe nombrarse y tiene un límite (83 partes por millón en bebidas con gas de EE. UU.). Algunas personas deben evitarla.",
  },
  coumarin: {
    short: "Contiene haba tonka o casia",
    full: "El haba tonka y la casia aportan cumarina: prohibida en alimentos en EE. UU., limitada en otros sitios. Sigue tu normativa local.",
  },
  "fresh-juice": {
    short: "Jugo fresco",
    full: "El jugo fresco sin pasteurizar no es para clientes de más riesgo, y el jugo envasado tiene normas propias.",
  },
  "over-seven-days": {
    short: "Guardado más de 7 días: mira tu normativa",
    full: "Esta casa lo guarda más de los 7 días que el código alimentario modelo da a los alimentos fríos listos para comer. Consúltalo con tu autoridad local.",
  },
  "local-use-by": {
    short: "Fecha de la casa: sigue tu normativa local",
    full: "La fecha de caducidad es norma de esta casa; el día de elaboración es el día 1. Tu normativa local puede dar menos días, y una fecha anterior en la leche o el jugo manda.",
  },
  "local-sale": {
    short: "Venta solo según tu normativa local",
    full: "Embotellar bebidas propias, mezclar por adelantado y vender lo uno o lo otro tiene normas propias según el país y la región. Sigue tu normativa local.",
  },
};

export const cautions: Spoken<typeof english.cautions> = {
  short: (code) => CODES[code]?.short ?? code,
  full: (code) => CODES[code]?.full ?? code,
  house: {
    judge:
      "Esta aplicación calcula cifras. No puede saber si una bebida es apta para servirse: eso lo juzgas tú según tu normativa local.",
    get cold() {
      return `Lácteos, jugo fresco y lo que se hace con ellos: a ${degrees(5)} o menos, en recipientes limpios, cada uno con su fecha. Ante la duda, se tira.`;
    },
    alcohol:
      "El alcohol solo no conserva nada: entre lo ensayado no hubo ninguna bebida clarificada con leche.",
    milk: "Una bebida clarificada con leche sigue llevando leche. Los alérgenos salen de tu despensa: revisa cada envase y di lo que aporta la decoración.",
    flame: "Un destilado de 50 % vol o más arde a temperatura ambiente: ninguna llama cerca.",
    never:
      "Nunca infusiones tabaco, huesos de fruta, corteza de quina, carbón activado, aceites esenciales puros ni plantas recogidas en el campo.",
    guests:
      "El alcohol no es para menores ni para el embarazo. Quien está enfermo, es mayor o toma medicamentos necesita más cuidado que el que da una etiqueta.",
  },
};
