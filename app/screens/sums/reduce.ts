import { blendSpirits, waterToReduce } from "../../../core/liquid/ethanol-water.ts";
import { strengthOf, volumeOf } from "../../../core/liquid/liquid.ts";
import { waterOf } from "../../../core/liquid/mixing.ts";
import { waterToReach } from "../../../core/liquid/reach-strength.ts";
import { type Figure, figure, given } from "../../../core/quantity/figure.ts";
import { abv, type VolumeStyle } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { drinkOf } from "./drink.ts";
import { type ReadSum, readerOf } from "./read-sum.ts";
import { SUM_RULES } from "./rules-table.ts";
import { spiritCautions } from "./strong-cautions.ts";

/** A spirit to let down, as typed. */
export interface ReduceDraft {
  readonly volume: string;
  readonly now: string;
  readonly wanted: string;
  readonly sugar: string;
}

interface Reduction {
  readonly volume: number;
  readonly now: number;
  readonly wanted: number;
  /** g per litre */
  readonly sugar: number;
}

const { names, spirit: words } = sayLater.sums;
const STRENGTH = { low: 0.1, high: 100 };

/** What two volumes lose when they meet; weak spirit let down far gains a little. */
export function shrinkingOf(parts: readonly Figure[], together: Figure): Figure {
  const lost = parts.reduce((sum, part) => sum + part.value, 0) - together.value;
  const name = lost < 0 ? names.grows : names.shrinks;
  return figure(name, Math.abs(lost), "ml", SUM_RULES.shrinks, [...parts, together]);
}

/** Water to pour, ml, and the volume made; nothing where strength and sugar do not fit together. */
function lettingDown({ volume, now, wanted, sugar }: Reduction) {
  if (sugar === 0) {
    const water = waterToReduce(volume, now, wanted);
    const parts = [
      { volume, strength: now },
      { volume: water, strength: 0 },
    ];
    return { water, makes: blendSpirits(parts).volume };
  }
  const base = drinkOf(volume, now, sugar);
  if (base === undefined) return undefined;
  // What was read back from the masses may lie a hair below what was typed.
  const reached = waterToReach(base, Math.min(wanted, strengthOf(base)));
  if (!reached.ok) throw new RangeError(`expected a strength in reach, got ${reached.refusal}`);
  return { water: reached.value.volume, makes: volumeOf(reached.value.liquid) };
}

/** Water that brings a spirit or a liqueur down to a strength. */
export function readReduction(draft: ReduceDraft, style: VolumeStyle): ReadSum {
  const read = readerOf(style);
  const volume = read.volume("volume", draft.volume);
  const now = read.strength("now", draft.now, STRENGTH);
  const wanted = read.strength("wanted", draft.wanted, STRENGTH);
  const sugar = read.sugar("sugar", draft.sugar);
  const { faults } = read;
  if (now === undefined || wanted === undefined) return { faults };
  if (wanted > now) read.note("wanted", words.tooStrong(abv(now)));
  if (volume === undefined || sugar === undefined || wanted > now) return { faults };
  const found = lettingDown({ volume, now, wanted, sugar });
  if (found === undefined) return { faults, cannot: sayLater.sums.doesNotFit };
  const spirit = given(names.spirit, volume, "ml");
  const from = [spirit, given(names.now, now, "abv"), given(names.wanted, wanted, "abv")];
  if (sugar > 0) from.push(given(names.sugar, sugar, "g/L"));
  const rule = sugar > 0 ? SUM_RULES.reduceSweet : SUM_RULES.reduce;
  const water = figure(names.water, found.water, "ml", rule, from);
  const makes = figure(names.makes, found.makes, "ml", SUM_RULES.makes, [...from, water]);
  const weighed = waterOf(found.water).water;
  return {
    faults,
    answer: {
      main: [water, makes],
      more: [
        figure(names.waterMass, weighed, "g", SUM_RULES.waterMass, [water]),
        shrinkingOf([spirit, water], makes),
      ],
      says: [words.cool],
      cautions: spiritCautions(now),
    },
  };
}
