import type * as english from "../en/places.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

export const places: Spoken<typeof english.places> = {
  app: "Second Pour",
  bench: "Poste",
  specs: "Fiches",
  shelf: "Étagère",
  logbook: "Carnet",
  kit: "Outils",
  nav: "Lieux",
  undo: "Annuler",
  back: "Retour",
  opening: "Ouverture du stockage du téléphone…",
  failed: (why) =>
    `Le stockage du téléphone ne s’est pas ouvert : ${why}. Fermer tout à fait l’application et la rouvrir. Rien de ce qui était enregistré n’est perdu.`,
  superseded: "une version plus récente est ouverte dans une autre fenêtre",
  slowToOpen:
    "c’est long. L’application essaie encore ; fermer les autres fenêtres de l’application et patienter un peu",
  loading: "Ouverture…",
  partMissing:
    "Une partie de l’application ne s’est pas chargée. Finir ce qui est en cours, puis fermer l’application et la rouvrir.",
  updateOther: "Fermer d’abord les autres fenêtres de l’application.",
  updateReopen: "Fermer tout à fait l’application et la rouvrir pour lancer la nouvelle version.",
  updateLater:
    "Elle attend que personne n’ait de travail en main, qu’aucune alarme ne tombe dans la demi-heure et que chaque formulaire soit enregistré.",
  notSaved: (why) =>
    `NON ENREGISTRÉ : ${why}. Le dernier geste n’est pas enregistré. Le refaire ; si cela persiste, fermer tout à fait l’application et la rouvrir.`,
  noBeginning: "le lot n’a pas de début",
  keepsWriting: "une autre fenêtre écrit sans cesse dans ce lot",
  noRoom:
    "NON ENREGISTRÉ : le téléphone n’a plus de place. Le dernier geste n’est pas enregistré. Supprimer vidéos, photos ou applications du téléphone, puis le refaire.",
  penElsewhere:
    "Une autre fenêtre de l’application écrit en ce moment : celle-ci ne fait que montrer.",
  takePen: "Travailler dans cette fenêtre",
  newerStorage:
    "Une version plus récente de l’application a écrit sur ce téléphone. Celle-ci montre ce qu’elle comprend et ne change rien : fermer tout à fait l’application et la rouvrir pour avoir la plus récente.",
  workingOut: (done, all) => `Lecture des journaux : ${done} sur ${counted(all, "lot", "lots")}…`,
  lost: "Il n’y a rien à cette adresse. Cela a peut-être été retiré.",
  updateWaiting: "Une nouvelle version est prête. Elle ne démarrera pas d’elle-même.",
  updateNow: "Redémarrer maintenant",
  unread: (count) =>
    count < 2
      ? `Cette version n’a pas pu lire ${count} entrée enregistrée. Elle est gardée telle quelle ; une mise à jour la lira peut-être.`
      : `Cette version n’a pas pu lire ${count} entrées enregistrées. Elles sont gardées telles quelles ; une mise à jour les lira peut-être.`,
};
