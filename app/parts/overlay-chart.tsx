import { roundTicks } from "../../core/board/axis-ticks.ts";
import { ChartFrame, type ChartFrameProps } from "./chart.tsx";
import { LETTERS, Mark, SideLine } from "./chart-mark.tsx";
import { apart, CHART_WIDTH, fromNothing, placed } from "./chart-scale.ts";
import { UpTicks } from "./chart-ticks.tsx";

/** One line of an overlay. */
export interface OverlaySide {
  /** Which side it is, from 0: not every side has a line. */
  readonly side: number;
  readonly points: readonly { readonly x: number; readonly y: number }[];
}

export interface OverlayChartProps
  extends Pick<ChartFrameProps, "says" | "reading" | "figures" | "open"> {
  readonly sides: readonly OverlaySide[];
  /** How figures along the sides are written. */
  readonly xText: (x: number) => string;
  readonly yText: (y: number) => string;
  readonly xUnit: string;
  readonly yUnit: string;
}

const HEIGHT = 226;
const [LEFT, RIGHT, TOP, FOOT] = [54, 306, 26, 184];
const LETTER_GAP = 17;

/** Several lines from one beginning, each with its dashes, marks and letter. */
export function OverlayChart(props: OverlayChartProps) {
  const { sides, xText, yText, xUnit, yUnit } = props;
  const across = fromNothing(sides.flatMap(({ points }) => points.map(({ x }) => x)));
  const up = fromNothing(sides.flatMap(({ points }) => points.map(({ y }) => y)));
  const x = placed(across, LEFT, RIGHT);
  const y = placed(up, FOOT, TOP);
  const ends = sides.map(({ points }) => points.at(-1) ?? { x: 0, y: 0 });
  const letters = apart(
    ends.map((end) => y(end.y)),
    LETTER_GAP,
    { from: TOP, to: FOOT },
  );
  return (
    <ChartFrame {...props} height={HEIGHT}>
      <UpTicks ticks={roundTicks(up, 4)} y={y} text={yText} left={LEFT} right={RIGHT} />
      {roundTicks(across, 5).map((tick) => (
        <text key={tick} x={x(tick)} y={FOOT + 20} text-anchor="middle">
          {xText(tick)}
        </text>
      ))}
      <text x={0} y={TOP - 12}>
        {yUnit}
      </text>
      <text x={RIGHT} y={FOOT + 38} text-anchor="end">
        {xUnit}
      </text>
      <path class="chart-axis" d={`M${LEFT} ${TOP}V${FOOT}H${RIGHT}`} />
      {sides.map(({ side, points }, at) => (
        <g key={side}>
          <SideLine side={side} points={points.map((one) => [x(one.x), y(one.y)] as const)} />
          {points.map((one) => (
            <Mark key={`${one.x} ${one.y}`} side={side} x={x(one.x)} y={y(one.y)} />
          ))}
          <text
            class="chart-strong"
            x={Math.min(x(ends[at]?.x ?? 0) + 9, CHART_WIDTH - 12)}
            y={(letters[at] ?? 0) + 5}
          >
            {LETTERS[side]}
          </text>
        </g>
      ))}
    </ChartFrame>
  );
}
