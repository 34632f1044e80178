import { degrees, degreesApart } from "../degrees.ts";
import type * as english from "../en/plan.ts";
import type { Spoken } from "../spoken.ts";
import { sources } from "./caution-sources.ts";
import { counted, whole } from "./count.ts";
import { figureNames, figureRules } from "./plan-figures.ts";
import { whatIf } from "./what-if.ts";

const ingredients = (count: number): string => counted(count, "ingrediente", "ingredientes");

export const plan: Spoken<typeof english.plan> = {
  title: (name) => `Planificar ${name}`,
  edit: "Editar la receta",
  size: "Cuánto",
  by: {
    serves: "Copas",
    bottles: "Botellas",
    volume: "Volu\u00admen",
    vessel: "Recipiente",
    stock: "Lo que hay",
  },
  serves: "Copas",
  bottles: "Botellas",
  bottleSize: "Tamaño de botella, ml",
  finalVolume: "En la botella, ml",
  vesselVolume: "Punch y leche llenan, ml",
  stock: "Gastar todo lo que hay de",
  onHand: (unit) => `Hay, ${unit}`,
  typed: (least, most) => `Escribe un número de ${least} a ${most}.`,
  inTheBottle: "en la botella",
  pours: (pour) => `copas de ${pour}`,

  vessel: {
    fits: (fill, vessel) => `Llena ${whole(fill)} de tu recipiente de ${whole(vessel)}.`,
    tooMuch: (fill, vessel) =>
      `${whole(fill)} a la vez no caben en tu recipiente más grande, ${whole(vessel)}.`,
    lots: (count, each) => `Haz ${count} tandas iguales de ${each}.`,
    choice: "Lo que sigue es para",
    one: (count) => `Una tanda de ${count}`,
    all: "Todo a la vez",
    change: "Cambiarlo",
  },

  measure: {
    title: "Medir",
    says: (count, milk) =>
      milk === undefined ? ingredients(count) : `${ingredients(count)} y ${whole(milk)} de leche`,
    amounts: "Cantidades",
    exact: "Exactas",
    jigger: (step) => `Medi\u00addor ${whole(step)}`,
    scale: (step) => `Báscula ${whole(step)}`,
    change: (changes) => `Frente a lo exacto: ${changes.map(whole).join(", ")}`,
    changes: {
      volume: "volumen",
      strength: "grado",
      sugar: "azúcar",
      acid: "ácido",
      ratio: "relación",
    },
    same: "±0",
    before: "Al punch",
    together: "A un solo recipiente",
    milk: "Leche",
    ratio: (parts) => `${parts} con el punch`,
    after: "Reservado para el refuerzo",
  },
  yield: "Debería pasar",
  yieldRange: (low, high) => `${whole(low)} a ${whole(high)}`,
  prior: "por práctica común, hasta que tengas lotes propios",
  own: (count) => `por ${counted(count, "lote tuyo", "lotes tuyos")}`,

  whatIf,

  stages: "Equilibrio",
  stagesSay: (bottled, glass) => `${whole(`${bottled} en botella`)}, ${whole(`${glass} en copa`)}`,
  stage: {
    mixed: "Mez\u00adclado",
    washed: "Clari\u00adficado",
    "topped-up": "Embo\u00adtellado",
    glass: "En la copa",
  },
  rows: {
    volume: "Volu\u00admen",
    strength: "Grado, % vol",
    sugar: "Azúcar g/L",
    acid: "Ácido g/L",
    brix: "°Brix",
    ratio: "Azúcar : ácido",
  },
  balanceNote:
    "Toca un número para ver cómo se calculó. ± es el margen probable de etiquetas y medidores.",

  curdle: "¿Cuajará?",
  verdict: { clearly: "Clara\u00admente", borderline: "Al límite", no: "No" },
  phBand: (low, high) => `pH ${low} a ${high}`,
  ph: "Punch y leche juntos",
  onset: "Esta leche cuaja a este pH o menos",
  fixes: {
    moreJuiceMl: (amount) => `${amount} más de jugo`,
    lessDairyMl: (amount) => `${amount} menos de leche`,
    moreBaseMl: (amount) => `${amount} más de destilado base`,
    moreAcidG: (amount) => `${amount} de ácido cítrico`,
  },
  curdleNotes: {
    "no-dairy": "No lleva leche.",
    "no-casein": "Esta leche no tiene caseína: no cuaja como la de animal.",
    "no-data": "No se encontraron medidas de esta leche: toma el veredicto como una suposición.",
    "hot-and-strong":
      "Caliente y fuerte a la vez disuelve la cuajada: deja enfriar antes el punch.",
    "cold-and-slow": "La leche fría cuaja despacio y fino: dale más tiempo.",
    "heated-milk": "La leche que se calentó cuaja un poco antes y más fino.",
    "alcohol-effect-assumed":
      "El efecto del alcohol sobre el punto de cuajado se supone, no se midió.",
    "beyond-alcohol-data": "Más fuerte que todo lo medido: toma el pH como una suposición.",
    "alcohol-may-clot-alone": "Así de fuerte, el alcohol solo puede cortar la leche.",
  },
  fixIntro: "Cualquiera de estos hace que cuaje claramente:",
  curdleSafety:
    "Que cuaje y tenga un pH bajo no lo conserva: una bebida clarificada sigue llevando leche y debe estar fría.",

  pull: {
    title: "Qué sacar",
    says: (packs) => counted(packs, "botella o envase", "botellas y envases"),
    packs: (count, size) => whole(`${count} × ${size}`),
    uses: (amount, left) => `${whole(amount)} usados, sobran ${whole(left)}`,
    usesAll: (amount) => `${whole(amount)} usados, no sobra nada`,
    usual: "tamaño habitual",
    usualNote:
      "Un tamaño habitual es el común de su clase. Pon precio y envase a un ingrediente en la despensa y se usan los tuyos.",
    lots: (count) => `Para las ${count} tandas.`,
  },

  cost: {
    title: "Coste",
    says: (serve, share) =>
      share === undefined ? `${serve} por copa` : `${serve} por copa, ${share} de su precio`,
    atLeast: (text) => `al menos ${text}`,
    noPrices: "Aún no hay precios en la despensa",
    serve: "Una copa",
    batch: "El lote",
    lot: "Esta tanda",
    pour: "De su precio en la carta",
    noMenuPrice: "Aún sin precio en la carta:",
    setMenuPrice: "ponlo en la receta",
    unpriced: "Sin precio, así que aquí toda cifra es un mínimo:",
    nonePriced: "Pon precio a estos en la despensa:",
    ingredientsOnly: "Solo ingredientes: sin decoración, hielo, filtros, trabajo ni impuestos.",
  },

  cold: {
    title: "Congelador y copa",
    get bottle() {
      return `Botella a ${degrees(-18)}`;
    },
    freezes: (at) => `La botella se congela, desde ${whole(at)}`,
    stays: (at) => `La botella sigue líquida, hasta ${whole(at)}`,
    close: (at) => `La botella empieza a congelarse a ${whole(at)}: muy justo`,
    in: { freezes: "Se congela", stays: "Sigue líquida", close: "Cerca de congelarse" },
    freezesNote:
      "Una botella llena puede reventar al congelarse: deja hueco o guárdala en el refrigerador.",
    get closeNote() {
      return `Los congeladores oscilan unos grados: deja ${degreesApart(3)} de margen.`;
    },
    begins: "Empieza a congelarse a",
    noWater: "No lleva agua que congelar.",
    glass: "En la copa",
    water: "Agua añadida",
    temperature: "Temperatura aproximada",
    ice: "De ello, hielo",
    texture: {
      liquid: "Líquido, sin hielo",
      icy: "Fino, con algo de hielo",
      slush: "Granizado",
      solid: "De cuchara, no se puede verter",
    },
    slushNote: "Un granizado se bebe mejor con un 30 a 45 % de hielo (práctica, de memoria).",
  },

  care: {
    title: "Alérgenos y avisos",
    contains: (list) => `Contiene ${list}`,
    cautions: (count) => counted(count, "aviso", "avisos"),
    none: "Ninguno en las entradas de la despensa: revisa cada envase",
    missing: (names) =>
      `No se pudo saber de qué está hecho ${names}, así que esta lista no está completa.`,
    fromGarnish: "La decoración trae los suyos. La despensa vale lo que los envases que leíste.",
    source: (text) => `Fuente: ${text}`,
    local:
      "Tu normativa local manda, y suele ser más estricta. Ninguna cifra de aquí dice que una bebida sea segura.",
    get cold() {
      return `Guarda la leche a ${degrees(5)} o menos hasta que entre, y la bebida desde entonces.`;
    },
    sources,
  },

  ready: {
    title: "Listo para",
    says: "Cuándo empezar y cuándo hacen falta manos",
    date: "Fecha",
    time: "Hora",
    needDate: "Elige una fecha desde la que contar hacia atrás.",
    needTime: "Elige una hora, como 17:00.",
    day: "Día",
    zone: (zone) => `Según la hora de ${zone}`,
    otherZone: "Según la hora de",
    startBy: (time) => `Empezar a más tardar ${time}`,
    late: (length) => `Ya es tarde: si se empieza ahora, está listo ${length} después`,
    guess:
      "Cinco minutos por cada cosa hecha a mano; una infusión, lo más que dura; el goteo, según volumen y filtros, con un factor de tres hasta que se lea.",
    odd: {
      twice: "En ese momento los relojes se atrasan: la hora sale dos veces. Aquí vale la primera.",
      never:
        "En ese momento los relojes se adelantan: ningún reloj muestra esa hora. Vale la anterior.",
    },
  },
  start: "Empezar este lote",
  hold: (hold, how) => `${hold}: ${how.join(", ")}`,
  batch: (batch) => `Lote ${batch}`,
  write: (batch) => `Escribe ${batch} en el recipiente.`,
  startChanged: "con el “y si”",
  startRounded: "cantidades redondeadas",
  startLot: (count) => `una tanda de ${count}`,
  cannot: "Esto aún no se puede planificar",
  nearest: (abv) => `Reforzar hasta ${abv}`,
  inProportion: "Reforzar en proporción",
  noProcedure:
    "El proceso de esta receta ya no está. Elige otro en la receta y luego empieza el lote.",
  working: "Cómo se calculó",
  close: "Cerrar",
  from: "De",
  formula: "Fórmula",
  source: "Fuente",
  limits: "Con qué exactitud",
  within: (amount) => `± ${amount}`,
  names: figureNames,
  rules: figureRules,
};
