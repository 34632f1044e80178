import { dripFromStart } from "../../../core/logbook/compare/drip-from-start.ts";
import { HOUR } from "../../../core/quantity/time-units-table.ts";
import type { Run } from "../../../core/run/run.ts";
import { LETTERS } from "../../parts/chart-mark.tsx";
import { OverlayChart } from "../../parts/overlay-chart.tsx";
import { settings } from "../../state.ts";
import { decimals, duration, volume } from "../../words/format.ts";
import { inOneLine } from "../../words/joined.ts";
import { sayLater } from "../../words/say-later.ts";
import { volumeShown } from "../../words/shown.ts";

/** The slow drips of several batches laid over each other. */
export function Drips({ runs }: { readonly runs: readonly Run[] }) {
  const words = sayLater.compare.drips;
  const style = settings.value;
  const sides = runs.flatMap((run, side) => {
    const course = dripFromStart(run);
    return course === undefined ? [] : [{ side, course }];
  });
  const letter = (side: number): string => LETTERS[side] ?? "";
  const ends = sides.map(({ side, course }) => {
    const { ml, forMs } = course.at(-1) ?? { ml: 0, forMs: 0 };
    return words.part(letter(side), volume(ml, style), duration(forMs));
  });
  const rows = sides.flatMap(({ side, course }) =>
    course.slice(1).map(({ forMs, ml }) => [letter(side), duration(forMs), volume(ml, style)]),
  );
  const yText = (value: number): string => decimals(value, Number.isInteger(value) ? 0 : 1);
  return (
    <section class="part">
      <h2>{words.title}</h2>
      {sides.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <OverlayChart
          sides={sides.map(({ side, course }) => ({
            side,
            points: course.map(({ forMs, ml }) => ({
              x: forMs / HOUR,
              y: volumeShown(ml, style).value,
            })),
          }))}
          xText={yText}
          yText={yText}
          xUnit={words.hours}
          yUnit={volumeShown(1, style).unit}
          says={words.says(inOneLine(ends))}
          reading={words.reading}
          open={sayLater.compare.figures}
          figures={{
            caption: words.title,
            head: [sayLater.compare.balance.name, words.time, words.amount],
            rows,
          }}
        />
      )}
    </section>
  );
}
