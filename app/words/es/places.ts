import type * as english from "../en/places.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

export const places: Spoken<typeof english.places> = {
  app: "Second Pour",
  bench: "Mesa",
  specs: "Recetas",
  shelf: "Estante",
  logbook: "Diario",
  kit: "Ajustes",
  nav: "Lugares",
  undo: "Deshacer",
  back: "Volver",
  opening: "Abriendo el almacén del teléfono…",
  failed: (why) =>
    `El almacén del teléfono no se abrió: ${why}. Cierra del todo la aplicación y ábrela otra vez. Nada de lo guardado se ha perdido.`,
  superseded: "hay una versión más nueva abierta en otra ventana",
  slowToOpen:
    "tarda mucho. Sigue intentándolo; cierra otras ventanas de la aplicación y espera un poco",
  loading: "Abriendo…",
  partMissing:
    "Una parte de la aplicación no se cargó. Termina lo que estés haciendo, luego cierra la aplicación y ábrela otra vez.",
  updateOther: "Cierra antes las otras ventanas de la aplicación.",
  updateReopen: "Cierra del todo la aplicación y ábrela otra vez para empezar la versión nueva.",
  updateLater:
    "Espera a que nadie tenga trabajo entre manos, no haya alarmas en la próxima media hora y todo formulario esté guardado.",
  notSaved: (why) =>
    `NO GUARDADO: ${why}. Lo último que hiciste no está guardado. Hazlo otra vez; si sigue, cierra del todo la aplicación y ábrela.`,
  noBeginning: "al lote le falta el comienzo",
  keepsWriting: "otra ventana sigue escribiendo en este lote",
  noRoom:
    "NO GUARDADO: al teléfono no le queda espacio. Lo último que hiciste no está guardado. Borra vídeos, fotos o aplicaciones del teléfono y hazlo otra vez.",
  penElsewhere: "Ahora escribe otra ventana de la aplicación: esta solo muestra.",
  takePen: "Trabajar en esta ventana",
  newerStorage:
    "Una versión más nueva de la aplicación ha escrito en este teléfono. Esta muestra lo que entiende y no cambia nada: cierra del todo la aplicación y ábrela otra vez para tener la nueva.",
  workingOut: (done, all) => `Leyendo los registros: ${done} de ${counted(all, "lote", "lotes")}…`,
  lost: "No hay nada en esta dirección. Puede que se haya quitado.",
  updateWaiting: "Hay una versión nueva lista. No empezará por sí sola.",
  updateNow: "Reiniciar con ella",
  unread: (count) =>
    count === 1
      ? "Esta versión no pudo leer 1 entrada guardada. Se conserva como está; una actualización quizá la lea."
      : `Esta versión no pudo leer ${count} entradas guardadas. Se conservan como están; una actualización quizá las lea.`,
};
