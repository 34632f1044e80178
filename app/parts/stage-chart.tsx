import { roundTicks } from "../../core/board/axis-ticks.ts";
import { ChartFrame, type ChartFrameProps } from "./chart.tsx";
import { LETTERS, Mark, SideLine } from "./chart-mark.tsx";
import { apart, fromNothing, placed } from "./chart-scale.ts";
import { UpTicks } from "./chart-ticks.tsx";

/** One stage, and its figure on each side; nothing where a side has none. */
export interface StagePoint {
  readonly name: string;
  readonly figures: readonly (number | undefined)[];
}

export interface StageChartProps
  extends Pick<ChartFrameProps, "says" | "reading" | "figures" | "open"> {
  readonly stages: readonly StagePoint[];
  readonly sides: number;
  readonly text: (figure: number) => string;
}

const HEIGHT = 222;
const [LEFT, RIGHT, TOP, FOOT] = [54, 290, 16, 180];
const LETTER_GAP = 17;

/** Figures from stage to stage, on one scale from nothing. */
export function StageChart(props: StageChartProps) {
  const { stages, sides, text } = props;
  const all = stages.flatMap(({ figures }) => figures.filter((one) => one !== undefined));
  const up = fromNothing(all);
  const y = placed(up, FOOT, TOP);
  const x = placed({ from: 0, to: Math.max(1, stages.length - 1) }, LEFT + 22, RIGHT);
  const lines = Array.from({ length: sides }, (_, side) =>
    stages.flatMap(({ figures }, at) => {
      const figure = figures[side];
      return figure === undefined ? [] : [[x(at), y(figure)] as const];
    }),
  );
  const letters = apart(
    lines.map((points) => points.at(-1)?.[1] ?? FOOT),
    LETTER_GAP,
    { from: TOP, to: FOOT },
  );
  return (
    <ChartFrame {...props} height={HEIGHT}>
      <UpTicks ticks={roundTicks(up, 4)} y={y} text={text} left={LEFT} right={RIGHT} />
      <path class="chart-axis" d={`M${LEFT} ${TOP}V${FOOT}H${RIGHT}`} />
      {stages.map(({ name }, at) => (
        <text key={name} x={x(at)} y={FOOT + 22 + (at % 2) * 17} text-anchor="middle">
          {name}
        </text>
      ))}
      {lines.map((points, side) => (
        <g key={LETTERS[side]}>
          <SideLine side={side} points={points} />
          {points.map(([px, py]) => (
            <Mark key={px} side={side} x={px} y={py} />
          ))}
          {points.length > 0 && (
            <text
              class="chart-strong"
              x={(points.at(-1)?.[0] ?? RIGHT) + 12}
              y={(letters[side] ?? 0) + 5}
            >
              {LETTERS[side]}
            </text>
          )}
        </g>
      ))}
    </ChartFrame>
  );
}
