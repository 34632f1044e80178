import type { Plan, PlanLine } from "../../../core/spec/plan.ts";
import { milkFigure, yieldFigure } from "../../../core/spec/stages.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { settings } from "../../state.ts";
import { decimals, mass, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const show = (ml: number): string => volume(ml, settings.value);

function Row(props: { readonly line: PlanLine; readonly part: "before" | "after" }) {
  const { line, part } = props;
  const { ml, g } = line[part];
  return (
    <tr>
      <th scope="row">{line.name}</th>
      <td class="plan-number">{line.weighed ? "" : show(ml)}</td>
      <td class="plan-number plan-quiet">{mass(g)}</td>
    </tr>
  );
}

function Group(props: {
  readonly title: string;
  readonly lines: readonly PlanLine[];
  readonly part: "before" | "after";
}) {
  const { title, lines, part } = props;
  const shown = lines.filter((line) => line[part].g > 0);
  if (shown.length === 0) return null;
  return (
    <tbody>
      <tr>
        <th class="plan-group" colSpan={3} scope="rowgroup">
          {title}
        </th>
      </tr>
      {shown.map((line) => (
        <Row key={line.lineId} line={line} part={part} />
      ))}
    </tbody>
  );
}

function Milk({ plan }: { readonly plan: Plan }) {
  const figure = milkFigure(plan);
  if (plan.milk === undefined || figure === undefined) return null;
  const parts = decimals(1 / (plan.spec.wash?.ratio ?? 1), 1).replace(/\.0$/u, "");
  return (
    <tbody>
      <tr>
        <th class="plan-group" colSpan={3} scope="rowgroup">
          {sayLater.plan.milk} <span class="plan-quiet">{sayLater.plan.ratio(parts)}</span>
        </th>
      </tr>
      <tr>
        <th scope="row">{plan.milk.name}</th>
        <td class="plan-number">
          <FigureButton figure={figure} style={settings.value} />
        </td>
        <td class="plan-number plan-quiet">{mass(plan.milk.g)}</td>
      </tr>
    </tbody>
  );
}

function Yield({ plan }: { readonly plan: Plan }) {
  const figure = yieldFigure(plan);
  if (plan.yield === undefined || figure === undefined) return null;
  const words = sayLater.plan;
  const { from, batches, low, high } = plan.yield;
  return (
    <div class="plan-yield">
      <h2>{words.yield}</h2>
      <p class="plan-big">
        <FigureButton figure={figure} style={settings.value} />
      </p>
      <p>
        {words.yieldRange(show(low), show(high))},{" "}
        {from === "common-practice" ? words.prior : words.own(batches)}
      </p>
    </div>
  );
}

/** What to measure out, and what should come through. */
export function Amounts({ plan }: { readonly plan: Plan }) {
  const words = sayLater.plan;
  const serves = decimals(plan.finalMl / plan.spec.serve.pour, 0);
  const washed = plan.milk !== undefined;
  return (
    <>
      <p class="plan-makes">{words.makes(show(plan.finalMl), serves)}</p>
      <section class="plan-part">
        <h2>{words.pull}</h2>
        <table class="plan-amounts">
          <Group title={washed ? words.before : words.together} lines={plan.lines} part="before" />
          <Milk plan={plan} />
          <Group title={words.after} lines={plan.lines} part="after" />
        </table>
        <Yield plan={plan} />
      </section>
    </>
  );
}
