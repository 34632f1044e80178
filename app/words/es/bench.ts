import type * as english from "../en/bench.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

export const bench: Spoken<typeof english.bench> = {
  title: "Mesa",
  empty:
    "No hay nada en marcha. Elige una receta, planifica un lote y empiézalo: estará aquí y llamará cuando te necesite.",
  toSpecs: "Elegir una receta",
  start: "Empezar un lote",
  prepList: "Lista de preparación",
  now: "ahora",
  read: "Anotar una lectura",
  waitsFor: "te espera",
  left: "faltan",
  running: (count) => counted(count, "lote en marcha", "lotes en marcha"),
  column: (name, what) => `${name}: ${what}`,
  bands: {
    milk: "leche",
    curd: "cuajada",
    cloudy: "turbio",
    hazy: "velado",
    clear: "claro",
    spirit: "destilado",
    punch: "punch",
    empty: "vacío",
  },
};

export const alarm: Spoken<typeof english.alarm> = {
  heard: "Ya estoy aquí",
  lateBy: (length) => `${length} de retraso`,
  dueNow: "toca ahora",
  waitsOnBench: (what) => `Oído. ${what} espera en la Mesa.`,
  others: (count) => `y ${count} más`,
  status: {
    "rings-here": "Suena aquí. Deja esta pantalla encendida.",
    "rings-here-and-phone-clock": "Suena aquí, y también pusiste la alarma del teléfono.",
    "rings-here-and-person": "Suena aquí, y alguien lo vigila también: lo dijiste tú.",
    "rings-here-and-vessel": "Suena aquí, y está escrito en el recipiente.",
    "rings-here-and-several": "Suena aquí, y cada espera se vigila también de otro modo.",
    "phone-clock": "Aquí no es seguro que suene. Pusiste la alarma del teléfono.",
    person: "Aquí no es seguro que suene. Alguien lo vigila: lo dijiste tú.",
    several: "Aquí no es seguro que suene. Cada espera se vigila de otro modo: lo dijiste tú.",
    "no-bell": "Falta una parte y nada suena. Cierra del todo la aplicación y ábrela otra vez.",
    "out-of-sight": "Fuera de la vista: suena cuando vuelvas.",
    "no-sound": "Este navegador no tiene sonido. Pon la alarma del teléfono.",
    "sound-blocked": "En silencio hasta que toques la pantalla.",
    "sound-unheard": "Sonido sin probar: hazlo en Ajustes.",
    "sound-check-old": "Sonido probado hace más de 12 h: repítelo en Ajustes.",
    "screen-lock-refused": "La pantalla puede apagarse: déjala encendida o sonará tarde.",
    "screen-lock-absent": "La pantalla puede apagarse: déjala encendida o sonará tarde.",
  },
  checkSound: "Probar el sonido",
};
