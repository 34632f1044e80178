import { controlOf, FEWEST_IN_CONTROL } from "../../../core/logbook/control.ts";
import type { BatchRecord } from "../../../core/logbook/record.ts";
import { ControlChart } from "../../parts/control-chart.tsx";
import { share } from "../../words/compared.ts";
import { dateYear, day, decimals, percent } from "../../words/format.ts";
import { sayLater } from "../../words/say-later.ts";

const whole = (value: number): string => decimals(value, 0);

/** Yield from batch to batch, with the limits within which it usually stays. */
export function Yields({ batches }: { readonly batches: readonly BatchRecord[] }) {
  const words = sayLater.learnt.yields;
  const measured = batches
    .flatMap(({ yielded, ...batch }) => (yielded === undefined ? [] : [{ batch, yielded }]))
    .toSorted((a, b) => a.batch.startedAt - b.batch.startedAt);
  if (measured.length === 0) return null;
  const control = controlOf(measured.map(({ yielded }) => yielded.share));
  const count = whole(measured.length);
  const outside = (control?.outside ?? []).flatMap((at) => measured[at]?.batch.batch ?? []);
  const says =
    control === undefined
      ? words.few(count, whole(FEWEST_IN_CONTROL))
      : [
          words.says(count, share(control.mean), share(control.low), share(control.high)),
          outside.length === 0 ? words.inside : words.outside(outside.join(", ")),
          ...(control.widened
            ? [words.widened(share(control.robust.low), share(control.robust.high))]
            : []),
        ].join(" ");
  return (
    <section class="part">
      <h2>{words.title}</h2>
      <ControlChart
        points={measured.map(({ batch, yielded }) => ({
          key: batch.runId,
          figure: yielded.share,
          when: day(batch.startedAt),
        }))}
        control={control}
        text={percent}
        words={words}
        says={says}
        reading={words.reading}
        open={sayLater.learnt.figures}
        figures={{
          caption: words.title,
          head: [words.batch, words.date, words.share],
          rows: measured.map(({ batch, yielded }) => [
            batch.batch,
            dateYear(batch.startedAt),
            share(yielded.share),
          ]),
        }}
      />
    </section>
  );
}
