import type { Plan } from "../../../core/spec/plan.ts";
import { type Stage, stagesOf } from "../../../core/spec/stages.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { settings } from "../../state.ts";
import { decimals, percent, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const ROWS = ["volume", "strength", "sugar", "acid", "brix", "ratio"] as const;

function Cell({ stage, row }: { readonly stage: Stage; readonly row: (typeof ROWS)[number] }) {
  const figure = stage[row];
  return (
    <td class="plan-number">
      {figure !== undefined && <FigureButton figure={figure} style={settings.value} bare />}
    </td>
  );
}

/** ABV, sugar and acid at each stage, side by side; every number opens its working. */
export function Balance({ plan }: { readonly plan: Plan }) {
  const stages = stagesOf(plan);
  const words = sayLater.plan;
  const { style } = { style: settings.value };
  const pour = volume(plan.spec.serve.pour, style);
  const water = volume(plan.waterAdded, style);
  return (
    <section class="plan-part">
      <h2>{words.stages}</h2>
      <div class="plan-scroll">
        <table class="plan-balance">
          <thead>
            <tr>
              <td />
              {stages.map((stage) => (
                <th key={stage.name} scope="col">
                  {words.stage[stage.name]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {ROWS.map((row) => (
              <tr key={row}>
                <th scope="row">{words.rows[row]}</th>
                {stages.map((stage) => (
                  <Cell key={stage.name} stage={stage} row={row} />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>
        {words.glass(pour, water, `${decimals(plan.servedAt, 0)} °C`)}
        {plan.servedIce > 0.01 && `, ${words.ice(percent(plan.servedIce))}`}
      </p>
    </section>
  );
}
