import type * as english from "../en/days.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

export const days: Spoken<typeof english.days> = {
  title: "Lista de preparación",
  link: "A la lista de preparación",
  trouble: "Los próximos días no salen como se planificó.",
  see: "Ver por qué",
  empty:
    "No hay nada planificado. Planifica un lote, di para cuándo debe estar listo y ponlo en la lista: desde ahí se calcula hacia atrás.",
  toSpecs: "Elegir una receta",
  week: "Los próximos días",
  dayOf: (hands, ready) =>
    ready === 0
      ? `${hands} de trabajo a mano`
      : `${hands} de trabajo a mano, ${ready} para entregar`,
  free: "nada planificado",
  today: "Hoy",
  hands: (length) => `${length} de trabajo a mano`,
  nothing: "Nada que hacer a mano.",
  window: (from, to) => `${from}–${to}`,
  readyBy: (name, time) => `${name} debe estar listo ${time}`,
  now: "Hacer ahora",
  running: "En marcha",
  planned: "Planificados",
  startBy: (time) => `Empezar a más tardar ${time}`,
  startNow: "Empezar ya",
  open: (name) => `Abrir ${name}`,
  openRun: "Abrir",
  saveReady: "Fijar la entrega",
  more: "Planificar otro lote",
  mustBe: (time) => `Listo para ${time}`,
  noPromise: "Sin hora de entrega: espera su turno y nunca va con retraso.",
  madeFor: (name) => `Para ${name}`,
  specChanged:
    "Su receta cambió después. Se hace como se planificó: planifícalo otra vez para incluir el cambio.",
  start: (name) => `Empezar ${name}`,
  remove: (name) => `Quitar ${name} de la lista`,
  removed: (name) => `${name} está fuera de la lista`,
  setReady: "Fijar o cambiar la entrega",
  readySet: (time) => `Entrega fijada: ${time}`,
  late: (name, by) => `${name} irá con ${by} de retraso.`,
  stood: (name, step, by) => `${name}: espera ${by} de más antes de “${step}”.`,
  breaks: {
    time: (name, by) => `No hay tiempo suficiente: ${name} iría con ${by} de retraso.`,
    standing: (name, by) => `${name} esperaría ${by} más de lo permitido.`,
    more: (what, by, name) => `${what}: ${by} de menos. Se nota en ${name}.`,
    instead: "O, en su lugar:",
    also: "Además:",
    least: "El plan que sigue lo deja en lo mínimo.",
    unsure: "No se encontró un orden que encaje; puede que lo haya.",
  },
  resources: {
    person: "Manos",
    "filter-stand": "Soportes de filtro",
    fridge: "Sitio en el refrigerador",
    freezer: "Sitio en el congelador",
    blender: "Batidoras de vaso",
    burner: "Fuegos",
  },
  amounts: {
    litres: (value) => `${value} litros`,
    count: (value) => value,
  },
  moved: {
    title: "Movido desde la última vez",
    later: (name, step, by, to) => `${name}, desde “${step}”: ${by} más tarde, ahora ${to}`,
    earlier: (name, step, by, to) => `${name}, desde “${step}”: ${by} antes, ahora ${to}`,
    because: (name, step) => `por ${name}, “${step}”`,
    seen: "Ya lo he visto",
  },
  quiet: {
    title: "Próximo rato tranquilo",
    from: (from, to) => `${from}–${to}`,
    now: (to) => `No hay nada que hacer a mano antes de ${to}.`,
    open: "No queda nada que hacer a mano.",
    openFrom: (from) => `Desde ${from}.`,
    could: "Lo que cabe en él:",
    nothing: "Nada de lo planificado cabe en él.",
    task: (name, step, length) => `${name}: ${step}, ${length}`,
  },
  parts: {
    title: "Se hace antes aquí",
    part: (name, amount) => `${amount} de ${name}`,
    add: "Ponerlos también en la lista",
    skip: "No, ya los hay",
    unplanned: (names) =>
      `${names}: su propia receta no se pudo planificar. Hazlo como sabes, con tiempo.`,
  },
  put: "Ponerlo en la lista",
  isOn: (count) =>
    count === 0 ? "En la lista." : `En la lista, con ${counted(count, "parte", "partes")}.`,
  room: (people, stands, hours) =>
    `${counted(people, "par de manos", "pares de manos")}, ${counted(stands, "soporte de filtro", "soportes de filtro")}, hay alguien ${hours}`,
  always: "a todas horas",
  changeRoom: "Cambiarlo en Ajustes",
  guess:
    "Cinco minutos por cada cosa hecha a mano; una infusión, lo más que dura; un goteo, según su volumen hasta que se lea.",
  toHand: "Pasarla a otro teléfono",
  print: "Imprimir",
  noPrint:
    "Este navegador no puede imprimir. Comparte el archivo de calendario o copia la lista a mano.",
  calendar: "Archivo de calen\u00addario",
  calendarDetail: "Calculado hacia atrás desde la entrega. Las alarmas del lote van primero.",
  waits: (name, step) => `${name}: ${step} sigue`,
};
