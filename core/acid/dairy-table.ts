import type { DairyKind } from "./dairy-kind-table.ts";

/**
 * Dairy and plant milks: composition, how they take up acid, where they start to curdle.
 * Read 2026-11-25 in the project's reference notes and in stored public pages; facts, no licence.
 *
 * whole, skim, cream: 'Composition of Foods', USDA Handbook 8 (rev. 1976), as quoted on a public page
 * (opened): water 88.0 / 90.8 / 57.7, fat 3.3 / 0.2 / 37.0, protein 3.3 / 3.4 / 2.1, carbohydrate
 * 4.7 / 4.9 / 2.8, ash 0.7 / 0.8 / 0.5 %. Goat: Park, Small Ruminant Research 8 (1992) 75, quoting
 * Haenlein & Caccese 1984 (opened): solids 12.1, protein 3.4, fat 3.8, lactose 4.1, mineral 0.8 %.
 * Casein as 78 % of the protein of cow and goat: from memory (77 to 80 %). Soy and almond fat,
 * protein and carbohydrate: a public page's table per 240 ml (opened). Oat and coconut (the thick kind
 * from a can): from memory. Densities: from memory, cream computed from its parts.
 *
 * Acid uptake as a multiple of whole milk: skim by the maximum buffer index 33.3 against 27.7
 * mmol/L/pH (Lesson 24, Buffering capacity and buffering index, dairy chemistry course, opened);
 * cream 0.62 from memory; goat taken as cow (Park 1992, abstract: the breeds overlap); plants by
 * their protein against whole milk's, which is a judgement: no data was found.
 *
 * Onset without alcohol at 25 degrees C: cow 5.1 (Bringe & Kinsella, Food Hydrocolloids 7 (1993) 113,
 * abstract opened, diluted skim milk); goat taken as cow, no data; soy 4.5, its isoelectric point,
 * from memory. Plants without casein have none.
 */

/** What is known of a dairy or plant milk. Masses in g per litre at 20 degrees C. */
export interface Dairy {
  readonly densityKgPerL: number;
  readonly fat: number;
  /** 0 where there is none to curdle. */
  readonly casein: number;
  readonly lactose: number;
  /** Whey or plant protein, minerals, starch and sugars other than lactose. */
  readonly otherSolids: number;
  readonly water: number;
  /** pH as it is poured. */
  readonly pH: number;
  /** Acid uptake as a multiple of whole milk's. */
  readonly uptake: number;
  /** pH at which it starts to curdle at 25 degrees C without alcohol; null where nothing curdles. */
  readonly onset: number | null;
  /** Whether temperature, heating and alcohol move the onset as they do for casein. */
  readonly hasCasein: boolean;
  /** Whether its acid uptake and onset rest on measurements, or on a guess for want of any. */
  readonly known: boolean;
  /**
   * Allergen group to declare, by the EU list. Coconut is on no list we read, though some codes have
   * counted it with the nuts: the label still has to name it.
   */
  readonly allergen: "milk" | "soy" | "gluten" | "nuts" | null;
}

const COW = { pH: 6.6, onset: 5.1, hasCasein: true, known: true, allergen: "milk" } as const;
const PLANT = { casein: 0, lactose: 0, pH: 6.8, hasCasein: false, known: false } as const;

export const DAIRIES: Readonly<Record<DairyKind, Dairy>> = {
  whole: {
    ...COW,
    densityKgPerL: 1.03,
    fat: 34,
    casein: 26.5,
    lactose: 48.4,
    otherSolids: 14.7,
    water: 906.4,
    uptake: 1,
  },
  skim: {
    ...COW,
    densityKgPerL: 1.035,
    fat: 2.1,
    casein: 27.4,
    lactose: 50.7,
    otherSolids: 15,
    water: 939.8,
    uptake: 1.2,
  },
  cream: {
    ...COW,
    densityKgPerL: 0.99,
    fat: 366.3,
    casein: 16.2,
    lactose: 27.7,
    otherSolids: 8.6,
    water: 571.2,
    uptake: 0.62,
  },
  goat: {
    ...COW,
    known: false,
    densityKgPerL: 1.03,
    fat: 39.1,
    casein: 27.3,
    lactose: 42.2,
    otherSolids: 16,
    water: 905.4,
    uptake: 1,
  },
  soy: {
    ...PLANT,
    densityKgPerL: 1.02,
    fat: 18.8,
    otherSolids: 54,
    water: 947.2,
    uptake: 1,
    onset: 4.5,
    allergen: "soy",
  },
  oat: {
    ...PLANT,
    densityKgPerL: 1.03,
    fat: 15,
    otherSolids: 80,
    water: 935,
    uptake: 0.3,
    onset: null,
    allergen: "gluten",
  },
  almond: {
    ...PLANT,
    densityKgPerL: 1,
    fat: 10.4,
    otherSolids: 12,
    water: 977.6,
    uptake: 0.13,
    onset: null,
    allergen: "nuts",
  },
  coconut: {
    ...PLANT,
    densityKgPerL: 0.99,
    fat: 200,
    otherSolids: 50,
    water: 740,
    uptake: 0.6,
    onset: null,
    allergen: null,
  },
};
