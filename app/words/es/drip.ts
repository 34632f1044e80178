import type { NextReading } from "../../../core/method/drip/next-reading.ts";
import type { FilterShape } from "../../../core/spec/spec.ts";
import type * as english from "../en/drip.ts";
import type { Spoken } from "../spoken.ts";
import { counted, whole } from "./count.ts";

const shapes: Readonly<Record<FilterShape, string>> = {
  cone: "Un cono",
  straight: "Paredes rectas",
  "topped-up": "Se va rellenando",
  unknown: "No lo sé",
};

const looked: Readonly<Record<FilterShape, string>> = {
  cone: "El filtro cuelga en un cono",
  straight: "El filtro cuelga en un recipiente recto",
  "topped-up": "El filtro se va rellenando",
  unknown: "Nadie sabe en qué cuelga el filtro",
};

const next: Readonly<Record<NextReading["why"], (time: string) => string>> = {
  narrows: (time) => `Lee otra vez hacia ${time}: es lo que más lo precisa.`,
  "is-it-clogging": (time) => `Lee otra vez hacia ${time}, para ver si el filtro se ciega.`,
  "nearly-through": (time) => `Mira otra vez hacia ${time}: otra lectura antes dice poco.`,
};

export const drip: Spoken<typeof english.drip> = {
  shape: "¿En qué cuelga el filtro?",
  shapes,
  looked,
  forecast: {
    none: "Dos lecturas dan una previsión. Lee lo que hay en el recipiente, sin apretar.",
    second: (time) => `Una segunda lectura da la previsión. Ayuda más hacia ${time}.`,
    secondNow: "Una segunda lectura da la previsión. Hazla ahora.",
    next,
    nextNow: "Lee otra vez ahora.",
    through: (share, time) => `${share} pasado hacia ${time}`,
    reached: (share, time) => `${share} pasado desde ${time} más o menos`,
    between: (early, late) => `8 de cada 10 veces entre ${early} y ${late}`,
    never: (share) => `A este paso puede que nunca llegue a ${share}: dar una hora sería adivinar.`,
    // Práctica común, sin fuente, como en inglés.
    help: "Qué ayuda: un filtro nuevo, mojado. Pasa la cuajada entera; no raspes ni aprietes.",
    blinding: {
      suspected: (rate, promised) =>
        `Puede que el filtro se esté cegando: ${rate} por hora, cuando se esperaban ${promised}. Lee otra vez pronto.`,
      yes: (rate, promised) =>
        `El filtro se está cegando: ${rate} por hora, cuando se esperaban ${promised}.`,
    },
  },
  chart: {
    title: "El goteo",
    now: "ahora",
    key: "Puntos: lecturas. Línea: lo que encaja. Rayado: 8 de cada 10 veces.",
    keyOut: "Cruces: lecturas descartadas.",
    told: (count, last, time) =>
      `${counted(count, "lectura", "lecturas")}, la última ${last} a las ${time}.`,
    ahead: (share, amount, time, early, late) =>
      `${share}, ${amount}, hacia ${time}, 8 de cada 10 veces entre ${early} y ${late}.`,
    reached: (share, amount) => `${share}, ${amount}, ya alcanzado.`,
    unending: (share, amount) => `${share}, ${amount}, puede que nunca se alcance.`,
    table: "Lecturas y previsión del goteo",
    time: "Hora",
    amount: "Recogido",
    what: "Qué",
    read: "leído",
    leftOut: "leído, descartado",
    likely: (early, late) => `previsto, ${early} a ${late}`,
  },
  weigh: {
    how: "Cómo se mide",
    volume: "Volu\u00admen",
    weight: "Peso",
    unit: "g",
    tare: {
      "cloudy-run": "El recipiente de lo turbio, vacío",
      "clear-run": "El recipiente bajo el goteo, vacío",
    },
    tareLast: (weight) => `${weight} la última vez`,
    tareHint: "0 si la báscula se puso a cero con él.",
    gross: "Con su recipiente",
    vesselIs: (weight) => `Recipiente ${weight}`,
    net: (gross, tare, net, amount) =>
      `${whole(gross)} − ${whole(tare)} = ${whole(net)}, es decir ${whole(amount)}`,
    other: "Otro recipiente",
    backSign: "‹",
    tareIs: (weight) => `Recipiente: ${weight} vacío`,
  },
  pass: {
    cloudy: (amount, count) =>
      `Turbio vertido de nuevo: ${amount} en ${counted(count, "pasada", "pasadas")}`,
    running: (amount) => `Desde entonces han pasado unos ${amount}`,
    usually: (time, passes, batches, low, high) =>
      `Suele aclararse tras unos ${time}, ${counted(passes, "pasada", "pasadas")} (${counted(batches, "lote", "lotes")}, casi siempre ${low === high ? low : `${low} a ${high}`})`,
    learnt: (wait, batches) =>
      `Pregunta tras ${wait}: aprendido de ${counted(batches, "lote", "lotes")} de aquí.`,
  },
};
