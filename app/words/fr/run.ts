import { degrees, degreesBare } from "../degrees.ts";
import type * as english from "../en/run.ts";
import type { Spoken } from "../spoken.ts";
import { counted } from "./count.ts";

const done: Readonly<Record<string, string>> = {
  build: "Tout y est",
  pour: "C’est versé",
  curdle: "Le repos est fini",
  curdleEarly: "Abréger le repos",
  "wet-filter": "Le filtre est mouillé",
  "first-pass": "Il coule clair",
  "slow-drip": "Il ne coule plus",
  label: "Étiqueté : à l’Étagère",
};

const steps: Readonly<Record<string, string>> = {
  rescue: "Trois passes et toujours pas clair. Que faire ?",
  finer: "Poser un papier neuf plus fin, mouillé, et y porter le lit de caillé.",
  get "cold-rest"() {
    return `Couvert, entre ${degreesBare(2)} et ${degrees(4)}, sans le bouger.`;
  },
  rack: "Tirer le liquide clair sans remuer le dépôt.",
  steep: "Couvert. Goûter à chaque appel ; passer quand c’est bon.",
  "strain-mesh": "Passer au tamis. Ne pas presser.",
  "strain-paper": "Puis au papier mouillé.",
  melt: "Faire fondre le gras, sans plus, loin des flammes. Le verser dans le spiritueux et secouer.",
  mingle: "Laisser couvert ; secouer de temps en temps.",
  freeze: "Au congélateur.",
  "lift-fat": "Casser le gras durci et le retirer à froid.",
  skins: "Peler les zestes sans le blanc sur le sucre, et les presser ensemble.",
  "draw-oil": "Couvert, jusqu’à ce que le sucre soit mouillé d’huile.",
  stir: "Remuer jusqu’à ce que tout soit dissous.",
  cool: "Refroidir avant de mesurer : à chaud la mesure est fausse.",
  brix: "Lire les °Brix à température ambiante.",
  correct: "Trop léger : ajouter du sucre. Trop épais : ajouter de l’eau. Noter l’ajout.",
};

