import type { Plan, PlanLine } from "../../../core/spec/plan.ts";
import {
  type AmountFigures,
  amountFigures,
  milkFigures,
  pouredFigures,
} from "../../../core/spec/plan-figures.ts";
import type { RoundingChange } from "../../../core/spec/rounded-plan.ts";
import { yieldFigure } from "../../../core/spec/stages.ts";
import { batchName } from "../../ahead/batch-name.ts";
import { saveSettings } from "../../commands.ts";
import { tools } from "../../house.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { TapButton } from "../../parts/tap-button.tsx";
import { Why } from "../../parts/why.tsx";
import { settings } from "../../state.ts";
import { signed } from "../../words/change-text.ts";
import { typed } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { ratioText } from "./changes-text.ts";
import type { Made } from "./made.ts";
import { Section } from "./section.tsx";
import { bound, show } from "./show.ts";

const words = sayLater.plan.measure;

interface MeasureProps {
  readonly specId: string;
  readonly made: Made;
  readonly change: RoundingChange | undefined;
}

/** Which of the two is measured: the other stands beside it for whoever checks. */
type By = "ml" | "g";
const measuredBy = (weighed: boolean): By =>
  weighed || tools.value?.weigh === "masses" ? "g" : "ml";

/** An exact amount, or that amount as it is poured. */
function asPoured(exact: AmountFigures, part: PlanLine["before"], by: By): AmountFigures {
  const with_ = tools.value;
  if (with_ === undefined) return exact;
  return pouredFigures(exact, part, by, by === "ml" ? with_.volumeStep : with_.massStep);
}

interface AmountProps {
  readonly name: string;
  readonly amount: AmountFigures;
  readonly by: By;
  readonly weighed: boolean;
  readonly cautions: readonly string[];
}

function Caution({ children }: { readonly children: string }) {
  return (
    <tr class="plan-cautions">
      <td class="plan-caution" colSpan={3}>
        {children}
      </td>
    </tr>
  );
}

function Amount({ name, amount, by, weighed, cautions }: AmountProps) {
  const style = settings.value;
  return (
    <>
      <tr>
        <th scope="row">{bound(name)}</th>
        <td class="plan-number" data-main={by === "ml"}>
          {!weighed && <FigureButton figure={amount.ml} style={style} />}
        </td>
        <td class="plan-number" data-main={by === "g"}>
          <FigureButton figure={amount.g} style={style} />
        </td>
      </tr>
      {cautions.map((code) => (
        <Caution key={code}>{sayLater.cautions.short(code)}</Caution>
      ))}
    </>
  );
}

function Heading({ children }: { readonly children: string }) {
  return (
    <tr>
      <th class="plan-group" colSpan={3} scope="rowgroup">
        {children}
      </th>
    </tr>
  );
}

/** Cautions that matter while pouring; the rest stand with the allergens. */
const AT_THE_BENCH: readonly string[] = ["overproof", "raw-egg"];

const cautionsOfLine = (plan: Plan, line: PlanLine): readonly string[] =>
  (plan.ingredients.find(({ id }) => id === line.ingredientId)?.cautions ?? []).filter((code) =>
    AT_THE_BENCH.includes(code),
  );

interface GroupProps {
  readonly title: string;
  readonly made: Made;
  readonly part: "before" | "after";
}

function Group({ title, made, part }: GroupProps) {
  const shown = made.plan.lines.filter((line) => line[part].g > 0);
  if (shown.length === 0) return null;
  return (
    <tbody>
      <Heading>{title}</Heading>
      {shown.map((line) => {
        const by = measuredBy(line.weighed);
        const own = made.exact.lines.find(({ lineId }) => lineId === line.lineId) ?? line;
        return (
          <Amount
            key={line.lineId}
            name={line.name}
            amount={asPoured(amountFigures(made.exact, own, part), line[part], by)}
            by={by}
            weighed={line.weighed}
            cautions={cautionsOfLine(made.plan, line)}
          />
        );
      })}
    </tbody>
  );
}

function Milk({ made }: { readonly made: Made }) {
  const { milk, spec } = made.plan;
  const exact = milkFigures(made.exact);
  if (milk === undefined || exact === undefined) return null;
  const by = measuredBy(false);
  return (
    <tbody>
      <Heading>{`${words.milk}, ${words.ratio(ratioText(spec.wash?.ratio ?? 1))}`}</Heading>
      <Amount
        name={milk.name}
        amount={asPoured(exact, milk, by)}
        by={by}
        weighed={false}
        cautions={[]}
      />
      <Caution>{sayLater.plan.care.cold}</Caution>
    </tbody>
  );
}

const STEPS = { volume: 0, strength: 2, sugar: 1, acid: 1, ratio: 1 } as const;
const CHANGES = ["volume", "strength", "sugar", "acid", "ratio"] as const;
const UNITS = { volume: " ml", strength: " %", sugar: " g/L", acid: " g/L", ratio: "" } as const;

/** What rounding does to the drink, in one line. */
function Rounding({ change }: { readonly change: RoundingChange }) {
  const said = CHANGES.flatMap((what) => {
    const by = change[what];
    if (by === undefined) return [];
    const text = signed(what === "strength" ? by * 100 : by, STEPS[what]);
    return [`${words.changes[what]} ${text ?? words.same}${UNITS[what]}`];
  });
  return (
    <p class="plan-rounding" role="status">
      {words.change(said)}
    </p>
  );
}

function Switch() {
  const { rounding, jiggerStep, scaleStep } = settings.value;
  const ways = [
    ["exact", words.exact],
    ["jigger", words.jigger(`${typed(jiggerStep)} ml`)],
    ["scale", words.scale(`${typed(scaleStep)} g`)],
  ] as const;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset takes no grid layout in older Safari
    <div class="plan-switch" role="group" aria-label={words.amounts}>
      {ways.map(([value, label]) => (
        <TapButton
          key={value}
          size="least"
          pressed={rounding === value}
          onAct={() => void saveSettings({ rounding: value })}
        >
          {label}
        </TapButton>
      ))}
    </div>
  );
}

function Yield({ made }: { readonly made: Made }) {
  const figure = yieldFigure(made.plan);
  if (made.plan.yield === undefined || figure === undefined) return null;
  const { from, batches, low, high } = made.plan.yield;
  return (
    <p class="plan-yield">
      {sayLater.plan.yield}
      <FigureButton figure={figure} style={settings.value} />
      <small>
        {sayLater.plan.yieldRange(show(low), show(high))},{" "}
        {from === "common-practice" ? sayLater.plan.prior : sayLater.plan.own(batches)}.
      </small>
    </p>
  );
}

/** Apart, since it follows the clock. */
const Write = ({ name }: { readonly name: string }) => (
  <p>{sayLater.plan.write(batchName(name))}</p>
);

/** What to measure out, and what should come through. */
export function Measure({ specId, made, change }: MeasureProps) {
  const { lines, milk } = made.plan;
  const washed = milk !== undefined;
  return (
    <Section
      specId={specId}
      name="measure"
      title={words.title}
      says={words.says(lines.length, milk && show(milk.ml))}
    >
      {() => (
        <>
          <Switch />
          {change !== undefined && <Rounding change={change} />}
          <table class="plan-amounts">
            <Group title={washed ? words.before : words.together} made={made} part="before" />
            <Milk made={made} />
            <Group title={words.after} made={made} part="after" />
          </table>
          <Yield made={made} />
          {made.plan.yield !== undefined && <Why of="range" />}
          <Write name={made.plan.spec.name} />
        </>
      )}
    </Section>
  );
}
