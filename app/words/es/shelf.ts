import type { StockEnd, StockUnit } from "../../../core/run/event.ts";
import type * as english from "../en/shelf.ts";
import { typed } from "../format.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

const days = (count: number): string => counted(count, "día", "días");
const serves = (count: number): string => counted(count, "copa", "copas");

const units: Readonly<Record<"serves" | "bottles", string>> = {
  serves: "copas",
  bottles: "botellas",
};

const pourWays: Readonly<Record<StockUnit, string>> = {
  serves: "Copas",
  bottles: "Botellas",
  ml: "Medido",
};

const endWays: Readonly<Record<StockEnd, string>> = {
  spent: "Se acabó",
  discarded: "Se tiró",
};

const reasons: readonly string[] = [
  "caducado",
  "sabe mal",
  "se enturbió",
  "derramado o roto",
  "otro motivo",
];

export const shelf: Spoken<typeof english.shelf> = {
  title: "Estante",
  empty:
    "Ahora no hay nada embotellado. Cada lote embotellado está aquí, primero el que antes caduca, con lo que queda y cuándo hacer el siguiente.",
  count: (batches, past) =>
    `${counted(batches, "lote", "lotes")}${past > 0 ? `, ${counted(past, "caducado", "caducados")}` : ""}`,
  useBy: (date) => `Caduca ${date}`,
  left: (count) => (count === 1 ? "queda 1 día" : `quedan ${days(count)}`),
  lastDay: "hoy es el último día",
  past: "caducado: tirar",
  ago: (count) => (count === 0 ? "hoy, más temprano" : `hace ${days(count)}`),
  bottle: (count, size) => `${count} × ${size}`,
  serves: (count) => (count === 1 ? "queda 1 copa" : `quedan ${serves(count)}`),
  of: (left, total) => `${left} de ${total}`,
  label: "Etiqueta",
  labelOf: (batch) => `Etiqueta de ${batch}`,
  log: "Ficha",
  logOf: (batch) => `Ficha de ${batch}`,
  note: "Las fechas son norma de la casa, con el día de elaboración como día 1. Lo que queda es lo anotado. Sigue tu normativa local.",
  more: (count) => `Mostrar más (${count})`,
  pour: {
    begin: "Servir",
    open: (batch) => `Servir de ${batch}`,
    how: "Contado en",
    ways: pourWays,
    units,
    label: (batch) => `Servido de ${batch}`,
    leaves: (amount, left) =>
      `${amount}; ${left === 1 ? "queda 1 copa" : `quedan ${serves(left)}`}`,
    more: (amount, left) => `${amount} es más de lo que queda según el registro (${left})`,
    take: "Anotar",
    done: (amount) => `${amount}, servido`,
  },
  end: {
    begin: "Quitar del estante",
    open: (batch) => `Quitar ${batch} del estante`,
    how: "¿Qué ha sido de ello?",
    ways: endWays,
    why: "¿Por qué?",
    reasons,
    take: "Quitarlo del estante",
  },
  over: {
    ask: (amount) =>
      `Anotado de más, frente a lo embotellado: ${amount}. ¿Se acabó, o hay una entrada mal?`,
    gone: "Se acabó",
    look: "Buscar la que está mal",
  },
  goneTitle: "Fuera del estante esta semana",
  forgotten: {
    title: "Caducado hace tiempo",
    says: (count) =>
      count === 1
        ? "Un lote caducó hace dos semanas o más y nadie lo quitó del estante."
        : `${count} lotes caducaron hace dos semanas o más y nadie los quitó del estante.`,
    show: "Mostrarlos",
    hide: "Ocultarlos",
  },
  next: {
    title: "Qué hacer después",
    lasts: (when) => `Dura hasta ${when} más o menos.`,
    out: "No queda nada.",
    startBy: (when) => `Empieza el próximo lote antes de ${when}.`,
    startNow: "Empieza ya el próximo lote.",
    rate: (perDay, evenings, of) =>
      `Copas al día, unas ${typed(perDay, perDay < 10 ? 1 : 0)}: estimado con ${counted(evenings, "noche", "noches")} de ${counted(of, "día anotado", "días anotados")} aquí.`,
    doing: {
      planned: "El próximo lote está en la lista de preparación.",
      made: "El próximo lote está en marcha.",
    },
    put: "A la lista de preparación",
    noSpec: "Su receta ya no se puede planificar: se quitó o le falta un ingrediente.",
    note: "Aquí no cuentan las horas en que nadie trabaja; la lista de preparación sí las cuenta.",
  },
};
