import type { first as english } from "../en/first.ts";

export const first: typeof english = {
  title: "Première fois ?",
  what: "De la fiche à la bouteille étiquetée : que peser, quand revenir, ce qui est passé. L’application sonne, note, et marche sans réseau.",
  practise: "S’exercer à clarifier",
  practiseWhy:
    "Toute la clarification en une minute environ, avec des attentes de quelques secondes. Récipient vide. Rien n’en est gardé.",
  name: "Clarification d’essai",
  mark: "Exercice : les attentes durent des secondes, rien n’est gardé.",
  leave: "Quitter l’exercice",
  over: "Voilà une clarification entière",
  overWhy:
    "Une vraie dure une journée. L’application sonne à chaque attente et retient chaque chiffre.",
  done: "Fini, l’effacer",
  gone: "L’exercice est effacé.",
};
