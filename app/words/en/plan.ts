import { degrees, degreesApart } from "../degrees.ts";
import { sources } from "./caution-sources.ts";
import { figureNames, figureRules } from "./plan-figures.ts";
import { whatIf } from "./what-if.ts";

const plural = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** A figure that no line end may part from its unit. */
const whole = (text: string): string => text.replaceAll(" ", "\u00a0");

/** What the plan screen says. */
export const plan = {
  title: (name: string) => `Plan ${name}`,
  edit: "Edit the spec",
  size: "How much",
  by: {
    serves: "Serves",
    bottles: "Bottles",
    volume: "Volume",
    vessel: "Vessel",
    stock: "What there is",
  },
  serves: "Serves",
  bottles: "Bottles",
  bottleSize: "Bottle size, ml",
  finalVolume: "In the bottle, ml",
  vesselVolume: "Punch and milk fill, ml",
  stock: "Use all of",
  onHand: (unit: string) => `There is, ${unit}`,
  typed: (least: number, most: number) => `Type a number from ${least} to ${most}.`,
  inTheBottle: "in the bottle",
  pours: (pour: string) => `serves of ${pour}`,

  vessel: {
    fits: (fill: string, vessel: string) => `Fills ${whole(fill)} of your ${whole(vessel)} vessel.`,
    tooMuch: (fill: string, vessel: string) =>
      `${whole(fill)} at once does not fit your largest vessel, ${whole(vessel)}.`,
    lots: (count: number, each: string) => `Make ${count} equal lots of ${each}.`,
    choice: "What follows is for",
    one: (count: number) => `One lot of ${count}`,
    all: "All at once",
    change: "Change it",
  },

  measure: {
    title: "Measure out",
    says: (count: number, milk: string | undefined) =>
      milk === undefined
        ? plural(count, "ingredient", "ingredients")
        : `${plural(count, "ingredient", "ingredients")} and ${whole(milk)} milk`,
    amounts: "Amounts",
    exact: "Exact",
    jigger: (step: string) => `Jigger ${whole(step)}`,
    scale: (step: string) => `Scale ${whole(step)}`,
    change: (changes: readonly string[]) => `Against exact: ${changes.map(whole).join(", ")}`,
    changes: {
      volume: "volume",
      strength: "ABV",
      sugar: "sugar",
      acid: "acid",
      ratio: "ratio",
    },
    same: "±0",
    before: "Into the punch",
    together: "Into one vessel",
    milk: "Milk",
    ratio: (parts: string) => `${parts} to the punch`,
    after: "Held back for the top-up",
  },
  yield: "Should come through",
  yieldRange: (low: string, high: string) => `${whole(low)} to ${whole(high)}`,
  prior: "from common practice, until you have batches of your own",
  own: (count: number) => `from your own ${count} batches`,

  whatIf,

  stages: "Balance",
  stagesSay: (bottled: string, glass: string) =>
    `${whole(`${bottled} bottled`)}, ${whole(`${glass} in the glass`)}`,
  stage: { mixed: "Mixed", washed: "Washed", "topped-up": "Bottled", glass: "In the glass" },
  rows: {
    volume: "Volume",
    strength: "ABV %",
    sugar: "Sugar g/L",
    acid: "Acid g/L",
    brix: "°Brix",
    ratio: "Sugar : acid",
  },
  balanceNote:
    "Tap a number to see how it was worked out. ± is the likely range of labels and jiggers.",

  curdle: "Will it curdle?",
  verdict: { clearly: "Clearly", borderline: "Border\u00adline", no: "No" },
  phBand: (low: string, high: string) => `pH ${low} to ${high}`,
  ph: "Punch and milk together",
  onset: "This milk curdles at or below",
  fixes: {
    moreJuiceMl: (amount: string) => `${amount} more juice`,
    lessDairyMl: (amount: string) => `${amount} less milk`,
    moreBaseMl: (amount: string) => `${amount} more base spirit`,
    moreAcidG: (amount: string) => `${amount} citric acid`,
  },
  curdleNotes: {
    "no-dairy": "There is no milk in it.",
    "no-casein": "This milk has no casein: it does not curdle the way dairy does.",
    "no-data": "No measurements of this milk were found: take the verdict as a guess.",
    "hot-and-strong": "Hot and strong together dissolve the curd: let the punch cool first.",
    "cold-and-slow": "Cold milk curdles slowly and fine: give it longer.",
    "heated-milk": "Milk that was heated curdles a little sooner and finer.",
    "alcohol-effect-assumed": "Alcohol's effect on the curdling point is assumed, not measured.",
    "beyond-alcohol-data": "Stronger than anything measured: take the pH as a guess.",
    "alcohol-may-clot-alone": "This strong, alcohol alone may clot the milk.",
  },
  fixIntro: "Any one of these makes it curdle clearly:",
  curdleSafety:
    "Curdling and a low pH do not make it keep: a washed drink still holds milk and must stay cold.",

  pull: {
    title: "Pull list",
    says: (packs: number) => plural(packs, "bottle or pack", "bottles and packs"),
    packs: (count: number, size: string) => whole(`${count} × ${size}`),
    uses: (amount: string, left: string) => `${whole(amount)} used, ${whole(left)} left over`,
    usesAll: (amount: string) => `${whole(amount)} used, nothing left over`,
    usual: "usual size",
    usualNote:
      "A usual size is what is common for its kind. Give an ingredient its price and pack in the cupboard, and yours is used.",
    lots: (count: number) => `For all ${count} lots.`,
  },

  cost: {
    title: "Cost",
    says: (serve: string, share: string | undefined) =>
      share === undefined ? `${serve} a serve` : `${serve} a serve, ${share} of its price`,
    atLeast: (text: string) => `at least ${text}`,
    noPrices: "No prices in the cupboard yet",
    serve: "A serve",
    batch: "The batch",
    lot: "This lot",
    pour: "Of its price on the menu",
    noMenuPrice: "No price on the menu yet:",
    setMenuPrice: "set it in the spec",
    unpriced: "Without a price, so every figure here is a minimum:",
    nonePriced: "Give these a price in the cupboard:",
    ingredientsOnly: "Ingredients alone: no garnish, ice, filters, work or tax.",
  },

  cold: {
    title: "Freezer and glass",
    get bottle() {
      return `Bottle at ${degrees(-18)}`;
    },
    freezes: (at: string) => `Bottle freezes, from ${whole(at)} down`,
    stays: (at: string) => `Bottle stays liquid, down to ${whole(at)}`,
    close: (at: string) => `Bottle begins to freeze at ${whole(at)}: close`,
    in: { freezes: "Freezes", stays: "Stays liquid", close: "Close to freezing" },
    freezesNote: "A full bottle can burst as it freezes: leave room, or keep it in the fridge.",
    get closeNote() {
      return `Freezers swing by some degrees: leave ${degreesApart(3)} of room.`;
    },
    begins: "Begins to freeze at",
    noWater: "There is no water in it to freeze.",
    glass: "In the glass",
    water: "Water added",
    temperature: "Temperature, about",
    ice: "Of it ice",
    texture: {
      liquid: "Liquid, no ice",
      icy: "Thin, with some ice",
      slush: "A slush",
      solid: "Spoonable, too stiff to pour",
    },
    slushNote: "A slush drinks best at 30 to 45 % ice (practice, from memory).",
  },

  care: {
    title: "Allergens and cautions",
    contains: (list: string) => `Contains ${list}`,
    cautions: (count: number) => plural(count, "caution", "cautions"),
    none: "None named in the cupboard's entries: check every pack",
    missing: (names: string) =>
      `What ${names} is made of could not be looked up, so this list is not complete.`,
    fromGarnish: "A garnish brings its own. The cupboard is only as good as the packs you read.",
    source: (text: string) => `Source: ${text}`,
    local:
      "Your local code comes first, and is often stricter. No figure here says that a drink is safe to serve.",
    get cold() {
      return `Keep milk at ${degrees(5)} or colder until it goes in, and the drink from then on.`;
    },
    sources,
  },

  ready: {
    title: "Ready by",
    says: "When to start, and when hands are wanted",
    date: "Date",
    time: "Time",
    needDate: "Choose a date to work back from.",
    needTime: "Choose a time, such as 17:00.",
    day: "Day",
    zone: (zone: string) => `By the clocks of ${zone}`,
    otherZone: "By the clocks of",
    startBy: (time: string) => `Start by ${time} at the latest`,
    late: (length: string) => `Too late for that: started now, it is ready ${length} after it`,
    guess:
      "Five minutes for each thing done by hand; an infusion to its longest; the drip by its volume and filters, within a factor of three until it is read.",
    odd: {
      twice: "The clocks go back over that time: it is shown twice. The earlier one is meant here.",
      never:
        "The clocks go forward over that time: no clock shows it. The time before it is meant.",
    },
  },
  start: "Start this batch",
  hold: (hold: string, how: readonly string[]) => `${hold}: ${how.join(", ")}`,
  batch: (batch: string) => `Batch ${batch}`,
  write: (batch: string) => `Write ${batch} on the vessel.`,
  startChanged: "with the what-if",
  startRounded: "rounded amounts",
  startLot: (count: number) => `one lot of ${count}`,
  cannot: "This cannot be planned yet",
  nearest: (abv: string) => `Top up to ${abv} instead`,
  inProportion: "Pour it in in proportion instead",
  noProcedure:
    "The procedure of this spec is no longer there. Choose another in the spec, then start the batch.",
  working: "How it was worked out",
  close: "Close",
  from: "From",
  formula: "Formula",
  source: "Source",
  limits: "How exact",
  within: (amount: string) => `± ${amount}`,
  names: figureNames,
  rules: figureRules,
};
