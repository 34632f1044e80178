import type { AheadPoint, DripChart } from "../../core/board/drip-chart.ts";
import { percent } from "../words/format.ts";
import { sayLater } from "../words/say-later.ts";

/** How figures of the drip are written. */
interface DripTexts {
  /** A moment, epoch ms. */
  readonly time: (at: number) => string;
  /** ml */
  readonly amount: (ml: number) => string;
}

/** What the drawing of a drip shows, as sentences. */
export function drawnInWords(chart: DripChart, { time, amount }: DripTexts): string {
  const words = sayLater.drip.chart;
  const last = chart.readings.at(-1);
  const end = chart.ahead.at(-1);
  const share = percent(chart.target);
  const target = amount(chart.targetMl);
  const sofar =
    last === undefined ? "" : words.told(chart.readings.length, amount(last.ml), time(last.at));
  if (end === undefined) return `${sofar} ${words.reached(share, target)}`;
  if (chart.unending) return `${sofar} ${words.unending(share, target)}`;
  const { early, middle, late } = end;
  return `${sofar} ${words.ahead(share, target, time(middle), time(early), time(late))}`;
}

/** A few of the places ahead are enough to be read out: every fourth, and so the last. */
const toTell = (ahead: readonly AheadPoint[]): readonly AheadPoint[] =>
  ahead.filter((_, at) => at > 0 && at % 4 === 0);

/** The same figures as the drawing's, for those who hear it. */
export function DripTable({ chart, texts }: { chart: DripChart; texts: DripTexts }) {
  const words = sayLater.drip.chart;
  const { time, amount } = texts;
  const rows = [
    ...chart.readings.map(({ at, ml }) => ({ at, ml, what: words.read })),
    ...chart.keptOut.map(({ at, ml }) => ({ at, ml, what: words.leftOut })),
    ...(chart.unending ? [] : toTell(chart.ahead)).map(({ ml, early, middle, late }) => ({
      at: middle,
      ml,
      what: words.likely(time(early), time(late)),
    })),
  ];
  return (
    <table class="visually-hidden">
      <caption>{words.table}</caption>
      <thead>
        <tr>
          <th scope="col">{words.time}</th>
          <th scope="col">{words.amount}</th>
          <th scope="col">{words.what}</th>
        </tr>
      </thead>
      <tbody>
        {rows
          .sort((a, b) => a.at - b.at)
          .map(({ at, ml, what }) => (
            <tr key={`${at} ${ml} ${what}`}>
              <td>{time(at)}</td>
              <td>{amount(ml)}</td>
              <td>{what}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}
