import type { KitWords } from "../complete.ts";
import { decimals } from "../format.ts";

const many = (count: number): string => decimals(count, 0);
const entries = (count: number): string => (count === 1 ? "1 entrada" : `${many(count)} entradas`);
const batches = (count: number): string => (count === 1 ? "1 lote" : `${many(count)} lotes`);
const ended = (count: number): string => (count === 1 ? "acabado" : "acabados");

export const kit: KitWords = {
  title: "Ajustes",
  sound: {
    title: "Prueba de sonido",
    why: "La aplicación no dice que sonará hasta que alguien haya oído la alarma en este teléfono. Pon el teléfono donde vaya a estar, aléjate dos metros y haz que suene.",
    play: "Hacer sonar la alarma",
    again: "Hacerla sonar otra vez",
    ask: "¿La oíste a dos metros?",
    yes: "Sí",
    no: "No",
    heard: (when) => `Oída ${when}. Vale durante 12 horas.`,
    never: "Nadie la ha oído aún en este teléfono.",
    back: "Volver a la Mesa",
    help: "Sube el volumen multimedia, quita el modo silencio, desconecta otros altavoces y haz que suene otra vez. Si sigue en silencio, pon la alarma del teléfono en cada espera.",
  },
  spoken: {
    title: "Paso hablado",
    why: "Mientras suena, el teléfono también puede decir qué lote y qué paso. No promete más: lo que cuenta es el sonido.",
    label: "Decir el paso en voz alta",
    off: "Apagado",
    on: "Encendido",
    tryIt: "Probar la voz",
    sample: "Pear Beacon: Reposo, toca ahora",
    states: {
      "no-voice":
        "Este teléfono no tiene voz propia para estas palabras. No se usan voces de la red.",
      absent: "Este navegador no puede hablar.",
    },
  },
  notices: {
    title: "Una notificación al salir",
    why: "Justo después de salir de la aplicación aún puede mostrar una notificación cuando algo toca. Decide el teléfono; no se promete nada.",
    ask: "Permitir notificaciones",
    states: {
      granted: "Permitidas.",
      refused: "No permitidas. Se cambia en los ajustes del teléfono para este sitio.",
      unasked: "Aún sin preguntar.",
      absent: "Este navegador no tiene notificaciones.",
    },
  },
  units: {
    title: "Unidades",
    volumes: "Mostrar volúmenes en",
    auto: "Según el país",
    ml: "ml",
    oz: "oz",
    degrees: "Mostrar temperaturas en",
    C: "°C",
    F: "°F",
    ounce: "Una onza son",
    bar: "30 ml",
    barDetail: "el medidor del bar",
    exact: "29,57 ml",
    exactDetail: "onza líquida de EE. UU.",
    note: "Un lote en marcha conserva la onza con que se planificó. El país es el que tiene puesto el teléfono. Lo guardado, las hojas de cálculo, las fórmulas y las fuentes siguen en ml y °C.",
  },
  tools: {
    title: "Útiles de la casa",
    why: "A qué redondea un plan sus cantidades y lo máximo que cabe en un recipiente.",
    jigger: "Medidor o jarra, marcado cada",
    scale: "Báscula, marcada cada",
    ml: (step) => `${step} ml`,
    g: (step) => `${step} g`,
    vessel: "Recipiente más grande, ml",
    vesselHint: "Un lote que no cabe en él se planifica en tandas iguales.",
    vesselFault: "Escribe cuánto cabe en ml, de 100 a 1000000, como 10000.",
    currency: "Signo de tu moneda",
    currencyHint: "Se escribe junto a cada precio y coste. Vacío si no quieres ninguno.",
    currencyFault: "Escribe un signo de 4 letras como mucho, como € o kr.",
  },
  room: {
    title: "Manos y sitio",
    why: "La lista de preparación se planifica dentro de esto.",
    labels: {
      people: "Personas en preparación",
      filterStands: "Soportes de filtro",
      fridge: "Sitio en el refrigerador para lotes, litros",
      freezer: "Sitio en el congelador para lotes, litros",
    },
    hints: {
      people: "Quién puede verter y filtrar a la vez.",
      filterStands: "Una clarificación ocupa uno desde mojar el filtro hasta la última gota.",
      fridge: "Lo que pasa ahí la noche cuenta con todo su volumen.",
      freezer: "Para lavados con grasa y botellas que se guardan congeladas.",
    },
    fault: (low, high) => `Escribe un número de ${low} a ${high}.`,
    from: "Hay alguien desde las",
    to: "hasta las",
    hoursNote:
      "Fuera de estas horas no se planifica nada a mano; las esperas siguen por la noche. La misma hora dos veces significa siempre.",
  },
  hands: {
    title: "Manos mojadas y guantes",
    hand: "El teléfono se usa con la",
    right: "Mano derecha",
    left: "Mano izquierda",
    size: "Tamaño de los botones",
    finger: "Dedo",
    glove: "Guante",
    gloveDetail: "más grandes y separados",
    wet: "Un botón gigante por paso",
    offer: "Ofrecerlo",
    offerDetail: "con la pantalla mojada",
    always: "Siempre",
    never: "Nunca",
    note: "Un pasapáginas o un teclado también valen en cada paso: Av Pág pulsada, o dos veces, es mantener. Re Pág vuelve atrás.",
  },
  theme: {
    title: "Pantalla",
    label: "Clara u oscura",
    auto: "Como el teléfono",
    dark: "Oscura",
    light: "Clara",
  },
  language: {
    title: "Idioma",
    label: "La aplicación habla",
    auto: "El idioma del teléfono",
    note: "Lo ya escrito queda como se escribió. Los números llevan la coma o el punto del idioma.",
  },
  backup: {
    title: "Copia de seguridad",
    why: "Todo está solo en este teléfono: si se pierde, se pierde el registro. Guarda una copia tras cada lote.",
    make: "Guardarlo todo en un archivo",
    download: "Guardarlo en descargas",
    shared: (name) => `${name} se pasó a la hoja de compartir.`,
    saved: (name) => `${name} está en las descargas del navegador.`,
    dismissed: "Se cerró la hoja de compartir, así que no se guardó nada.",
    writing: (done, all) => `Escribiendo: ${many(done)} de ${entries(all)}.`,
    leaveNot: "Quédate en esta página hasta que acabe.",
    giveUp: "Parar",
    ready: "El archivo está listo.",
    handOn: "Compartir el archivo",
    never: "En este teléfono aún no se ha hecho ninguna copia.",
    last: (when) => `Última copia: ${when}.`,
    dueEnded: (count, ever) =>
      ever
        ? `${batches(count)} más ${ended(count)} desde la última copia.`
        : `${batches(count)} ${ended(count)}, y en este teléfono aún no se ha hecho ninguna copia.`,
    dueEntries: (count, ever) =>
      ever
        ? `${entries(count)} más desde la última copia.`
        : `${entries(count)} hasta ahora, y en este teléfono aún no se ha hecho ninguna copia.`,
    toKit: "A Copia de seguridad, en Ajustes",
  },
  restore: {
    title: "Traer una copia",
    pick: "Archivo de la copia",
    hint: "Un archivo que guardó esta aplicación, en este teléfono u otro. No se añade nada antes de que lo digas, y aquí no se sobrescribe nada.",
    reading: "Leyendo el archivo…",
    readingOf: (done, all) => `Leyendo: ${many(done)} de ${entries(all)}.`,
    adding: (done, all) => `Añadiendo: ${many(done)} de ${entries(all)}.`,
    beginsAdding: "Añadiendo…",
    settling: (done, all) => `Añadido. Ordenando los lotes: ${many(done)} de ${many(all)}.`,
    fresh: (count) => `${entries(count)} que este teléfono no tiene`,
    known: (count) =>
      count === 1
        ? "1 entrada que ya está aquí, se queda como está"
        : `${entries(count)} que ya están aquí, se quedan como están`,
    left: (count) =>
      count === 1
        ? "1 línea fuera: conserva el archivo"
        : `${many(count)} líneas fuera: conserva el archivo`,
    leftTitle: "Líneas que quedan fuera",
    line: (number, why) => `Línea ${many(number)}: ${why}`,
    more: (count) => `y ${many(count)} más`,
    startless: (count) =>
      `${batches(count)} sin comienzo, en el archivo o aquí: ${count === 1 ? "se conserva y se muestra" : "se conservan y se muestran"} cuando se traiga también el comienzo`,
    missing: (lines, found) =>
      `Este archivo está dañado: debería tener ${entries(lines)} y hay ${many(found)}. Busca antes una copia entera.`,
    altered: "Este archivo se alteró después de guardarse. Busca antes una copia sin alterar.",
    useRest: "Usar lo que se pueda leer",
    nothing: "No trae nada que este teléfono no tenga.",
    add: (count) => `Añadir ${entries(count)}`,
    added: (count) => (count === 1 ? "1 entrada añadida." : `${entries(count)} añadidas.`),
  },
  table: {
    title: "Para una hoja de cálculo",
    why: "Tablas para trabajar en otro sitio. No son una copia de seguridad: no se pueden volver a traer.",
    batches: "Lotes para una hoja de cálculo",
    readings: "Lecturas para una hoja de cálculo",
    writing: (done, all) => `Escribiendo: ${many(done)} de ${batches(all)}.`,
  },
  keeping: {
    title: "Almacén",
    protected: "A salvo de limpiezas",
    yes: "sí",
    no: "no: el navegador puede borrarlo si falta espacio",
    unknown: "este navegador no lo dice",
    used: "Usado",
    usedOf: (used, quota) => `${used} de unos ${quota}`,
    ask: "Pedir al teléfono que lo proteja",
    asking: "Pidiendo…",
    refused:
      "El teléfono dijo que no. Decide él solo, sobre todo por el uso: pon la aplicación en la pantalla de inicio, úsala y pídelo otra vez. Guarda copias.",
    mayBeCleared:
      "Guardado. El navegador puede borrarlo si al teléfono le falta espacio: pon la aplicación en la pantalla de inicio y guarda copias (Ajustes).",
    granted:
      "El teléfono ya lo protege. Guarda copias de todos modos: un teléfono perdido está perdido.",
    cannotAsk: "A este navegador no se le puede pedir. Guarda copias.",
  },
  version: {
    title: "Versión",
    now: (version) => `Esta es la versión ${version}.`,
    none: "No espera ninguna versión más nueva. La aplicación la busca siempre que hay señal.",
    waiting: "Hay una versión más nueva lista.",
    restart: "Reiniciar con ella",
  },
  demo: {
    title: "Muestra",
    why: "Recetas inventadas de un bar inventado, para mirar. Se ponen, o se dejan como eran, desde Recetas.",
    link: "A Recetas",
  },
  cautions: { title: "Avisos" },
};
