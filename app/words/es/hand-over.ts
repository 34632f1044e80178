import type * as english from "../en/hand-over.ts";
import type { Spoken } from "../spoken.ts";

export const handOver: Spoken<typeof english.handOver> = {
  leaving: "Si sales de esta pantalla, aquí no suena nada.",
  asks: (length) => `Esta espera dura ${length}. ¿Qué más la vigila?`,
  answer: "Decir qué",
  which: "Qué más la vigila",
  ways: { "phone-clock": "Alarma del teléfono", person: "Alguien", vessel: "Recipiente" },
  others: "Otros modos",
  fewer: "Menos modos",
  setClock: (time) => `Pon también la alarma del teléfono a las ${time}`,
  clockDone: "La alarma del teléfono ya está puesta",
  whoWatches: "Quién la vigila",
  anotherName: "Otras iniciales",
  personDone: (who) => `${who} la vigila`,
  nobody: "Elige quién la vigila",
  write: "Escribe en él, en grande:",
  vesselDone: "Está escrito en el recipiente",
  printLabel: "Imprimir una etiqueta",
  told: {
    "phone-clock": (time) => `La alarma del teléfono, a las ${time}: lo dijiste tú`,
    person: (time, who) => `${who} la vigila hasta ${time}: lo dijiste tú`,
    vessel: (time) => `En el recipiente, hasta ${time}: lo dijiste tú`,
  },
  somebody: "Alguien",
  calendar: "Archivo de calendario",
  calendarNote:
    "Un calendario da como mucho una señal corta: algunos calendarios pierden la alarma.",
  calendarEntry: (name, verb) => `${name}: ${verb}`,
  calendarDetail: (batch) => `${batch}. Míralo ahora.`,
  calendarFailed: "No se pudo hacer el archivo de calendario. Pon la alarma del teléfono.",
  calendarSaved: "Está en las descargas del navegador: ábrelo allí.",
  dim: "Atenuar",
};

export const dim: Spoken<typeof english.dim> = {
  title: "Atenuado",
  leave: "Toca en cualquier sitio para salir",
  others: (count) => (count === 1 ? "y 1 más espera" : `y ${count} más esperan`),
  none: "No se espera nada",
};

export const vessel: Spoken<typeof english.vessel> = {
  title: "Etiqueta del recipiente",
  card: "Etiqueta del recipiente",
  due: "Hora",
  since: (when) => `Desde ${when}`,
  keep: { fridge: "En frío", freezer: "Congelado" },
  watched: "Lo vigila",
  otherPaper: "Otro papel, PDF o imagen",
  byHand: "¿Sin impresora? Escribe esto en él, en grande:",
  line: (batch, verb, when) => `${batch} · ${verb} · ${when}`,
  print: "Imprimir",
  cannotPrint: "Este navegador no puede imprimir. Escríbelo a mano.",
  moves: "La hora es la de este momento: si cambia, escribe la nueva encima.",
  none: "Este lote no espera nada ahora, así que no hay etiqueta para su recipiente.",
  back: "Volver al lote",
};
