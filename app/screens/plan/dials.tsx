import { strengthOf } from "../../../core/liquid/liquid.ts";
import { planBatch } from "../../../core/spec/plan-batch.ts";
import type { BatchSize, Spec, SpecLine, TopUpRule } from "../../../core/spec/spec.ts";
import {
  type Changes,
  heldBackShare,
  heldBackTogether,
  withChanges,
} from "../../../core/spec/what-if.ts";
import { house, shelf } from "../../house.ts";
import { SelectField } from "../../parts/select-field.tsx";
import { abv, percent } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { ratioText } from "./changes-text.ts";
import { Dial } from "./dial.tsx";
import { show } from "./show.ts";

export interface DialsProps {
  /** As it stands. */
  readonly spec: Spec;
  readonly size: BatchSize;
  readonly tried: Changes;
  readonly onTry: (tried: Changes) => void;
}

const words = sayLater.plan.whatIf;

/** From a second wash's 1 : 20 to 1 : 1.7, further than any printed recipe; a spec may lie beyond. */
const LEAST_MILK = 0.05;
const MOST_MILK = 0.6;

/** How much milk the punch meets. */
export function MilkDial({ spec, tried, onTry }: DialsProps) {
  const now = spec.wash?.ratio ?? 0;
  const ratio = tried.ratio ?? now;
  return (
    <Dial
      label={words.ratio}
      shown={ratioText(ratio)}
      detail={words.perLitre(show(1000 * ratio))}
      value={ratio}
      now={now}
      low={Math.min(LEAST_MILK, now)}
      high={Math.max(MOST_MILK, now)}
      step={0.01}
      onChange={(to) => onTry({ ...tried, ratio: to })}
    />
  );
}

const ALL = "all-together";

/** What it makes sense to hold back: spirit, and whatever the spec already holds back. */
const holdable = (spec: Spec): readonly SpecLine[] =>
  spec.lines.filter(
    ({ ingredientId, heldBack }) =>
      heldBack > 0 || (shelf.value.get(ingredientId)?.strength ?? 0) > 0,
  );

const nameOf = ({ ingredientId }: SpecLine): string =>
  shelf.value.get(ingredientId)?.name ?? ingredientId;

/** Which line is moved, by its id; or all split lines together. */
interface HeldProps extends DialsProps {
  readonly which: string;
}

/** What the dial starts at: all that is split, or the one line that is, or could be. */
export function firstHeld(spec: Spec): string {
  const split = spec.lines.filter((line) => line.heldBack > 0);
  return split.length > 1 ? ALL : ((split[0] ?? holdable(spec)[0])?.id ?? ALL);
}

/** Which of the spirits is held back more or less. */
export function HeldChoice(props: HeldProps & { readonly onWhich: (which: string) => void }) {
  const { spec, which, onWhich } = props;
  const split = spec.lines.filter((line) => line.heldBack > 0);
  const lines = holdable(spec).map((one) => ({ value: one.id, label: nameOf(one) }));
  const choices = split.length > 1 ? [{ value: ALL, label: words.together }, ...lines] : lines;
  if (choices.length < 2) return null;
  return <SelectField label={words.which} choices={choices} value={which} onChange={onWhich} />;
}

/** How much of the spirit waits until after the wash: of one line, or of all split lines together. */
export function HeldDial({ spec, tried, onTry, which }: HeldProps) {
  const { ounce } = house.value;
  const line = spec.lines.find(({ id }) => id === which);
  const shareOf = (of: Spec): number =>
    line === undefined
      ? heldBackShare(of, ounce)
      : (of.lines.find(({ id }) => id === line.id)?.heldBack ?? 0);
  const share = line ? shareOf(withChanges(spec, tried)) : togetherShare(spec, tried);
  const move = (to: number): Changes["heldBack"] =>
    line === undefined ? heldBackTogether(spec, to, ounce) : { [line.id]: to };
  return (
    <Dial
      label={words.held}
      shown={percent(share)}
      detail={words.spec(percent(shareOf(spec)))}
      value={share}
      now={shareOf(spec)}
      low={0}
      high={1}
      step={0.01}
      onChange={(to) => onTry({ ...tried, heldBack: { ...tried.heldBack, ...move(to) } })}
    />
  );
}

