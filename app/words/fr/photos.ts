import type * as english from "../en/photos.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

export const photos: Spoken<typeof english.photos> = {
  title: "Photos",
  none: "Pas encore de photo. Prise à contre-jour, elle montrera dans un mois s’il était clair.",
  take: "Prendre une photo",
  choose: "Choisir une photo",
  working: "Réduction pour la garder…",
  added: "Photo gardée",
  alt: (number, when) => `Photo ${number} du ${when}`,
  open: (number, when) => `Montrer la photo ${number} du ${when}`,
  elsewhere: "sur un autre téléphone",
  elsewhereLong: "Cette photo est sur le téléphone qui l’a prise, ou a été supprimée ici.",
  close: "Fermer la photo",
  remove: "Retirer cette photo",
  removed: "Photo retirée",
  note: "Les photos restent sur ce téléphone, réduites et sans le lieu de la prise.",
  room: (count, size) => (count === 0 ? "aucune" : `${counted(count, "photo", "photos")}, ${size}`),
  roomTitle: "Photos des lots",
};
