import type { BatchSize, Spec, TopUpRule } from "../../../core/spec/spec.ts";
import type { Changes } from "../../../core/spec/what-if.ts";
import { shelf } from "../../house.ts";
import { abv, decimals, percent, typed } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { bound, show } from "./show.ts";

const words = sayLater.plan.whatIf;

/** Milk to punch as bars say it: "1 : 3.8". */
export const ratioText = (ratio: number): string => `1\u00a0:\u00a0${typed(1 / ratio, 1)}`;

/** How the held-back spirit goes in, in a few words. */
const ruleText = (topUp: TopUpRule): string =>
  topUp.rule === "strength" ? words.rules.strength(abv(topUp.target)) : words.rules[topUp.rule];

/** A size in a few words: "60 serves". */
export function sizeText(size: BatchSize): string {
  const { by } = sayLater.plan;
  switch (size.by) {
    case "serves":
      return `${typed(size.serves)} ${by.serves.toLowerCase()}`;
    case "bottles":
      return `${typed(size.bottles)} × ${show(size.size)}`;
    case "volume":
      return show(size.volume);
    case "vessel":
      return show(size.vessel);
    case "stock":
      return `${decimals(size.amount.value, 0)} ${size.amount.unit}`;
  }
}

/** What is otherwise than the spec has it, one entry each; the size is none of the spec's. */
export function changesText(spec: Spec, changes: Changes): readonly string[] {
  const { ratio, heldBack = {}, topUp } = changes;
  const { notes } = words;
  const was = spec.wash?.ratio;
  return [
    ...(ratio === undefined || was === undefined
      ? []
      : [notes.ratio(ratioText(was), ratioText(ratio))]),
    ...spec.lines.flatMap(({ id, ingredientId, heldBack: before }) => {
      const share = heldBack[id];
      const name = bound(shelf.value.get(ingredientId)?.name ?? ingredientId);
      return share === undefined ? [] : [notes.held(name, percent(before), percent(share))];
    }),
    ...(topUp === undefined ? [] : [notes.topUp(ruleText(spec.topUp), ruleText(topUp))]),
  ];
}
