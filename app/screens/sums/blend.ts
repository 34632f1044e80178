import { blendSpirits, type Spirit } from "../../../core/liquid/ethanol-water.ts";
import { figure, given } from "../../../core/quantity/figure.ts";
import type { VolumeStyle } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { type Reader, type ReadSum, readerOf } from "./read-sum.ts";
import { shrinkingOf } from "./reduce.ts";
import { SUM_RULES } from "./rules-table.ts";
import { spiritCautions } from "./strong-cautions.ts";

/** One of the spirits to blend, as typed. */
export interface PourDraft {
  readonly volume: string;
  readonly strength: string;
}

const { names, spirit: words } = sayLater.sums;
const STRENGTH = { low: 0, high: 100 };
/** So many pours must be there; a later one that is empty is none. */
const NEEDED = 2;

const isEmpty = ({ volume, strength }: PourDraft): boolean => `${volume}${strength}`.trim() === "";

function readPour(pour: PourDraft, at: number, read: Reader): Spirit | undefined {
  const volume = read.volume(`volume:${at}`, pour.volume);
  const strength = read.strength(`strength:${at}`, pour.strength, STRENGTH);
  return volume === undefined || strength === undefined ? undefined : { volume, strength };
}

/** Two or three plain spirits (or water) poured together. */
export function readBlend(pours: readonly PourDraft[], style: VolumeStyle): ReadSum {
  const read = readerOf(style);
  const used = pours.filter((pour, at) => at < NEEDED || !isEmpty(pour));
  const spirits = used.flatMap((pour, at) => readPour(pour, at, read) ?? []);
  const { faults } = read;
  if (faults.size > 0) return { faults };
  const blend = blendSpirits(spirits);
  const volumes = spirits.map(({ volume }, at) => given(names.part(at + 1), volume, "ml"));
  const strengths = spirits.map(({ strength }, at) =>
    given(names.partStrength(at + 1), strength, "abv"),
  );
  const from = [...volumes, ...strengths];
  const makes = figure(names.makes, blend.volume, "ml", SUM_RULES.makes, from);
  const strength = figure(names.strength, blend.strength, "abv", SUM_RULES.blendStrength, [
    ...from,
    makes,
  ]);
  return {
    faults,
    answer: {
      main: [strength, makes],
      more: [shrinkingOf(volumes, makes)],
      says: [words.plainOnly, words.cool],
      cautions: spiritCautions(Math.max(...spirits.map((one) => one.strength))),
    },
  };
}
