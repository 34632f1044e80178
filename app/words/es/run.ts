import { degrees, degreesBare } from "../degrees.ts";
import type * as english from "../en/run.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

const done: Readonly<Record<string, string>> = {
  build: "Todo dentro",
  pour: "Está vertido",
  curdle: "El reposo acabó",
  curdleEarly: "Acabar antes el reposo",
  "wet-filter": "El filtro está mojado",
  "first-pass": "Sale claro",
  "slow-drip": "Ha parado",
  label: "Etiquetado: al Estante",
};

const steps: Readonly<Record<string, string>> = {
  rescue: "Tres pasadas y aún no está claro. ¿Y ahora?",
  finer: "Pon un papel nuevo más fino, mojado, y pasa a él la cama de cuajada.",
  get "cold-rest"() {
    return `Tapado, a ${degreesBare(2)}–${degrees(4)}, sin moverlo.`;
  },
  rack: "Trasiega el líquido claro sin remover el poso.",
  steep: "Tapado. Prueba cuando lo pida; cuela cuando esté en su punto.",
  "strain-mesh": "Cuela por la malla. No aprietes.",
  "strain-paper": "Después por papel mojado.",
  melt: "Funde la grasa justo hasta que sea líquida, lejos de llamas. Viértela en el destilado y agita.",
  mingle: "Déjalo tapado; agita de vez en cuando.",
  freeze: "Al congelador.",
  "lift-fat": "Rompe la grasa dura y retírala en frío.",
  skins: "Pela las pieles sin la parte blanca sobre el azúcar y apriétalas juntas.",
  "draw-oil": "Tapado, hasta que el azúcar esté mojado de aceite.",
  stir: "Remueve hasta que todo esté disuelto.",
  cool: "Enfríalo antes de leer: en caliente la lectura engaña.",
  brix: "Lee los °Brix a temperatura ambiente.",
  correct: "Demasiado ligero: añade azúcar. Demasiado denso: añade agua. Anota lo añadido.",
};

