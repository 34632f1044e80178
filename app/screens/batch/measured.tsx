import { controlSheetOf } from "../../../core/logbook/control-sheet.ts";
import type { Reading, Run } from "../../../core/run/run.ts";
import { settings } from "../../state.ts";
import { dateYear, stampTime } from "../../words/format.ts";
import { ingredientOf } from "../../words/ingredient-of.ts";
import { named } from "../../words/joined.ts";
import { sayLater } from "../../words/say-later.ts";

function List({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <section class="part">
      <h2>{title}</h2>
      <ul class="batch-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

const readingLine = (one: Reading): string =>
  named(stampTime(one.at), sayLater.events.reading(one, settings.value));

/** What was read off jug, scale and thermometer, and the lots it was made of. */
export function Measured({ run }: { readonly run: Run }) {
  const words = sayLater.batch;
  const { lots, earliestLot } = controlSheetOf(run);
  const lotLines = lots.map(({ ingredient, lot, useBy }) => {
    const until = useBy === undefined ? "" : `, ${words.useBy(dateYear(useBy))}`;
    return named(ingredientOf(run, ingredient), `${lot}${until}`);
  });
  const isWarmth = ({ what }: Reading) => what === "temperature";
  return (
    <>
      <List title={words.temperatures} lines={run.readings.filter(isWarmth).map(readingLine)} />
      <List
        title={words.readings}
        lines={run.readings.filter((one) => !isWarmth(one)).map(readingLine)}
      />
      <List
        title={words.lots}
        lines={
          earliestLot === undefined
            ? lotLines
            : [...lotLines, words.earliestLot(dateYear(earliestLot))]
        }
      />
    </>
  );
}
