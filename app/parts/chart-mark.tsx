import { pathThrough } from "./chart-scale.ts";

/** What the sides of a comparison are called; a drawing holds four at most. */
export const LETTERS = ["A", "B", "C", "D"] as const;

const SIZE = 5;

/** Around nothing: a circle, a square, a triangle, a diamond. */
const SHAPES = [
  `M${-SIZE} 0a${SIZE} ${SIZE} 0 1 0 ${2 * SIZE} 0a${SIZE} ${SIZE} 0 1 0 ${-2 * SIZE} 0z`,
  `M${-SIZE} ${-SIZE}h${2 * SIZE}v${2 * SIZE}h${-2 * SIZE}z`,
  `M0 ${-SIZE - 1}L${SIZE + 1} ${SIZE}H${-SIZE - 1}z`,
  `M0 ${-SIZE - 2}L${SIZE + 2} 0L0 ${SIZE + 2}L${-SIZE - 2} 0z`,
] as const;

export interface MarkProps {
  /** Which side, from 0. */
  readonly side: number;
  readonly x: number;
  readonly y: number;
  /** Filled: what is to catch the eye. */
  readonly full?: boolean;
}

/** A point of one side. */
export function Mark({ side, x, y, full = false }: MarkProps) {
  return (
    <path
      class="chart-mark"
      data-side={side}
      data-full={full ? "" : undefined}
      d={SHAPES[side % SHAPES.length]}
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}
    />
  );
}

/** A line through points, of one side. */
export function SideLine(props: {
  readonly side: number;
  readonly points: readonly (readonly [x: number, y: number])[];
}) {
  return <path class="chart-line" data-side={props.side} d={pathThrough(props.points)} />;
}
