import type * as english from "../en/photos.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

export const photos: Spoken<typeof english.photos> = {
  title: "Fotos",
  none: "Aún sin fotos. Una a contraluz enseña el mes que viene lo claro que estaba.",
  take: "Hacer una foto",
  choose: "Elegir una foto",
  working: "Reduciéndola para guardarla…",
  added: "Foto guardada",
  alt: (number, when) => `Foto ${number}, ${when}`,
  open: (number, when) => `Mostrar la foto ${number}, ${when}`,
  elsewhere: "en otro teléfono",
  elsewhereLong: "Esta foto está en el teléfono que la hizo, o se quitó aquí.",
  close: "Cerrar la foto",
  remove: "Quitar esta foto",
  removed: "Foto quitada",
  note: "Las fotos se quedan en este teléfono, reducidas y sin el lugar donde se hicieron.",
  room: (count, size) => (count === 0 ? "ninguna" : `${counted(count, "foto", "fotos")}, ${size}`),
  roomTitle: "Fotos de lotes",
};
