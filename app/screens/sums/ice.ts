import { SOLID_FROM } from "../../../core/liquid/freezing.ts";
import {
  blendWithIce,
  chillOnIce,
  type Served,
  shakeOnIce,
  stirOnIce,
} from "../../../core/liquid/ice.ts";
import { type Liquid, strengthOf, sugarPerLitre, volumeOf } from "../../../core/liquid/liquid.ts";
import { densityAt, volumeAt } from "../../../core/liquid/temperature.ts";
import { type Figure, figure, given } from "../../../core/quantity/figure.ts";
import { RULES } from "../../../core/spec/rules-table.ts";
import { ICE_WATER_WITHIN } from "../../../core/spec/tolerance-table.ts";
import type { VolumeStyle } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { drinkOf } from "./drink.ts";
import { type Reader, type ReadSum, readerOf } from "./read-sum.ts";
import { SUM_RULES } from "./rules-table.ts";
import { strongCautions } from "./strong-cautions.ts";

export const METHODS = ["stirred", "shaken", "settled", "blended"] as const;

/** A drink that meets ice, as typed. */
export interface IceDraft {
  readonly method: (typeof METHODS)[number];
  readonly volume: string;
  readonly strength: string;
  readonly sugar: string;
  readonly start: string;
  readonly ice: string;
  readonly iceTemperature: string;
}

interface Meeting {
  readonly method: IceDraft["method"];
  readonly drink: Liquid;
  readonly start: number;
  /** g and degrees C, where the ice is weighed */
  readonly ice: number;
  readonly iceTemperature: number;
}

const { names, ice: words } = sayLater.sums;
/** Ethanol beyond it is past the tables of heat and of freezing. */
const STRENGTH = { low: 0, high: 75 };
const START = { low: -20, high: 40 };
const ICE = { low: -40, high: 0 };
/** Volume and density are tabled from here up, degrees C. */
const TABLED_FROM = -20;
/** Where the fits were made, v/v. */
const FITTED = { low: 0.15, high: 0.35 };

function serve({ method, drink, start, ice, iceTemperature }: Meeting): Served {
  switch (method) {
    case "stirred":
      return stirOnIce(drink, start);
    case "shaken":
      return shakeOnIce(drink, start);
    case "settled":
      return chillOnIce(drink, start, { temperature: iceTemperature });
    case "blended":
      return blendWithIce(drink, ice, start, iceTemperature);
  }
}

const isFit = (method: IceDraft["method"]): boolean => method === "stirred" || method === "shaken";

function givenOf(meeting: Meeting): readonly Figure[] {
  const { method, drink, start, ice, iceTemperature } = meeting;
  const from = [
    given(names.drink, volumeOf(drink), "ml"),
    given(names.before, strengthOf(drink), "abv"),
    given(names.start, start, "degC"),
  ];
  if (isFit(method)) return from;
  const cold = given(names.iceTemperature, iceTemperature, "degC");
  return method === "settled" ? [...from, cold] : [...from, given(names.iceMass, ice, "g"), cold];
}

/** As it stands in the glass; no volume for what holds ice or is too cold for the tables. */
function coldFigures({ liquid, temperature, ice }: Served, from: readonly Figure[]) {
  if (ice > 0 || temperature < TABLED_FROM) return [];
  const [volume, density] = [volumeAt(liquid, temperature), densityAt(liquid, temperature)];
  return [
    figure(names.coldVolume, volume, "ml", SUM_RULES.coldVolume, from),
    figure(names.coldDensity, density, "kg/m3", SUM_RULES.coldVolume, from),
  ];
}

function figuresOf(meeting: Meeting, served: Served) {
  const { method, drink } = meeting;
  const from = givenOf(meeting);
  const within = isFit(method) ? ICE_WATER_WITHIN * volumeOf(drink) : undefined;
  const rule = SUM_RULES[method];
  const water = figure(names.meltwater, served.waterAdded, "ml", rule, from, within);
  const before = [...from, water];
  const { liquid, temperature: end, ice } = served;
  const strength = strengthOf(liquid);
  const temperature = figure(
    names.glassTemperature,
    end,
    "degC",
    SUM_RULES.glassTemperature,
    before,
  );
  const volume = figure(names.glassVolume, volumeOf(liquid), "ml", SUM_RULES.makes, before);
  const cold = coldFigures(served, [...before, temperature]);
  const sugar = figure(names.sugar, sugarPerLitre(liquid), "g/L", RULES.perLitre, [volume]);
  const left = figure(names.iceLeft, ice, "share", SUM_RULES.glassTemperature, before);
  return {
    main: [
      water,
      figure(names.strength, strength, "abv", SUM_RULES.glassStrength, before),
      temperature,
    ],
    more: [...(method === "blended" ? [left] : []), volume, ...cold, sugar],
  };
}

function saysOf({ method, drink }: Meeting, { ice }: Served): readonly string[] {
  if (method === "settled") return [words.wet];
  if (method === "blended") return ice > SOLID_FROM ? [words.tooIcy] : [words.blender];
  const strength = strengthOf(drink);
  return strength < FITTED.low || strength > FITTED.high ? [words.fitRange] : [];
}

function readIceItself(draft: IceDraft, read: Reader) {
  const { method } = draft;
  const ice = method === "blended" ? read.mass("ice", draft.ice) : 0;
  const iceTemperature = isFit(method)
    ? 0
    : read.temperature("iceTemperature", draft.iceTemperature, ICE);
  return ice === undefined || iceTemperature === undefined ? undefined : { ice, iceTemperature };
}

/** What ice does to a drink: water, strength and temperature in the glass. */
export function readIce(draft: IceDraft, style: VolumeStyle): ReadSum {
  const read = readerOf(style);
  const volume = read.volume("volume", draft.volume);
  const strength = read.strength("strength", draft.strength, STRENGTH);
  const sugar = read.sugar("sugar", draft.sugar);
  const start = read.temperature("start", draft.start, START);
  const itself = readIceItself(draft, read);
  const { faults } = read;
  if (volume === undefined || strength === undefined || sugar === undefined) return { faults };
  if (start === undefined || itself === undefined) return { faults };
  const drink = drinkOf(volume, strength, sugar);
  if (drink === undefined) return { faults, cannot: sayLater.sums.doesNotFit };
  const meeting: Meeting = { method: draft.method, drink, start, ...itself };
  const served = serve(meeting);
  return {
    faults,
    answer: {
      ...figuresOf(meeting, served),
      says: saysOf(meeting, served),
      cautions: strongCautions(strength),
    },
  };
}
