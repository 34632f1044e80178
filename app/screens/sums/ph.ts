import { ALCOHOL_DATA_END, mixPh } from "../../../core/acid/mix-ph.ts";
import { ACID_NAMES, type AcidMasses, totalAcid } from "../../../core/quantity/acid-name.ts";
import { type Figure, figure, given } from "../../../core/quantity/figure.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import { RULES } from "../../../core/spec/rules-table.ts";
import { decimals, type VolumeStyle } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { type Juice, type JuiceDraft, juiceFigures, OWN_ACIDS, readJuice } from "./juice.ts";
import { type Answer, type Reader, type ReadSum, readerOf } from "./read-sum.ts";
import { SUM_RULES } from "./rules-table.ts";

/** A mix whose pH is asked for, as typed. */
export interface PhDraft {
  readonly juice: JuiceDraft;
  readonly volume: string;
  readonly total: string;
  readonly strength: string;
  /** g of each acid put in as powder */
  readonly added: JuiceDraft["acids"];
}

interface Mix {
  readonly juice: Juice;
  /** of the juice, ml */
  readonly volume: number;
  /** of the whole mix, ml */
  readonly total: number;
  /** v/v */
  readonly strength: number;
  /** g */
  readonly added: AcidMasses;
}

const { names, ph: words, juice: juiceWords } = sayLater.sums;
/** More than would dissolve and be drunk, g per litre. */
const MOST_ACID = 500;

function readAdded(draft: PhDraft, read: Reader): AcidMasses | undefined {
  const typed = OWN_ACIDS.map(
    (name) => [name, read.grams(`added:${name}`, draft.added[name])] as const,
  );
  return typed.some(([, grams]) => grams === undefined) ? undefined : Object.fromEntries(typed);
}

/** g of every acid in the whole mix. */
const acidsIn = ({ juice, volume, added }: Mix): AcidMasses =>
  Object.fromEntries(
    ACID_NAMES.map((name) => {
      const fromJuice = ((juice.acids[name] ?? 0) * volume) / 1000;
      return [name, fromJuice + (added[name] ?? 0)];
    }),
  );

function workingOf({ juice, volume, total, strength, added }: Mix): readonly Figure[] {
  const powders = OWN_ACIDS.flatMap((name) => {
    const grams = added[name] ?? 0;
    return grams > 0 ? [given(names.acid[name], grams, "g")] : [];
  });
  return [
    given(names.juice, volume, "ml"),
    ...juiceFigures(juice),
    ...powders,
    given(names.mixed, total, "ml"),
    given(names.strength, strength, "abv"),
  ];
}

function answerOf(mix: Mix, acids: AcidMasses): Answer {
  const { juice, volume, total, strength } = mix;
  const cation = ((juice.cation ?? 0) * volume) / 1000;
  const punch = { volume: total, acids, cation, strength };
  // Without dairy the kind does not count.
  const { pH, low, high } = mixPh({ punch, dairy: "whole", dairyVolume: 0 });
  const from = workingOf(mix);
  const perLitre = (1000 * totalAcid(acids)) / total;
  return {
    headline: words.band(decimals(low, 1), decimals(high, 1)),
    main: [
      figure(names.pH, pH, "pH", SUM_RULES.mixPh, from, high - pH),
      figure(names.acidPerLitre, perLitre, "g/L", RULES.perLitre, from),
    ],
    more: [],
    says: strength > ALCOHOL_DATA_END ? [words.strong] : [],
    cautions: [words.keeps],
  };
}

/** The pH band of juice, acid, spirit and water together. */
export function readPh(
  draft: PhDraft,
  cupboard: ReadonlyMap<string, Ingredient>,
  style: VolumeStyle,
): ReadSum {
  const read = readerOf(style);
  const juice = readJuice(draft.juice, cupboard, read);
  const volume = read.volume("volume", draft.volume);
  const total = read.volume("total", draft.total);
  const strength = read.strength("strength", draft.strength, { low: 0, high: 100 });
  const added = readAdded(draft, read);
  const { faults } = read;
  if (juice !== undefined && juice.cation === undefined && !faults.has("pH")) {
    read.note("pH", juiceWords.pHFault);
  }
  if (volume === undefined || total === undefined || strength === undefined) return { faults };
  if (total < volume) read.note("total", words.totalFault);
  if (juice === undefined || added === undefined || faults.size > 0) return { faults };
  const mix: Mix = { juice, volume, total, strength, added };
  const acids = acidsIn(mix);
  const grams = totalAcid(acids);
  if (grams === 0) return { faults, cannot: juiceWords.none };
  if (grams > (MOST_ACID * total) / 1000) return { faults, cannot: words.tooSour };
  return { faults, answer: answerOf(mix, acids) };
}
