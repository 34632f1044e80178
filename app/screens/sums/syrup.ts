import { massOf } from "../../../core/liquid/liquid.ts";
import { sucroseSolubility } from "../../../core/liquid/sucrose.ts";
import {
  crystallisesAt,
  honeySyrup,
  type Syrup,
  syrupByVolume,
  syrupByWeight,
} from "../../../core/liquid/syrup.ts";
import { type Figure, figure, given } from "../../../core/quantity/figure.ts";
import { RULES } from "../../../core/spec/rules-table.ts";
import type { VolumeStyle } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { readParts } from "./read-parts.ts";
import { type Answer, type ReadSum, readerOf } from "./read-sum.ts";
import { SUM_RULES } from "./rules-table.ts";

export const SWEETENERS = ["sugar", "honey", "gomme"] as const;
export const RATIOS = ["1 : 1", "2 : 1", "own"] as const;

/** A syrup to make, as typed. */
export interface SyrupDraft {
  readonly by: "weight" | "volume";
  readonly of: (typeof SWEETENERS)[number];
  readonly ratio: (typeof RATIOS)[number];
  readonly own: string;
  readonly amount: string;
  readonly gum: string;
}

interface Making {
  readonly by: SyrupDraft["by"];
  readonly of: SyrupDraft["of"];
  /** Of the sweet part: g, or ml by volume. */
  readonly amount: number;
  /** Parts of it to 1 of water. */
  readonly parts: number;
  /** g */
  readonly gum: number;
}

interface Made {
  readonly syrup: Syrup;
  /** g of what makes it sweet, as it comes */
  readonly sweet: number;
}

const { names, syrup: words } = sayLater.sums;
const FRIDGE = 4;
const SHELF = 20;

/** g of honey in so many ml of it. */
const honeyWeighing = (ml: number): number => (ml * honeySyrup(1, 0).density) / 1000;

function make({ by, of, amount, parts, gum }: Making): Made {
  const water = amount / parts;
  if (of === "honey") {
    const sweet = by === "weight" ? amount : honeyWeighing(amount);
    const waterMass = by === "weight" ? water : syrupByVolume(0, water).liquid.water;
    return { syrup: honeySyrup(sweet, waterMass), sweet };
  }
  if (by === "weight") return { syrup: syrupByWeight(amount, water, gum), sweet: amount };
  const plain = syrupByVolume(amount, water);
  const { sugar: sweet, water: waterMass } = plain.liquid;
  return { syrup: gum > 0 ? syrupByWeight(sweet, waterMass, gum) : plain, sweet };
}

const gumOf = ({ gum }: Making): readonly Figure[] => (gum > 0 ? [given(names.gum, gum, "g")] : []);

/** What goes in: as it is measured, and by weight where it is not. */
function inputsOf(making: Making, made: Made) {
  const { by, of, amount, parts } = making;
  const unit = by === "weight" ? "g" : "ml";
  const sweet = given(names.sweetener[of], amount, unit);
  const from = [sweet, given(names.parts, parts, "ratio")];
  const water = figure(names.water, amount / parts, unit, SUM_RULES.letDown, from);
  if (by === "weight") return { water, masses: [sweet, water, ...gumOf(making)], weighed: [] };
  const rule = of === "honey" ? SUM_RULES.honeyMass : SUM_RULES.scooped;
  const weighed = [
    figure(names.sweetenerMass[of], made.sweet, "g", rule, [sweet]),
    figure(
      names.waterMass,
      syrupByVolume(0, amount / parts).liquid.water,
      "g",
      SUM_RULES.waterMass,
      [water],
    ),
  ];
  return { water, masses: [...weighed, ...gumOf(making)], weighed };
}

function standing({ liquid }: Syrup): string {
  if (crystallisesAt(liquid, SHELF)) return words.shelf;
  return crystallisesAt(liquid, FRIDGE) ? words.fridge : words.clear;
}

function answerOf(making: Making): Answer {
  const made = make(making);
  const { syrup } = made;
  const { water, masses, weighed } = inputsOf(making, made);
  const makes = figure(names.makes, syrup.volume, "ml", RULES.volume, masses);
  const mass = figure(names.mass, massOf(syrup.liquid), "g", SUM_RULES.together, masses);
  const held = 100 * sucroseSolubility(FRIDGE);
  const headline = standing(syrup);
  return {
    headline,
    main: [figure(names.brix, syrup.brix, "brix", RULES.brix, masses), makes],
    more: [
      water,
      ...weighed,
      figure(names.perLitre, syrup.gramsPerLitre, "g/L", RULES.perLitre, [...masses, makes]),
      figure(names.density, syrup.density, "kg/m3", SUM_RULES.density, [mass, makes]),
      figure(names.coldest, held, "brix", SUM_RULES.saturation, []),
    ],
    says: [
      ...(headline === words.clear ? [] : [words.less]),
      ...(making.by === "volume" && making.of !== "honey" ? [words.scooped] : []),
      ...(making.of === "honey" ? [words.honey] : []),
    ],
    cautions: [words.hot, words.keep],
  };
}

/** A syrup: what goes in, what it makes, and whether it can crystallise. */
export function readSyrup(draft: SyrupDraft, style: VolumeStyle): ReadSum {
  const read = readerOf(style);
  const { by, of } = draft;
  const amount =
    by === "weight" ? read.mass("amount", draft.amount) : read.volume("amount", draft.amount);
  const parts = readParts(draft.ratio === "own" ? draft.own : draft.ratio);
  if (parts === undefined) read.note("own", words.ownFault);
  const most = (amount ?? Number.MAX_VALUE) / 2;
  const gum =
    of === "gomme"
      ? read.figure("gum", draft.gum, { low: 0, high: most, units: ["g"] }, words.gumFault)
      : 0;
  const { faults } = read;
  if (amount === undefined || parts === undefined || gum === undefined) return { faults };
  return { faults, answer: answerOf({ by, of, amount, parts, gum }) };
}
