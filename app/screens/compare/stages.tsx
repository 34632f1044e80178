import { stageStrengthsOf } from "../../../core/logbook/compare/stage-strengths.ts";
import type { Run } from "../../../core/run/run.ts";
import { StageChart } from "../../parts/stage-chart.tsx";
import { abv, decimals } from "../../words/format.ts";
import { inOneLine } from "../../words/joined.ts";
import { sayLater } from "../../words/say-later.ts";
import { withUnit } from "../../words/with-unit.ts";

/** How strong a batch was to be from stage to stage, and how strong it came out. */
export function Stages({ run }: { readonly run: Run }) {
  const words = sayLater.compare.stages;
  const stages = stageStrengthsOf(run);
  const parts = stages.map(({ stage, planned, actual }) =>
    actual === undefined
      ? words.partPlanned(words.names[stage], abv(planned))
      : words.part(words.names[stage], abv(planned), abv(actual)),
  );
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <StageChart
        stages={stages.map(({ stage, planned, actual }) => ({
          name: words.names[stage],
          figures: [100 * planned, actual === undefined ? undefined : 100 * actual],
        }))}
        sides={2}
        text={(figure) => withUnit(decimals(figure, 0), "%")}
        says={words.says(inOneLine(parts))}
        reading={words.reading}
        open={sayLater.compare.figures}
        figures={{
          caption: words.title,
          head: [words.stage, words.planned, words.actual],
          rows: stages.map(({ stage, planned, actual }) => [
            words.names[stage],
            abv(planned),
            actual === undefined ? "–" : abv(actual),
          ]),
        }}
      />
    </section>
  );
}
