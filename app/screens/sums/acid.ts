import { ACID_TARGETS, type AcidAddition, acidToAdd } from "../../../core/acid/acid-adjust.ts";
import { titratableAcidity } from "../../../core/acid/juice.ts";
import { ACID_NAMES, type AcidMasses } from "../../../core/quantity/acid-name.ts";
import { type Figure, figure, given } from "../../../core/quantity/figure.ts";
import type { Ingredient } from "../../../core/spec/ingredient.ts";
import { figureText, type VolumeStyle } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { type Juice, type JuiceDraft, juiceFigures, readJuice } from "./juice.ts";
import { type ReadSum, readerOf } from "./read-sum.ts";
import { SUM_RULES } from "./rules-table.ts";

/** A juice to make as sour as another, as typed. */
export interface AcidDraft {
  readonly juice: JuiceDraft;
  readonly volume: string;
  readonly to: keyof typeof ACID_TARGETS;
}

const { names, acid: words } = sayLater.sums;

const AIMS: Readonly<Record<AcidDraft["to"], AcidMasses>> = ACID_TARGETS;

function aimFigures(aim: AcidMasses): readonly Figure[] {
  const { citric, malic } = aim;
  return [
    ...(citric === undefined ? [] : [given(names.aim.citric, citric, "g/L")]),
    ...(malic === undefined ? [] : [given(names.aim.malic, malic, "g/L")]),
  ];
}

/** Acid that lye finds, before and after; nothing where the juice's pH is not known. */
function titratables(juice: Juice, { acids, litres }: AcidAddition, has: readonly Figure[]) {
  const { cation } = juice;
  if (cation === undefined) return [];
  const after = ACID_NAMES.map(
    (name) => [name, ((juice.acids[name] ?? 0) + (acids[name] ?? 0)) / litres] as const,
  );
  const now = titratableAcidity(juice.acids, cation);
  const then = titratableAcidity(Object.fromEntries(after), cation / litres);
  const nowFigure = figure(names.titratable, now, "g/L", SUM_RULES.titratable, has);
  return [nowFigure, figure(names.titratableAfter, then, "g/L", SUM_RULES.titratable, [nowFigure])];
}

const perLitre = (value: number, style: VolumeStyle): string =>
  figureText(given("", value, "g/L"), style);

/** Grams of citric and malic acid that make a juice as sour as lemon or lime. */
export function readAcidAdjust(
  draft: AcidDraft,
  cupboard: ReadonlyMap<string, Ingredient>,
  style: VolumeStyle,
): ReadSum {
  const read = readerOf(style);
  const juice = readJuice(draft.juice, cupboard, read);
  const volume = read.volume("volume", draft.volume);
  const { faults } = read;
  if (juice === undefined || volume === undefined || faults.size > 0) return { faults };
  const aim = AIMS[draft.to];
  const found = acidToAdd(juice.acids, aim);
  if (!found.ok) {
    const { acid, has, target } = found.about;
    const name = ACID_NAMES.find((one) => one === acid) ?? "citric";
    const [much, aimed] = [perLitre(Number(has), style), perLitre(Number(target), style)];
    return { faults, cannot: words.over(names.acid[name], much, aimed) };
  }
  const has = juiceFigures(juice);
  const poured = given(names.juice, volume, "ml");
  const from = [poured, ...has, ...aimFigures(aim)];
  const added = ACID_NAMES.flatMap((name) => {
    const perLitreAdded = found.value.acids[name];
    if (perLitreAdded === undefined) return [];
    const grams = (perLitreAdded * volume) / 1000;
    return [figure(names.acid[name], grams, "g", SUM_RULES.acidAdd, from)];
  });
  const makes = volume * found.value.litres;
  return {
    faults,
    answer: {
      main: added,
      more: [
        figure(names.makes, makes, "ml", SUM_RULES.acidMakes, [poured, ...added]),
        ...titratables(juice, found.value, has),
      ],
      says: [words.practice],
      cautions: [words.powder, ...juice.cautions.map(sayLater.cautions.full)],
    },
  };
}