/** The share of the spec's own split lines, wherever they were moved: one moved to 0 still counts. */
function togetherShare(spec: Spec, tried: Changes): number {
  const { ounce } = house.value;
  const moved = withChanges(spec, tried);
  const kept = moved.lines.filter((_, at) => (spec.lines[at]?.heldBack ?? 0) > 0);
  // A hair's breadth keeps a line that was moved to 0 among those that are split.
  const lines = kept.map((one) => ({ ...one, heldBack: Math.max(one.heldBack, Number.MIN_VALUE) }));
  return heldBackShare({ ...spec, lines }, ounce);
}

const TENTH = 0.001;
const RULES = ["proportion", "strength", "fixed"] as const;

/** How far above what is planned the slider goes, v/v: further up it would be all spirit. */
const HEADROOM = 0.05;

const targetOf = (of: TopUpRule, bottled: number): number =>
  of.rule === "strength" ? of.target : bottled;

/** Strengths that the top-up can reach, in steps of 0.1 % vol; nothing where there is none. */
function reachable(props: DialsProps): { low: number; high: number; bottled: number } | undefined {
  const { spec, size, tried } = props;
  const open = withChanges(spec, { ...tried, topUp: { rule: "proportion" } });
  const found = planBatch(open, shelf.value, tried.size ?? size, house.value);
  if (!found.ok || found.value.washed === undefined) return undefined;
  const { washed, heldBack, final } = found.value;
  const bottled = strengthOf(final);
  const wanted = Math.max(bottled, targetOf(spec.topUp, 0), targetOf(tried.topUp ?? spec.topUp, 0));
  const most = Math.min(strengthOf(heldBack), wanted + HEADROOM);
  const low = Math.ceil(strengthOf(washed) / TENTH + 0.01) * TENTH;
  const high = Math.floor(most / TENTH - 0.5) * TENTH;
  return low < high ? { low, high, bottled } : undefined;
}

/** A target within what can be reached, on a step. */
const fitting = (to: number, { low, high }: { low: number; high: number }): TopUpRule => ({
  rule: "strength",
  target: Number((Math.round(Math.min(high, Math.max(low, to)) / TENTH) * TENTH).toFixed(3)),
});

/** How the held-back spirit goes in. */
export function TopUpChoice(props: DialsProps) {
  const { spec, tried, onTry } = props;
  const { rule } = tried.topUp ?? spec.topUp;
  const range = reachable(props);
  if (range === undefined) return <p>{words.nothingHeld}</p>;
  const { rules } = sayLater.spec.topUp;
  const choose = (to: TopUpRule["rule"]) =>
    onTry({
      ...tried,
      topUp: to === "strength" ? fitting(targetOf(spec.topUp, range.bottled), range) : { rule: to },
    });
  return (
    <>
      <SelectField
        label={words.rule}
        choices={RULES.map((value) => ({ value, label: rules[value] }))}
        value={rule}
        onChange={choose}
      />
      {rule !== "strength" && <p class="plan-quiet">{words.sameNow}</p>}
    </>
  );
}

/** To which strength, where the rule names one. */
export function TopUpDial(props: DialsProps) {
  const { spec, tried, onTry } = props;
  const topUp = tried.topUp ?? spec.topUp;
  const range = reachable(props);
  if (range === undefined || topUp.rule !== "strength") return null;
  const now = targetOf(spec.topUp, range.bottled);
  return (
    <Dial
      label={words.target}
      shown={abv(topUp.target)}
      detail={words.spec(abv(now))}
      value={topUp.target}
      now={now}
      low={range.low}
      high={range.high}
      step={TENTH}
      onChange={(to) => onTry({ ...tried, topUp: fitting(to, range) })}
    />
  );
}
