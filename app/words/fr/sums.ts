import { degrees, degreesApart, degreesBare } from "../degrees.ts";
import type * as english from "../en/sums.ts";
import { degreeSign } from "../house-units.ts";
import type { Spoken } from "../spoken.ts";
import { names } from "./sum-names.ts";

export const sums: Spoken<typeof english.sums> = {
  title: "Calculs",
  lead: "Calculs rapides au poste. Rien de ce qui est saisi ici n’est gardé. Toucher un chiffre de la réponse pour voir son calcul.",
  all: "Tous les calculs",
  toSpecs: "Toutes les fiches",
  waiting: "La réponse vient ici dès que chaque chiffre ci-dessus a un sens.",
  answer: "Réponse",
  sum: {
    spirit: {
      title: "Réduire un spiritueux",
      detail: "Eau pour atteindre un titre, ou assembler deux ou trois",
    },
    syrup: { title: "Sirop", detail: "°Brix, quantité, et s’il cristallise" },
    acid: { title: "Ajuster l’acidité d’un jus", detail: "Comme le citron ou le citron vert" },
    saline: { title: "Solution saline", detail: "Grammes de sel pour une concentration" },
    freeze: {
      title: "Va-t-il geler ?",
      get detail() {
        return `À ${degrees(-18)}, ou à toute température`;
      },
    },
    ice: { title: "Glace", detail: "Eau, titre et température dans le verre" },
    ph: { title: "pH d’un mélange", detail: "D’après ses acides et son jus" },
  },
  names,
  volumeIn: (label, unit) => `${label}, ${unit}`,
  optional: (label) => `${label} (s’il y en a)`,
  faults: {
    volume: "Saisir un volume au-dessus de zéro, comme 700, 1,5 l ou 24 oz. Jusqu’à 100 litres.",
    mass: "Saisir un poids au-dessus de zéro, comme 500 ou 1,5 kg. Jusqu’à 100 kg.",
    percent: (low, high) => `Saisir un titre de ${low} à ${high} %, comme 40.`,
    sugar: "Saisir des grammes de sucre par litre, de 0 à 1200.",
    acid: "Saisir des grammes par litre, de 0 à 160, ou laisser vide s’il n’y en a pas.",
    temperature: (low, high) =>
      `Saisir une température de ${low} à ${high}, comme ${degreesBare(4)} ou ${degreesBare(-6)}.`,
    grams: "Saisir des grammes de 0 à 100 000, ou laisser vide s’il n’y en a pas.",
  },
  doesNotFit:
    "Autant d’alcool et de sucre ne tient pas dans un litre. Vérifier le titre, puis le sucre.",
  spirit: {
    how: "Le réduire avec",
    water: "De l’eau",
    blend: "Un assemblage",
    volume: "Spiritueux",
    now: "Titre actuel, % vol",
    wanted: "Titre voulu, % vol",
    sugar: "Sucre, g par litre",
    sugarHint: "Vide pour un spiritueux sec.",
    tooStrong: (now) =>
      `L’eau ne fait que réduire : saisir au plus ${now}, ou assembler avec plus fort.`,
    part: (n) => `Part ${n}`,
    strength: "Titre, % vol",
    third: "Laisser vide pour en assembler deux.",
    plainOnly: "Pour spiritueux secs. Les sucrés sortent un peu faibles : les réduire un par un.",
    get cool() {
      return `Les titres sont à ${degrees(20)}. Le mélange chauffe : laisser refroidir avant d’ajuster au trait.`;
    },
  },
  syrup: {
    by: "Mesuré au",
    weight: "Poids",
    volume: "Volume",
    of: "Fait de",
    kinds: { sugar: "Sucre blanc", honey: "Miel", gomme: "Gomme" },
    kindDetail: { gomme: "Sucre et gomme arabique" },
    ratio: "Sucrant et eau",
    own: "Autre",
    ownLabel: "Parts",
    ownHint: "Le sucrant d’abord, comme 3 : 2.",
    ownFault: "Saisir les parts comme 3 : 2, le sucrant d’abord, de 1 : 10 à 5 : 1.",
    gum: "Gomme arabique, g",
    gumFault: "Saisir le poids de la gomme, comme 50. Au plus la moitié de celui du sucre.",
    amount: { sugar: "Sucre", honey: "Miel", gomme: "Sucre" },
    clear: "Frigo : devrait rester dissous",
    fridge: "Frigo : peut cristalliser",
    get shelf() {
      return `Cristallise même à ${degrees(20)}`;
    },
    less: "Ajouter de l’eau jusqu’à ce chiffre et il reste dissous.",
    scooped:
      "Le sucre au pichet varie de 5 % et plus. Les poids ci-dessous rendent le suivant identique.",
    honey:
      "Les miels contiennent 15 à 20 % d’eau : 2 °Brix de part et d’autre. Le miel cristallise à sa façon.",
    hot: "Un sirop chaud colle et brûle : laisser refroidir avant d’embouteiller. Le dissoudre avant d’ajouter un spiritueux, jamais sur une flamme avec lui.",
    keep: "Un sirop léger se gâte plus tôt qu’un épais. Le garder fermé, froid et daté, et suivre la réglementation locale.",
  },
  juice: {
    label: "Jus",
    own: "Mes propres chiffres",
    volume: "Jus",
    acids: "Acide du jus, g par litre",
    pH: "pH",
    pHHint: "Mesuré ou usuel. Il permet de calculer l’acidité titrable.",
    pHNeeded: "Mesuré ou usuel.",
    pHFault: "Saisir un pH de 1 à 7,5, comme 3,6.",
    pHBelow: (low) =>
      `Ces acides seuls sont à pH ${low}. Saisir cela ou plus, ou vérifier les acides.`,
    none: "Il n’y a pas encore d’acide. Saisir les acides, ou prendre un jus du placard.",
  },
  acid: {
    to: "Aussi acide que",
    lemon: "Citron",
    lime: "Citron vert",
    targets: { lemon: "60 g/L de citrique", lime: "40 g/L de citrique, 20 de malique" },
    practice:
      "Ces cibles sont celles des bars, plus rondes qu’un citron mesuré. Goûter avant de servir.",
    over: (acid, has, aim) =>
      `Le jus a déjà ${has} d’${acid.toLowerCase()}, plus que les ${aim} visés. Choisir l’autre cible, ou le réduire à l’eau.`,
    powder:
      "L’acide en poudre pique les yeux et la peau : peser avec soin et rincer à l’eau. Étiqueter le jus comme ajusté.",
  },
  saline: {
    volume: "Solution saline",
    percent: "Sel en poids, %",
    percentFault: "Saisir une part de sel au-dessus de 0 %, comme 20.",
    tooSalty: (most) => `L’eau ne tient pas plus de ${most} de sel environ. Saisir moins.`,
    weigh:
      "Peser les deux. Pour un sel en grammes par 100 ml d’eau, la part en poids est plus basse.",
  },
  freeze: {
    strength: "Titre, % vol",
    sugar: "Sucre, g par litre",
    get temperature() {
      return `Autre température, ${degreeSign()}`;
    },
    at: (temperature, state) => `À ${temperature} : ${state}`,
    states: {
      liquid: "liquide",
      icy: "un peu de glace",
      slush: "granité",
      solid: "à la cuillère ou dur",
    },
    get close() {
      return `C’est limite : un congélateur varie de quelques degrés. Laisser ${degreesApart(3)} de marge.`;
    },
    beyond: "Aucun congélateur de bar ne le gèle",
    get beyondWhy() {
      return `Au-dessus de 75 % les tables finissent, vers ${degrees(-49)}.`;
    },
    undisturbed:
      "Une bouteille immobile peut rester liquide quelques degrés plus bas, puis geler d’un choc.",
    burst:
      "Une bouteille de verre pleine peut éclater en gelant : y laisser du vide, ou prendre plastique ou acier.",
  },
  ice: {
    method: "Comment il rencontre la glace",
    methods: {
      stirred: "Remué",
      shaken: "Frappé",
      settled: "Au repos",
      blended: "Mixé",
    },
    volume: "Boisson",
    strength: "Titre, % vol",
    sugar: "Sucre, g par litre",
    get start() {
      return `Au départ, ${degreeSign()}`;
    },
    ice: "Glace, g",
    get iceTemperature() {
      return `La glace est à, ${degreeSign()}`;
    },
    iceHint: "La glace mouillée est à 0, celle du congélateur à −18.",
    fitRange:
      "Les boissons mesurées avaient 15 à 35 % vol : en dehors, prendre cela pour une estimation.",
    wet: "Sur glace jusqu’à ce qu’elle ne fonde plus. Sans l’eau qui colle à la glace mouillée : ajouter environ un dixième du volume.",
    blender: "La chaleur du blender en fond un peu plus.",
    tooIcy: "Plus de glace que la boisson n’en porte : elle sort dure.",
  },
  ph: {
    volume: "Jus dedans",
    total: "Mélange entier",
    totalFault: "Saisir au moins autant que le jus qu’il contient.",
    strength: "Titre du mélange, % vol",
    add: "Acide ajouté, g",
    tooSour: "C’est plus de 500 g par litre, plus d’acide qu’il ne s’en dissout. Saisir moins.",
    band: (low, high) => `pH ${low} à ${high}`,
    strong:
      "Au-dessus de 20 % vol l’effet de l’alcool sur les acides est une estimation : la fourchette est plus large.",
    keeps:
      "Un pH bas seul ne conserve rien. Le refroidir, le dater et suivre la réglementation locale.",
  },
  flash: (strength, degrees) =>
    `À ${strength} sa vapeur prend feu dès ${degrees} environ : ni flamme, ni plaque, ni poêle chaude à côté.`,
  heating:
    "Ne jamais chauffer un spiritueux à l’air libre ni sur une flamme. Le tiédir seulement en sachet scellé au bain-marie, jamais en bouteille fermée, la pièce aérée.",
};
