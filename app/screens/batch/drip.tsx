import { useMemo } from "preact/hooks";
import { dripOutlook, lastDrip } from "../../../core/run/drip-outlook.ts";
import type { Run } from "../../../core/run/run.ts";
import { DripChart } from "../../parts/drip-chart.tsx";
import { now, settings } from "../../state.ts";
import { sayLater } from "../../words/say-later.ts";

/** The slow drip as it was read and foretold; below two readings, what they would be good for. */
export function Drip({ run }: { readonly run: Run }) {
  const visit = lastDrip(run);
  const outlook = useMemo(() => dripOutlook(run, [], visit), [run]);
  if (visit === undefined) return null;
  const title = <h2>{sayLater.drip.chart.title}</h2>;
  if (outlook?.type !== "forecast") {
    return (
      <section class="part">
        {title}
        <p>{sayLater.empty.drip}</p>
      </section>
    );
  }
  return (
    <section class="part">
      {title}
      <DripChart
        run={run}
        visit={visit}
        forecast={outlook}
        style={settings.value}
        now={now.value}
      />
    </section>
  );
}
