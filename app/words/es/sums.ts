import { degrees, degreesApart, degreesBare } from "../degrees.ts";
import type * as english from "../en/sums.ts";
import { degreeSign } from "../house-units.ts";
import type { Spoken } from "../spoken.ts";
import { names } from "./sum-names.ts";

export const sums: Spoken<typeof english.sums> = {
  title: "Cálculos",
  lead: "Cálculos rápidos en la barra. Nada de lo escrito aquí se guarda. Toca cualquier cifra de una respuesta para ver cómo se calculó.",
  all: "Todos los cálculos",
  toSpecs: "Todas las recetas",
  waiting: "La respuesta sale aquí cuando toda cifra de arriba tenga sentido.",
  answer: "Respuesta",
  sum: {
    spirit: {
      title: "Rebajar un destilado",
      detail: "Agua para llegar a un grado, o mezclar dos o tres",
    },
    syrup: { title: "Sirope", detail: "°Brix, cantidad y si cristaliza" },
    acid: { title: "Ajustar la acidez de un jugo", detail: "Como limón o como lima" },
    saline: { title: "Solución salina", detail: "Gramos de sal para una concentración" },
    freeze: {
      title: "¿Se congelará?",
      get detail() {
        return `A ${degrees(-18)} o a cualquier temperatura`;
      },
    },
    ice: { title: "Hielo", detail: "Agua, grado y temperatura en la copa" },
    ph: { title: "pH de una mezcla", detail: "Por sus ácidos y su jugo" },
  },
  names,
  volumeIn: (label, unit) => `${label}, ${unit}`,
  optional: (label) => `${label} (si lo hay)`,
  faults: {
    volume: "Escribe un volumen mayor que cero, como 700, 1,5 l o 24 oz. Hasta 100 litros.",
    mass: "Escribe un peso mayor que cero, como 500 o 1,5 kg. Hasta 100 kg.",
    percent: (low, high) => `Escribe un grado de ${low} a ${high} %, como 40.`,
    sugar: "Escribe gramos de azúcar por litro, de 0 a 1200.",
    acid: "Escribe gramos por litro, de 0 a 160, o déjalo vacío si no hay.",
    temperature: (low, high) =>
      `Escribe una temperatura de ${low} a ${high}, como ${degreesBare(4)} o ${degreesBare(-6)}.`,
    grams: "Escribe gramos de 0 a 100.000, o déjalo vacío si no hay.",
  },
  doesNotFit: "Tanto alcohol y azúcar no cabe en un litro. Revisa el grado y luego el azúcar.",
  spirit: {
    how: "Rebajarlo con",
    water: "Agua",
    blend: "Una mezcla",
    volume: "Destilado",
    now: "Grado ahora, % vol",
    wanted: "Grado buscado, % vol",
    sugar: "Azúcar, g por litro",
    sugarHint: "Vacío si es un destilado seco.",
    tooStrong: (now) => `El agua solo rebaja: escribe como mucho ${now}, o mezcla algo más fuerte.`,
    part: (n) => `Parte ${n}`,
    strength: "Grado, % vol",
    third: "Déjalo vacío para mezclar dos.",
    plainOnly: "Para destilados secos. Los dulces salen algo flojos: rebájalos de uno en uno.",
    get cool() {
      return `Los grados son a ${degrees(20)}. Al mezclar se calienta: deja enfriar antes de enrasar.`;
    },
  },
  syrup: {
    by: "Medido por",
    weight: "Peso",
    volume: "Volumen",
    of: "Hecho de",
    kinds: { sugar: "Azúcar blanco", honey: "Miel", gomme: "Goma" },
    kindDetail: { gomme: "Azúcar con goma arábiga" },
    ratio: "Dulce y agua",
    own: "Otra",
    ownLabel: "Partes",
    ownHint: "Primero lo dulce, como 3 : 2.",
    ownFault: "Escribe las partes como 3 : 2, primero lo dulce, de 1 : 10 a 5 : 1.",
    gum: "Goma arábiga, g",
    gumFault: "Escribe el peso de la goma, como 50. Como mucho la mitad del azúcar.",
    amount: { sugar: "Azúcar", honey: "Miel", gomme: "Azúcar" },
    clear: "En frío: debería seguir disuelto",
    fridge: "En frío: puede cristalizar",
    get shelf() {
      return `Cristaliza incluso a ${degrees(20)}`;
    },
    less: "Añade agua hasta esa cifra y seguirá disuelto.",
    scooped:
      "El azúcar en una jarra varía un 5 % o más. Los pesos de abajo hacen igual el siguiente.",
    honey:
      "La miel lleva de 15 a 20 % de agua: 2 °Brix arriba o abajo. La miel cristaliza a su manera.",
    hot: "El sirope caliente se pega y quema: deja enfriar antes de embotellar. Disuélvelo antes de echar destilado, nunca al fuego con él.",
    keep: "El sirope ligero se estropea antes que el denso. Guárdalo cerrado, frío y con fecha, y sigue tu normativa local.",
  },
  juice: {
    label: "Jugo",
    own: "Mis propias cifras",
    volume: "Jugo",
    acids: "Ácido del jugo, g por litro",
    pH: "pH",
    pHHint: "Medido o habitual. Con él se puede calcular la acidez valorable.",
    pHNeeded: "Medido o habitual.",
    pHFault: "Escribe un pH de 1 a 7,5, como 3,6.",
    pHBelow: (low) =>
      `Estos ácidos solos están a pH ${low}. Escribe eso o más, o revisa los ácidos.`,
    none: "Aún no lleva ácido. Escribe los ácidos, o toma un jugo de la despensa.",
  },
  acid: {
    to: "Tan ácido como",
    lemon: "Limón",
    lime: "Lima",
    targets: { lemon: "60 g/L de cítrico", lime: "40 g/L de cítrico, 20 de málico" },
    practice:
      "Estas metas son las que usan los bares, más redondas que un limón o una lima medidos. Prueba antes de servir.",
    over: (acid, has, aim) =>
      `El jugo ya tiene ${has} de ${acid.toLowerCase()}, más de los ${aim} buscados. Elige la otra meta o rebájalo con agua.`,
    powder:
      "El ácido en polvo pica en ojos y piel: pésalo con cuidado y enjuaga con agua. Etiqueta el jugo como ajustado.",
  },
  saline: {
    volume: "Solución salina",
    percent: "Sal en peso, %",
    percentFault: "Escribe una parte de sal mayor que 0 %, como 20.",
    tooSalty: (most) => `El agua no disuelve más de un ${most} de sal. Escribe menos.`,
    weigh: "Pesa las dos. Si la sal se da en gramos por 100 ml de agua, la parte en peso es menor.",
  },
  freeze: {
    strength: "Grado, % vol",
    sugar: "Azúcar, g por litro",
    get temperature() {
      return `Otra temperatura, ${degreeSign()}`;
    },
    at: (temperature, state) => `A ${temperature}: ${state}`,
    states: {
      liquid: "líquido",
      icy: "algo de hielo",
      slush: "granizado",
      solid: "de cuchara o duro",
    },
    get close() {
      return `Muy justo: los congeladores oscilan unos grados. Deja ${degreesApart(3)} de margen.`;
    },
    beyond: "Ningún congelador de bar lo congela",
    get beyondWhy() {
      return `Por encima del 75 % acaban las tablas, hacia ${degrees(-49)}.`;
    },
    undisturbed:
      "Una botella quieta puede seguir líquida algunos grados más abajo y congelarse de un golpe.",
    burst:
      "Una botella de vidrio llena puede reventar al congelarse: deja hueco, o usa plástico o acero.",
  },
  ice: {
    method: "Cómo se junta con el hielo",
    methods: {
      stirred: "Remo\u00advido",
      shaken: "Agitado",
      settled: "Asentado",
      blended: "Batido",
    },
    volume: "Bebida",
    strength: "Grado, % vol",
    sugar: "Azúcar, g por litro",
    get start() {
      return `Empieza a, ${degreeSign()}`;
    },
    ice: "Hielo, g",
    get iceTemperature() {
      return `El hielo está a, ${degreeSign()}`;
    },
    iceHint: "El hielo mojado está a 0; recién sacado del congelador, a −18.",
    fitRange:
      "Las bebidas medidas tenían de 15 a 35 % vol: fuera de ahí, tómalo como una suposición.",
    wet: "Con hielo hasta que no se funda más. Aquí no cuenta el agua pegada al hielo mojado: añade como una décima parte del volumen.",
    blender: "El calor de la propia batidora funde un poco más.",
    tooIcy: "Más hielo del que la bebida admite: sale duro.",
  },
  ph: {
    volume: "Jugo que lleva",
    total: "Mezcla entera",
    totalFault: "Escribe al menos tanto como el jugo que lleva.",
    strength: "Grado de la mezcla, % vol",
    add: "Ácido añadido, g",
    tooSour: "Son más de 500 g por litro, más ácido del que se disuelve. Escribe menos.",
    band: (low, high) => `pH ${low} a ${high}`,
    strong:
      "Por encima de 20 % vol el efecto del alcohol en los ácidos es una suposición: el margen es mayor.",
    keeps: "Un pH bajo solo no conserva nada. Enfríalo, ponle fecha y sigue tu normativa local.",
  },
  flash: (strength, degrees) =>
    `A ${strength} su vapor prende desde unos ${degrees}: ninguna llama, placa ni sartén caliente cerca.`,
  heating:
    "Nunca calientes destilado en un cazo abierto ni al fuego. Templa solo en bolsa sellada al baño maría, nunca en botella cerrada, con el local ventilado.",
};
