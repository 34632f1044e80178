import {
  FREEZER,
  FREEZER_SWING,
  freezesAt,
  freezingPoint,
  iceFraction,
  stateAt,
} from "../../../core/liquid/freezing.ts";
import type { Liquid } from "../../../core/liquid/liquid.ts";
import { type Figure, figure, given } from "../../../core/quantity/figure.ts";
import { degrees, degreesRead } from "../../words/degrees.ts";
import type { VolumeStyle } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { drinkOf } from "./drink.ts";
import { type Answer, type ReadSum, readerOf } from "./read-sum.ts";
import { SUM_RULES } from "./rules-table.ts";
import { strongCautions } from "./strong-cautions.ts";

/** What may freeze, as typed. */
export interface FreezeDraft {
  readonly strength: string;
  readonly sugar: string;
  readonly temperature: string;
}

const { names, freeze: words } = sayLater.sums;
/** Here the table of ethanol and water ends: 68 % by weight. */
const TABLE_ENDS = 0.75;
const COLDEST = { low: -40, high: 20 };

/** A freezer is told in round figures, what was typed as it was typed. */
const told = (temperature: number): string =>
  temperature === FREEZER ? degrees(temperature) : degreesRead(temperature);

const sayAt = (drink: Liquid, temperature: number): string =>
  words.at(told(temperature), words.states[stateAt(drink, temperature)]);

const beyond = (): Answer => ({
  headline: words.beyond,
  main: [],
  more: [],
  says: [words.beyondWhy],
  cautions: [],
});

function answerFor(drink: Liquid, other: number | undefined, from: readonly Figure[]): Answer {
  const point = freezingPoint(drink);
  const shown = [FREEZER, ...(other === undefined || other === FREEZER ? [] : [other])];
  const within = shown.some((one) => Math.abs(point - one) < FREEZER_SWING);
  const freezing = figure(names.freezing, point, "degC", SUM_RULES.freezing, from);
  const ice = shown.map((one) =>
    figure(names.iceAt(told(one)), iceFraction(drink, one), "share", SUM_RULES.iceShare, [
      ...from,
      freezing,
    ]),
  );
  const freezes = shown.some((one) => freezesAt(drink, one));
  return {
    headline: sayAt(drink, FREEZER),
    main: [freezing],
    more: ice,
    says: [
      ...shown.slice(1).map((one) => sayAt(drink, one)),
      ...(within ? [words.close] : []),
      ...(freezes ? [words.undisturbed] : []),
    ],
    cautions: freezes ? [words.burst] : [],
  };
}

/** Where a drink begins to freeze, and what it is like in a freezer and at another temperature. */
export function readFreeze(draft: FreezeDraft, style: VolumeStyle): ReadSum {
  const read = readerOf(style);
  const strength = read.strength("strength", draft.strength, { low: 0, high: 100 });
  const sugar = read.sugar("sugar", draft.sugar);
  const asked = draft.temperature.trim() !== "";
  const other = asked ? read.temperature("temperature", draft.temperature, COLDEST) : undefined;
  const { faults } = read;
  if (strength === undefined || sugar === undefined || faults.size > 0) return { faults };
  const cautions = strongCautions(strength);
  if (strength > TABLE_ENDS) return { faults, answer: { ...beyond(), cautions } };
  const drink = drinkOf(1000, strength, sugar);
  if (drink === undefined) return { faults, cannot: sayLater.sums.doesNotFit };
  const from = [given(names.strength, strength, "abv"), given(names.sugar, sugar, "g/L")];
  const answer = answerFor(drink, other, from);
  return { faults, answer: { ...answer, cautions: [...answer.cautions, ...cautions] } };
}
