import type { empty as english } from "../en/empty.ts";
import type { Spoken } from "../spoken.ts";

export const empty: Spoken<typeof english> = {
  lines: "Écrire le premier : alcool, sucre et acide en découlent.",
  compare: (there) =>
    there === 0
      ? "Aucun lot n’est terminé. Deux lots terminés se voient ici côte à côte, le plus grand écart d’abord."
      : "Un lot est terminé. Avec un deuxième, ils se voient ici côte à côte, le plus grand écart d’abord.",
  drip: "Trop peu de relevés de cet égouttage. Deux en tracent ici la courbe, et la prévision suivante en apprend.",
  allSpecs: "Voir toutes les fiches",
};
