interface UpTicksProps {
  /** The figures that are written, and where each stands. */
  readonly ticks: readonly number[];
  readonly y: (figure: number) => number;
  readonly text: (figure: number) => string;
  readonly left: number;
  readonly right: number;
}

/** Figures up the side of a drawing, each with its line across. */
export function UpTicks({ ticks, y, text, left, right }: UpTicksProps) {
  return (
    <>
      {ticks.map((tick) => (
        <g key={tick}>
          <path class="chart-grid" d={`M${left} ${y(tick).toFixed(1)}H${right}`} />
          <text x={left - 6} y={y(tick) + 5} text-anchor="end">
            {text(tick)}
          </text>
        </g>
      ))}
    </>
  );
}