export const run: Spoken<typeof english.run> = {
  stepOf: (at, of) => `Étape ${at} sur ${of}`,
  round: (n) => `encore, tour ${n}`,
  details: {
    build: "Mesurer chaque chose dans un seul récipient. Cocher ce qui y est.",
    milk: (amount, weight) =>
      `Mesurer ${amount} (${weight}) de lait froid dans le grand récipient.`,
    pourPunchIntoMilk: (amount) =>
      `Verser le punch (${amount}) lentement dans le lait. Mélanger une seule fois, doucement.`,
    pourMilkIntoPunch: (amount) =>
      `Verser le lait lentement dans le punch (${amount}). Mélanger une seule fois, doucement.`,
    curdle: "Laisser le caillé se déposer. Ne plus remuer.",
    filter: (count) =>
      count < 2
        ? "Mouiller le filtre, laisser égoutter, placer un récipient dessous."
        : `Mouiller ${count} filtres, laisser égoutter, placer un récipient sous chacun.`,
    firstPass: "Tout verser sur le filtre. Attendre que les gouttes soient claires.",
    rePour:
      "Changer de récipient. Reverser doucement le trouble sur le caillé. Combien y en avait-il ?",
    checkClear: "Regarder les gouttes sous le caillé. Que voit-on ?",
    slowDrip: "Laisser égoutter, au froid et couvert. Ne pas presser ni racler.",
    yield: (expected, low, high) =>
      `Mesurer tout ce qui est passé. Attendu : ${expected}, ou ${low} à ${high}.`,
    steps,
    measureAll: "Mesurer tout ce qu’il y a.",
    bottle: "Remplir des bouteilles propres. Les compter.",
    label: "Poser l’étiquette sur chaque bouteille.",
  },
  done,
  missing: (count) =>
    counted(count, "ingrédient n’est pas coché", "ingrédients ne sont pas cochés"),
  asPlanned: (amount) => `${amount}, c’est versé`,
  otherAmount: "Autre quantité",
  typeAmount: "Saisir la quantité",
  typeFigure: "Saisir le chiffre",
  backToStep: "Retour à l’étape",
  outcomes: {
    clear: "C’est clair",
    hazy: "Voilé : reverser",
    cloudy: "Trouble : reverser",
    right: "C’est bon",
    "not-yet": "Pas encore : regoûter",
    "too-far": "Trop loin : arrêter",
    "finer-filter": "Filtre plus fin",
    "cold-rest": "Froid, puis tirer au clair",
    accept: "L’accepter tel quel",
  },
  plainLooks: { clear: "C’est clair", hazy: "C’est voilé", cloudy: "C’est trouble" },
  lastTasted: (time) => `Goûté la dernière fois à ${time}`,
  stopBy: (time) => `Arrêter à ${time}, quel que soit le goût`,
  askAt: (time) => `demande à ${time}`,
  askedAt: (time) => `a demandé à ${time}`,
  overdue: (late) => `${late} de retard`,
  collected: "Noter un relevé",
  collectedSoFar: (amount, share) => `${amount} jusqu’ici, ${share} de l’attendu`,
  noneCollected: "Rien de noté",
  around: {
    stands: "Où il est",
    standing: { counter: "Comptoir", fridge: "Frigo", freezer: "Congélateur" },
    pause: "Pause : taire ses alarmes",
    resume: "Reprendre : ses alarmes sonnent à nouveau",
    paused: "En pause",
    resumed: "Repris",
    pausedSince: (time) =>
      `En pause depuis ${time}. Ses alarmes se taisent ; ce qui attend continue.`,
  },
  warm: {
    within: (length) => `Au-dessus de ${degrees(5)} pendant ${length}`,
    near: (length, full) =>
      `Au-dessus de ${degrees(5)} pendant ${length} : les 4 h seront atteintes à ${full}. Le refroidir. Suivre la réglementation locale.`,
    nearCold: (length) =>
      `Il a été au-dessus de ${degrees(5)} pendant ${length}. Le garder au froid. Suivre la réglementation locale.`,
    past: (length) =>
      `Au-dessus de ${degrees(5)} pendant ${length}, plus de 4 h. La réglementation locale décide si on peut le garder.`,
  },
  pads: {
    milk: "Lait dans le récipient",
    "cloudy-run": "Trouble reversé",
    collected: "Recueilli jusqu’ici",
    yield: "Tout ce qui est passé",
    "top-up": "Spiritueux versé",
    brix: "°Brix lus",
    temperature: "Température lue",
  },
  unit: "ml",
  ozUnit: "oz",
  brixUnit: "°Bx",
  below: "Sous 0",
  belowName: "Sous zéro",
  erase: "Effacer",
  mark: "Virgule",
  take: "Noter",
  topUp: {
    pour: (amount) => `Verser ${amount} du spiritueux réservé.`,
    planned: "Prévu",
    now: "Maintenant",
    fixed: "La fiche veut un appoint fixe, quoi qu’il soit passé.",
    proportion: (share) =>
      `${share} du rendement attendu est passé : le spiritueux suit dans la même proportion.`,
    strength: (share, abv) =>
      `${share} du rendement attendu est passé. Cette quantité l’amène à ${abv}.`,
    same: "Le rendement est celui prévu : l’appoint reste celui prévu.",
    none: "Rien n’a été réservé pour cette fiche.",
    beyond: (amount) =>
      `${amount} de plus que la réserve : ouvrir une autre bouteille pour le reste.`,
    refused: (abv) =>
      `Le titre visé ne peut être atteint avec ce spiritueux. Cette quantité donne ${abv}.`,
    result: (abv) => `En bouteille : ${abv}`,
    nothing: "Rien à verser : continuer",
  },
  bottle: {
    size: "Taille de bouteille",
    count: "Bouteilles remplies",
    fewer: "Une bouteille de moins",
    more: "Une bouteille de plus",
    total: (filled, there) => `${filled} remplis sur ${there} environ`,
    useBy: "Date limite",
    earlier: "Un jour plus tôt",
    later: "Un jour plus tard",
    useByNote:
      "Règle de la maison, le jour de fabrication est le jour 1. Suivre la réglementation locale, et une date plus proche sur le lait.",
    done: (count) => counted(count, "bouteille remplie", "bouteilles remplies"),
  },
  did: "Fait",
  saved: "Enregistré.",
  pressAgain: "Appuyer encore une fois maintenant, ou garder la touche enfoncée.",
  wet: {
    ask: "Mains mouillées ?",
    means: "Une touche géante par étape",
    all: "Revenir à tout",
  },
  undone: "Annulé",
  collectedIs: (amount) => `${amount} recueillis`,
  finished: "Terminé",
  stopped: "Arrêté",
  ended: "Ce lot est terminé. Il est sur l’Étagère, et son dossier dans le Carnet.",
  abandonedBecause: (reason) => `Abandonné : ${reason}`,
  toShelf: "Étagère",
  toLog: "Son dossier",
  toSheet: "Feuille de contrôle",
  seeLabel: "Voir et imprimer l’étiquette",
  toLabel: "Son étiquette",
  toHand: "Le transmettre à un autre téléphone",
  abandon: "Abandonner ce lot",
  abandonSure: "Dire pourquoi ; son journal est gardé.",
  abandonReasons: [
    "Lait tourné",
    "Pas de caillé",
    "Filtre bouché",
    "Renversé",
    "Commencé par erreur",
  ],
  abandonDone: "Abandonner",
  more: "Plus",
  less: "Moins",
  undoLast: "Annuler la dernière étape",
};
