import { degrees } from "../degrees.ts";

interface Words {
  /** As it stands on a label. */
  readonly short: string;
  /** As the screen explains it. */
  readonly full: string;
}

const CODES: Readonly<Record<string, Words>> = {
  "keep-cold": {
    get short() {
      return `Keep at ${degrees(5)} or colder`;
    },
    get full() {
      return `Keep it closed and at ${degrees(5)} or colder. Time above ${degrees(5)} counts; how much is allowed is in your local code.`;
    },
  },
  "milk-stays": {
    short: "Washed with milk: milk remains",
    full: "A wash takes out most of the casein, not all milk: whey protein and milk sugar stay. Never serve it to anyone with a milk allergy, and never call it free of milk or lactose.",
  },
  "raw-egg": {
    short: "Raw egg",
    full: "Raw egg: tell the guest before serving, and follow your local code.",
  },
  "oil-infusion": {
    short: "Garlic or herb in oil: use within 3 days",
    get full() {
      return `Garlic or herb in oil: keep it at ${degrees(4)} or colder and use it within 3 days. Never at room temperature.`;
    },
  },
  overproof: {
    short: "50 % vol or more: away from flame",
    full: "50 % vol or more gives off vapour that burns: keep it away from flames and hot plates, and measure it exactly.",
  },
  grapefruit: {
    short: "Grapefruit: acts on some medicines",
    full: "Grapefruit changes how some medicines act. Name it on the menu, and to any guest who asks.",
  },
  quinine: {
    short: "Contains quinine",
    full: "Quinine must be named, and is limited (83 parts per million in US carbonated drinks). Some people must avoid it.",
  },
  coumarin: {
    short: "Contains tonka or cassia",
    full: "Tonka and cassia bring coumarin: not permitted in US food, limited elsewhere. Follow your local code.",
  },
  "fresh-juice": {
    short: "Fresh juice",
    full: "Fresh juice that was not pasteurised is not for guests at higher risk. Packaged juice has rules of its own.",
  },
  "over-seven-days": {
    short: "Kept longer than 7 days: check your code",
    full: "This house keeps it longer than 7 days, which the model food code gives to chilled ready-to-eat food. Check it with your local authority.",
  },
  "local-use-by": {
    short: "Use-by by house rule: follow your local code",
    full: "The use-by is this house's rule; the day of making is day 1. Your local code may give fewer days, and an earlier date on the milk or the juice comes first.",
  },
  "local-sale": {
    short: "For sale only as your local code allows",
    full: "Bottling your own drinks, mixing ahead and selling either has rules of its own that differ by country and state. Follow your local code.",
  },
};

/** Cautions: on labels, and where they are explained. */
export const cautions = {
  short: (code: string): string => CODES[code]?.short ?? code,
  full: (code: string): string => CODES[code]?.full ?? code,
  /** What the house is told once, in Kit. */
  house: {
    judge:
      "This app works out figures. It cannot tell whether a drink is fit to be served: that is for you to judge under your local code.",
    get cold() {
      return `Dairy, fresh juice and what is made of them: at ${degrees(5)} or colder, in clean vessels, with the date on every one. When in doubt, throw it out.`;
    },
    alcohol: "Alcohol alone keeps nothing: no dairy-washed drink was among those tested.",
    milk: "A dairy-washed drink still contains milk. Allergens are worked out from your cupboard: check every pack, and say what a garnish brings.",
    flame: "Spirit of 50 % vol and more can catch fire at room temperature: no flame near it.",
    never:
      "Never infuse tobacco, stone-fruit kernels, cinchona bark, activated charcoal, neat essential oils or plants picked wild.",
    guests:
      "Alcohol is not for children or in pregnancy. Guests who are ill, elderly or on medicines need more care than a label gives.",
  },
};
