import type * as english from "../en/handing.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

const frames = (count: number): string => counted(count, "código", "códigos");

export const handing: Spoken<typeof english.handing> = {
  title: "Pasar a otro teléfono",
  lost: "Aquí no hay nada que pasar. Puede que se haya quitado.",
  what: {
    run: (name) => `${name}, con todo su registro`,
    spec: (name) => `La receta de ${name}, con lo que lleva`,
    day: "Todos los lotes en marcha y planificados",
  },
  how: "En el otro teléfono abre Ajustes, luego “Tomar de otro teléfono”, y apunta su cámara a este código. No hace falta red.",
  loop: (count) => `${frames(count)}, uno tras otro, una y otra vez, en cualquier orden.`,
  at: (at, count) => `${at} de ${count}`,
  pause: "Detener este código",
  goOn: "Seguir",
  packing: "Preparando…",
  tooMuch: "Es demasiado para códigos: entrégalo como archivo.",
  file: "Como archivo",
  stays:
    "También se queda en este teléfono. Di quién sigue con ello, para que suene uno y no los dos.",
  take: {
    title: "Tomar de otro teléfono",
    why: "Apunta la cámara al código que el otro teléfono muestra en “Pasar a otro teléfono”. Lo hecho en los dos teléfonos se conserva. Sobre el código de una etiqueta abre ese lote.",
    open: "Abrir la cámara",
    stop: "Cerrar la cámara",
    seen: (seen, count) => `Lectura: ${seen} de ${frames(count)}`,
    looking: "Buscando un código…",
    refused:
      "Aquí no se permite la cámara. Permítela para este sitio en los ajustes del teléfono, o pide un archivo al otro teléfono.",
    absent:
      "No se encontró ninguna cámara. Pide un archivo al otro teléfono y tráelo como copia de seguridad.",
    damaged: "Lo leído está dañado. Cierra la cámara, ábrela otra vez y lee de nuevo.",
    done: (count) => `${counted(count, "entrada recibida", "entradas recibidas")}.`,
    toBench: "A la Mesa",
  },
};
