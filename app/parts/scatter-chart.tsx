import { roundTicks } from "../../core/board/axis-ticks.ts";
import { ChartFrame, type ChartFrameProps } from "./chart.tsx";
import { Mark } from "./chart-mark.tsx";
import { around, placed } from "./chart-scale.ts";
import { UpTicks } from "./chart-ticks.tsx";

/** Two figures of one batch. */
export interface ScatterPoint {
  readonly x: number;
  readonly y: number;
}

export interface ScatterChartProps
  extends Pick<ChartFrameProps, "says" | "reading" | "figures" | "open"> {
  readonly points: readonly ScatterPoint[];
  /** How figures are written along the sides. */
  readonly xText: (x: number) => string;
  readonly yText: (y: number) => string;
  /** Figures per unit that is written: ticks stand on whole ones, such as minutes of ms. */
  readonly xUnit: number;
  readonly yUnit: number;
}

const HEIGHT = 200;
const [LEFT, RIGHT, TOP, FOOT] = [70, 312, 12, 164];

/** Round ticks in the unit that is written. */
const ticksIn = (stretch: { from: number; to: number }, unit: number): readonly number[] =>
  roundTicks({ from: stretch.from / unit, to: stretch.to / unit }, 4).map((tick) => tick * unit);

/** One mark a batch: two figures against each other. */
export function ScatterChart(props: ScatterChartProps) {
  const { points, xText, yText, xUnit, yUnit } = props;
  const across = around(points.map(({ x }) => x));
  const up = around(points.map(({ y }) => y));
  const x = placed(across, LEFT + 8, RIGHT);
  const y = placed(up, FOOT - 4, TOP);
  return (
    <ChartFrame {...props} height={HEIGHT}>
      <UpTicks ticks={ticksIn(up, yUnit)} y={y} text={yText} left={LEFT} right={RIGHT} />
      {ticksIn(across, xUnit).map((tick) => (
        <text key={tick} x={x(tick)} y={FOOT + 22} text-anchor="middle">
          {xText(tick)}
        </text>
      ))}
      <path class="chart-axis" d={`M${LEFT} ${TOP}V${FOOT}H${RIGHT}`} />
      {points.map((point) => (
        <Mark key={`${point.x} ${point.y}`} side={0} x={x(point.x)} y={y(point.y)} />
      ))}
    </ChartFrame>
  );
}
