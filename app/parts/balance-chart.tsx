import { ChartFrame, type ChartFrameProps } from "./chart.tsx";
import { LETTERS, Mark, SideLine } from "./chart-mark.tsx";
import { apart, fromNothing, placed } from "./chart-scale.ts";

/** One upright scale. */
export interface BalanceAxis {
  readonly name: string;
  readonly unit: string;
  /** One for each side; nothing where it has none. */
  readonly figures: readonly (number | undefined)[];
  readonly text: (figure: number) => string;
}

export interface BalanceChartProps
  extends Pick<ChartFrameProps, "says" | "reading" | "figures" | "open"> {
  readonly axes: readonly BalanceAxis[];
  readonly sides: number;
}

const HEIGHT = 232;
const [LEFT, RIGHT, TOP, FOOT] = [44, 300, 44, 206];
const LETTER_GAP = 17;

const known = (figures: BalanceAxis["figures"]): readonly number[] =>
  figures.filter((one) => one !== undefined);

interface Laid {
  readonly axis: BalanceAxis;
  readonly x: number;
  readonly y: (figure: number) => number;
  readonly most: number;
}

function Upright({ axis, x, y, most }: Laid) {
  return (
    <g>
      <path class="chart-axis" d={`M${x} ${TOP}V${FOOT}`} />
      <text class="chart-strong" x={x} y={14} text-anchor="middle">
        {axis.name}
      </text>
      <text x={x} y={TOP - 10} text-anchor="middle">
        {axis.text(most)}
      </text>
      <text x={x} y={FOOT + 20} text-anchor="middle">
        {axis.unit === "" ? "0" : `0 ${axis.unit}`}
      </text>
      <path class="chart-axis" d={`M${x - 5} ${y(most).toFixed(1)}h10`} />
    </g>
  );
}

/** The points of one side, from scale to scale; a scale that it has nothing on is left out. */
function pointsOf(laid: readonly Laid[], side: number): readonly (readonly [number, number])[] {
  return laid.flatMap(({ axis, x, y }) => {
    const figure = axis.figures[side];
    return figure === undefined ? [] : [[x, y(figure)] as const];
  });
}

/** The balance of several drinks on upright scales, each from nothing. */
export function BalanceChart(props: BalanceChartProps) {
  const { axes, sides } = props;
  const gap = (RIGHT - LEFT) / Math.max(1, axes.length - 1);
  const laid = axes.map((axis, at) => ({
    axis,
    x: LEFT + gap * at,
    y: placed(fromNothing(known(axis.figures)), FOOT, TOP),
    most: Math.max(0, ...known(axis.figures)),
  }));
  const lines = Array.from({ length: sides }, (_, side) => pointsOf(laid, side));
  const letters = apart(
    lines.map((points) => points[0]?.[1] ?? FOOT),
    LETTER_GAP,
    { from: TOP, to: FOOT },
  );
  return (
    <ChartFrame {...props} height={HEIGHT}>
      {laid.map((one) => (
        <Upright key={one.axis.name} {...one} />
      ))}
      {lines.map((points, side) => (
        <g key={LETTERS[side]}>
          <SideLine side={side} points={points} />
          {points.map(([x, y]) => (
            <Mark key={x} side={side} x={x} y={y} />
          ))}
          <text class="chart-strong" x={LEFT - 26} y={(letters[side] ?? 0) + 5}>
            {LETTERS[side]}
          </text>
        </g>
      ))}
    </ChartFrame>
  );
}
