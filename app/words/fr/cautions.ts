import { degrees } from "../degrees.ts";
import type * as english from "../en/cautions.ts";
import type { Spoken } from "../spoken.ts";

interface Words {
  readonly short: string;
  readonly full: string;
}

const CODES: Readonly<Record<string, Words>> = {
  "keep-cold": {
    get short() {
      return `À conserver à ${degrees(5)} ou moins`;
    },
    get full() {
      return `À garder fermé et à ${degrees(5)} ou moins. Le temps passé au-dessus de ${degrees(5)} compte ; la réglementation locale dit combien est permis.`;
    },
  },
  "milk-stays": {
    short: "Clarifié au lait : il reste du lait",
    full: "La clarification retire l’essentiel de la caséine, pas tout le lait : protéines du petit-lait et lactose restent. Ne jamais en servir à une personne allergique au lait, ni l’annoncer sans lait ou sans lactose.",
  },
  "raw-egg": {
    short: "Œuf cru",
    full: "Œuf cru : prévenir le client avant de servir, et suivre la réglementation locale.",
  },
  "oil-infusion": {
    short: "Ail ou herbes dans l’huile : sous 3 jours",
    get full() {
      return `Ail ou herbes dans l’huile : à garder à ${degrees(4)} ou moins et à utiliser sous 3 jours. Jamais à température ambiante.`;
    },
  },
  overproof: {
    short: "50 % vol ou plus : loin du feu",
    full: "À 50 % vol ou plus, les vapeurs sont inflammables : tenir loin des flammes et des plaques chaudes, et mesurer exactement.",
  },
  grapefruit: {
    short: "Pamplemousse : agit sur des médicaments",
    full: "Le pamplemousse change l’effet de certains médicaments. Le nommer sur la carte, et à qui le demande.",
  },
  quinine: {
    short: "Contient de la quinine",
    full: "La quinine doit être nommée, et elle est limitée (83 parties par million dans les boissons gazeuses aux États-Unis). Certaines personnes doivent l’éviter.",
  },
  coumarin: {
    short: "Fève tonka ou cannelle casse",
    full: "La fève tonka et la cannelle casse apportent de la coumarine : interdite dans les aliments aux États-Unis, limitée ailleurs. Suivre la réglementation locale.",
  },
  "fresh-juice": {
    short: "Jus frais",
    full: "Le jus frais non pasteurisé n’est pas pour les clients à risque, et le jus emballé a ses propres règles.",
  },
  "over-seven-days": {
    short: "Gardé plus de 7 jours : voir la réglementation",
    full: "Cette maison le garde plus que les 7 jours que le code alimentaire modèle donne aux aliments froids prêts à consommer. À vérifier auprès de l’autorité locale.",
  },
  "local-use-by": {
    short: "Date de la maison : suivre la réglementation locale",
    full: "La date limite est la règle de cette maison ; le jour de fabrication est le jour 1. La réglementation locale peut donner moins de jours, et une date plus proche sur le lait ou le jus passe avant.",
  },
  "local-sale": {
    short: "Vente selon la réglementation locale",
    full: "Embouteiller ses boissons, mélanger d’avance, vendre l’un ou l’autre : chacun a ses règles, selon le pays et la région. Suivre la réglementation locale.",
  },
};

export const cautions: Spoken<typeof english.cautions> = {
  short: (code) => CODES[code]?.short ?? code,
  full: (code) => CODES[code]?.full ?? code,
  house: {
    judge:
      "Cette application calcule des chiffres. Elle ne peut pas savoir si une boisson est bonne à servir : c’est à vous d’en juger selon la réglementation locale.",
    get cold() {
      return `Lait, jus frais et tout ce qui en est fait : à ${degrees(5)} ou moins, dans des récipients propres, chacun avec sa date. Dans le doute, jeter.`;
    },
    alcohol:
      "L’alcool seul ne conserve rien : aucune boisson clarifiée au lait n’était parmi celles qui ont été essayées.",
    milk: "Une boisson clarifiée au lait contient encore du lait. Les allergènes sont déduits de votre placard : vérifier chaque emballage, et dire ce qu’apporte la garniture.",
    flame:
      "Un spiritueux de 50 % vol et plus peut prendre feu à température ambiante : aucune flamme à côté.",
    never:
      "Ne jamais infuser tabac, noyaux de fruits, écorce de quinquina, charbon actif, huiles essentielles pures ni plantes cueillies dans la nature.",
    guests:
      "L’alcool n’est ni pour les enfants ni pendant la grossesse. Les clients malades, âgés ou sous traitement demandent plus de soin qu’une étiquette n’en donne.",
  },
};
