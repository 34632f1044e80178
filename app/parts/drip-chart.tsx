import { useId } from "preact/hooks";
import { type DripChart as Chart, dripChartOf } from "../../core/board/drip-chart.ts";
import type { DripForecast } from "../../core/method/drip/drip-forecast.ts";
import { ounceInMl } from "../../core/quantity/ounce.ts";
import { type Collected, collectedIn } from "../../core/run/drip-outlook.ts";
import type { Run, Visit } from "../../core/run/run.ts";
import { wallAhead } from "../local-time.ts";
import {
  clockTime,
  decimals,
  dueTime,
  percent,
  type VolumeStyle,
  volume,
  weekday,
} from "../words/format.ts";
import { volumeUnit } from "../words/house-units.ts";
import { sayLater } from "../words/say-later.ts";
import { volumeShown } from "../words/shown.ts";
import { CHART_WIDTH, pathThrough, placed } from "./chart-scale.ts";
import { DripTable, drawnInWords } from "./drip-table.tsx";
import "./drip-chart.css";

export interface DripChartProps {
  readonly run: Run;
  /** The drip, going on or over. */
  readonly visit: Visit;
  readonly forecast: DripForecast;
  readonly style: VolumeStyle;
  /** Epoch ms. */
  readonly now: number;
}

const HEIGHT = 216;
const [LEFT, RIGHT, TOP, FOOT] = [50, 322, 24, 188];
const MARK = 5;

interface Paper {
  readonly x: (at: number) => number;
  readonly y: (ml: number) => number;
}

const paperOf = ({ from, to, mostMl }: Chart): Paper => ({
  x: placed({ from, to }, LEFT, RIGHT),
  y: placed({ from: 0, to: mostMl }, FOOT, TOP),
});

const near = (value: number): string => value.toFixed(1);
const lineOf = (points: readonly Collected[], { x, y }: Paper): string =>
  pathThrough(points.map(({ at, ml }) => [x(at), y(ml)] as const));

/** Whole hours by the clock; where a day begins, its name. */
const tickTime = (at: number): string => {
  const time = clockTime(at);
  return time === "00:00" ? weekday(at) : time;
};

function Axes({ chart, paper, style }: { chart: Chart; paper: Paper; style: VolumeStyle }) {
  const { x, y } = paper;
  const { unit } = volumeShown(1, style);
  return (
    <g>
      {chart.mlTicks.map((ml) => {
        const { value } = volumeShown(ml, style);
        return (
          <g key={ml}>
            <path class="drip-chart-grid" d={`M${LEFT} ${near(y(ml))}H${RIGHT}`} />
            <text x={LEFT - 6} y={y(ml) + 5} text-anchor="end">
              {decimals(value, Number.isInteger(Math.round(value * 1e6) / 1e6) ? 0 : 1)}
            </text>
          </g>
        );
      })}
      {chart.timeTicks.map((at) => (
        <g key={at}>
          <path class="drip-chart-tick" d={`M${near(x(at))} ${FOOT}v5`} />
          <text x={Math.min(x(at), RIGHT - 16)} y={FOOT + 22} text-anchor="middle">
            {tickTime(at)}
          </text>
        </g>
      ))}
      <text x={LEFT - 6} y={TOP - 8} text-anchor="end">
        {unit}
      </text>
      <path class="drip-chart-axis" d={`M${LEFT} ${TOP}V${FOOT}H${RIGHT}`} />
    </g>
  );
}

/** Where it goes: hatched between early and late, broken along the middle. */
function Ahead({ chart, paper, hatch }: { chart: Chart; paper: Paper; hatch: string }) {
  if (chart.ahead.length === 0) return null;
  const along = (when: "early" | "middle" | "late"): Collected[] =>
    chart.ahead.map((one) => ({ at: one[when], ml: one.ml }));
  const band = lineOf([...along("early"), ...along("late").reverse()], paper);
  return (
    <>
      <path class="drip-chart-band" d={`${band}z`} fill={`url(#${hatch})`} />
      <path class="drip-chart-ahead" d={lineOf(along("middle"), paper)} />
    </>
  );
}

function Readings({ chart, paper }: { chart: Chart; paper: Paper }) {
  const { x, y } = paper;
  return (
    <>
      {chart.readings.map(({ at, ml }) => (
        <circle key={at} class="drip-chart-reading" cx={x(at)} cy={y(ml)} r={MARK} />
      ))}
      {chart.keptOut.map(({ at, ml }) => (
        <path
          key={`${at} ${ml}`}
          class="drip-chart-out"
          d={`M${near(x(at) - MARK)} ${near(y(ml) - MARK)}l10 10m0-10l-10 10`}
        />
      ))}
    </>
  );
}

function Now({ at, paper }: { at: number; paper: Paper }) {
  const x = paper.x(at);
  return (
    <g class="drip-chart-now">
      <path d={`M${near(x)} ${TOP}V${FOOT}`} />
      <text x={Math.min(Math.max(x, LEFT + 18), RIGHT - 18)} y={TOP - 8} text-anchor="middle">
        {sayLater.drip.chart.now}
      </text>
    </g>
  );
}

/** The slow drip drawn by the clock: what was read, what fits it, and where it may go. */
export function DripChart({ run, visit, forecast, style, now }: DripChartProps) {
  const id = useId();
  const over = visit.finishedAt ?? run.abandoned?.at;
  const chart = dripChartOf(visit, collectedIn(run, visit), forecast, {
    until: over ?? now,
    zoneMs: wallAhead(visit.startedAt),
    unitMl: volumeUnit(style.volumes) === "oz" ? ounceInMl(style.ounce) : 1,
  });
  const paper = paperOf(chart);
  const words = sayLater.drip.chart;
  const target = paper.y(chart.targetMl);
  // The share is written at the end that "now" leaves free.
  const late = over === undefined && paper.x(now) > (LEFT + RIGHT) / 2;
  const time = (at: number) => dueTime(at, over ?? now);
  const texts = { time, amount: (ml: number) => volume(ml, style) };
  return (
    <figure class="drip-chart">
      <svg
        viewBox={`0 0 ${CHART_WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={drawnInWords(chart, texts)}
      >
        <defs>
          <pattern id={`${id}hatch`} width="7" height="7" patternUnits="userSpaceOnUse">
            <path class="drip-chart-hatch" d="M-1 8L8-1M-1 1L1-1M6 8L8 6" />
          </pattern>
          <clipPath id={`${id}plot`}>
            <path d={`M${LEFT} ${TOP - 6}H${RIGHT + 6}V${FOOT}H${LEFT}z`} />
          </clipPath>
        </defs>
        <Axes chart={chart} paper={paper} style={style} />
        <g clip-path={`url(#${id}plot)`}>
          <Ahead chart={chart} paper={paper} hatch={`${id}hatch`} />
          <path class="drip-chart-fitted" d={lineOf(chart.fitted, paper)} />
        </g>
        <path class="drip-chart-target" d={`M${LEFT} ${near(target)}H${RIGHT}`} />
        <text
          class="drip-chart-share"
          x={late ? LEFT + 6 : RIGHT}
          y={target - 6}
          text-anchor={late ? "start" : "end"}
        >
          {percent(chart.target)}
        </text>
        {over === undefined && <Now at={now} paper={paper} />}
        <Readings chart={chart} paper={paper} />
      </svg>
      <figcaption>
        {words.key}
        {chart.keptOut.length > 0 && ` ${words.keyOut}`}
      </figcaption>
      <DripTable chart={chart} texts={texts} />
    </figure>
  );
}
