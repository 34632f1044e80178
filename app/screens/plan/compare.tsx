import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import type { Figure } from "../../../core/quantity/figure.ts";
import type { StageName } from "../../../core/spec/stages.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { settings } from "../../state.ts";
import { figureChange } from "../../words/change-text.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { type Prediction, WHOLE } from "./predict.ts";

const words = sayLater.plan.whatIf;
const STAGES: readonly StageName[] = ["mixed", "washed", "topped-up", "glass"];
const MEASURES = ["strength", "sugar", "acid", "ratio"] as const;

interface PairProps {
  readonly label: string;
  readonly now: Figure | undefined;
  readonly then: Figure | undefined;
}

const unitOf = (figure: Figure | undefined): string => {
  if (figure?.unit === "ml") return `, ${volumeUnit(settings.value.volumes)}`;
  if (figure?.unit === "money") return `, ${settings.value.currency}`;
  return "";
};

function Value({ figure }: { readonly figure: Figure | undefined }) {
  if (figure === undefined) return <>{words.absent}</>;
  return <FigureButton figure={figure} style={settings.value} bare range />;
}

interface RowProps {
  readonly label: string;
  readonly now: ComponentChildren;
  readonly then: ComponentChildren;
  /** By how much it moved; nothing where it did not. */
  readonly change: string | undefined;
}

function Row({ label, now, then, change }: RowProps) {
  return (
    <tr data-changed={change !== undefined}>
      <th scope="row">{label}</th>
      <td>{now}</td>
      <td>{then}</td>
      <td>
        <span class="plan-change">{change ?? words.same}</span>
      </td>
    </tr>
  );
}

function Pair({ label, now, then }: PairProps) {
  // While a slider moves the spec stays as it is: its column is not drawn again.
  const was = useMemo(() => <Value figure={now} />, [now]);
  if (now === undefined && then === undefined) return null;
  const change = now && then && figureChange(now, then, settings.value);
  return (
    <Row
      label={`${label}${unitOf(now ?? then)}`}
      now={was}
      then={<Value figure={then} />}
      change={change}
    />
  );
}

interface CompareProps {
  readonly now: Prediction | undefined;
  readonly then: Prediction | undefined;
}

const verdictOf = (one: Prediction | undefined): string =>
  one?.curdling === undefined ? words.absent : sayLater.plan.verdict[one.curdling.verdict];

function Whole({ now, then }: CompareProps) {
  const [was, is] = [verdictOf(now), verdictOf(then)];
  const washed = (now ?? then)?.curdling !== undefined;
  return (
    <tbody>
      {washed && (
        <Row
          label={words.curdles}
          now={<span class="plan-word">{was}</span>}
          then={<span class="plan-word">{is}</span>}
          change={was === is ? undefined : words.turned}
        />
      )}
      <Pair label={words.ph} now={now?.curdle?.pH} then={then?.curdle?.pH} />
      {WHOLE.map((name) => (
        <Pair key={name} label={words[name]} now={now?.whole[name]} then={then?.whole[name]} />
      ))}
    </tbody>
  );
}

function Measure({ now, then, of }: CompareProps & { readonly of: (typeof MEASURES)[number] }) {
  const figureAt = (one: Prediction | undefined, stage: StageName): Figure | undefined =>
    one?.stages.find(({ name }) => name === stage)?.[of];
  const pairs = STAGES.map(
    (stage) => [stage, figureAt(now, stage), figureAt(then, stage)] as const,
  );
  if (pairs.every(([, was, is]) => was === undefined && is === undefined)) return null;
  return (
    <tbody>
      <tr>
        <th class="plan-group" colSpan={4} scope="rowgroup">
          {words.groups[of]}
        </th>
      </tr>
      {pairs.map(([stage, was, is]) => (
        <Pair key={stage} label={sayLater.plan.stage[stage]} now={was} then={is} />
      ))}
    </tbody>
  );
}

/** The spec as it stands beside what is tried, number by number, with what each change comes to. */
export function Compare({ now, then }: CompareProps) {
  return (
    <table class="plan-compare">
      <thead class="visually-hidden">
        <tr>
          <td />
          <th scope="col">{words.now}</th>
          <th scope="col">{words.tried}</th>
          <th scope="col">{words.change}</th>
        </tr>
      </thead>
      <Whole now={now} then={then} />
      {MEASURES.map((of) => (
        <Measure key={of} now={now} then={then} of={of} />
      ))}
    </table>
  );
}
