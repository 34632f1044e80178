import type { refusals as english } from "../en/refusals.ts";
import { abv, decimals, mass } from "../format.ts";
import { storageSize } from "../storage-size.ts";

const KINDS: Readonly<Record<string, string>> = {
  event: "entrée du journal",
  spec: "fiche",
  ingredient: "ingrédient",
  procedure: "procédé",
  planned: "lot planifié",
  photo: "photo",
};

export const refusals: typeof english = {
  "amount-empty": () => "Saisir une quantité, comme 45 ml, 1 1/2 oz ou 120 g.",
  "amount-without-number": ({ typed }) =>
    `« ${typed} » ne commence pas par un nombre. Saisir comme 45 ml ou ¾ oz.`,
  "amount-without-unit": ({ typed }) =>
    `« ${typed} » n’a pas d’unité. Ajouter ml, oz, g, trait ou une autre.`,
  "amount-unknown-unit": ({ unit }) =>
    `« ${unit} » n’est pas une unité connue ici. Prendre ml, cl, l, oz, trait, cuillère, càc, càs, tasse, g ou kg.`,
  "amount-not-positive": () => "La quantité doit être au-dessus de zéro.",
  "amount-too-large": () => "C’est plus d’une tonne. Vérifier le nombre et son unité.",
  "line-without-ingredient": () =>
    "Saisir ce que c’est après la quantité, comme 45 ml jus de citron.",
  "ingredient-impossible": ({ name }) =>
    `${name} : autant d’alcool, de sucre et d’acide ne tient pas dans un litre. Vérifier ses chiffres dans le placard.`,
  "dry-needs-weight": ({ name }) => `${name} se pèse, ne se verse pas. Donner sa quantité en g.`,
  "spec-without-lines": () => "Cette fiche n’a pas encore d’ingrédient. En ajouter au moins un.",
  "spec-ingredient-missing": () =>
    "Un ingrédient de cette fiche n’est plus dans le placard. En choisir un autre pour cette ligne.",
  "wash-dairy-missing": () =>
    "Le lait de cette clarification n’est plus dans le placard. En choisir un autre.",
  "wash-dairy-not-dairy": ({ name }) =>
    `${name} n’est pas un lait. Choisir un lait pour la clarification.`,
  "nothing-to-wash": () =>
    "Tout est réservé : il n’y a rien à verser dans le lait. Baisser une part réservée.",
  "botanicals-keep-all": () =>
    "Ce qui infuse boit tout le liquide. En mettre moins, ou plus de liquide.",
  "stock-unused": () => "Cette fiche n’utilise pas cet ingrédient. En choisir un autre.",
  "vessel-too-small": () =>
    "Ce récipient est trop petit pour le lot : les filtres boiraient ce qu’il contient. En prendre un plus grand.",
  "size-too-small": () =>
    "Ce lot est trop petit : il ne resterait rien après la part du caillé et des filtres. L’agrandir.",
  "spec-holds-nothing": () =>
    "Cette fiche ne fait aucun volume. Ajouter un ingrédient qui se verse.",
  "target-above-spirit": ({ nearest }) =>
    `Le spiritueux réservé est trop faible pour ce titre. Le plus proche est juste sous ${abv(Number(nearest))}.`,
  "target-below-base": ({ nearest }) =>
    `Le punch clarifié est déjà plus fort que cela. Le plus proche est ${abv(Number(nearest))}, sans appoint.`,
  "nothing-held-back": () =>
    "Un titre est visé, mais rien n’est réservé pour l’atteindre. Réserver une part du spiritueux, ou faire l’appoint en proportion.",
  "procedure-without-end": () =>
    "Ce procédé n’arrive jamais à sa fin : certaines étapes ne mènent que l’une à l’autre. Le corriger dans Procédés, puis commencer.",
  "run-already-started": () => "Ce lot est déjà commencé. L’ouvrir depuis le Poste.",
  "run-not-started": () =>
    "Ce lot n’a pas été commencé sur ce téléphone. Le commencer depuis son plan, ou le recevoir de l’autre téléphone dans Outils.",
  "run-ended": () => "Ce lot est terminé. Son journal reste dans le Carnet.",
  "step-not-open": () =>
    "Cette étape est déjà finie, peut-être dans une autre fenêtre. L’écran montre maintenant où en est le lot.",
  "reading-missing": () => "Mesurer d’abord : cette étape a besoin d’un chiffre pour finir.",
  "look-missing": () => "Dire d’abord ce qu’on voit : clair, voilé ou trouble.",
  "reading-not-a-number": () => "Un tel chiffre ne peut pas être mesuré. Le saisir à nouveau.",
  "reading-above-poured": ({ most }) =>
    `C’est plus qu’il n’en est entré dans le récipient (environ ${Math.round(Number(most))} ml). Vérifier les chiffres.`,
  "tare-missing": () =>
    "Peser d’abord le récipient vide : la balance ne le distingue pas de son contenu.",
  "weight-below-tare": ({ gross, tare }) =>
    `${mass(Number(gross))}, c’est moins que le récipient vide (${mass(Number(tare))}). Vérifier les chiffres, ou repeser le récipient.`,
  "order-does-not-fit": () =>
    "Cela ne va pas avec cette étape. L’écran montre où en est le lot ; le refaire là.",
  "no-bottles": () => "Dire combien de bouteilles sont remplies, au moins une.",
  "note-empty": () => "La note est vide. Écrire d’abord quelque chose.",
  "taste-empty": () => "La feuille est vide. Donner au moins une note ou choisir un mot.",
  "taster-missing": () => "Dire qui a goûté, par ses initiales.",
  "tag-empty": () => "Le repère est vide. Saisir d’abord un mot.",
  "not-bottled": () => "Ce lot n’est pas encore en bouteille : on ne peut rien en servir.",
  "stock-ended": () =>
    "Ce lot n’est plus sur l’étagère : il est épuisé ou jeté. Annuler d’abord cela dans son journal.",
  "pour-empty": () => "Dire combien a été servi : plus que rien.",
  "not-a-picture": () =>
    "Ce fichier n’est pas une image que le téléphone sait ouvrir. En choisir un autre ; rien n’a changé.",
  "undo-later-first": () => "Autre chose a été fait après. Annuler d’abord l’étape suivante.",
  "nothing-to-undo": () => "Il n’y a plus rien à annuler ici. Le journal montre ce qui compte.",
  "part-missing": () =>
    "Une partie de l’application ne s’est pas chargée : rien n’a été noté. Fermer tout à fait l’application, la rouvrir et recommencer.",
  "not-saved": ({ why }) => `NON ENREGISTRÉ : ${why}. Le refaire ; rien d’autre n’a changé.`,
  "no-room": () =>
    "NON ENREGISTRÉ : le téléphone n’a plus de place. Supprimer vidéos, photos ou applications du téléphone, puis le refaire ; rien d’autre n’a changé.",
  "pen-elsewhere": () =>
    "Rien de fait : une autre fenêtre de l’application écrit en ce moment. Toucher « Travailler dans cette fenêtre » au pied de l’écran, puis le refaire.",
  "newer-storage": () =>
    "Rien de fait : une version plus récente de l’application a écrit sur ce téléphone, et celle-ci ne fait que lire. Fermer tout à fait l’application et la rouvrir.",
  "storage-silent": ({ why }) =>
    `Le stockage du téléphone n’a pas répondu : ${why}. Fermer tout à fait l’application, la rouvrir et réessayer. Rien n’a changé.`,
  "backup-empty": () =>
    "Ce fichier est vide. Choisir celui fait par l’application. Rien n’a changé.",
  "backup-too-large": ({ most }) =>
    `Ce fichier dépasse ${storageSize(Number(most))}, plus qu’aucune sauvegarde. Choisir celui fait par l’application. Rien n’a changé.`,
  "backup-too-many-lines": ({ most }) =>
    `Ce fichier contient plus de ${decimals(Number(most), 0)} lignes, plus qu’aucune sauvegarde. Choisir celui fait par l’application. Rien n’a changé.`,
  "backup-encoding": () =>
    "Ce fichier a été réenregistré dans un autre encodage (UTF-16). L’enregistrer en UTF-8, ou choisir celui fait par l’application. Rien n’a changé.",
  "backup-not-text": () =>
    "Ce n’est pas un fichier de texte, donc pas une sauvegarde : peut-être une image. Choisir celui fait par l’application. Rien n’a changé.",
  "backup-not-ours": () =>
    "Ce fichier n’est pas une sauvegarde de Second Pour. Choisir celui fait par l’application. Rien n’a changé.",
  "backup-newer": ({ version }) =>
    `Cette sauvegarde vient d’une version plus récente (format ${version}). Mettre l’application à jour, puis réessayer. Rien n’a changé.`,
  "backup-unreadable": () =>
    "Le téléphone n’a pas pu lire ce fichier jusqu’au bout. Le copier sur le téléphone, puis le choisir à nouveau. Rien n’a changé.",
  "backup-given-up": () => "Arrêté. Rien n’a changé.",
  "backup-added-unread": ({ why }) =>
    `Tout a été ajouté, mais n’a pu être relu : ${why}. Fermer tout à fait l’application et la rouvrir.`,
  "line-too-long": ({ most }) => `dépasse ${storageSize(Number(most))}, plus qu’aucune entrée.`,
  "line-not-utf8": () =>
    "contient des lettres dans un autre encodage que l’UTF-8 : abîmée, ou réenregistrée par un autre programme.",
  "line-too-deep": ({ most }) =>
    `crochets emboîtés plus de ${most} fois, plus que dans aucune entrée.`,
  "line-not-json": () => "illisible : coupée ou modifiée.",
  "line-no-record": () => "ne contient aucune entrée.",
  "line-unknown-kind": ({ kind }) =>
    `est d’une sorte que cette version ne connaît pas : « ${kind} ». Une plus récente peut-être.`,
  "line-unknown-event": ({ type }) =>
    `est une entrée du journal que cette version ne connaît pas : « ${type} ». Une plus récente peut-être.`,
  "line-field": ({ kind, field }) =>
    field === ""
      ? `ne contient pas d’entrée de cette sorte : ${KINDS[kind ?? ""] ?? kind}.`
      : `sorte ${KINDS[kind ?? ""] ?? kind} : « ${field} » n’est pas comme attendu.`,
  "line-differs-here": () =>
    "cette entrée est déjà ici avec un autre contenu ; ce qui est ici reste tel quel.",
  "line-differs-above": () =>
    "cette entrée est sur une ligne plus haut avec un autre contenu ; celle-là compte.",
};
