import { degrees, degreesApart, degreesBare } from "../degrees.ts";
import { degreeSign } from "../house-units.ts";
import { names } from "./sum-names.ts";

/** What the bench sums say. */
export const sums = {
  title: "Sums",
  lead: "Quick sums at the bench. Nothing typed here is stored. Tap any figure of an answer to see how it was worked out.",
  all: "All sums",
  toSpecs: "All specs",
  waiting: "The answer stands here once every figure above makes sense.",
  answer: "Answer",
  sum: {
    spirit: {
      title: "Bring a spirit down",
      detail: "Water to reach a strength, or blend two or three",
    },
    syrup: { title: "Syrup", detail: "°Brix, yield, and whether it crystallises" },
    acid: { title: "Acid-adjust a juice", detail: "To lemon or to lime strength" },
    saline: { title: "Saline", detail: "Grams of salt for a strength" },
    freeze: {
      title: "Will it freeze?",
      get detail() {
        return `At ${degrees(-18)}, or at any temperature`;
      },
    },
    ice: { title: "Ice", detail: "Water, ABV and temperature in the glass" },
    ph: { title: "pH of a mix", detail: "From its acids and its juice" },
  },
  names,
  volumeIn: (label: string, unit: string) => `${label}, ${unit}`,
  optional: (label: string) => `${label} (if any)`,
  faults: {
    volume: "Type a volume above zero, like 700, 1.5 l or 24 oz. Up to 100 litres.",
    mass: "Type a weight above zero, like 500 or 1.5 kg. Up to 100 kg.",
    percent: (low: string, high: string) => `Type a strength from ${low} to ${high} %, like 40.`,
    sugar: "Type grams of sugar per litre, from 0 to 1200.",
    acid: "Type grams per litre, from 0 to 160, or leave it empty for none.",
    temperature: (low: string, high: string) =>
      `Type a temperature from ${low} to ${high}, like ${degreesBare(4)} or ${degreesBare(-6)}.`,
    grams: "Type grams from 0 to 100,000, or leave it empty for none.",
  },
  doesNotFit:
    "This much alcohol and sugar does not fit into one litre. Check the strength, then the sugar.",
  spirit: {
    how: "Bring it down with",
    water: "Water",
    blend: "A blend",
    volume: "Spirit",
    now: "ABV now, %",
    wanted: "ABV wanted, %",
    sugar: "Sugar, g per litre",
    sugarHint: "Empty for a plain spirit.",
    tooStrong: (now: string) =>
      `Water only brings it down: type at most ${now}, or blend in something stronger.`,
    part: (n: number) => `Pour ${n}`,
    strength: "ABV, %",
    third: "Leave it empty to blend two.",
    plainOnly: "For plain spirits. Sweet ones come out a little weak: let them down one by one.",
    get cool() {
      return `Strengths are at ${degrees(20)}. Mixing warms it: let it cool before you fill up to a line.`;
    },
  },
  syrup: {
    by: "Measured by",
    weight: "Weight",
    volume: "Volume",
    of: "Made of",
    kinds: { sugar: "White sugar", honey: "Honey", gomme: "Gomme" },
    kindDetail: { gomme: "Sugar with gum arabic" },
    ratio: "Sweet to water",
    own: "Own",
    ownLabel: "Parts",
    ownHint: "The sweet one first, like 3 : 2.",
    ownFault: "Type the parts like 3 : 2, the sweet one first, from 1 : 10 to 5 : 1.",
    gum: "Gum arabic, g",
    gumFault: "Type the gum's weight, like 50. It may be at most half the sugar's.",
    amount: { sugar: "Sugar", honey: "Honey", gomme: "Sugar" },
    clear: "Fridge: should stay dissolved",
    fridge: "Fridge: may crystallise",
    get shelf() {
      return `Crystallises even at ${degrees(20)}`;
    },
    less: "Add water down to that figure and it stays dissolved.",
    scooped: "Sugar in a jug varies by 5 % and more. The weights below make the next one the same.",
    honey: "Honeys hold 15 to 20 % water: 2 °Brix either way. Honey granulates by its own rules.",
    hot: "Hot syrup sticks and burns: let it cool before it is bottled. Dissolve it before any spirit goes in, never over a flame with it.",
    keep: "Thin syrup spoils sooner than thick. Keep it closed, cold and dated, and follow your local code.",
  },
  juice: {
    label: "Juice",
    own: "My own figures",
    volume: "Juice",
    acids: "Acid of the juice, g per litre",
    pH: "pH",
    pHHint: "Measured or typical. With it the titratable acidity can be worked out.",
    pHNeeded: "Measured or typical.",
    pHFault: "Type a pH from 1 to 7.5, like 3.6.",
    pHBelow: (low: string) =>
      `These acids alone stand at pH ${low}. Type that or more, or check the acids.`,
    none: "There is no acid in it yet. Type the acids, or take a juice from the cupboard.",
  },
  acid: {
    to: "As sour as",
    lemon: "Lemon",
    lime: "Lime",
    targets: { lemon: "60 g/L citric", lime: "40 g/L citric, 20 malic" },
    practice:
      "These aims are what bars use, rounder than a measured lemon or lime. Taste before it is served.",
    over: (acid: string, has: string, aim: string) =>
      `The juice already has ${has} of ${acid.toLowerCase()}, more than the ${aim} aimed at. Choose the other aim, or let it down with water.`,
    powder:
      "Acid powder stings eyes and skin: weigh it out with care and rinse with water. Label the juice as adjusted.",
  },
  saline: {
    volume: "Saline",
    percent: "Salt by weight, %",
    percentFault: "Type a share of salt above 0 %, like 20.",
    tooSalty: (most: string) => `Water holds no more than about ${most} of salt. Type less.`,
    weigh: "Weigh both. For salt in grams per 100 ml of water, the share by weight is lower.",
  },
  freeze: {
    strength: "ABV, %",
    sugar: "Sugar, g per litre",
    get temperature() {
      return `Another temperature, ${degreeSign()}`;
    },
    at: (temperature: string, state: string) => `At ${temperature}: ${state}`,
    states: {
      liquid: "liquid",
      icy: "some ice",
      slush: "slush",
      solid: "spoonable or hard",
    },
    get close() {
      return `Close: freezers swing by some degrees. Leave ${degreesApart(3)} of room.`;
    },
    beyond: "No bar freezer freezes it",
    get beyondWhy() {
      return `Above 75 % the tables end, at about ${degrees(-49)}.`;
    },
    undisturbed: "A still bottle can stay liquid some degrees colder, then freeze at a knock.",
    burst:
      "A full glass bottle can burst as it freezes: leave room in it, or use plastic or steel.",
  },
  ice: {
    method: "How it meets the ice",
    methods: {
      stirred: "Stirred",
      shaken: "Shaken",
      settled: "Settled",
      blended: "Blended",
    },
    volume: "Drink",
    strength: "ABV, %",
    sugar: "Sugar, g per litre",
    get start() {
      return `It starts at, ${degreeSign()}`;
    },
    ice: "Ice, g",
    get iceTemperature() {
      return `The ice is at, ${degreeSign()}`;
    },
    iceHint: "Wet ice is at 0, ice straight from a freezer at −18.",
    fitRange: "The measured drinks were 15 to 35 % ABV: outside that, take it as a guess.",
    wet: "On ice until no more of it melts. Nothing here for water that clings to wet ice: add about a tenth of the volume.",
    blender: "The blender's own heat melts a little more.",
    tooIcy: "More ice than the drink can carry: it comes out hard.",
  },
  ph: {
    volume: "Juice in it",
    total: "Whole mix",
    totalFault: "Type at least as much as the juice in it.",
    strength: "ABV of mix, %",
    add: "Acid added, g",
    tooSour: "That is over 500 g per litre, more acid than dissolves. Type less.",
    band: (low: string, high: string) => `pH ${low} to ${high}`,
    strong: "Above 20 % ABV alcohol's effect on acids is a guess: the band is wider.",
    keeps: "A low pH alone keeps nothing. Chill it, date it and follow your local code.",
  },
  flash: (strength: string, degrees: string) =>
    `At ${strength} its vapour catches fire from about ${degrees}: no flame, hot plate or hot pan near it.`,
  heating:
    "Never heat spirit in an open pan or over a flame. Warm it only in a sealed bag in a water bath, never in a closed bottle, with the room aired.",
};
