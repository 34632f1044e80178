import { useMemo } from "preact/hooks";
import type { DripForecast } from "../../../core/method/drip/drip-forecast.ts";
import { mayNeverBeThrough } from "../../../core/method/drip/never-through.ts";
import { collectedIn, dripOutlook, nextLookAt } from "../../../core/run/drip-outlook.ts";
import type { Run, Visit } from "../../../core/run/run.ts";
import { DripChart } from "../../parts/drip-chart.tsx";
import { Why } from "../../parts/why.tsx";
import { now, settings } from "../../state.ts";
import { dueTime, percent, volume } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";
import { detailOf } from "./detail.ts";

interface WorkProps {
  readonly run: Run;
  readonly visit: Visit;
}

const show = (ml: number): string => volume(ml, settings.value);

/** Until when it will be through; where nobody can tell, that, and what helps. */
function Through({ forecast, visit }: { readonly forecast: DripForecast; readonly visit: Visit }) {
  const words = sayLater.drip.forecast;
  const at = (ms: number) => dueTime(visit.startedAt + ms, now.value);
  const { throughAt, target, curve } = forecast;
  const share = percent(target);
  if (curve.ahead.length === 0) {
    return <p class="run-fact run-strong">{words.reached(share, at(throughAt.p50))}</p>;
  }
  if (mayNeverBeThrough(throughAt)) {
    return <p class="run-fact run-strong">{words.never(share)}</p>;
  }
  return (
    <>
      <p class="run-fact run-strong">{words.through(share, at(throughAt.p50))}</p>
      <p class="run-fact">{words.between(at(throughAt.p10), at(throughAt.p90))}</p>
      <Why of="range" />
    </>
  );
}

const useOutlook = (run: Run) => useMemo(() => dripOutlook(run), [run]);

function Blinding({ forecast }: { readonly forecast: DripForecast }) {
  const { verdict, mlPerHour, promisedMlPerHour } = forecast.blinding;
  if (verdict === "no") return null;
  const words = sayLater.drip.forecast.blinding;
  return (
    <p class="run-fact run-strong">{words[verdict](show(mlPerHour), show(promisedMlPerHour))}</p>
  );
}

/** What can be done, where it stands still or will. */
function Help({ forecast }: { readonly forecast: DripForecast }) {
  const { blinding, curve, throughAt } = forecast;
  const stuck = curve.ahead.length > 0 && mayNeverBeThrough(throughAt);
  if (blinding.verdict !== "yes" && !stuck) return null;
  return <p class="run-fact">{sayLater.drip.forecast.help}</p>;
}

/** Beside the glass: when it will be through; how to leave it, while nobody can tell. */
export function DripSays({ run, visit }: WorkProps) {
  const outlook = useOutlook(run);
  if (outlook?.type !== "forecast") return <p class="run-detail">{detailOf(run, visit)}</p>;
  return <Through forecast={outlook} visit={visit} />;
}

/** What there is to say about it besides: one reading only says when the next helps. */
export function Outlook({ run, visit }: WorkProps) {
  const outlook = useOutlook(run);
  const words = sayLater.drip.forecast;
  const last = collectedIn(run, visit).at(-1)?.at ?? visit.startedAt;
  const look = outlook && nextLookAt(visit, outlook, last);
  if (outlook === undefined || look === undefined || !("nextReading" in outlook)) {
    return <p class="run-fact">{words.none}</p>;
  }
  const time = look > now.value ? dueTime(look, now.value) : undefined;
  if (outlook.type === "none") {
    return <p class="run-fact">{time === undefined ? words.secondNow : words.second(time)}</p>;
  }
  const { why } = outlook.nextReading;
  return (
    <>
      <Blinding forecast={outlook} />
      <Help forecast={outlook} />
      <p class="run-fact">{time === undefined ? words.nextNow : words.next[why](time)}</p>
      <DripChart
        run={run}
        visit={visit}
        forecast={outlook}
        style={settings.value}
        now={now.value}
      />
      <p class="run-fact">{detailOf(run, visit)}</p>
    </>
  );
}
