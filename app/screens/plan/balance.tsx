import type { Plan } from "../../../core/spec/plan.ts";
import { type Stage, type StageName, stagesOf } from "../../../core/spec/stages.ts";
import { FigureButton } from "../../parts/figure-button.tsx";
import { settings } from "../../state.ts";
import { figureText } from "../../words/format.ts";
import { volumeUnit } from "../../words/house-units.ts";
import { sayLater } from "../../words/say-later.ts";
import { Section } from "./section.tsx";

const words = sayLater.plan;
const ROWS = ["volume", "strength", "sugar", "acid", "brix", "ratio"] as const;

interface CellProps {
  readonly stage: Stage;
  readonly row: (typeof ROWS)[number];
}

function Cell({ stage, row }: CellProps) {
  const figure = stage[row];
  return (
    <td>
      {figure !== undefined && <FigureButton figure={figure} style={settings.value} bare range />}
    </td>
  );
}

function Table({ stages }: { readonly stages: readonly Stage[] }) {
  const unit = (row: (typeof ROWS)[number]) =>
    row === "volume" ? `, ${volumeUnit(settings.value.volumes)}` : "";
  return (
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
            <th scope="row">
              {words.rows[row]}
              {unit(row)}
            </th>
            {stages.map((stage) => (
              <Cell key={stage.name} stage={stage} row={row} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function says(stages: readonly Stage[]): string {
  const at = (name: StageName): string | undefined => {
    const stage = stages.find((one) => one.name === name);
    return stage && figureText(stage.strength, settings.value);
  };
  const [bottled, glass] = [at("topped-up") ?? at("mixed") ?? "", at("glass") ?? ""];
  return words.stagesSay(bottled, glass);
}

/** ABV, sugar and acid at each stage, side by side; every number opens its working. */
export function Balance({ specId, plan }: { readonly specId: string; readonly plan: Plan }) {
  const stages = stagesOf(plan);
  return (
    <Section specId={specId} name="balance" title={words.stages} says={says(stages)}>
      {() => (
        <>
          <Table stages={stages} />
          <p class="plan-quiet">{words.balanceNote}</p>
        </>
      )}
    </Section>
  );
}
