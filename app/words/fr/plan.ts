import { degrees, degreesApart } from "../degrees.ts";
import type * as english from "../en/plan.ts";
import type { Spoken } from "../spoken.ts";
import { sources } from "./caution-sources.ts";
import { counted, whole } from "./count.ts";
import { figureNames, figureRules } from "./plan-figures.ts";
import { whatIf } from "./what-if.ts";

const ingredients = (count: number): string => counted(count, "ingrédient", "ingrédients");

export const plan: Spoken<typeof english.plan> = {
  title: (name) => `Planifier ${name}`,
  edit: "Modifier la fiche",
  size: "Combien",
  by: {
    serves: "Verres",
    bottles: "Bouteilles",
    volume: "Volume",
    vessel: "Récipient",
    stock: "Ce qu’il y a",
  },
  serves: "Verres",
  bottles: "Bouteilles",
  bottleSize: "Taille de bouteille, ml",
  finalVolume: "En bouteille, ml",
  vesselVolume: "Punch et lait remplissent, ml",
  stock: "Tout utiliser de",
  onHand: (unit) => `Il y a, ${unit}`,
  typed: (least, most) => `Saisir un nombre de ${least} à ${most}.`,
  inTheBottle: "en bouteille",
  pours: (pour) => `verres de ${pour}`,

  vessel: {
    fits: (fill, vessel) => `Remplit ${whole(fill)} de votre récipient de ${whole(vessel)}.`,
    tooMuch: (fill, vessel) =>
      `${whole(fill)} à la fois ne tiennent pas dans votre plus grand récipient, ${whole(vessel)}.`,
    lots: (count, each) => `Faire ${count} fournées égales de ${each}.`,
    choice: "La suite vaut pour",
    one: (count) => `Une fournée sur ${count}`,
    all: "Tout à la fois",
    change: "Le changer",
  },

  measure: {
    title: "Mesurer",
    says: (count, milk) =>
      milk === undefined ? ingredients(count) : `${ingredients(count)} et ${whole(milk)} de lait`,
    amounts: "Quantités",
    exact: "Exactes",
    jigger: (step) => `Doseur ${whole(step)}`,
    scale: (step) => `Balance ${whole(step)}`,
    change: (changes) => `Face à l’exact : ${changes.map(whole).join(", ")}`,
    changes: {
      volume: "volume",
      strength: "titre",
      sugar: "sucre",
      acid: "acide",
      ratio: "rapport",
    },
    same: "±0",
    before: "Dans le punch",
    together: "Dans un seul récipient",
    milk: "Lait",
    ratio: (parts) => `${parts} avec le punch`,
    after: "Réservé pour l’appoint",
  },
  yield: "Devrait passer",
  yieldRange: (low, high) => `${whole(low)} à ${whole(high)}`,
  prior: "d’après la pratique courante, en attendant vos propres lots",
  own: (count) => `d’après ${counted(count, "lot à vous", "lots à vous")}`,

  whatIf,

  stages: "Équilibre",
  stagesSay: (bottled, glass) =>
    `${whole(`${bottled} en bouteille`)}, ${whole(`${glass} dans le verre`)}`,
  stage: {
    mixed: "Mé\u00adlangé",
    washed: "Clarifié",
    "topped-up": "En bou\u00adteille",
    glass: "Dans le verre",
  },
  rows: {
    volume: "Volume",
    strength: "Titre, % vol",
    sugar: "Sucre g/L",
    acid: "Acide g/L",
    brix: "°Brix",
    ratio: "Sucre : acide",
  },
  balanceNote:
    "Toucher un chiffre pour voir son calcul. ± est la fourchette probable des étiquettes et des doseurs.",

  curdle: "Va-t-il cailler ?",
  verdict: { clearly: "Nette\u00adment", borderline: "Limite", no: "Non" },
  phBand: (low, high) => `pH ${low} à ${high}`,
  ph: "Punch et lait ensemble",
  onset: "Ce lait caille à ce pH ou moins",
  fixes: {
    moreJuiceMl: (amount) => `${amount} de jus en plus`,
    lessDairyMl: (amount) => `${amount} de lait en moins`,
    moreBaseMl: (amount) => `${amount} de spiritueux de base en plus`,
    moreAcidG: (amount) => `${amount} d’acide citrique`,
  },
  curdleNotes: {
    "no-dairy": "Il n’y a pas de lait.",
    "no-casein": "Ce lait n’a pas de caséine : il ne caille pas comme un lait animal.",
    "no-data": "Aucune mesure de ce lait n’a été trouvée : prendre le verdict pour une estimation.",
    "hot-and-strong":
      "Chaud et fort ensemble dissolvent le caillé : laisser d’abord refroidir le punch.",
    "cold-and-slow": "Un lait froid caille lentement et fin : lui laisser plus de temps.",
    "heated-milk": "Un lait qui a été chauffé caille un peu plus tôt et plus fin.",
    "alcohol-effect-assumed":
      "L’effet de l’alcool sur le point de caillage est supposé, non mesuré.",
    "beyond-alcohol-data":
      "Plus fort que tout ce qui a été mesuré : prendre le pH pour une estimation.",
    "alcohol-may-clot-alone": "Aussi fort, l’alcool seul peut faire tourner le lait.",
  },
  fixIntro: "L’un de ceux-ci suffit pour cailler nettement :",
  curdleSafety:
    "Cailler et un pH bas ne le conservent pas : une boisson clarifiée contient encore du lait et doit rester au froid.",

  pull: {
    title: "À sortir",
    says: (packs) => counted(packs, "bouteille ou emballage", "bouteilles et emballages"),
    packs: (count, size) => whole(`${count} × ${size}`),
    uses: (amount, left) => `${whole(amount)} utilisés, reste ${whole(left)}`,
    usesAll: (amount) => `${whole(amount)} utilisés, il ne reste rien`,
    usual: "taille usuelle",
    usualNote:
      "Une taille usuelle est celle courante pour ce genre. Donner à un ingrédient son prix et son emballage dans le placard, et les vôtres servent.",
    lots: (count) => `Pour les ${count} fournées.`,
  },

  cost: {
    title: "Coût",
    says: (serve, share) =>
      share === undefined ? `${serve} le verre` : `${serve} le verre, ${share} de son prix`,
    atLeast: (text) => `au moins ${text}`,
    noPrices: "Pas encore de prix dans le placard",
    serve: "Un verre",
    batch: "Le lot",
    lot: "Cette fournée",
    pour: "De son prix sur la carte",
    noMenuPrice: "Pas encore de prix sur la carte :",
    setMenuPrice: "le mettre dans la fiche",
    unpriced: "Sans prix, donc chaque chiffre ici est un minimum :",
    nonePriced: "Leur donner un prix dans le placard :",
    ingredientsOnly: "Ingrédients seuls : sans garniture, glace, filtres, travail ni taxe.",
  },

  cold: {
    title: "Congélateur et verre",
    get bottle() {
      return `Bouteille à ${degrees(-18)}`;
    },
    freezes: (at) => `La bouteille gèle, dès ${whole(at)}`,
    stays: (at) => `La bouteille reste liquide, jusqu’à ${whole(at)}`,
    close: (at) => `La bouteille commence à geler à ${whole(at)} : c’est limite`,
    in: { freezes: "Gèle", stays: "Reste liquide", close: "Tout près de geler" },
    freezesNote:
      "Une bouteille pleine peut éclater en gelant : laisser du vide, ou la garder au frigo.",
    get closeNote() {
      return `Un congélateur varie de quelques degrés : laisser ${degreesApart(3)} de marge.`;
    },
    begins: "Commence à geler à",
    noWater: "Il n’y a pas d’eau à geler.",
    glass: "Dans le verre",
    water: "Eau ajoutée",
    temperature: "Tempé\u00adrature, environ",
    ice: "Dont glace",
    texture: {
      liquid: "Liquide, sans glace",
      icy: "Fluide, un peu de glace",
      slush: "Granité",
      solid: "À la cuillère, trop ferme pour verser",
    },
    slushNote: "Un granité se boit mieux à 30–45 % de glace (pratique, de mémoire).",
  },

  care: {
    title: "Allergènes et mises en garde",
    contains: (list) => `Contient ${list}`,
    cautions: (count) => counted(count, "mise en garde", "mises en garde"),
    none: "Aucun dans les entrées du placard : vérifier chaque emballage",
    missing: (names) =>
      `Ce dont ${names} est fait n’a pu être retrouvé : cette liste n’est pas complète.`,
    fromGarnish: "Une garniture apporte les siens. Le placard ne vaut que les emballages lus.",
    source: (text) => `Source : ${text}`,
    local:
      "La réglementation locale passe avant, et elle est souvent plus stricte. Aucun chiffre ici ne dit qu’une boisson est sûre.",
    get cold() {
      return `Garder le lait à ${degrees(5)} ou moins jusqu’à son entrée, puis la boisson de même.`;
    },
    sources,
  },

  ready: {
    title: "Prêt pour",
    says: "Quand commencer, et quand il faut quelqu’un",
    date: "Date",
    time: "Heure",
    needDate: "Choisir une date d’où remonter.",
    needTime: "Choisir une heure, comme 17:00.",
    day: "Jour",
    zone: (zone) => `À l’heure de ${zone}`,
    otherZone: "À l’heure de",
    startBy: (time) => `Commencer au plus tard ${time}`,
    late: (length) => `Trop tard : commencé maintenant, il est prêt ${length} après`,
    guess:
      "Cinq minutes pour chaque chose faite à la main ; une infusion au plus long ; l’égouttage selon volume et filtres, à un facteur trois près tant qu’il n’est pas mesuré.",
    odd: {
      twice:
        "Les horloges reculent à ce moment : l’heure s’affiche deux fois. La première vaut ici.",
      never:
        "Les horloges avancent à ce moment : aucune n’affiche cette heure. Celle d’avant vaut ici.",
    },
  },
  start: "Commencer ce lot",
  hold: (hold, how) => `${hold} : ${how.join(", ")}`,
  batch: (batch) => `Lot ${batch}`,
  write: (batch) => `Écrire ${batch} sur le récipient.`,
  startChanged: "avec le « et si »",
  startRounded: "quantités arrondies",
  startLot: (count) => `une fournée sur ${count}`,
  cannot: "Ceci ne peut pas encore être planifié",
  nearest: (abv) => `Viser plutôt ${abv}`,
  inProportion: "Le verser plutôt en proportion",
  noProcedure:
    "Le procédé de cette fiche n’est plus là. En choisir un autre dans la fiche, puis commencer le lot.",
  working: "Comment c’est calculé",
  close: "Fermer",
  from: "D’après",
  formula: "Formule",
  source: "Source",
  limits: "Précision",
  within: (amount) => `± ${amount}`,
  names: figureNames,
  rules: figureRules,
};
