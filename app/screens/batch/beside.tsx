import { type Beside, planBesideOf } from "../../../core/logbook/plan-beside.ts";
import type { Run } from "../../../core/run/run.ts";
import { settings } from "../../state.ts";
import { abv, decimals, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { withUnit } from "../../words/with-unit.ts";

function shown(value: number | undefined, unit: Beside["unit"]): string {
  if (value === undefined) return "–";
  switch (unit) {
    case "ml":
      return volume(value, settings.value);
    case "abv":
      return abv(value);
    case "g/L":
      return withUnit(decimals(value, 1), "g/L");
  }
}

/** The frozen plan, each figure beside what happened. */
export function PlanBeside({ run }: { readonly run: Run }) {
  const words = sayLater.batch.beside;
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <table class="batch-beside">
        <thead>
          <tr>
            <td />
            <th scope="col">{words.planned}</th>
            <th scope="col">{words.happened}</th>
          </tr>
        </thead>
        <tbody>
          {planBesideOf(run).map(({ what, unit, planned, happened }) => (
            <tr key={what}>
              <th scope="row">{words.rows[what]}</th>
              <td>{shown(planned, unit)}</td>
              <td>
                <strong>{shown(happened, unit)}</strong>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="soft">{words.note}</p>
    </section>
  );
}
