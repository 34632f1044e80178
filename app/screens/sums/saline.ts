import { salineOf } from "../../../core/acid/saline.ts";
import { figure, given } from "../../../core/quantity/figure.ts";
import { RULES } from "../../../core/spec/rules-table.ts";
import { percent, type VolumeStyle } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { type ReadSum, readerOf } from "./read-sum.ts";
import { SUM_RULES } from "./rules-table.ts";

/** A saline to make, as typed. */
export interface SalineDraft {
  readonly volume: string;
  readonly percent: string;
}

const { names, saline: words } = sayLater.sums;
const SHARE = { low: 0.01, high: 100, units: ["%", "% w/w"] };

/** Salt and water, both weighed, for so much saline. */
export function readSaline(draft: SalineDraft, style: VolumeStyle): ReadSum {
  const read = readerOf(style);
  const volume = read.volume("volume", draft.volume);
  const typed = read.figure("percent", draft.percent, SHARE, words.percentFault);
  const { faults } = read;
  if (volume === undefined || typed === undefined) return { faults };
  const found = salineOf(volume, typed / 100);
  if (!found.ok) {
    read.note("percent", words.tooSalty(percent(Number(found.about.most))));
    return { faults };
  }
  const wanted = given(names.saline, volume, "ml");
  const from = [wanted, given(names.saltShare, typed / 100, "share")];
  const salt = figure(names.salt, found.value.saltG, "g", SUM_RULES.saltMass, from);
  const perLitre = (1000 * found.value.saltG) / volume;
  return {
    faults,
    answer: {
      main: [salt, figure(names.water, found.value.waterG, "g", SUM_RULES.salineWater, from)],
      more: [figure(names.saltPerLitre, perLitre, "g/L", RULES.perLitre, [salt, wanted])],
      says: [words.weigh],
      cautions: [],
    },
  };
}