export const run: Spoken<typeof english.run> = {
  stepOf: (at, of) => `Paso ${at} de ${of}`,
  round: (n) => `otra vez, ronda ${n}`,
  details: {
    build: "Mide cada cosa en un solo recipiente. Márcala cuando esté dentro.",
    milk: (amount, weight) => `Mide ${amount} (${weight}) de leche fría en el recipiente grande.`,
    pourPunchIntoMilk: (amount) =>
      `Vierte el punch (${amount}) despacio en la leche. Mezcla una vez, con suavidad.`,
    pourMilkIntoPunch: (amount) =>
      `Vierte la leche despacio en el punch (${amount}). Mezcla una vez, con suavidad.`,
    curdle: "Deja que la cuajada se asiente. No la remuevas más.",
    filter: (count) =>
      count === 1
        ? "Moja el filtro, deja que escurra y pon un recipiente debajo."
        : `Moja ${count} filtros, deja que escurran y pon un recipiente debajo de cada uno.`,
    firstPass: "Viértelo todo en el filtro. Espera a que el goteo salga claro.",
    rePour:
      "Cambia el recipiente. Vierte con suavidad lo turbio otra vez sobre la cuajada. ¿Cuánto era?",
    checkClear: "Mira el goteo de la cuajada. ¿Qué ves?",
    slowDrip: "Déjalo gotear, en frío y tapado. No aprietes ni raspes.",
    yield: (expected, low, high) =>
      `Mide todo lo que ha pasado. Previsto ${expected}, o de ${low} a ${high}.`,
    steps,
    measureAll: "Mide todo lo que hay.",
    bottle: "Llena botellas limpias. Cuéntalas.",
    label: "Pon la etiqueta en cada botella.",
  },
  done,
  missing: (count) =>
    count === 1 ? "Falta marcar 1 ingrediente" : `Faltan ${count} ingredientes por marcar`,
  asPlanned: (amount) => `${amount} dentro`,
  otherAmount: "Otra cantidad",
  typeAmount: "Escribir la cantidad",
  typeFigure: "Escribir la cifra",
  backToStep: "Volver al paso",
  outcomes: {
    clear: "Está claro",
    hazy: "Velado: verter de nuevo",
    cloudy: "Turbio: verter de nuevo",
    right: "Está en su punto",
    "not-yet": "Aún no: probar luego",
    "too-far": "Pasado: parar ya",
    "finer-filter": "Filtro más fino",
    "cold-rest": "Reposo frío y trasegar",
    accept: "Aceptarlo como está",
  },
  plainLooks: { clear: "Está claro", hazy: "Está velado", cloudy: "Está turbio" },
  lastTasted: (time) => `Probado por última vez a las ${time}`,
  stopBy: (time) => `Parar a las ${time}, sepa como sepa`,
  askAt: (time) => `pregunta a las ${time}`,
  askedAt: (time) => `preguntó a las ${time}`,
  overdue: (late) => `${late} de retraso`,
  collected: "Anotar una lectura",
  collectedSoFar: (amount, share) => `${amount} hasta ahora, ${share} de lo previsto`,
  noneCollected: "Nada anotado aún",
  around: {
    stands: "Dónde está",
    standing: { counter: "Barra", fridge: "Refri\u00adgerador", freezer: "Congelador" },
    pause: "Pausa: callar sus alarmas",
    resume: "Retomarlo: sus alarmas vuelven a sonar",
    paused: "En pausa",
    resumed: "Retomado",
    pausedSince: (time) =>
      `En pausa desde ${time}. Sus alarmas callan; lo que espera sigue esperando.`,
  },
  warm: {
    within: (length) => `Por encima de ${degrees(5)} durante ${length}`,
    near: (length, full) =>
      `Por encima de ${degrees(5)} durante ${length}: a las ${full} serán 4 h. Enfríalo. Sigue tu normativa local.`,
    nearCold: (length) =>
      `Estuvo por encima de ${degrees(5)} ${length}. Mantenlo frío. Sigue tu normativa local.`,
    past: (length) =>
      `Por encima de ${degrees(5)} durante ${length}, más de 4 h. Tu normativa local decide si se puede guardar.`,
  },
  pads: {
    milk: "Leche en el recipiente",
    "cloudy-run": "Turbio vertido de nuevo",
    collected: "Recogido hasta ahora",
    yield: "Todo lo que ha pasado",
    "top-up": "Destilado añadido",
    brix: "°Brix leídos",
    temperature: "Temperatura leída",
  },
  unit: "ml",
  ozUnit: "oz",
  brixUnit: "°Bx",
  below: "Bajo 0",
  belowName: "Bajo cero",
  erase: "Borrar",
  mark: "Separador decimal",
  take: "Anotar",
  topUp: {
    pour: (amount) => `Añade ${amount} del destilado reservado.`,
    planned: "Plan",
    now: "Ahora",
    fixed: "La receta pide un refuerzo fijo, pase lo que pase por el filtro.",
    proportion: (share) =>
      `Pasó el ${share} del rendimiento previsto, así que el destilado va en la misma proporción.`,
    strength: (share, abv) => `Pasó el ${share} del rendimiento previsto. Con esto llega a ${abv}.`,
    same: "El rendimiento fue el del plan, así que el refuerzo queda como estaba.",
    none: "En esta receta no se reservó nada.",
    beyond: (amount) => `${amount} más de lo reservado: abre otra botella para el resto.`,
    refused: (abv) => `Con este destilado no se llega al grado pedido. Esta cantidad da ${abv}.`,
    result: (abv) => `En la botella: ${abv}`,
    nothing: "Nada que añadir: seguir",
  },
  bottle: {
    size: "Tamaño de botella",
    count: "Botellas llenas",
    fewer: "Una botella menos",
    more: "Una botella más",
    total: (filled, there) => `${filled} en botellas, de unos ${there}`,
    useBy: "Caducidad",
    earlier: "Un día antes",
    later: "Un día después",
    useByNote:
      "Norma de la casa; el día de elaboración es el día 1. Sigue tu normativa local, y una fecha anterior en la leche.",
    done: (count) => counted(count, "botella llena", "botellas llenas"),
  },
  did: "Hecho",
  saved: "Guardado.",
  pressAgain: "Pulsa una vez más ahora, o deja la tecla pulsada.",
  wet: {
    ask: "¿Manos mojadas?",
    means: "Un botón gigante por paso",
    all: "Volver a todo",
  },
  undone: "Deshecho",
  collectedIs: (amount) => `${amount} recogidos`,
  finished: "Terminado",
  stopped: "Parado",
  ended: "Este lote está terminado. Está en el Estante, y su ficha en el Diario.",
  abandonedBecause: (reason) => `Abandonado: ${reason}`,
  toShelf: "Estante",
  toLog: "Su ficha",
  toSheet: "Hoja de control",
  seeLabel: "Ver e imprimir la etiqueta",
  toLabel: "Su etiqueta",
  toHand: "Pasarlo a otro teléfono",
  abandon: "Abandonar este lote",
  abandonSure: "Di por qué; su registro se conserva.",
  abandonReasons: [
    "Leche estropeada",
    "No cuajó",
    "Filtro atascado",
    "Se derramó",
    "Empezado por error",
  ],
  abandonDone: "Abandonar",
  more: "Más",
  less: "Menos",
  undoLast: "Deshacer el último paso",
};
