import { roundTicks } from "../../core/board/axis-ticks.ts";
import type { Control } from "../../core/logbook/control.ts";
import { ChartFrame, type ChartFrameProps } from "./chart.tsx";
import { Mark } from "./chart-mark.tsx";
import { around, CHART_WIDTH, pathThrough, placed } from "./chart-scale.ts";
import { UpTicks } from "./chart-ticks.tsx";

/** One batch on the drawing. */
export interface ControlPoint {
  readonly key: string;
  readonly figure: number;
  /** When, as it is written under the first and the last. */
  readonly when: string;
}

export interface ControlChartProps
  extends Pick<ChartFrameProps, "says" | "reading" | "figures" | "open"> {
  readonly points: readonly ControlPoint[];
  /** Nothing while there are too few. */
  readonly control: Control | undefined;
  readonly text: (figure: number) => string;
  /** What the lines are called. */
  readonly words: { readonly high: string; readonly mean: string; readonly low: string };
}

const HEIGHT = 232;
const [LEFT, RIGHT, TOP, FOOT] = [52, 318, 16, 194];

interface LinesProps {
  readonly control: Control;
  readonly y: (figure: number) => number;
  readonly words: ControlChartProps["words"];
}

function Lines({ control, y, words }: LinesProps) {
  const lines = [
    ["high", control.high, "chart-limit", -6],
    ["mean", control.mean, "chart-mean", -6],
    ["low", control.low, "chart-limit", 17],
  ] as const;
  return (
    <>
      {lines.map(([name, figure, kind, off]) => (
        <g key={name}>
          <path class={kind} d={`M${LEFT} ${y(figure).toFixed(1)}H${RIGHT}`} />
          <text x={LEFT + 4} y={y(figure) + off}>
            {words[name]}
          </text>
        </g>
      ))}
    </>
  );
}

/** One figure of each batch in order, with the limits within which it usually stays. */
export function ControlChart(props: ControlChartProps) {
  const { points, control, text, words } = props;
  const limits = control === undefined ? [] : [control.low, control.high];
  const up = around([...points.map(({ figure }) => figure), ...limits]);
  // The lowest line has its name under it.
  const y = placed(up, FOOT - 18, TOP);
  const x = placed({ from: 0, to: Math.max(1, points.length - 1) }, LEFT + 12, RIGHT - 8);
  const outside = new Set(control?.outside);
  const line = points.map(({ figure }, at) => [x(at), y(figure)] as const);
  return (
    <ChartFrame {...props} height={HEIGHT}>
      <UpTicks ticks={roundTicks(up, 4)} y={y} text={text} left={LEFT} right={RIGHT} />
      <path class="chart-axis" d={`M${LEFT} ${TOP}V${FOOT}H${RIGHT}`} />
      {control !== undefined && <Lines control={control} y={y} words={words} />}
      <path d={pathThrough(line)} />
      {points.map(({ key, figure }, at) => (
        <Mark
          key={key}
          side={outside.has(at) ? 3 : 0}
          full={outside.has(at)}
          x={x(at)}
          y={y(figure)}
        />
      ))}
      <text x={LEFT} y={FOOT + 22}>
        {points[0]?.when}
      </text>
      {points.length > 1 && (
        <text x={CHART_WIDTH - 4} y={FOOT + 22} text-anchor="end">
          {points.at(-1)?.when}
        </text>
      )}
    </ChartFrame>
  );
}
